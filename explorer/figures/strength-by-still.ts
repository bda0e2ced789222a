// Strength at the spout against litres collected for the same charge in several stills: one ink, told
// apart by weight and name.

import { chosen, extentOf, strengthAxis } from './axes.js';
import { azeotropeCeiling } from './azeotrope-line.js';
import { firstFallTo, pick, risingRows } from './columns.js';
import type { CurveName, CursorSeries, Drawing, FigureSize, Mark } from './figure.js';
import { curvePlaces, rightEnd } from './name-places.js';
import type { NamedRun, StrengthByStillRows } from '../rows/run.js';
import { cursorSeries, runAxis, runCursor, runReadOut, runSeries, runTable } from './run-series.js';

/** Height of the plot rectangle, px. */
const height = { wide: 330, narrow: 290 };

export function strengthByStill(rows: StrengthByStillRows, size: FigureSize): Drawing {
  const { units, stills } = rows;
  const x = runAxis(stills, 'volume', units, size.width);
  const curves = stills.map((still) => {
    const series = runSeries({ ...still, hand: 'ink' }, 'volume', units);
    return { x: series.x, y: pick(still.run.spoutStrength, series.rows, units.strength.toShown) };
  });
  const drawn = units.strength.fromShown(extentOf(curves.map((curve) => curve.y))[0]);
  const lowest = Math.min(drawn, rows.threshold ?? drawn);
  const y = strengthAxis(units, lowest, 'Strength at the spout');
  const plot = { xAxis: x, yAxis: y, width: size.width, height: height[size.layout] };
  const ceiling = azeotropeCeiling(rows.azeotrope, units, { x, y }, size.layout);
  const marks: Mark[] = [...ceiling.marks];
  const names: CurveName[] = [...ceiling.names];
  const readers: CursorSeries[] = [];
  if (rows.threshold !== null) {
    const level = units.strength.toShown(rows.threshold);
    marks.push({ kind: 'level', key: 'threshold', hand: 'ink', weight: 'minor', y: level, reach: 'plot' });
    const name = { key: 'threshold', text: chosen(units.strength, rows.threshold), hand: 'ink', bold: false } as const;
    names.push({ ...name, optional: false, places: [rightEnd(x, level, -12), rightEnd(x, level, 14)] });
  }
  stills.forEach((still, index) => {
    const curve = curves[index]!;
    const key = `still ${index}`;
    marks.push({ kind: 'curve', key, hand: 'ink', weight: still.weight, shape: 'monotone', ...curve });
    readers.push(cursorSeries('ink', curve));
    const places = curvePlaces({ ...plot, ...curve }, 'bend');
    const bold = still.weight === 'result';
    names.push({ key, text: still.label, hand: 'ink', bold, optional: false, places });
  });
  const named: NamedRun[] = stills.map((still) => ({ ...still, hand: 'ink' }));
  return {
    description: describe(rows),
    x,
    panels: [
      {
        key: 'stills',
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
    cursor: runCursor(stills, 'volume', units),
    readOut: { ...runReadOut(named, 'volume', units), note: () => 'collected' },
    table: () => runTable(stills, units),
  };
}

function describe(rows: StrengthByStillRows): string {
  const { strength, volume } = rows.units;
  const stills = rows.stills.map(({ label, run }) => {
    const drawn = risingRows(run.collectedVolume_m3);
    const last = run.spoutStrength.length - 1;
    const ends = `from ${strength.withUnit(run.spoutStrength[drawn[0] ?? 0] ?? NaN)} to ${strength.withUnit(run.spoutStrength[last] ?? NaN)} after ${volume.withUnit(run.collectedVolume_m3[last] ?? NaN)}`;
    if (rows.threshold === null) return `${label}: ${ends}`;
    const fall = firstFallTo(pick(run.collectedVolume_m3, drawn), pick(run.spoutStrength, drawn), rows.threshold);
    const above = fall === null ? 'never' : `for ${volume.withUnit(fall)}`;
    return `${label}: ${ends}, above ${chosen(strength, rows.threshold)} ${above}`;
  });
  const ceiling = rows.azeotrope === null ? 'no azeotrope' : `azeotrope ${strength.withUnit(rows.azeotrope.strength)}`;
  return `Strength at the spout against ${volume.words} collected; ${stills.join('; ')}; ${ceiling}.`;
}
