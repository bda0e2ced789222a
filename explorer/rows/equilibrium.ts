// Rows of the figures of boiling: equilibrium curves, staircases between liquid and vapour, measured points.

import type { Column, FigureUnits, PointForm } from './shown.js';

/** The azeotrope at the pressure of the head. */
export interface AzeotropeRow {
  readonly moleFraction: number;
  /** % vol / 100 at 20 °C. */
  readonly strength: number;
  readonly temperature_K: number;
  /** Where it holds, in words: '1 atm', '83 kPa'. */
  readonly pressure: string;
}

/** An equilibrium curve as columns, x rising from 0 to 1. */
export interface CurveRows {
  readonly liquidMoleFraction: Column;
  readonly vapourMoleFraction: Column;
  /** Bubble temperature of each liquid, K. */
  readonly temperature_K: Column;
}

/** A staircase: step k boils liquid k to vapour k; step 1 is the kettle. */
export interface StaircaseRows {
  readonly liquidMoleFraction: Column;
  readonly vapourMoleFraction: Column;
  /** % vol / 100 of each step's vapour, condensed. */
  readonly strength: Column;
}

/** Rows of the x-y diagram and of its last corner. */
export interface StaircaseDiagramRows {
  readonly curve: CurveRows;
  /** The same by Raoult's law, when shown. */
  readonly raoult: CurveRows | null;
  readonly staircase: StaircaseRows;
  /** Vapour against liquid between the plates; null at total reflux, where it is the diagonal. */
  readonly operatingLine: OperatingLine | null;
  /** % vol / 100 of the kettle's liquid. */
  readonly kettleStrength: number;
  readonly azeotrope: AzeotropeRow | null;
  /** Mole fraction at whole strengths, for the right-hand scale of the last corner. */
  readonly strengthScale: readonly { readonly moleFraction: number; readonly strength: number }[];
  readonly units: FigureUnits;
}

/** y = slope x + intercept in mole fractions, drawn from the kettle to where it meets the diagonal. */
export interface OperatingLine {
  readonly slope: number;
  readonly intercept: number;
  /** 'reflux 3 : 1'. */
  readonly label: string;
}

/** A liquid that boils somewhere in the still, for the boiling diagram. */
export interface BoilingPoint {
  readonly label: string;
  readonly liquidMoleFraction: number;
  readonly vapourMoleFraction: number;
  readonly temperature_K: number;
}

/** Rows of the boiling diagram: points in ink at the cursor. */
export interface BoilingDiagramRows {
  readonly curve: CurveRows;
  readonly points: readonly BoilingPoint[];
  readonly azeotrope: AzeotropeRow | null;
  readonly units: FigureUnits;
}

/** One published set of points, with what it is told apart by. */
export interface MeasuredRows {
  readonly set: string;
  /** 'Carey and Lewis, 1932'. */
  readonly source: string;
  readonly form: PointForm;
  readonly filled: boolean;
  readonly liquidMoleFraction: Column;
  readonly vapourMoleFraction: Column;
  readonly temperature_K: Column;
}

/** Another model's curve, to compare. */
export interface ModelRows {
  readonly label: string;
  readonly curve: CurveRows;
  readonly azeotrope: AzeotropeRow | null;
}
