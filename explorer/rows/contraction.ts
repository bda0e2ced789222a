// Rows of the volume that is lost when ethanol and water are mixed.

import type { FigureUnits } from './shown.js';

export interface ContractionRows {
  /** Strengths of the mixture, % vol / 100, and the share of the volume lost when it is made of pure ethanol and water. */
  readonly strength: readonly number[];
  readonly lost: readonly number[];
  /** The reader's spirits on that curve, by name. */
  readonly own: readonly { readonly name: string; readonly strength: number; readonly lost: number }[];
  readonly units: FigureUnits;
}
