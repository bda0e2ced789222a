// Published points against the model, each set at the pressure it was measured at.

import { DEFAULT_ACTIVITY, toSI, vapourOnSlice } from '#lib/index.js';
import type { MeasuredPointsRows } from '../rows/measured.js';
import type { EquilibriumAnswer, EquilibriumQuestion } from '../worker/kinds/equilibrium.js';
import { curveRows } from './equilibrium-rows.js';
import { measuredSets } from './measured-points.js';
import { measuredRows } from './measured-rows.js';

const atm_Pa = toSI(1, 'atm');
const nameOf = (pressure_Pa: number): string => `boiling at ${String(pressure_Pa)} Pa`;

/** What boils at what, at 1 atm and at the pressure of every set. */
export const measuredQuestions: Readonly<Record<string, EquilibriumQuestion>> = Object.fromEntries(
  [atm_Pa, ...measuredSets.map(({ pressure_Pa }) => pressure_Pa)].map((pressure_Pa) => [
    nameOf(pressure_Pa),
    { kind: 'equilibrium', activity: DEFAULT_ACTIVITY, pressure_Pa },
  ]),
);

export function measuredPointsRows(answers: Readonly<Record<string, EquilibriumAnswer>>): MeasuredPointsRows {
  return {
    curve: curveRows(answers[nameOf(atm_Pa)]!.slice),
    sets: measuredRows.map((set, i) => {
      const { slice } = answers[nameOf(measuredSets[i]!.pressure_Pa)]!;
      const { liquidMoleFraction, vapourMoleFraction } = set;
      const difference = Array.from(vapourMoleFraction, (y, k) => y - vapourOnSlice(slice, liquidMoleFraction[k]!));
      return { ...set, difference };
    }),
  };
}
