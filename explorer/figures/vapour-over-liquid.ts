// What rises from a boiling liquid, in the strengths a distiller measures: vapour against liquid, both % vol.

import type { OverTheLiquidRows } from '../rows/course.js';
import { pixelsPerUnit, roundAxis } from './axes.js';
import { pick, thinned, valueAt } from './columns.js';
import type { Axis, CurveName, DataTable, Drawing, FigureSize, Mark, NamePlace, Panel } from './figure.js';
import type { Column, FigureUnits } from '../rows/shown.js';

const height = { wide: 330, narrow: 270 };
const tableRows = 21;

/** Vapour over liquid alone, as it is guessed. */
export function vapourOverLiquid(rows: OverTheLiquidRows, size: FigureSize): Drawing {
  const { strength } = rows.units;
  const x = wholeAxis('alcohol in the liquid', rows.units, size);
  const y = wholeAxis('Strength of the vapour, condensed', rows.units, size);
  const [liquid, vapour] = [
    shownAll(rows.liquidStrength, strength.toShown),
    shownAll(rows.vapourStrength, strength.toShown),
  ];
  const marks: Mark[] = [
    {
      kind: 'curve',
      key: 'same',
      hand: 'print',
      weight: 'diagonal',
      shape: 'straight',
      x: [...x.domain],
      y: [...x.domain],
    },
    { kind: 'curve', key: 'vapour', hand: 'print', weight: 'equilibrium', shape: 'monotone', x: liquid, y: vapour },
  ];
  const across = pixelsPerUnit(x, size.width);
  const names: CurveName[] = [
    print('vapour', 'what rises', [
      ...[0.4, 0.5, 0.3, 0.6].map((at) => on(x, liquid, vapour, at, 0, -16, 'middle')),
      ...[0.5, 0.4, 0.6].map((at) => on(x, liquid, vapour, at, 0, 18, 'middle')),
    ]),
    print(
      'same',
      'as strong as the liquid',
      [0.45, 0.4, 0.5, 0.35].map((at) => on(x, [...x.domain], [...x.domain], at, 12, 14, 'start')),
    ),
  ];
  const ceiling = azeotropeLine(rows, y, height[size.layout], size.layout === 'wide');
  marks.push(...ceiling.marks);
  names.unshift(...ceiling.names);
  if (rows.own !== null) {
    const [px, py] = [strength.toShown(rows.own.liquid), strength.toShown(rows.own.vapour)];
    marks.push(
      {
        kind: 'curve',
        key: 'own',
        hand: 'ink',
        weight: 'second',
        shape: 'straight',
        x: [px, px],
        y: [y.domain[0], py],
      },
      { kind: 'dot', key: 'own', hand: 'ink', x: px, y: py },
    );
    const left = (px - x.domain[0]) * across < size.width * 0.6;
    const places: NamePlace[] = left
      ? [
          { x: px, y: py, dx: 10, dy: 14, anchor: 'start' },
          { x: px, y: py, dx: 10, dy: -16, anchor: 'start' },
        ]
      : [
          { x: px, y: py, dx: -6, dy: 32, anchor: 'end' },
          { x: px, y: py, dx: -10, dy: -16, anchor: 'end' },
        ];
    names.push({
      key: 'own',
      text: strength.withUnit(rows.own.vapour),
      hand: 'ink',
      bold: true,
      optional: false,
      places,
    });
  }
  return {
    description: describe(rows),
    x,
    panels: [{ ...plainPanel('vapour', height[size.layout], y, marks, names), marginNames: ceiling.marginNames }],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => overLiquidTable(rows, false),
  };
}

/** Px under which a line is so near the top that its name stands below it. */
const nameRoom = 26;

