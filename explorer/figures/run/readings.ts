// What the cursor reads off a run, and the run as a table: a value only where there is one, a dash where there is none.

import type { RunFigureRows, RunReading, RunReadings } from '../../rows/run.js';
import type { Column, ShownQuantity } from '../../rows/shown.js';
import { risingRows, thinned, valueAt } from '../columns.js';
import type { DataTable, ReadOut } from '../figure.js';

/** Rows per table, at most: enough to read, not a printout. */
const tableRows = 25;
/** Past its last place, by more than rounding, a run says nothing; so before its first. */
const rounding = 1e-9;
export const noValue = '–';

interface Read {
  readonly x: Column;
  readonly y: Column;
}

/** Reads a curve: null before its first and after its last place, and where it has a gap. */
export function readAlong({ x, y }: Read): (at: number) => number | null {
  const last = x.length - 1;
  return (at) => {
    if (last < 0) return null;
    const slack = rounding * Math.abs(x[last]!);
    if (at < x[0]! - slack || at > x[last]! + slack) return null;
    const value = valueAt(x, y, at);
    return Number.isNaN(value) ? null : value;
  };
}

export function readOutOf({ columns, rows, note }: RunReadings, along: ShownQuantity): ReadOut {
  return {
    at: (x) => along.withUnit(x),
    note,
    columns,
    rows: rows
      .filter(({ tableOnly }) => !tableOnly)
      .map((row) => {
        const texts = row.curves.map((curve) => textAlong(row, curve));
        return { label: labelled(row), texts: (x) => texts.map((text) => text(x)) };
      }),
  };
}

function labelled({ label, quantity: { unit } }: RunReading): string {
  return `${label}, ${unit}`;
}

function textAlong({ quantity }: RunReading, { along, values }: RunReading['curves'][number]): (x: number) => string {
  const read = readAlong({ x: along, y: values });
  const end = along.length === 0 ? -Infinity : along[along.length - 1]!;
  return (x) => {
    const value = read(x);
    if (value !== null) return quantity.text(value);
    return end > 0 && x > end ? 'ended' : noValue;
  };
}

/** A row for each place along each run, thinned to a page or as fine as the curve. */
export function tableOf(
  { columns, rows, caption }: RunReadings,
  { quantity, title }: RunFigureRows['along'],
  fine = false,
): DataTable {
  const many = columns.length > 1;
  const body = columns.flatMap(({ label }, k) => {
    const places = placesOf(rows.map(({ curves }) => curves[k]!.along));
    const texts = rows.map((row) => textAlong(row, row.curves[k]!));
    const kept = fine ? places : thinned(places.length, tableRows).map((i) => places[i]!);
    return kept.map((at) => [...(many ? [label] : []), quantity.text(at), ...texts.map((text) => text(at))]);
  });
  return {
    caption,
    columns: [
      ...(many ? [{ title: 'still', unit: '' }] : []),
      { title: title.replace(`${quantity.words} `, ''), unit: quantity.unit },
      ...rows.map(({ label, quantity: { unit } }) => ({ title: label, unit })),
    ],
    rows: body,
  };
}

/** The places of several columns together, each once. */
function placesOf(columns: readonly Column[]): number[] {
  const all = [...new Set(columns)].flatMap((column) => Array.from(column)).sort((a, b) => a - b);
  return risingRows(all).map((row) => all[row]!);
}
