// What rises from a boiling liquid, in the strengths a distiller measures: vapour against liquid, both % vol.

import type { OverTheLiquidRows } from '../rows/course.js';
import { roundAxis } from './axes.js';
import { nameOf, printedName } from './names.js';
import { pick, thinned, valueAt } from './columns.js';
import type { Axis, PlotName, DataTable, Drawing, FigureSize, Mark, Panel } from './figure.js';
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
  const names: PlotName[] = [
    printedName('vapour', 'what rises', 0.4, 'above'),
    printedName('same', 'as strong as the liquid', 0.45, 'right'),
  ];
  const ceiling = azeotropeLine(rows, true);
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
    const of = { kind: 'point', x: px, y: py, side: 'right' } as const;
    names.push(nameOf('own', strength.withUnit(rows.own.vapour), 'ink', true, of));
  }
  return {
    description: describe(rows),
    x,
    panels: [plainPanel('vapour', height[size.layout], y, marks, names)],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => overLiquidTable(rows, false),
  };
}

/** The azeotrope as a line and a point with its name: there the vapour is as strong as the liquid. */
export function azeotropeLine(
  { azeotrope, units }: Pick<OverTheLiquidRows, 'azeotrope' | 'units'>,
  runsOut: boolean,
): Pick<Panel, 'names' | 'marks'> {
  if (azeotrope === null) return { marks: [], names: [] };
  const y = units.strength.toShown(azeotrope.strength);
  const text = `azeotrope ${units.strength.withUnit(azeotrope.strength)}`;
  const note = 'the vapour is as strong as the liquid';
  return {
    marks: [
      { kind: 'level', key: 'azeotrope', hand: 'print', weight: 'minor', y, reach: runsOut ? 'margin' : 'plot' },
      { kind: 'dot', key: 'azeotrope', hand: 'print', x: y, y },
    ],
    names: [{ ...nameOf('azeotrope', text, 'print', true, { kind: 'level', mark: 'azeotrope', side: 'left' }), note }],
  };
}

/** An axis over all strengths: 0 to 100 % vol, 0 to 200 proof. */
export function wholeAxis(title: string, units: FigureUnits, size: FigureSize): Axis {
  const top = Math.round(units.strength.toShown(1));
  return roundAxis({ title, unit: units.strength.unit }, [0, top], { steps: 5, ticks: size.width < 480 ? 4 : 5 });
}

/** A plain panel: no frame, no cursor. */
export function plainPanel(
  key: string,
  px: number,
  y: Axis,
  marks: readonly Mark[],
  names: readonly PlotName[],
): Drawing['panels'][number] {
  return { key, height: px, y, marks, names, cursorSeries: [], framed: false, rightScale: null };
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
