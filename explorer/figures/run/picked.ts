// A run with the rows that are drawn, and what is read off it.

import type { NamedRun, RunReading, RunRows, RunsDrawn } from '../../rows/run.js';
import type { Column } from '../../rows/shown.js';
import { clock, fixed } from '../../text/format.js';
import { pick, risingRows, valueAt } from '../columns.js';

/** A run with the rows that are drawn. */
export interface Picked {
  readonly named: NamedRun;
  readonly along: readonly number[];
  readonly of: (column: (run: RunRows) => Column) => readonly number[];
}

export function picking(named: NamedRun, along: RunsDrawn['along']): Picked {
  const column = along === 'volume' ? named.run.collectedVolume_m3 : named.run.time_s;
  const rows = risingRows(column);
  return { named, along: pick(column, rows), of: (choose) => pick(choose(named.run), rows) };
}

export function readings(picked: readonly Picked[], { units, along }: RunsDrawn): RunReading[] {
  const row = (
    label: string,
    quantity: RunReading['quantity'],
    column: (run: RunRows) => Column,
    tableOnly = false,
  ) => ({
    label,
    quantity,
    tableOnly,
    curves: picked.map((one) => ({ along: one.along, values: one.of(column) })),
  });
  const { strength, temperature, volume, time } = units;
  // Pure alcohol is a small volume: one digit more than volumes are read to.
  const pure = { ...volume, text: (si: number): string => fixed(volume.toShown(si), 2) };
  return [
    along === 'volume'
      ? row('since the first vapour', time, (run) => run.time_s, true)
      : row('collected', volume, (run) => run.collectedVolume_m3, true),
    row('spout', strength, (run) => run.spoutStrength),
    row('head', temperature, (run) => run.headTemperature_K),
    row('kettle', temperature, (run) => run.kettleTemperature_K),
    row('kettle', strength, (run) => run.kettleStrength),
    row('pure alcohol', pure, (run) => run.pureAlcoholCollected_m3),
  ];
}

export function noteOf(first: Picked | undefined, { along, units, panels }: RunsDrawn): (at: number) => string {
  if (first === undefined || panels.includes('each')) return () => 'collected';
  const end = first.along[first.along.length - 1] ?? 0;
  const other = first.of((run) => (along === 'volume' ? run.time_s : run.collectedVolume_m3));
  return (at) => {
    if (at > end * (1 + 1e-9)) return '';
    const there = valueAt(first.along, other, at);
    return along === 'volume' ? `${clock(there)} after the first vapour` : `${units.volume.withUnit(there)} collected`;
  };
}
