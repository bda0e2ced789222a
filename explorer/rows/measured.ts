// Rows of the figure of published points: what was measured, the model's curve, and what lies between them.

import type { CurveRows, MeasuredRows } from './equilibrium.js';
import type { Column } from './shown.js';

/** One published set with what it differs by. */
export interface MeasuredSetRows extends MeasuredRows {
  /** Measured mole fraction of the vapour less the model's over the same liquid, at the pressure of the set. */
  readonly difference: Column;
}

export interface MeasuredPointsRows {
  /** The model at 1 atm. */
  readonly curve: CurveRows;
  readonly sets: readonly MeasuredSetRows[];
}
