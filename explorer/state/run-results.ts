// What a run comes to, as numbers for the sentences under its figure.

import { aboveStrength } from '#lib/index.js';
import type { KeptRun, RunPart } from '../worker/kinds/run.js';

/** What every run that is drawn and spoken of keeps. */
export const drawnParts = [
  'time_s',
  'collectedVolume_m3',
  'spoutStrength',
  'kettleStrength',
  'headTemperature_K',
  'kettleTemperature_K',
  'pureAlcoholCollected_m3',
  'pureAlcoholLeft_m3',
] as const satisfies readonly RunPart[];
export type DrawnPart = (typeof drawnParts)[number];
export type DrawnRun = KeptRun<DrawnPart>;

/** Results of one run; SI, strengths as % vol / 100. */
export interface RunResults {
  /** Strongest at the spout while anything is collected. */
  readonly best: number;
  readonly threshold: number;
  /** Collected while the spout stands at or above the threshold, m³; null if it never does. */
  readonly volumeAbove_m3: number | null;
  /** Pure alcohol in that volume, m³. */
  readonly pureAlcoholAbove_m3: number | null;
  /** Pure alcohol in that volume as a share of the charge's. */
  readonly shareAbove: number | null;
  readonly collected_m3: number;
  readonly pureAlcohol_m3: number;
  /** Of the charge's pure alcohol. */
  readonly shareCollected: number;
  readonly duration_s: number;
}

/** Results of a run with respect to a strength. */
export function runResults(run: DrawnRun, threshold: number): RunResults {
  const start = firstDrawn(run);
  const last = run.rows - 1;
  let best = 0;
  for (let row = start; row <= last; row += 1) best = Math.max(best, run.spoutStrength[row]!);
  const charged_m3 = run.pureAlcoholCollected_m3[0]! + run.pureAlcoholLeft_m3[0]!;
  const above = aboveStrength(run, threshold);
  const anything = above.volume_m3 > 0;
  return {
    best,
    threshold,
    volumeAbove_m3: anything ? above.volume_m3 : null,
    pureAlcoholAbove_m3: anything ? above.pureAlcohol_m3 : null,
    shareAbove: anything ? above.shareOfCharge : null,
    collected_m3: run.collectedVolume_m3[last]!,
    pureAlcohol_m3: run.pureAlcoholCollected_m3[last]!,
    shareCollected: run.pureAlcoholCollected_m3[last]! / charged_m3,
    duration_s: run.time_s[last]!,
  };
}

/** Row at which collecting begins: the last before anything has come over. */
export function firstDrawn({ collectedVolume_m3, rows }: Pick<DrawnRun, 'collectedVolume_m3' | 'rows'>): number {
  const found = collectedVolume_m3.findIndex((volume) => volume > 0);
  return found < 0 ? rows - 1 : Math.max(0, found - 1);
}

/** Row, with its part, at which `column` reads `value`; the column rises. */
export function positionIn(column: ArrayLike<number>, value: number): number {
  let low = 0;
  let high = column.length - 1;
  if (high < 0 || value <= column[0]!) return 0;
  if (value >= column[high]!) return high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (column[middle]! <= value) low = middle;
    else high = middle;
  }
  const width = column[high]! - column[low]!;
  return low + (width > 0 ? (value - column[low]!) / width : 0);
}

/** A column between its rows. */
export function readAt(column: ArrayLike<number>, position: number): number {
  const row = Math.min(Math.floor(position), column.length - 1);
  const next = Math.min(row + 1, column.length - 1);
  return column[row]! + (position - row) * (column[next]! - column[row]!);
}

/** A plate's value between the rows of a run: `column` is rows × plates. */
export function readPlate(column: ArrayLike<number>, plates: number, plate: number, position: number): number {
  const row = Math.floor(position);
  const here = column[row * plates + plate]!;
  const next = column[(row + 1) * plates + plate] ?? here;
  return here + (position - row) * (next - here);
}
