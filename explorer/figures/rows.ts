// The rows figures are made from: plain columns in SI. A RunSolution of lib/run is a RunRows as it stands.

import type { Column, FigureUnits, Hand, PointForm, ShownQuantity } from './figure.js';

/** Columns of one run; any RunSolution fits. */
export interface RunRows {
  readonly rows: number;
  /** Since the first vapour, s. */
  readonly time_s: Column;
  readonly collectedVolume_m3: Column;
  /** % vol / 100 at 20 °C. */
  readonly spoutStrength: Column;
  readonly kettleStrength: Column;
  readonly headTemperature_K: Column;
  readonly kettleTemperature_K: Column;
  readonly pureAlcoholCollected_m3: Column;
}

/** The azeotrope at the pressure of the head. */
export interface AzeotropeRow {
  readonly moleFraction: number;
  /** % vol / 100 at 20 °C. */
  readonly strength: number;
  readonly temperature_K: number;
  /** Where it holds, in words: '1 atm', '83 kPa'. */
  readonly pressure: string;
}

/** One run with the name and hand it is drawn with. */
export interface NamedRun {
  /** '12 plates'; in pencil '4 plates, before'. */
  readonly label: string;
  /** Shorter, for the head of the read-out: '12 plates', '4 before'. */
  readonly shortLabel: string;
  readonly hand: Hand;
  readonly run: RunRows;
}

/** Rows of the figures of a run in time: ink first, at most three in pencil, oldest first. */
export interface RunHistoryRows {
  readonly runs: readonly NamedRun[];
  /** Null where the model has none (Raoult) or the pressure is too low. */
  readonly azeotrope: AzeotropeRow | null;
  readonly along: 'volume' | 'time';
  /** Strength of the measure line, % vol / 100; null for no measure line. */
  readonly measure: number | null;
  /** Lowest strength drawn, % vol / 100; null to take in all rows. */
  readonly strengthFrom: number | null;
  readonly units: FigureUnits;
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

/** One run of several in the same ink, told apart by weight and name. */
export interface StillRun {
  readonly label: string;
  readonly shortLabel: string;
  readonly weight: 'result' | 'second' | 'third';
  readonly run: RunRows;
}

/** Rows of strength by still: the same charge in different stills. */
export interface StrengthByStillRows {
  readonly stills: readonly StillRun[];
  readonly azeotrope: AzeotropeRow | null;
  /** A strength of interest, drawn as a thin ink line, % vol / 100; null for none. */
  readonly threshold: number | null;
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
