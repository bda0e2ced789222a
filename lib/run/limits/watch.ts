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

/** A limit and how it is read. */
export interface Watch {
  readonly kind: LimitKind;
  readonly holder: number | null;
  /** Which of two readings is worse. */
  readonly high: boolean;
  readonly read: (row: number) => Reading | null;
  /** What happens; where it takes numbers, by the rows at which it is first passed and at which it is worst. */
  readonly message: string | ((first: number, worst: number) => string);
  readonly cure: string;
}

/** A mole fraction that round-off may have carried out of 0..1. */
export function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
