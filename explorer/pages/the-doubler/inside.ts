// What the first doubler of a run holds along the clock, as volumes and strengths.

import {
  densityOfLiquid,
  massFractionFromMoleFraction,
  strengthFromMoleFraction,
  toSI,
  volumeAt20C,
} from '#lib/index.js';
import type { InsideRun } from './questions.js';
import { remembered } from '../../state/memo.js';

/** A column of one holder, row by row. */
export function holderRow(
  run: InsideRun,
  column: 'holderTemperature_K' | 'holderAmount_mol' | 'holderLiquid',
  holder: number,
): Float64Array {
  const width = run.holders.length;
  return Float64Array.from({ length: run.rows }, (_none, row) => run[column][row * width + holder]!);
}

export interface InsideDoubler {
  /** Of the liquid as hot as it is, m³. */
  readonly volume_m3: Float64Array;
  /** % vol / 100 at 20 °C. */
  readonly strength: Float64Array;
  /** When the spout begins to run. */
  readonly whenItRuns: { readonly volume_m3: number; readonly strength: number };
  /** When half the strength it had then is gone, s; null if it never is. */
  readonly halfSpent_s: number | null;
}

/** Temperature at which volumes are counted, K. */
const cold_K = toSI(20, '°C');

/** The doubler is the second holder, after the kettle. */
export const insideDoubler = remembered((run: InsideRun): InsideDoubler => {
  const liquid = holderRow(run, 'holderLiquid', 1).map((x) => Math.min(1, Math.max(0, x)));
  const amount = holderRow(run, 'holderAmount_mol', 1);
  const temperature = holderRow(run, 'holderTemperature_K', 1);
  const strength = liquid.map(strengthFromMoleFraction);
  const volume_m3 = liquid.map((x, row) => {
    const massFraction = massFractionFromMoleFraction(x);
    const cold_m3 = volumeAt20C(amount[row]! * x, amount[row]! * (1 - x));
    return (cold_m3 * densityOfLiquid(massFraction, cold_K)) / densityOfLiquid(massFraction, temperature[row]!);
  });
  const found = run.time_s.findIndex((time) => time >= (run.firstVapour_s ?? Infinity));
  const runs = found < 0 ? run.rows - 1 : found;
  const half = strength.findIndex((value, row) => row > runs && value < strength[runs]! / 2);
  return {
    volume_m3,
    strength,
    whenItRuns: { volume_m3: volume_m3[runs]!, strength: strength[runs]! },
    halfSpent_s: half < 0 ? null : crossing(run.time_s, strength, half, strength[runs]! / 2),
  };
});

/** When a falling column passes a value, between the row before and the first row below it. */
function crossing(time_s: Float64Array, values: Float64Array, row: number, value: number): number {
  const [above, below] = [values[row - 1]!, values[row]!];
  const share = above > below ? (above - value) / (above - below) : 1;
  return time_s[row - 1]! + Math.min(1, Math.max(0, share)) * (time_s[row]! - time_s[row - 1]!);
}
