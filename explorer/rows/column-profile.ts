// Rows of what stands where up a column.

import type { FigureUnits } from './shown.js';

/** One moment: what stands on each stage, the vessel under the column as stage 0. Dry stages are left out. */
export interface ProfileMoment {
  /** '1 h 22 min'. */
  readonly label: string;
  readonly stage: readonly number[];
  /** % vol / 100 of the liquid and of the vapour that leaves it, condensed. */
  readonly liquid: readonly number[];
  readonly vapour: readonly number[];
  readonly temperature_K: readonly number[];
}

export interface ColumnProfileRows {
  /** The moment in ink, then those in pencil. */
  readonly moments: readonly ProfileMoment[];
  readonly stages: number;
  readonly kind: 'plates' | 'packing';
  readonly base: 'kettle' | 'doubler';
  /** Temperatures between which the whole run stands from the first vapour on, K. */
  readonly range_K: readonly [number, number];
  readonly units: FigureUnits;
}