/** The azeotrope as a line and a point with its name: there the vapour is as strong as the liquid. */
export function azeotropeLine(
  { azeotrope, units }: Pick<OverTheLiquidRows, 'azeotrope' | 'units'>,
  axis: Axis,
  px: number,
  margin: boolean,
): Pick<Panel, 'names' | 'marginNames' | 'marks'> {
  if (azeotrope === null) return { marks: [], names: [], marginNames: [] };
  const y = units.strength.toShown(azeotrope.strength);
  const text = `azeotrope ${units.strength.withUnit(azeotrope.strength)}`;
  const marks: Mark[] = [
    { kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y, reach: margin ? 'margin' : 'plot' },
    { kind: 'dot', key: 'azeotrope', hand: 'print', x: y, y },
  ];
  if (margin) {
    const note = 'the vapour is as strong as the liquid';
    return {
      marks,
      names: [],
      marginNames: [{ key: 'azeotrope', text, note, y, hand: 'print', bold: true, at: 'margin' }],
    };
  }
  const low = axis.domain[0];
  const below = (axis.domain[1] - y) * pixelsPerUnit(axis, px) < nameRoom;
  const places: NamePlace[] = [{ x: low, y, dx: 9, dy: below ? 14 : -12, anchor: 'start' }];
  return { marks, names: [{ ...print('azeotrope', text, places), bold: true }], marginNames: [] };
}

/** An axis over all strengths: 0 to 100 % vol, 0 to 200 proof. */
export function wholeAxis(title: string, units: FigureUnits, size: FigureSize): Axis {
  const top = Math.round(units.strength.toShown(1));
  return roundAxis({ title, unit: units.strength.unit }, [0, top], { steps: 5, ticks: size.width < 480 ? 4 : 5 });
}

function on(
  axis: Axis,
  x: Column,
  y: Column,
  share: number,
  dx: number,
  dy: number,
  anchor: NamePlace['anchor'],
): NamePlace {
  const at = axis.domain[0] + share * (axis.domain[1] - axis.domain[0]);
  return { x: at, y: valueAt(x, y, at), dx, dy, anchor };
}

function print(key: string, text: string, places: readonly NamePlace[]): CurveName {
  return { key, text, hand: 'print', bold: false, optional: false, places };
}

/** A plain panel: no frame, no margin names, no cursor. */
export function plainPanel(
  key: string,
  px: number,
  y: Axis,
  marks: readonly Mark[],
  names: readonly CurveName[],
): Drawing['panels'][number] {
  return { key, height: px, y, marks, names, marginNames: [], cursorSeries: [], framed: false, rightScale: null };
}

/** A whole column, converted. */
export function shownAll(column: Column, convert: (si: number) => number): number[] {
  return pick(
    column,
    Array.from({ length: column.length }, (_, i) => i),
    convert,
  );
}

/** Liquid, vapour and, if wanted, the boil. */
export function overLiquidTable(rows: OverTheLiquidRows, boils: boolean): DataTable {
  const { strength, temperature } = rows.units;
  return {
    caption: 'What rises from what, in numbers',
    columns: [
      { title: 'liquid', unit: strength.unit },
      { title: 'vapour, condensed', unit: strength.unit },
      ...(boils ? [{ title: 'boils at', unit: temperature.unit }] : []),
    ],
    rows: thinned(rows.liquidStrength.length, tableRows).map((i) => [
      strength.text(rows.liquidStrength[i]!),
      strength.text(rows.vapourStrength[i]!),
      ...(boils ? [temperature.text(rows.temperature_K[i]!)] : []),
    ]),
  };
}

function describe(rows: OverTheLiquidRows): string {
  const { withUnit } = rows.units.strength;
  const own = rows.own === null ? '' : `; a liquid of ${withUnit(rows.own.liquid)} gives ${withUnit(rows.own.vapour)}`;
  const meet = rows.azeotrope === null ? '' : `; liquid and vapour are alike at ${withUnit(rows.azeotrope.strength)}`;
  const half = valueAt(rows.liquidStrength, rows.vapourStrength, 0.5);
  return `Strength of the vapour against strength of the liquid it rises from: ${withUnit(half)} from ${withUnit(0.5)}${own}${meet}.`;
}
