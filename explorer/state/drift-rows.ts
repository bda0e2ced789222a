// The ceiling against pressure: the questions that draw the line, the one that is asked at each pressure of the
// reader, and the rows of the figure.

import { moleFractionFromStrength } from '#lib/index.js';
import type { DriftRow, DriftRows } from '../rows/drift.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { AzeotropeAt, DriftAnswer, DriftQuestion } from '../worker/kinds/drift.js';
import { measuredAzeotropeRows } from './measured-rows.js';

/** The library goes to here, Pa. */
const highest_Pa = 2e6;
/** Points of the line, asked a few at a time so that no other question waits long behind them. */
const [lots, inLot] = [6, 12];
/** Between these the azeotrope ends, Pa. */
const endBetween_Pa = [3000, 30_000] as const;
/** More points close to the end of the line, where it is steep; the first is the end itself. */
const nearEnd = [0, 0.001, 0.004, 0.01, 0.02, 0.04].map((share) => 1 + share);
const strengthsOnScale = [0.96, 0.97, 0.98, 0.99];

/** The line in lots, from low pressure to high; the first finds its end. */
export const lineQuestions: readonly DriftQuestion[] = Array.from({ length: lots }, (_, lot) => ({
  kind: 'drift',
  pressures_Pa: Array.from({ length: inLot }, (_, k) => pressureAlong((lot * inLot + k) / (lots * inLot - 1))),
  ...(lot === 0 ? { endBetween_Pa, nearEnd } : { endBetween_Pa: null }),
}));

function pressureAlong(share: number): number {
  return endBetween_Pa[0] * (highest_Pa / endBetween_Pa[0]) ** share;
}

/** The azeotrope at the reader's pressure. */
export function questionAt(pressure_Pa: number): DriftQuestion {
  return { kind: 'drift', pressures_Pa: [pressure_Pa], endBetween_Pa: null };
}

/** The rows: the line from its end up, the reader's pressure, the published points. */
export function driftRows(line: readonly DriftAnswer[], at: number, units: UnitSystem): DriftRows {
  const rows = line.flatMap(({ points }) => points.flatMap(driftRow));
  return {
    line: rows.sort((a, b) => a.pressure_Pa - b.pressure_Pa),
    end_Pa: endOf(line),
    measured: measuredAzeotropeRows,
    at,
    strengthScale: strengthsOnScale.map((strength) => ({ strength, moleFraction: moleFractionFromStrength(strength) })),
    pressure: units.pressure,
    units,
  };
}

/** Where the line ends, Pa. */
export function endOf(line: readonly DriftAnswer[]): number | null {
  return line[0]?.end_Pa ?? null;
}

/** The azeotrope at the very end of the line; undefined where it has none. */
export function atEnd(line: readonly DriftAnswer[]): AzeotropeAt | undefined {
  return line[0]?.points[inLot];
}

function driftRow({ pressure_Pa, azeotrope, extrapolated }: AzeotropeAt): DriftRow[] {
  if (azeotrope === null) return [];
  const { moleFraction, strength, temperature_K, moleFractionError } = azeotrope;
  return [{ pressure_Pa, moleFraction, strength, temperature_K, error: moleFractionError, extrapolated }];
}
