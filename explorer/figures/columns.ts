// Small work on columns: points where x rises, converted once, read between rows, thinned for tables.

import type { Column } from '../rows/shown.js';

/** Part of the whole way within which two rows stand at one place: a sixteenth of a px on a page. */
const samePlace = 1e-4;

/**
 * Rows at which x rises. Of rows at the very same place the last is kept (a spell at total reflux collects nothing), of rows nearer than can be
 * drawn the first, so that a curve begins where its x begins and not somewhat later; the last row is always kept.
 */
export function risingRows(x: Column, same = samePlace): number[] {
  const kept: number[] = [];
  const apart = same * Math.abs((x[x.length - 1] ?? 0) - (x[0] ?? 0));
  for (let i = 0; i < x.length; i++) {
    const step = kept.length === 0 ? Infinity : x[i]! - x[kept[kept.length - 1]!]!;
    if (step > 0 && step <= apart && i < x.length - 1) continue;
    if (step <= apart) kept.pop();
    kept.push(i);
  }
  return kept;
}

/** The chosen rows of a column, each converted. */
export function pick(column: Column, rows: readonly number[], convert: (value: number) => number = same): number[] {
  return rows.map((row) => convert(column[row]!));
}

/** Value at `at` by straight lines between points; the ends hold outside. x rises. */
export function valueAt(x: Column, y: Column, at: number): number {
  const last = x.length - 1;
  if (last < 0) return NaN;
  if (at <= x[0]!) return y[0]!;
  if (at >= x[last]!) return y[last]!;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! <= at) low = middle;
    else high = middle;
  }
  const share = (at - x[low]!) / (x[high]! - x[low]!);
  return y[low]! + share * (y[high]! - y[low]!);
}

/** Where y, from above, first falls to `level`; null when it starts below; the last x when it never falls to it. */
export function firstFallTo(x: Column, y: Column, level: number): number | null {
  if (x.length === 0 || !(y[0]! > level)) return null;
  for (let i = 1; i < x.length; i++) {
    if (y[i]! <= level) {
      const share = (y[i - 1]! - level) / (y[i - 1]! - y[i]!);
      return x[i - 1]! + share * (x[i]! - x[i - 1]!);
    }
  }
  return x[x.length - 1]!;
}

/** At most `most` of `count` rows, evenly chosen, first and last always among them. */
export function thinned(count: number, most: number): number[] {
  if (count <= most) return Array.from({ length: count }, (_, i) => i);
  return Array.from({ length: most }, (_, i) => Math.round((i * (count - 1)) / (most - 1)));
}

function same(value: number): number {
  return value;
}
