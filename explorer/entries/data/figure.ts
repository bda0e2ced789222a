// The rows of a data entry as a figure, with the page's run beside columns that it has too. Loaded with the first rows.

import { html } from 'lit';
import '../../components/figure/kp-figure.js';
import { pick, risingRows } from '../../figures/columns.js';
import { ownData } from '../../figures/plots/own-data.js';
import type { DataColumn, DataFigureRows, DataPanel } from '../../rows/data.js';
import type { RunRows } from '../../rows/run.js';
import type { Column } from '../../rows/shown.js';
import { numberText } from '../../text/number-text.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { CeilingAsks } from '../../pages/the-ceiling/asks.js';
import type { Answered, Here } from '../entry.js';
import type { OwnData } from './kind.js';
import type { OwnColumn, OwnRows } from './read-rows.js';

/** Columns drawn at most, so that a wide table stays readable. */
const mostPanels = 4;

export function figureOf(here: Here<OwnData>, rows: OwnRows, now: Answered<CeilingAsks<'run'>> | undefined): unknown {
  if (rows.columns.length < 2 || rows.rows === 0) {
    return html`<p class="nothing-yet">A figure needs two columns and a row: one to draw, one to draw it along.</p>`;
  }
  const run = now?.answers.run.solution ?? null;
  const { units } = here;
  const { along } = here.data;
  return html`<kp-figure
    data-figure=${here.mark('rows')}
    .figure=${ownData}
    .rows=${here.rows('rows', () => here.once('rows', [rows, along, run, units], () => drawn(rows, along, run, units)))}
  ></kp-figure>`;
}

function drawn(rows: OwnRows, along: number, run: RunRows | null, units: UnitSystem): DataFigureRows {
  const own = rows.columns[along] ?? rows.columns[0]!;
  return {
    along: shownColumn(own, units),
    panels: rows.columns
      .filter((column) => column !== own)
      .slice(0, mostPanels)
      .map((column): DataPanel => ({ column: shownColumn(column, units), curve: curveOf(column, own, run, units) })),
  };
}

function shownColumn({ name, unit, values }: OwnColumn, units: UnitSystem): DataColumn {
  if (unit === null) return { title: name, unit: '', numbers: values, text: numberText };
  if (unit.quantity === null)
    return { title: name, unit: unit.unit, numbers: values.map(unit.fromSI), text: numberText };
  const shown = units[unit.quantity];
  return {
    title: name,
    unit: shown.unit,
    numbers: values.map((si) => (Number.isNaN(si) ? NaN : shown.toShown(si))),
    text: (value) => shown.text(shown.fromShown(value)),
  };
}

/** The page's own curve of what a column measures, along what the rows are drawn along; null where it has none. */
function curveOf(column: OwnColumn, along: OwnColumn, run: RunRows | null, units: UnitSystem): DataPanel['curve'] {
  const x =
    run === null
      ? null
      : along.unit?.quantity === 'volume'
        ? run.collectedVolume_m3
        : along.unit?.quantity === 'time'
          ? run.time_s
          : null;
  const quantity = column.unit?.quantity;
  if (run === null || x === null || (quantity !== 'strength' && quantity !== 'temperature')) return null;
  const inKettle = /kettle|pot|boiler/iu.test(column.name);
  const [label, values] = (
    {
      strength: inKettle ? ['kettle by this page', run.kettleStrength] : ['spout by this page', run.spoutStrength],
      temperature: inKettle
        ? ['kettle by this page', run.kettleTemperature_K]
        : ['head by this page', run.headTemperature_K],
    } as const satisfies Record<string, readonly [string, Column]>
  )[quantity];
  const shown = along.unit?.quantity === 'volume' ? units.volume : units.time;
  // What stood in the condenser while nothing was collected does not count.
  const kept = risingRows(x);
  return { label, x: pick(x, kept, shown.toShown), y: pick(values, kept, units[quantity].toShown) };
}
