// The boiling diagram: at each temperature the liquid that boils and the vapour that condenses, the
// azeotrope where both are one, and kettle and head where they stand at the cursor.

import { extentOf, fixedAxis, roundAxis } from './axes.js';
import { pick, thinned, valueAt } from './columns.js';
import type { CurveName, DataTable, Drawing, FigureSize, Mark, NamePlace } from './figure.js';
import type { BoilingDiagramRows } from '../rows/equilibrium.js';
import { fixed } from '../text/format.js';

const tableRows = 21;

export function boilingDiagram(rows: BoilingDiagramRows, size: FigureSize): Drawing {
  const { curve, azeotrope } = rows;
  const { toShown, unit } = rows.units.temperature;
  const all = Array.from({ length: curve.temperature_K.length }, (_, i) => i);
  const temperature = pick(curve.temperature_K, all, toShown);
  const extent = extentOf([curve.temperature_K]);
  const y = roundAxis({ title: 'Temperature at the boil', unit }, [toShown(extent[0] - 0.5), toShown(extent[1])], {
    steps: 5,
    ticks: 5,
  });
  const x = fixedAxis({ title: 'alcohol', unit: 'mole fraction' }, [0, 1], 0.2, 1);
  const marks: Mark[] = [
    line('dew', curve.vapourMoleFraction, temperature),
    line('bubble', curve.liquidMoleFraction, temperature),
  ];
  const names: CurveName[] = [];
  if (azeotrope !== null) {
    const [ax, ay] = [azeotrope.moleFraction, toShown(azeotrope.temperature_K)];
    marks.unshift({ kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y: ay, reach: 'plot' });
    marks.push({ kind: 'dot', key: 'azeotrope point', hand: 'print', x: ax, y: ay });
    const text = `azeotrope ${rows.units.temperature.withUnit(azeotrope.temperature_K)}`;
    names.push(print('azeotrope', text, true, [place(0, ay, 8, -12, 'start'), place(1, ay, 0, 14, 'end')]));
  }
  rows.points.forEach((point, index) => {
    const at = toShown(point.temperature_K);
    const ends = [point.liquidMoleFraction, point.vapourMoleFraction];
    const key = `point ${index}`;
    marks.push({ kind: 'curve', key, hand: 'ink', weight: 'second', shape: 'straight', x: ends, y: [at, at] });
    ends.forEach((px, end) => marks.push({ kind: 'dot', key: `${key} ${end}`, hand: 'ink', x: px, y: at }));
    const places = [place(ends[1]!, at, 10, -2, 'start'), place(ends[1]!, at, 10, -12, 'start')];
    places.push(place(ends[0]!, at, -10, 12, 'end'), place(ends[1]!, at, 8, 14, 'start'));
    names.push({ key, text: point.label, hand: 'ink', bold: false, optional: false, places });
  });
  const on = (column: ArrayLike<number>, at: number, dx: number, dy: number, anchor: NamePlace['anchor']): NamePlace =>
    place(at, valueAt(column, temperature, at), dx, dy, anchor);
  names.push(
    print('dew', 'vapour that condenses', false, [
      ...[0.55, 0.5, 0.6, 0.4].map((at) => on(curve.vapourMoleFraction, at, 10, -10, 'start')),
    ]),
    print('bubble', 'liquid that boils', false, [
      ...[0.42, 0.36, 0.48, 0.54].map((at) => on(curve.liquidMoleFraction, at, -6, 12, 'end')),
    ]),
  );
  return {
    description: describe(rows),
    x: { ...x, tickText: (shown) => String(Math.round(shown * 10) / 10) },
    panels: [
      {
        key: 'boiling',
        height: Math.round(Math.min(330, size.width * 0.84)),
        y,
        marks,
        names,
        marginNames: [],
        cursorSeries: [],
        framed: false,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => table(rows),
  };
}

function line(key: string, x: ArrayLike<number>, y: readonly number[]): Mark {
  return { kind: 'curve', key, hand: 'print', weight: 'equilibrium', shape: 'straight', x, y };
}

function place(x: number, y: number, dx: number, dy: number, anchor: NamePlace['anchor']): NamePlace {
  return { x, y, dx, dy, anchor };
}

function print(key: string, text: string, bold: boolean, places: readonly NamePlace[]): CurveName {
  return { key, text, hand: 'print', bold, optional: false, places };
}

function table(rows: BoilingDiagramRows): DataTable {
  const { curve, units } = rows;
  return {
    caption: 'Boiling and condensing in numbers',
    columns: [
      { title: 'temperature', unit: units.temperature.unit },
      { title: 'alcohol in the liquid', unit: 'mole fraction' },
      { title: 'alcohol in the vapour', unit: 'mole fraction' },
    ],
    rows: thinned(curve.temperature_K.length, tableRows).map((i) => [
      fixed(units.temperature.toShown(curve.temperature_K[i]!), 2),
      fixed(curve.liquidMoleFraction[i]!, 4),
      fixed(curve.vapourMoleFraction[i]!, 4),
    ]),
  };
}

function describe(rows: BoilingDiagramRows): string {
  const { withUnit } = rows.units.temperature;
  const t = rows.curve.temperature_K;
  const points = rows.points.map((point) => `${point.label} at ${withUnit(point.temperature_K)}`);
  const lowest =
    rows.azeotrope === null
      ? 'there is no azeotrope'
      : `lowest at the azeotrope, ${withUnit(rows.azeotrope.temperature_K)} at mole fraction ${fixed(rows.azeotrope.moleFraction, 3)}`;
  const ends = `water ${withUnit(t[0] ?? NaN)}, alcohol ${withUnit(t[t.length - 1] ?? NaN)}`;
  return `Boiling temperature against mole fraction of alcohol: ${[ends, ...points].join(', ')}; ${lowest}.`;
}
