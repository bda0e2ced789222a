// What all figures of a run share: its columns in shown units along volume or time, its cursor,
// its read-out in the margin and its table.

import { alongAxis } from './axes.js';
import { pick, risingRows, thinned, valueAt } from './columns.js';
import type { Axis, CursorSpec, DataTable, FigureUnits, Hand, ReadOut, ShownQuantity } from './figure.js';
import type { NamedRun, RunHistoryRows, RunRows } from './rows.js';

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
  const other = along === 'volume' ? units.time : units.volume;
  const quantity = quantityAlong(along, units);
  const prepared = runs.map((named) => {
    const column = columnAlong(named.run, along);
    const rows = risingRows(column);
    return { named, rows, x: pick(column, rows) };
  });
  const values = (of: (run: RunRows) => ArrayLike<number>) =>
    prepared.map(({ named, rows }) => pick(of(named.run), rows));
  const first = prepared[0];
  const otherColumn = first && pick(columnAlong(first.named.run, along === 'volume' ? 'time' : 'volume'), first.rows);
  return {
    at: (x) => quantity.withUnit(x),
    note: (x) => {
      if (!first || !otherColumn) return '';
      const value = other.withUnit(valueAt(first.x, otherColumn, x));
      return along === 'volume' ? `${value} after the first vapour` : `${value} collected`;
    },
    columns: prepared.map(({ named, x }) => ({ label: named.shortLabel, hand: named.hand, x })),
    rows: [
      { label: `spout, ${units.strength.unit}`, values: values((run) => run.spoutStrength), text: units.strength.text },
      {
        label: `head, ${units.temperature.unit}`,
        values: values((run) => run.headTemperature_K),
        text: units.temperature.text,
      },
      {
        label: `kettle, ${units.temperature.unit}`,
        values: values((run) => run.kettleTemperature_K),
        text: units.temperature.text,
      },
      {
        label: `kettle, ${units.strength.unit}`,
        values: values((run) => run.kettleStrength),
        text: units.strength.text,
      },
      {
        label: `pure alcohol, ${units.volume.unit}`,
        values: values((run) => run.pureAlcoholCollected_m3),
        text: units.volume.text,
      },
    ],
  };
}

/** The numbers of each run, thinned to a page. */
export function runTable(runs: readonly { label: string; run: RunRows }[], units: FigureUnits): DataTable {
  const rows = runs.flatMap(({ label, run }) =>
    thinned(run.time_s.length, tableRows).map((i) => [
      label,
      units.volume.text(run.collectedVolume_m3[i]!),
      units.time.text(run.time_s[i]!),
      units.strength.text(run.spoutStrength[i]!),
      units.temperature.text(run.headTemperature_K[i]!),
      units.temperature.text(run.kettleTemperature_K[i]!),
      units.strength.text(run.kettleStrength[i]!),
      units.volume.text(run.pureAlcoholCollected_m3[i]!),
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

export function columnAlong(run: RunRows, along: Along): ArrayLike<number> {
  return along === 'volume' ? run.collectedVolume_m3 : run.time_s;
}

function lastOf(column: ArrayLike<number>): number {
  return column.length > 0 ? column[column.length - 1]! : 0;
}
