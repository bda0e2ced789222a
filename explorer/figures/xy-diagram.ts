// Alcohol in the vapour against alcohol in the liquid: the equilibrium curve, the diagonal, and the
// staircase that climbs between them from the kettle as it is now.

import { fixedAxis } from './axes.js';
import type { CurveName, Drawing, FigureSize, Mark, NamePlace } from './figure.js';
import { cornerWindow } from './last-corner-window.js';
import type { StaircaseDiagramRows } from '../rows/equilibrium.js';
import { staircaseMarks, staircaseTable } from './staircase-marks.js';
import { valueAt } from './columns.js';
import { fixed } from '../text/format.js';

const x = fixedAxis({ title: 'alcohol in the liquid', unit: 'mole fraction' }, [0, 1], 0.2, 1);
const y = fixedAxis({ title: 'Alcohol in the vapour', unit: 'mole fraction' }, [0, 1], 0.2, 1);

/** Ticks of a whole diagram read 0 and 1, not 0.0 and 1.0. */
const tickText = (shown: number): string => String(Math.round(shown * 10) / 10);

export function xyDiagram(rows: StaircaseDiagramRows, size: FigureSize): Drawing {
  const [from, to] = cornerWindow(rows.azeotrope);
  const marks: Mark[] = [...staircaseMarks(rows), { kind: 'box', key: 'corner', x: [from, to], y: [from, to] }];
  return {
    description: describe(rows),
    x: { ...x, tickText },
    panels: [
      {
        key: 'xy',
        height: size.width,
        y: { ...y, tickText },
        marks,
        names: [...printedNames(rows, size, from, to), ...inkNames(rows)],
        marginNames: [],
        cursorSeries: [],
        framed: true,
        rightScale: null,
      },
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => staircaseTable(rows),
  };
}

function printedNames(rows: StaircaseDiagramRows, size: FigureSize, from: number, to: number): CurveName[] {
  const { liquidMoleFraction: liquid, vapourMoleFraction: vapour } = rows.curve;
  const onCurve = (at: number): NamePlace => place(at, valueAt(liquid, vapour, at), -8, -14, 'end');
  const belowDiagonal = (at: number): NamePlace => place(at, at, 10, 12, 'start');
  const diagonal = size.layout === 'wide' ? 'vapour as strong as liquid' : 'vapour = liquid';
  const names = [
    print('corner', 'the last corner', [
      place(to, to, 0, -12, 'end'),
      place(from, from, 0, 14, 'start'),
      place(from, to, -8, 6, 'end'),
      place(to, from, 0, 14, 'end'),
    ]),
    print('equilibrium', 'equilibrium curve', [0.45, 0.4, 0.5, 0.35, 0.55].map(onCurve)),
    print('diagonal', diagonal, [0.5, 0.45, 0.55, 0.4, 0.6].map(belowDiagonal)),
  ];
  if (rows.raoult === null) return names;
  const { liquidMoleFraction, vapourMoleFraction } = rows.raoult;
  const onRaoult = (at: number): NamePlace =>
    place(at, valueAt(liquidMoleFraction, vapourMoleFraction, at), -8, -12, 'end');
  return [...names, print('raoult', 'by Raoult’s law', [0.6, 0.55, 0.65, 0.5, 0.7].map(onRaoult))];
}

function inkNames(rows: StaircaseDiagramRows): CurveName[] {
  const { liquidMoleFraction: liquid, vapourMoleFraction: vapour } = rows.staircase;
  const kettle = liquid[0] ?? 0;
  const text = `kettle, ${rows.units.strength.withUnit(rows.kettleStrength)}`;
  const side: NamePlace[] = kettle < 0.6 ? [place(kettle, 0, 8, -12, 'start')] : [place(kettle, 0, -8, -12, 'end')];
  const names: CurveName[] = [ink('kettle', text, false, false, side)];
  const line = rows.operatingLine;
  if (line !== null) {
    const start: NamePlace = place(kettle, line.slope * kettle + line.intercept, 14, 4, 'start');
    const along = (at: number): NamePlace => place(at, line.slope * at + line.intercept, 10, 12, 'start');
    names.push(ink('operating', line.label, false, false, [start, ...[0.4, 0.3, 0.5, 0.6].map(along)]));
  }
  // Numbers stand left of the corners, by the edge right of them; where the steps grow too small to be told apart they are left out.
  for (let k = 0; k < liquid.length; k++) {
    const width = k === 0 ? 1 : vapour[k]! - vapour[k - 1]!;
    if (width < 0.045) break;
    names.push(
      ink(`step ${k + 1}`, String(k + 1), true, true, [
        place(liquid[k]!, vapour[k]!, -6, -9, 'end'),
        place(liquid[k]!, vapour[k]!, 7, 12, 'start'),
      ]),
    );
  }
  return names;
}

function place(px: number, py: number, dx: number, dy: number, anchor: NamePlace['anchor']): NamePlace {
  return { x: px, y: py, dx, dy, anchor };
}

function print(key: string, text: string, places: readonly NamePlace[]): CurveName {
  return { key, text, hand: 'print', bold: false, optional: false, places };
}

function ink(key: string, text: string, bold: boolean, optional: boolean, places: readonly NamePlace[]): CurveName {
  return { key, text, hand: 'ink', bold, optional, places };
}

function describe(rows: StaircaseDiagramRows): string {
  const { strength: steps } = rows.staircase;
  const { withUnit } = rows.units.strength;
  const last = steps.length > 0 ? `, step ${steps.length} reaches ${withUnit(steps[steps.length - 1]!)}` : '';
  const first = steps.length > 0 ? `: step 1 gives ${withUnit(steps[0]!)}${last}` : '';
  const stop =
    rows.azeotrope === null
      ? 'the curve stays above the diagonal to the end'
      : `curve and diagonal meet at a mole fraction of ${fixed(rows.azeotrope.moleFraction, 3)}`;
  return `Alcohol in the vapour against alcohol in the liquid, mole fractions; from a kettle of ${withUnit(rows.kettleStrength)} the staircase climbs in ${steps.length} steps${first}; ${stop}.`;
}
