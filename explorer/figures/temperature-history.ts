// Kettle and head temperature of the first run against litres collected or time, over the line where
// the azeotrope boils; earlier runs' heads in pencil.

import { extentOf, roundAxis } from './axes.js';
import { azeotropeBoils } from './azeotrope-line.js';
import { pick, risingRows } from './columns.js';
import type { Column } from '../rows/shown.js';
import type { CurveName, CursorSeries, Drawing, FigureSize, MarginName, Mark, NamePlace } from './figure.js';
import { curvePlaces } from './name-places.js';
import type { PlacedCurve } from './name-places.js';
import type { RunHistoryRows, RunRows } from '../rows/run.js';
import {
  columnAlong,
  cursorSeries,
  quantityAlong,
  runAxis,
  runCursor,
  runReadOut,
  runSeries,
  runTable,
} from './run-series.js';

/** Height of the plot rectangle, px. */
const height = { wide: 98, narrow: 92 };

export function temperatureHistory(rows: RunHistoryRows, size: FigureSize): Drawing {
  const { units, along, azeotrope } = rows;
  const first = rows.runs[0];
  const x = runAxis(rows.runs, along, units, size.width);
  const y = temperatureAxis(rows);
  const plot = { xAxis: x, yAxis: y, width: size.width, height: height[size.layout] };
  const boils = azeotropeBoils(azeotrope, units, { x }, size.layout);

  const marks: Mark[] = [...boils.marks];
  const names: CurveName[] = [...boils.names];
  const marginNames: MarginName[] = [...boils.marginNames];
  const readers: CursorSeries[] = [];
  const lines = [
    { key: 'kettle', weight: 'second', of: (run: RunRows): Column => run.kettleTemperature_K },
    { key: 'head', weight: 'result', of: (run: RunRows): Column => run.headTemperature_K },
  ] as const;
  if (first !== undefined) {
    const series = runSeries(first, along, units);
    for (const { key, weight, of } of lines) {
      const curve = { x: series.x, y: pick(of(first.run), series.rows, units.temperature.toShown) };
      const bold = key === 'head';
      const hand = first.hand;
      marks.push({ kind: 'curve', key, hand, weight, shape: 'monotone', ...curve });
      readers.push(cursorSeries(hand, curve));
      const end = curve.y[curve.y.length - 1] ?? 0;
      if (size.layout === 'wide') marginNames.push({ key, text: key, note: '', y: end, hand, bold, at: 'end' });
      else names.push({ key, text: key, hand, bold, optional: false, places: placesOf(key, { ...plot, ...curve }) });
    }
  }

  return {
    description: describe(rows),
    x,
    panels: [
      {
        key: 'temperature',
        height: plot.height,
        y,
        marks,
        names,
        marginNames,
        cursorSeries: readers,
        framed: false,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: runCursor(rows.runs, along, units),
    readOut: runReadOut(rows.runs, along, units),
    table: () => runTable(rows.runs, units),
  };
}

// On a phone the kettle is named from the left, the head from the right, where it leaves the azeotrope.
function placesOf(key: 'kettle' | 'head', curve: PlacedCurve): NamePlace[] {
  const places = curvePlaces(curve, 'below');
  const below = places.filter(({ dy }) => dy > 0);
  const others = places.filter(({ dy }) => dy <= 0);
  return key === 'head' ? [...below.reverse(), ...others] : places;
}

function temperatureAxis(rows: RunHistoryRows): ReturnType<typeof roundAxis> {
  const { toShown, unit } = rows.units.temperature;
  const first = rows.runs[0];
  const drawn = first === undefined ? [] : risingRows(columnAlong(first.run, rows.along));
  const columns =
    first === undefined
      ? []
      : [first.run.kettleTemperature_K, first.run.headTemperature_K].map((column) => pick(column, drawn));
  const [low, high] = extentOf(rows.azeotrope === null ? columns : [...columns, [rows.azeotrope.temperature_K]]);
  // Half a kelvin below, so that the lowest line does not lie on the base axis.
  return roundAxis({ title: 'Temperature', unit }, [toShown(low - 0.5), toShown(high)], { steps: 5, ticks: 3 });
}

function describe(rows: RunHistoryRows): string {
  const { withUnit } = rows.units.temperature;
  const first = rows.runs[0];
  if (first === undefined) return 'Temperature, no run yet.';
  const drawn = risingRows(columnAlong(first.run, rows.along));
  const ends = (column: Column): string =>
    `${withUnit(column[drawn[0] ?? 0] ?? NaN)} to ${withUnit(column[drawn.at(-1) ?? 0] ?? NaN)}`;
  const { kettleTemperature_K: kettle, headTemperature_K: head } = first.run;
  const boils = rows.azeotrope === null ? '' : `; the azeotrope boils at ${withUnit(rows.azeotrope.temperature_K)}`;
  const along = quantityAlong(rows.along, rows.units).words;
  return `Temperature against ${along}; ${first.label}: kettle ${ends(kettle)}, head ${ends(head)}${boils}.`;
}
