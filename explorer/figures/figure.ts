// The contract of every figure: a pure function from rows and a size to a Drawing, which is a plain
// description of marks in shown units. One updater, <kp-figure>, puts any Drawing on the page.
// A figure never reads the store and computes no physics; units and formats are handed in.

import type { Column, CurveWeight, Hand, PointForm, ShownQuantity } from '../rows/shown.js';

/** Width in px of the plot rectangle; 'wide' has a margin column for names, 'narrow' keeps all inside. */
export interface FigureSize {
  readonly width: number;
  readonly layout: 'wide' | 'narrow';
}

/** A pure function from rows to a drawing. */
export type Figure<Rows> = (rows: Rows, size: FigureSize) => Drawing;

/** One axis in shown units. */
export interface Axis {
  readonly title: string;
  readonly unit: string;
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
  readonly tickText: (shown: number) => string;
  /** Linear where nothing is said. */
  readonly scale?: 'linear' | 'log';
}

/** A mark, in shown units of its panel; `key` names it within the panel, so that it can be updated in place. */
export type Mark =
  /** A line through points: monotone between data, straight for staircases and chords. */
  | {
      readonly kind: 'curve';
      readonly key: string;
      readonly hand: Hand;
      readonly weight: CurveWeight;
      readonly shape: 'monotone' | 'straight';
      readonly x: Column;
      readonly y: Column;
    }
  /** A level line; 'margin' lets it run out to its name. */
  | {
      readonly kind: 'level';
      readonly key: string;
      readonly hand: Hand;
      readonly weight: 'azeotrope' | 'minor';
      readonly y: number;
      readonly reach: 'margin' | 'plot';
    }
  /** Uncertainty about a curve, between two columns. */
  | { readonly kind: 'band'; readonly key: string; readonly x: Column; readonly low: Column; readonly high: Column }
  /** Published points, always in print. */
  | {
      readonly kind: 'points';
      readonly key: string;
      readonly form: PointForm;
      readonly filled: boolean;
      readonly x: Column;
      readonly y: Column;
    }
  /** The region no run can enter. */
  | { readonly kind: 'hatch'; readonly key: string; readonly from: number; readonly to: number }
  | { readonly kind: 'dot'; readonly key: string; readonly hand: Hand; readonly x: number; readonly y: number }
  | {
      readonly kind: 'box';
      readonly key: string;
      readonly x: readonly [number, number];
      readonly y: readonly [number, number];
    }
  /** A stretch of x under a bracket above the base axis or along the top, with its name. */
  | {
      readonly kind: 'bracket';
      readonly key: string;
      readonly along: 'base' | 'top';
      readonly from: number;
      readonly to: number;
      readonly words: string;
    }
  /** Something goes wrong here: a red tick on the curve, words beside it. */
  | { readonly kind: 'warning'; readonly key: string; readonly x: number; readonly y: number; readonly words: string }
  /** A length on the x axis drawn like a dimension, with a dotted drop from the curve at its end. */
  | {
      readonly kind: 'measure';
      readonly key: string;
      readonly from: number;
      readonly to: number;
      /** Height it is drawn at, and the height its drop comes from. */
      readonly at: number;
      readonly dropFrom: number;
      readonly words: string;
    };

/** The side of a curve its name would best stand on; 'bend' is right of where it first falls steeply, 'end' at its right end. */
export type CurveSide = 'above' | 'below' | 'left' | 'right' | 'bend' | 'end';
export type PointSide = 'left' | 'right' | 'above' | 'below';

/** What a name belongs to, and where beside it it would best stand; the one rule of names finds a free place. */
export type Named =
  /** A curve by its key, at this share of the plot's width. */
  | { readonly kind: 'curve'; readonly mark: string; readonly at: number; readonly side: CurveSide }
  /** A level line by its key; one that runs out to the margin is named there on a wide page. */
  | { readonly kind: 'level'; readonly mark: string; readonly side: 'left' | 'right' }
  /** A place in shown units. */
  | { readonly kind: 'point'; readonly x: number; readonly y: number; readonly side: PointSide }
  /** A box by its key. */
  | { readonly kind: 'box'; readonly mark: string };

/** Words in a plot, or in the margin beside it. */
export interface PlotName {
  readonly key: string;
  readonly text: string;
  /** A second, softer line where it stands in the margin; may be empty. */
  readonly note: string;
  readonly hand: Hand;
  readonly bold: boolean;
  /** Left out where no place beside it is free; the others stand farther off, on a thin line. */
  readonly optional: boolean;
  readonly of: Named;
}

/** A second scale at the right edge. */
export interface RightScale {
  readonly title: string;
  readonly ticks: readonly { readonly y: number; readonly text: string; readonly bold: boolean }[];
}

/** One plot rectangle. */
export interface Panel {
  readonly key: string;
  /** Height of the plot rectangle, px. */
  readonly height: number;
  readonly y: Axis;
  readonly marks: readonly Mark[];
  readonly names: readonly PlotName[];
  /** Series that carry a dot at the cursor. */
  readonly cursorSeries: readonly CursorSeries[];
  /** Frame and vertical grid ends, for squares only. */
  readonly framed: boolean;
  readonly rightScale: RightScale | null;
  /** Draws sheet and marks instead of the painter, which then only knows the marks as outlines: figures that no hand drags. */
  readonly drawn?: (x: Axis, width: number, labelsX: boolean) => SVGElement;
}

/** A curve the cursor reads, in shown units; null where the run has ended. */
export interface CursorSeries {
  readonly hand: Hand;
  readonly at: (x: number) => number | null;
}

/** What the margin table says at the cursor; x in SI. */
export interface ReadOut {
  /** Heading at x, '5.0 L'. */
  readonly at: (x: number) => string;
  /** Softer words after it, '1 h 22 min after the first vapour'. */
  readonly note: (x: number) => string;
  readonly columns: readonly { readonly label: string; readonly hand: Hand }[];
  /** Ready texts, one a column. */
  readonly rows: readonly { readonly label: string; readonly texts: (x: number) => readonly string[] }[];
}

/** The cursor of a figure: its quantity (for SI and step), where it stands unless told otherwise. */
export interface CursorSpec {
  readonly quantity: ShownQuantity;
  /** SI. */
  readonly start: number;
  /** SI. */
  readonly range: readonly [number, number];
}

/** The numbers behind a figure, ready to print. */
export interface DataTable {
  readonly caption: string;
  readonly columns: readonly { readonly title: string; readonly unit: string }[];
  readonly rows: readonly (readonly string[])[];
}

/** Everything needed to draw one figure: panels that share x, from top to bottom. */
export interface Drawing {
  /** One sentence with its numbers, for those who cannot see it. */
  readonly description: string;
  readonly x: Axis;
  readonly panels: readonly Panel[];
  /** Px taken from the width at right, for a second scale that may not hang outside (narrow); else 0. */
  readonly rightRoom: number;
  readonly cursor: CursorSpec | null;
  readonly readOut: ReadOut | null;
  /** Made when asked for: it is long. Thinned to a page, or as fine as what is drawn where it is. */
  readonly table: (fine?: boolean) => DataTable;
}
