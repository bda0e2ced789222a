// Rows of the azeotrope along pressure.

import type { FigureUnits, PointForm, ShownQuantity } from './shown.js';

/** The azeotrope along pressure, and the published points. */
export interface DriftRows {
  /** Pressures rise. */
  readonly line: readonly DriftRow[];
  /** The model has none below it, Pa; null where it was not found. */
  readonly end_Pa: number | null;
  readonly measured: readonly MeasuredAzeotropeRow[];
  /** The reader's pressure, Pa. */
  readonly at: number;
  readonly strengthScale: readonly { readonly moleFraction: number; readonly strength: number }[];
  readonly pressure: ShownQuantity;
  readonly units: FigureUnits;
}

export interface DriftRow {
  readonly pressure_Pa: number;
  readonly moleFraction: number;
  /** % vol / 100 at 20 °C. */
  readonly strength: number;
  readonly temperature_K: number;
  /** Standard error of the mole fraction. */
  readonly error: number;
  readonly extrapolated: boolean;
}

export interface MeasuredAzeotropeRow {
  readonly pressure_Pa: number;
  readonly moleFraction: number;
  readonly source: string;
  /** 'printed', 'maximum of pressure', 'from memory'. */
  readonly kind: string;
  readonly form: PointForm;
  readonly filled: boolean;
}
