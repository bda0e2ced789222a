// Rows of the figures of a run: plain columns in SI. A RunSolution of the library is a RunRows as it stands.

import type { AzeotropeRow } from './equilibrium.js';
import type { Column, FigureUnits, Hand } from './shown.js';

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
