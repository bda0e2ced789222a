// Strength at the spout against litres collected or time: the runs by hand, the azeotrope above them,
// and how long the first run stays above a strength, drawn as a length.

import { chosen, chosenDigits, extentOf, strengthAxis } from './axes.js';
import { azeotropeCeiling } from './azeotrope-line.js';
import { firstFallTo, pick } from './columns.js';
import type { Axis, CurveName, CursorSeries, Drawing, FigureSize, Mark } from './figure.js';
import { curvePlaces } from './name-places.js';
import type { RunHistoryRows } from '../rows/run.js';
import { cursorSeries, quantityAlong, runAxis, runCursor, runReadOut, runSeries, runTable } from './run-series.js';
import type { RunSeries } from './run-series.js';

/** Height of the plot rectangle, px. */
const height = { wide: 330, narrow: 270 };

export function strengthHistory(rows: RunHistoryRows, size: FigureSize): Drawing {
  const { units, along } = rows;
  const x = runAxis(rows.runs, along, units, size.width);
  const curves = rows.runs
    .map((named) => runSeries(named, along, units))
    .map((one) => ({ one, x: one.x, y: pick(one.run.spoutStrength, one.rows, units.strength.toShown) }));
  const series = curves.map(({ one }) => one);
  const lowest = rows.strengthFrom ?? lowestDrawn(series);
  const y = strengthAxis(units, Math.min(lowest, 0.9), 'Strength at the spout');
  const plot = { xAxis: x, yAxis: y, width: size.width, height: height[size.layout] };
  const ceiling = azeotropeCeiling(rows.azeotrope, units, { x, y }, size.layout);
  const measure = measureOf(rows, series[0], y, size.layout);

  const marks: Mark[] = [...ceiling.marks];
  const names: CurveName[] = [...ceiling.names];
  const readers: CursorSeries[] = [];
  // Ink over pencil: the runs come ink first and are painted from the last.
  curves.forEach((curve, index) => {
    const { hand, label } = curve.one;
    const pencil = hand === 'pencil';
    const key = `run ${index}`;
    marks.splice(ceiling.marks.length, 0, {
      kind: 'curve',
      key,
      hand,
      weight: pencil ? 'pencil' : 'result',
      shape: 'monotone',
      x: curve.x,
      y: curve.y,
    });
    const places = curvePlaces({ ...plot, x: curve.x, y: curve.y }, pencil ? 'below' : 'bend');
    names.push({ key, text: label, hand, bold: !pencil, optional: false, places });
    readers.unshift(cursorSeries(hand, curve));
  });
  if (measure !== null) marks.push(measure.mark);

  return {
    description: describe(rows, series, measure?.words ?? null),
    x,
    panels: [
      {
        key: 'strength',
        height: plot.height,
        y,
        marks,
        names,
        marginNames: ceiling.marginNames,
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

function measureOf(
  rows: RunHistoryRows,
  first: RunSeries | undefined,
  y: Axis,
  layout: FigureSize['layout'],
): { readonly mark: Mark; readonly words: string } | null {
  if (rows.measure === null || first === undefined || first.hand === 'pencil') return null;
  const { strength } = rows.units;
  const end = firstFallTo(first.x, pick(first.run.spoutStrength, first.rows), rows.measure);
  if (end === null || end <= 0) return null;
  const quantity = quantityAlong(rows.along, rows.units);
  // On a phone the title's unit has to do for both.
  const level = layout === 'wide' ? chosen(strength, rows.measure) : chosenDigits(strength, rows.measure);
  const words = `above ${level} for ${quantity.withUnit(quantity.fromShown(end))}`;
  // 24 px above the base line.
  const at = y.domain[0] + (24 / height[layout]) * (y.domain[1] - y.domain[0]);
  const falls = end < first.x[first.x.length - 1]!;
  const dropFrom = falls ? strength.toShown(rows.measure) : at;
  return { words, mark: { kind: 'measure', key: 'measure', from: 0, to: end, at, dropFrom, words } };
}

// Of the rows that are drawn: what was in the condenser before the first drop does not count.
function lowestDrawn(series: readonly RunSeries[]): number {
  return extentOf(series.map(({ run, rows }) => pick(run.spoutStrength, rows)))[0];
}

function describe(rows: RunHistoryRows, series: readonly RunSeries[], measure: string | null): string {
  const { strength } = rows.units;
  const quantity = quantityAlong(rows.along, rows.units);
  const runs = series.map((one, index) => {
    const at = (row: number | undefined): string => strength.withUnit(one.run.spoutStrength[row ?? 0] ?? NaN);
    const last = quantity.withUnit(quantity.fromShown(one.x[one.x.length - 1] ?? 0));
    const ends = `${one.label}: from ${at(one.rows[0])} to ${at(one.rows[one.rows.length - 1])} after ${last}`;
    return index === 0 && measure !== null ? `${ends}, ${measure}` : ends;
  });
  const ceiling = rows.azeotrope === null ? 'no azeotrope' : `azeotrope ${strength.withUnit(rows.azeotrope.strength)}`;
  return `Strength at the spout against ${quantity.words}; ${runs.join('; ')}; ${ceiling}.`;
}
