// Rows of the figures that lessons draw and readers guess.

import type { AzeotropeRow } from './equilibrium.js';
import type { Column, FigureUnits, ShownQuantity } from './shown.js';

/** What boils at which strength, liquid rising; strengths % vol / 100. */
export interface OverTheLiquidRows {
  readonly liquidStrength: Column;
  readonly vapourStrength: Column;
  readonly temperature_K: Column;
  /** The reader's liquid; null for none. */
  readonly own: { readonly liquid: number; readonly vapour: number; readonly temperature_K: number } | null;
  readonly azeotrope: AzeotropeRow | null;
  readonly units: FigureUnits;
}

/** Rows of the staircase, everything sent back; strengths % vol / 100. */
export interface StrengthStepsRows extends Pick<
  OverTheLiquidRows,
  'liquidStrength' | 'vapourStrength' | 'azeotrope' | 'units'
> {
  /** The kettle. */
  readonly kettle: number;
  /** What rises from the kettle, from the first plate, from the second. */
  readonly steps: Column;
}

/** Rows: plates rise from the fewest; strengths % vol / 100. */
export interface StrengthByPlatesRows {
  readonly plates: Column;
  readonly strength: Column;
  /** Numbers of plates whose strength is known before the rest is guessed. */
  readonly known: readonly number[];
  /** Lowest strength drawn. */
  readonly strengthFrom: number;
  readonly azeotrope: AzeotropeRow | null;
  /** 'Strength at the spout after 2.0 L'. */
  readonly title: string;
  readonly units: FigureUnits;
}

/** Rows: reflux ratios rise. */
export interface RefluxPriceRows {
  readonly reflux: Column;
  /** When the measure is full, % vol / 100. */
  readonly strength: Column;
  /** From the first drop until it is full, s. */
  readonly time_s: Column;
  /** Ratio whose time is known before the rest is guessed. */
  readonly known: number;
  readonly strengthFrom: number;
  readonly azeotrope: AzeotropeRow | null;
  /** '2.0 L'. */
  readonly measure: string;
  readonly minutes: ShownQuantity;
  readonly units: FigureUnits;
}
