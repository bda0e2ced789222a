// Rows of the figure of a run: which panels, against which axis, and the curves of each. A PlainSolution of the library is
// a RunRows as it stands.

import type { AzeotropeRow } from './equilibrium.js';
import type { Column, CurveWeight, FigureUnits, Hand, ShownQuantity } from './shown.js';

/** Columns of one run; any PlainSolution fits. */
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

/** One run with the name, hand and weight it is drawn with. */
export interface NamedRun {
  /** '12 plates'; in pencil '4 plates, before'. */
  readonly label: string;
  /** Shorter, for the head of the read-out: '12 plates', '4 before'. */
  readonly shortLabel: string;
  readonly hand: Hand;
  readonly weight: Extract<CurveWeight, 'result' | 'second' | 'third' | 'pencil'>;
  readonly run: RunRows;
}

/** Runs and which panels are to be drawn of them. */
export interface RunsDrawn {
  /** Ink first, at most three in pencil, oldest first. */
  readonly runs: readonly NamedRun[];
  /** 'strength' of all runs in one panel, 'each' with a panel a run, 'temperature' of the first run. */
  readonly panels: readonly ('strength' | 'each' | 'temperature')[];
  readonly along: 'volume' | 'time';
  /** Null where the model has none (Raoult) or the pressure is too low. */
  readonly azeotrope: AzeotropeRow | null;
  /** Strength of the measure line, % vol / 100; null for no measure line. */
  readonly measure: number | null;
  /** A strength of interest, drawn as a thin ink line, % vol / 100; null for none. */
  readonly threshold: number | null;
  /** Lowest strength drawn, % vol / 100; null to take in all rows. */
  readonly strengthFrom: number | null;
  readonly units: FigureUnits;
}

/** How a panel shows its numbers. */
export type PanelQuantity = Pick<ShownQuantity, 'unit' | 'toShown' | 'text' | 'withUnit'>;

/** One curve of a panel, SI; NaN where there is nothing to draw. */
export interface RunCurve {
  readonly key: string;
  /** Empty where the panel's title says enough. */
  readonly label: string;
  readonly hand: Hand;
  readonly weight: CurveWeight;
  /** Along the axis of the figure; rises. */
  readonly along: Column;
  readonly values: Column;
  /** Where its name would best stand; 'end' is in the gap right of the plot where it gets that far. */
  readonly side: 'above' | 'below' | 'bend' | 'end';
  /** Whether the cursor has a dot on it. */
  readonly read: boolean;
}

/** A level line, SI: a ceiling that nothing passes, a boiling point, or a strength that matters. */
export interface RunLevel {
  readonly key: string;
  readonly label: string;
  readonly note: string;
  readonly hand: Hand;
  readonly at: number;
  readonly form: 'ceiling' | 'runsOut' | 'inside';
}

/** How long the first curve stays above a value, drawn as a length. */
export interface RunMeasure {
  /** SI: the value, and how far along the axis. */
  readonly value: number;
  readonly to: number;
  /** Whether the curve falls to the value there, or ends before. */
  readonly falls: boolean;
  readonly words: string;
  readonly narrowWords: string;
}

/** One quantity along the axis. */
export interface RunPanel {
  readonly key: string;
  readonly title: string;
  /** What is drawn, to begin its description: 'Strength at the spout of the bare pot'. */
  readonly subject: string;
  readonly quantity: PanelQuantity;
  /** Px of the plot rectangle. */
  readonly height: { readonly wide: number; readonly narrow: number };
  /** A strength's axis ends at pure alcohol; others are round about what is drawn and taken in, SI. */
  readonly axis:
    | { readonly kind: 'strength'; readonly from: number }
    | { readonly kind: 'round'; readonly takesIn: readonly number[]; readonly ticks: number };
  /** Back to front. */
  readonly curves: readonly RunCurve[];
  readonly levels: readonly RunLevel[];
  readonly measure: RunMeasure | null;
  /** More for its description: 'no azeotrope'. */
  readonly says: readonly string[];
}

/** Stretches along the axis under brackets: steps of a run sheet. */
export interface RunPhase {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** Something goes wrong here, on a curve of a panel; SI. */
export interface RunWarning {
  readonly key: string;
  readonly panel: string;
  readonly at: number;
  readonly value: number;
  readonly words: string;
}

/** A line of the read-out and a column of the table: the same quantity of each run. */
export interface RunReading {
  readonly label: string;
  readonly quantity: PanelQuantity;
  /** One for each column of the read-out. */
  readonly curves: readonly { readonly along: Column; readonly values: Column }[];
  /** Whether it stands in the read-out too, or in the table alone. */
  readonly tableOnly: boolean;
}

export interface RunReadings {
  readonly columns: readonly { readonly label: string; readonly hand: Hand }[];
  readonly rows: readonly RunReading[];
  /** Softer words after the place of the cursor, SI. */
  readonly note: (at: number) => string;
  readonly caption: string;
}

/** Rows of the figure of a run. */
export interface RunFigureRows {
  /** 'litres collected', 'hours since lighting up'. */
  readonly along: { readonly quantity: ShownQuantity; readonly title: string };
  /** Where the cursor stands unless told otherwise, as a share of the whole. */
  readonly start: number;
  readonly panels: readonly RunPanel[];
  readonly readings: RunReadings;
  readonly phases: readonly RunPhase[];
  /** The panel that has room for the brackets, and where in it. */
  readonly phasesIn: { readonly panel: string; readonly along: 'base' | 'top' };
  readonly warnings: readonly RunWarning[];
  readonly units: FigureUnits;
}
