// What a watch on a run is: readings row by row, what happens when a limit is passed, and a cure.

import type { RunColumns, RunFacts } from '../solution.js';

/** What can be passed. */
export type LimitKind =
  | 'flooding'
  | 'weeping'
  | 'heaterShort'
  | 'kettleLow'
  | 'doublerLow'
  | 'doublerOver'
  | 'condenserShort'
  | 'holdLost'
  | 'refluxShort';

/** What of a solution its limits are read off. */
export type WatchedRun = RunFacts & RunColumns;

/** One reading of a limit. */
export interface Reading {
  readonly worst: number;
  readonly passed: boolean;
  readonly extrapolated: boolean;
}

/** A limit and how it is read. Between two rows, at a place such as 3.25, columns go by straight lines. */
export interface Watch {
  readonly kind: LimitKind;
  readonly holder: number | null;
  /** Which of two readings is worse. */
  readonly high: boolean;
  readonly read: (place: number) => Reading | null;
  /** What happens; where it takes numbers, by the places at which it is first passed and at which it is worst. */
  readonly message: string | ((first: number, worst: number) => string);
  readonly cure: string;
}

/** A column at a place: a row, or between two. */
export function valueAt(column: Float64Array, place: number): number {
  return between(column, Math.floor(place), place % 1, 0, 1);
}

/** The place at which a column that rises reads a value; its first row before it. */
export function placeAt(column: Float64Array, value: number): number {
  let [low, high] = [0, column.length - 1];
  if (high < 1 || value <= column[0]!) return 0;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (column[middle]! <= value) low = middle;
    else high = middle;
  }
  return Math.min(high, low + (value - column[low]!) / (column[high]! - column[low]!));
}

/** A holder's value at a place; `column` is rows × holders. */
export function holderAt(run: WatchedRun, column: Float64Array, place: number, holder: number): number {
  return between(column, Math.floor(place), place % 1, holder, run.holders.length);
}

function between(column: Float64Array, row: number, share: number, at: number, width: number): number {
  const here = column[row * width + at]!;
  return share === 0 ? here : here + share * (column[(row + 1) * width + at]! - here);
}

/** A mole fraction that round-off may have carried out of 0..1. */
export function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
