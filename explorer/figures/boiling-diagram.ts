// The boiling diagram: at each temperature the liquid that boils and the vapour that condenses, the
// azeotrope where both are one, and kettle and head where they stand at the cursor.

import { extentOf, fixedAxis, roundAxis } from './axes.js';
import { pick, thinned } from './columns.js';
import { nameOf, printedName } from './names.js';
import type { PlotName, DataTable, Drawing, FigureSize, Mark } from './figure.js';
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
  const names: PlotName[] = [];
  if (azeotrope !== null) {
    const [ax, ay] = [azeotrope.moleFraction, toShown(azeotrope.temperature_K)];
    marks.unshift({ kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y: ay, reach: 'plot' });
    marks.push({ kind: 'dot', key: 'azeotrope point', hand: 'print', x: ax, y: ay });
    const text = `azeotrope ${rows.units.temperature.withUnit(azeotrope.temperature_K)}`;
    names.push(nameOf('azeotrope', text, 'print', true, { kind: 'level', mark: 'azeotrope', side: 'left' }));
  }
  rows.points.forEach((point, index) => {
    const at = toShown(point.temperature_K);
    const ends = [point.liquidMoleFraction, point.vapourMoleFraction];
    const key = `point ${index}`;
    marks.push({ kind: 'curve', key, hand: 'ink', weight: 'second', shape: 'straight', x: ends, y: [at, at] });
    ends.forEach((px, end) => marks.push({ kind: 'dot', key: `${key} ${end}`, hand: 'ink', x: px, y: at }));
    names.push(nameOf(key, point.label, 'ink', false, { kind: 'point', x: ends[1]!, y: at, side: 'right' }));
  });
  names.push(
    printedName('dew', 'vapour that condenses', 0.55, 'right'),
    printedName('bubble', 'liquid that boils', 0.3, 'left'),
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
