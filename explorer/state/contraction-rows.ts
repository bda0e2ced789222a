// How much volume is lost on mixing, against strength, and where the reader's spirits stand.

import { contraction, massFractionFromStrength, toSI } from '#lib/index.js';
import type { ContractionRows } from '../rows/contraction.js';
import type { UnitSystem } from '../text/unit-systems.js';
import { remembered } from './memo.js';

const twenty_K = toSI(20, '°C');
const steps = 100;

const lostAt = (strength: number): number => contraction(massFractionFromStrength(strength), twenty_K);

const line = Array.from({ length: steps + 1 }, (_, i) => i / steps);
const lost = line.map(lostAt);

/** `measured` null where no spirit floats the hydrometer as it was read. */
export const contractionRows = remembered(
  (measured: number | null, wanted: number, units: UnitSystem): ContractionRows => ({
    strength: line,
    lost,
    own: [
      ...(measured === null ? [] : [{ name: 'your spirit', strength: measured, lost: lostAt(measured) }]),
      { name: 'brought down', strength: wanted, lost: lostAt(wanted) },
    ],
    units,
  }),
);
