// Names of what is drawn, as every figure says them.

import type { Hand } from '../rows/shown.js';
import type { Named, PlotName } from './figure.js';

/** A name that must stand somewhere. */
export function nameOf(key: string, text: string, hand: Hand, bold: boolean, of: Named): PlotName {
  return { key, text, note: '', hand, bold, optional: false, of };
}

/** The name of a printed curve at a share of the width. */
export function printedName(
  key: string,
  text: string,
  at: number,
  side: Extract<Named, { kind: 'curve' }>['side'],
): PlotName {
  return nameOf(key, text, 'print', false, { kind: 'curve', mark: key, at, side });
}
