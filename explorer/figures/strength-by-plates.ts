// Strength at the spout against the number of plates, under the azeotrope.

import type { StrengthByPlatesRows } from '../rows/course.js';
import { roundAxis, strengthAxis } from './axes.js';
import { ceilingOf } from './levels.js';
import { nameOf } from './names.js';
import { valueAt } from './columns.js';
import type { PlotName, Drawing, FigureSize, Mark } from './figure.js';

/** Keys of what is the answer to a guess. */
export const platesAnswer = ['strength'] as const;

const height = { wide: 270, narrow: 240 };

export function strengthByPlates(rows: StrengthByPlatesRows, size: FigureSize): Drawing {
  const { strength } = rows.units;
  const y = strengthAxis(rows.units, rows.strengthFrom, rows.title);
  const last = rows.plates[rows.plates.length - 1] ?? 1;
  const x = roundAxis({ title: 'plates', unit: 'above the kettle' }, [0, last], {
    steps: 6,
    ticks: size.width < 480 ? 4 : 6,
  });
  const ceiling = ceilingOf(rows.azeotrope, rows.units, y);
  const shown = Array.from(rows.strength, strength.toShown);
  const marks: Mark[] = [
    ...ceiling.marks,
    { kind: 'curve', key: 'strength', hand: 'ink', weight: 'result', shape: 'monotone', x: rows.plates, y: shown },
  ];
  const names: PlotName[] = [...ceiling.names];
  names.push(
    nameOf('strength', 'the answer', 'ink', true, { kind: 'curve', mark: 'strength', at: 0.6, side: 'below' }),
  );
  for (const plates of rows.known) {
    const at = valueAt(rows.plates, shown, plates);
    marks.push({ kind: 'dot', key: `known ${plates}`, hand: 'ink', x: plates, y: at });
    const text = `${platesInWords(plates)}, ${strength.text(strength.fromShown(at))}`;
    names.push(nameOf(`known ${plates}`, text, 'ink', false, { kind: 'point', x: plates, y: at, side: 'below' }));
  }
  return {
    description: describe(rows),
    x,
    panels: [
      {
        key: 'plates',
        height: height[size.layout],
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
    table: () => ({
      caption: rows.title,
      columns: [
        { title: 'plates', unit: '' },
        { title: 'strength', unit: strength.unit },
      ],
      rows: Array.from(rows.plates, (plates, i) => [String(plates), strength.text(rows.strength[i]!)]),
    }),
  };
}

function platesInWords(plates: number): string {
  if (plates === 0) return 'kettle alone';
  return plates === 1 ? '1 plate' : `${plates} plates`;
}

function describe({ plates, strength, title, azeotrope, units }: StrengthByPlatesRows): string {
  const { withUnit } = units.strength;
  const end = plates.length - 1;
  const at = (i: number): string => `${withUnit(strength[i] ?? NaN)} with ${platesInWords(plates[i] ?? NaN)}`;
  const ceiling = azeotrope === null ? '' : `; azeotrope ${withUnit(azeotrope.strength)}`;
  return `${title} against plates: ${at(0)}, ${at(Math.floor(end / 2))}, ${at(end)}${ceiling}.`;
}
