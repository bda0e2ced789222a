// What the rule of names works on: each name with what it names, in px of its plot, and all that stands there.

import type { PlotLine, Box, Point } from './geometry.js';
import type { CurveSide, PointSide } from '../../../figures/figure.js';
import type { Hand } from '../../../rows/shown.js';

/** What a name belongs to, px. */
export type Anchor =
  | { readonly kind: 'curve'; readonly line: PlotLine; readonly x: number; readonly side: CurveSide }
  | { readonly kind: 'level'; readonly line: PlotLine; readonly y: number; readonly side: 'left' | 'right' }
  | { readonly kind: 'point'; readonly at: Point; readonly side: PointSide }
  | { readonly kind: 'stretch'; readonly from: number; readonly to: number; readonly y: number }
  | { readonly kind: 'box'; readonly box: Box };

export interface WantedName {
  readonly key: string;
  readonly text: string;
  readonly hand: Hand | 'red';
  readonly bold: boolean;
  /** Gives way before all others: left out where no place near is free. */
  readonly optional: boolean;
  readonly width: number;
  readonly anchor: Anchor;
}

/** What stands in the plot, px. */
export interface Around {
  readonly width: number;
  readonly height: number;
  /** Lines that names neither cross nor come nearer to than to their own. */
  readonly lines: readonly PlotLine[];
  /** Lines that are only not crossed: sides of a box, brackets, ends of a measure line. */
  readonly strokes: readonly PlotLine[];
  /** Kept clear of where there is another place: the cursor, which moves on. */
  readonly passing: readonly PlotLine[];
  readonly points: readonly Point[];
}

/** Where words stand: x of their anchor, y of their middle. */
export interface PlacedName {
  readonly name: Pick<WantedName, 'key' | 'text' | 'hand' | 'bold'>;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly box: Box;
  /** A thin line to what is named, where no place beside it is free. */
  readonly leader: readonly [Point, Point] | null;
}
