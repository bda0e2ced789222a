// Strength at the spout against litres collected for the same charge in several stills: a small panel each, one under another on the
// same axes, each with the first still's curve in a thin line to compare.

import { extentOf, strengthAxis } from './axes.js';
import { azeotropeCeiling } from './azeotrope-line.js';
import { pick } from './columns.js';
import type { CurveName, CursorSeries, Drawing, FigureSize, Mark, Panel } from './figure.js';
import type { NamedRun, StillRun, StrengthByStillRows } from '../rows/run.js';
import { cursorSeries, runAxis, runCursor, runReadOut, runSeries, runTable } from './run-series.js';

/** Height of one plot rectangle, px: fewer stills, more room. */
const heights = (count: number, layout: FigureSize['layout']): number =>
  Math.round((layout === 'wide' ? 1 : 0.86) * (count <= 3 ? 130 : count === 4 ? 108 : 92));

export function stillMultiples(rows: StrengthByStillRows, size: FigureSize): Drawing {
  const { units, stills } = rows;
  const x = runAxis(stills, 'volume', units, size.width);
  const curves = stills.map((still) => {
    const series = runSeries({ ...still, hand: 'ink' }, 'volume', units);
    return { x: series.x, y: pick(still.run.spoutStrength, series.rows, units.strength.toShown) };
  });
  const drawn = units.strength.fromShown(extentOf(curves.map((curve) => curve.y))[0]);
  const y = strengthAxis(units, Math.min(drawn, rows.threshold ?? drawn), 'Strength at the spout');
  const height = heights(stills.length, size.layout);
  const ceiling = azeotropeCeiling(rows.azeotrope, units, { x, y }, size.layout);
  const panels = stills.map((still, index): Panel => {
    const { marks, names, readers } = panelOf(still, index, curves, rows);
    return {
      key: `still ${String(index)}`,
      height,
      y: { ...y, title: capitalised(still.label), unit: units.strength.unit },
      marks,
      names: index === 0 ? [...names, ...ceiling.names] : names,
      marginNames: index === 0 ? ceiling.marginNames.map((name) => ({ ...name, note: '' })) : [],
      cursorSeries: readers,
      framed: false,
      rightScale: null,
    };
  });
  const named: NamedRun[] = stills.map((still) => ({ ...still, hand: 'ink' }));
  return {
    description: describe(rows),
    x,
    panels,
    rightRoom: 0,
    cursor: runCursor(stills, 'volume', units),
    readOut: { ...runReadOut(named, 'volume', units), note: () => 'collected' },
    table: () => runTable(stills, units),
  };
}

type Curves = readonly { readonly x: readonly number[]; readonly y: readonly number[] }[];

function panelOf(
  still: StillRun,
  index: number,
  curves: Curves,
  { azeotrope, threshold, units, stills }: StrengthByStillRows,
): { marks: Mark[]; names: CurveName[]; readers: CursorSeries[] } {
  const marks: Mark[] = [];
  const names: CurveName[] = [];
  const own = curves[index]!;
  if (azeotrope !== null) {
    const at = units.strength.toShown(azeotrope.strength);
    const reach = index === 0 ? 'margin' : 'plot';
    marks.push({ kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y: at, reach });
  }
  if (threshold !== null) {
    const at = units.strength.toShown(threshold);
    marks.push({ kind: 'level', key: 'threshold', hand: 'ink', weight: 'minor', y: at, reach: 'plot' });
  }
  if (index > 0) {
    marks.push({ kind: 'curve', key: 'first', hand: 'print', weight: 'third', shape: 'monotone', ...curves[0]! });
    if (index === 1) {
      const end = curves[0]!.x.length - 1;
      const [endX, endY] = [curves[0]!.x[end] ?? 0, curves[0]!.y[end] ?? 0];
      const places = [
        { x: endX, y: endY, dx: -8, dy: -14, anchor: 'end' as const },
        { x: endX / 2, y: endY, dx: 0, dy: -14, anchor: 'middle' as const },
      ];
      names.push({ key: 'first', text: stills[0]!.shortLabel, hand: 'print', bold: false, optional: true, places });
    }
  }
  marks.push({ kind: 'curve', key: still.shortLabel, hand: 'ink', weight: 'result', shape: 'monotone', ...own });
  return { marks, names, readers: [cursorSeries('ink', own)] };
}

function describe({ stills, units, azeotrope, threshold }: StrengthByStillRows): string {
  const { strength, volume } = units;
  const words = stills.map(({ label, run }) => {
    const last = run.rows - 1;
    const best = Math.max(...Array.from(run.spoutStrength).filter((_value, row) => run.collectedVolume_m3[row]! > 0));
    const ends = `${strength.withUnit(run.spoutStrength[last] ?? NaN)} after ${volume.withUnit(run.collectedVolume_m3[last] ?? NaN)}`;
    return `${label}: best ${strength.withUnit(best)}, in the end ${ends}`;
  });
  const level = threshold === null ? '' : `; the line stands at ${strength.withUnit(threshold)}`;
  const ceiling = azeotrope === null ? 'no azeotrope' : `azeotrope ${strength.withUnit(azeotrope.strength)}`;
  return `Strength at the spout against ${volume.words} collected, a panel a still; ${words.join('; ')}; ${ceiling}${level}.`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
