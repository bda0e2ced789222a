// What reflux buys and what it costs: strength at the spout over the minutes a measure of spirit takes,
// both against the reflux ratio.

import type { RefluxPriceRows } from '../rows/course.js';
import { roundAxis, strengthAxis } from './axes.js';
import { ceilingOf } from './levels.js';
import { nameOf } from './names.js';
import { valueAt } from './columns.js';
import type { Axis, PlotName, Drawing, FigureSize, Mark, Panel } from './figure.js';
import type { Column } from '../rows/shown.js';

/** Keys of what is the answer to a guess. */
export const refluxAnswer = ['time'] as const;

const height = { strength: { wide: 210, narrow: 190 }, time: { wide: 230, narrow: 210 } };

export function refluxPrice(rows: RefluxPriceRows, size: FigureSize): Drawing {
  const { strength } = rows.units;
  const last = rows.reflux[rows.reflux.length - 1] ?? 1;
  const x = roundAxis({ title: 'reflux ratio', unit: 'parts sent back for each part kept' }, [0, last], {
    steps: 6,
    ticks: 6,
  });
  const y = strengthAxis(rows.units, rows.strengthFrom, `Strength when ${rows.measure} are in`);
  const ceiling = ceilingOf(rows.azeotrope, rows.units, y);
  const [strengths, times] = [
    Array.from(rows.strength, strength.toShown),
    Array.from(rows.time_s, rows.minutes.toShown),
  ];
  const upper: Mark[] = [...ceiling.marks, curve('strength', rows.reflux, strengths)];
  return {
    description: describe(rows),
    x,
    panels: [
      panel('strength', height.strength[size.layout], y, upper, [...ceiling.names, curveName('strength', 'bought')]),
      timePanel(rows, size, times),
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => ({
      caption: 'What reflux buys and costs',
      columns: [
        { title: 'reflux ratio', unit: '' },
        { title: 'strength', unit: strength.unit },
        { title: `time for ${rows.measure}`, unit: rows.minutes.unit },
      ],
      rows: Array.from(rows.reflux, (reflux, i) => [
        String(reflux),
        strength.text(rows.strength[i]!),
        rows.minutes.text(rows.time_s[i]!),
      ]),
    }),
  };
}

function timePanel(rows: RefluxPriceRows, size: FigureSize, times: readonly number[]): Panel {
  const longest = Math.max(...times);
  // Room above the answer, so that the height of the axis does not give it away.
  const y = roundAxis({ title: `Time for the first ${rows.measure}`, unit: rows.minutes.unit }, [0, 1.6 * longest], {
    steps: 4,
    ticks: 4,
  });
  const at = valueAt(rows.reflux, times, rows.known);
  const known = `${rows.known} : 1, ${rows.minutes.withUnit(rows.minutes.fromShown(at))}`;
  const names: PlotName[] = [
    curveName('time', 'paid'),
    nameOf('known', known, 'ink', false, { kind: 'point', x: rows.known, y: at, side: 'below' }),
  ];
  const marks: Mark[] = [
    curve('time', rows.reflux, times),
    { kind: 'dot', key: 'known', hand: 'ink', x: rows.known, y: at },
  ];
  return panel('time', height.time[size.layout], y, marks, names);
}

function curve(key: string, x: Column, y: readonly number[]): Mark {
  return { kind: 'curve', key, hand: 'ink', weight: 'result', shape: 'monotone', x, y };
}

function curveName(key: string, text: string): PlotName {
  return nameOf(key, text, 'ink', true, { kind: 'curve', mark: key, at: 0.6, side: 'below' });
}

function panel(key: string, px: number, y: Axis, marks: readonly Mark[], names: readonly PlotName[]): Panel {
  return { key, height: px, y, marks, names, cursorSeries: [], framed: false, rightScale: null };
}

function describe({ reflux, strength, time_s, measure, minutes, units }: RefluxPriceRows): string {
  const end = reflux.length - 1;
  const along = (text: (row: number) => string): string =>
    [0, Math.floor(end / 2), end].map((row) => `${text(row)} at ${reflux[row] ?? NaN} : 1`).join(', ');
  const bought = along((row) => units.strength.withUnit(strength[row] ?? NaN));
  const paid = along((row) => minutes.withUnit(time_s[row] ?? NaN));
  return `Strength at the spout against the reflux ratio: ${bought}. Time for the first ${measure}: ${paid}.`;
}
