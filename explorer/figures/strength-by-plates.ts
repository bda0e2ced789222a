// Strength at the spout against the number of plates, under the azeotrope.

import type { StrengthByPlatesRows } from '../rows/course.js';
import { roundAxis, strengthAxis } from './axes.js';
import { azeotropeCeiling } from './azeotrope-line.js';
import { valueAt } from './columns.js';
import type { CurveName, Drawing, FigureSize, Mark, NamePlace } from './figure.js';

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
  const ceiling = azeotropeCeiling(rows.azeotrope, rows.units, { x, y }, size.layout);
  const shown = Array.from(rows.strength, strength.toShown);
  const marks: Mark[] = [
    ...ceiling.marks,
    { kind: 'curve', key: 'strength', hand: 'ink', weight: 'result', shape: 'monotone', x: rows.plates, y: shown },
  ];
  const names: CurveName[] = [...ceiling.names];
  const middle = last * 0.6;
  const places: NamePlace[] = [18, -16, 34].map((dy) => ({
    x: middle,
    y: valueAt(rows.plates, shown, middle),
    dx: 0,
    dy,
    anchor: 'middle',
  }));
  names.push({ key: 'strength', text: 'the answer', hand: 'ink', bold: true, optional: false, places });
  for (const plates of rows.known) {
    const at = valueAt(rows.plates, shown, plates);
    marks.push({ kind: 'dot', key: `known ${plates}`, hand: 'ink', x: plates, y: at });
    const text = `${platesInWords(plates)}, ${strength.text(strength.fromShown(at))}`;
    // Near the foot there is no room below.
    const low = (at - y.domain[0]) / (y.domain[1] - y.domain[0]) < 0.2;
    const beside = [low ? -18 : 18, low ? 18 : -18].map((dy): NamePlace => ({
      x: plates,
      y: at,
      dx: 8,
      dy,
      anchor: 'start',
    }));
    names.push({ key: `known ${plates}`, text, hand: 'ink', bold: false, optional: false, places: beside });
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
        marginNames: ceiling.marginNames,
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
