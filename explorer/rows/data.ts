// Rows of a reader's own data, drawn with a curve of the page where one measures the same; in shown units.

import type { Column } from './shown.js';

/** One column, as shown; NaN where a cell is empty or could not be read. */
export interface DataColumn {
  readonly title: string;
  /** Empty for bare numbers. */
  readonly unit: string;
  readonly numbers: Column;
  readonly text: (shown: number) => string;
}

/** A column over the one it is drawn along. */
export interface DataPanel {
  readonly column: DataColumn;
  /** Of the page's run, in the same units; null where it has none such. */
  readonly curve: { readonly label: string; readonly x: Column; readonly y: Column } | null;
}

export interface DataFigureRows {
  readonly along: DataColumn;
  readonly panels: readonly DataPanel[];
}
