// Rows of a run along the clock: one quantity a panel.

import type { Column, FigureUnits, Hand, ShownQuantity, CurveWeight } from './shown.js';

/** One curve of a panel; values in SI. */
export interface TimelineSeries {
  readonly key: string;
  readonly label: string;
  readonly hand: Hand;
  readonly weight: CurveWeight;
  readonly time_s: Column;
  readonly values: Column;
}

/** One quantity along the clock. */
export interface TimelinePanel {
  readonly key: string;
  readonly title: string;
  readonly quantity: Pick<ShownQuantity, 'unit' | 'toShown' | 'text' | 'withUnit'>;
  /** Px of the plot rectangle on a wide page. */
  readonly height: number;
  /** Kept in view whatever the curves do, SI. */
  readonly takesIn: readonly number[];
  readonly series: readonly TimelineSeries[];
  /** Level lines, SI. */
  readonly levels: readonly {
    readonly key: string;
    readonly label: string;
    readonly hand: Hand;
    readonly at: number;
  }[];
}

/** Rows of the figure. */
export interface TimelineRows {
  /** What is drawn, to begin its description: 'Inside the doubler'. */
  readonly subject: string;
  /** What time counts from: 'since lighting up'. */
  readonly since: string;
  readonly panels: readonly TimelinePanel[];
  /** Steps of the run sheet, and the panel that has room for them above its base. */
  readonly phases: readonly { readonly from_s: number; readonly to_s: number; readonly label: string }[];
  readonly phasesIn: { readonly panel: string; readonly along: 'base' | 'top' };
  readonly warnings: readonly {
    readonly key: string;
    readonly panel: string;
    readonly at_s: number;
    readonly value: number;
    readonly words: string;
  }[];
  readonly units: FigureUnits;
}
