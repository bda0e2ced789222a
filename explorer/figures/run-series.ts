// What all figures of a run share: its columns in shown units along volume or time, its cursor,
// its read-out in the margin and its table.

import { alongAxis } from './axes.js';
import { clock, fixed } from '../text/format.js';
import { pick, risingRows, thinned, valueAt } from './columns.js';
import type { Axis, CursorSeries, CursorSpec, DataTable, ReadOut } from './figure.js';
import type { Column, FigureUnits, Hand, ShownQuantity } from '../rows/shown.js';
import type { NamedRun, RunHistoryRows, RunRows } from '../rows/run.js';

/** The way along a run: by volume or by time. */
export type Along = RunHistoryRows['along'];

/** One run made ready: the rows where x rises, x in shown units. */
export interface RunSeries {
  readonly label: string;
  readonly hand: Hand;
  readonly run: RunRows;
  readonly rows: readonly number[];
  readonly x: readonly number[];
}

/** Rows per table, at most: enough to read, not a printout. */
const tableRows = 25;

export function quantityAlong(along: Along, units: FigureUnits): ShownQuantity {
  return along === 'volume' ? units.volume : units.time;
}

/** 'litres collected' or 'hours since the first vapour'. */
export function titleAlong(along: Along, units: FigureUnits): string {
  return along === 'volume' ? `${units.volume.words} collected` : `${units.time.words} since the first vapour`;
}

export function runSeries(named: Omit<NamedRun, 'shortLabel'>, along: Along, units: FigureUnits): RunSeries {
  const column = columnAlong(named.run, along);
  const rows = risingRows(column);
  return { ...named, rows, x: pick(column, rows, quantityAlong(along, units).toShown) };
}

/** The shared x axis, long enough for every run. */
export function runAxis(runs: readonly { run: RunRows }[], along: Along, units: FigureUnits, width: number): Axis {
  const longest = Math.max(0, ...runs.map(({ run }) => lastOf(columnAlong(run, along))));
  return alongAxis(quantityAlong(along, units), titleAlong(along, units), longest, width);
}

/** The cursor of a figure of a run: over the whole of the first run, at two fifths unless moved. */
export function runCursor(runs: readonly { run: RunRows }[], along: Along, units: FigureUnits): CursorSpec {
  const quantity = quantityAlong(along, units);
  const longest = Math.max(0, ...runs.map(({ run }) => lastOf(columnAlong(run, along))));
  const start = Math.round((quantity.toShown(longest) * 0.4) / quantity.step) * quantity.step;
  return { quantity, start: quantity.fromShown(start), range: [0, longest] };
}

/** The margin table: spout, head, kettle, pure alcohol at the cursor, a column a run. */
export function runReadOut(runs: readonly NamedRun[], along: Along, units: FigureUnits): ReadOut {
  const quantity = quantityAlong(along, units);
  const { strength, temperature, volume } = units;
  const prepared = runs.map(({ run }) => {
    const column = columnAlong(run, along);
    const rows = risingRows(column);
    return { run, rows, x: pick(column, rows) };
  });
  const row = (label: string, shown: ShownQuantity, of: (run: RunRows) => Column): ReadOut['rows'][number] => {
    const columns = prepared.map(({ run, rows, x }) => ({ x, y: pick(of(run), rows) }));
    return {
      label: `${label}, ${shown.unit}`,
      texts: (at) => columns.map(({ x, y }) => (isOver(x, at) ? 'ended' : shown.text(valueAt(x, y, at)))),
    };
  };
  return {
    at: (x) => quantity.withUnit(x),
    note: (at) => {
      const first = prepared[0];
      if (first === undefined || isOver(first.x, at)) return '';
      const { run, rows, x } = first;
      return along === 'volume'
        ? `${clock(valueAt(x, pick(run.time_s, rows), at))} after the first vapour`
        : `${volume.withUnit(valueAt(x, pick(run.collectedVolume_m3, rows), at))} collected`;
    },
    columns: runs.map(({ shortLabel, hand }) => ({ label: shortLabel, hand })),
    rows: [
      row('spout', strength, (run) => run.spoutStrength),
      row('head', temperature, (run) => run.headTemperature_K),
      row('kettle', temperature, (run) => run.kettleTemperature_K),
      row('kettle', strength, (run) => run.kettleStrength),
      row('pure alcohol', { ...volume, text: hundredths(volume) }, (run) => run.pureAlcoholCollected_m3),
    ],
  };
}

/** A curve as the cursor reads it, in shown units. */
export function cursorSeries(hand: Hand, curve: { readonly x: Column; readonly y: Column }): CursorSeries {
  return { hand, at: (x) => (isOver(curve.x, x) ? null : valueAt(curve.x, curve.y, x)) };
}

/** The numbers of each run, thinned to a page. */
export function runTable(runs: readonly { label: string; run: RunRows }[], units: FigureUnits): DataTable {
  const pure = hundredths(units.volume);
  const rows = runs.flatMap(({ label, run }) =>
    thinned(run.time_s.length, tableRows).map((i) => [
      label,
      units.volume.text(run.collectedVolume_m3[i]!),
      units.time.text(run.time_s[i]!),
      units.strength.text(run.spoutStrength[i]!),
      units.temperature.text(run.headTemperature_K[i]!),
      units.temperature.text(run.kettleTemperature_K[i]!),
      units.strength.text(run.kettleStrength[i]!),
      pure(run.pureAlcoholCollected_m3[i]!),
    ]),
  );
  return {
    caption: 'The run in numbers',
    columns: [
      { title: 'still', unit: '' },
      { title: 'collected', unit: units.volume.unit },
      { title: 'time', unit: units.time.unit },
      { title: 'spout', unit: units.strength.unit },
      { title: 'head', unit: units.temperature.unit },
      { title: 'kettle', unit: units.temperature.unit },
      { title: 'kettle', unit: units.strength.unit },
      { title: 'pure alcohol', unit: units.volume.unit },
    ],
    rows,
  };
}

export function columnAlong(run: RunRows, along: Along): Column {
  return along === 'volume' ? run.collectedVolume_m3 : run.time_s;
}

function lastOf(column: Column): number {
  return column.length > 0 ? column[column.length - 1]! : 0;
}

// Pure alcohol is a small volume: one digit more than volumes are read to.
function hundredths({ toShown }: ShownQuantity): (si: number) => string {
  return (si) => fixed(toShown(si), 2);
}

// Past its last row, by more than rounding, a run says nothing.
function isOver(x: Column, at: number): boolean {
  return x.length === 0 || at > x[x.length - 1]! * (1 + 1e-9);
}
