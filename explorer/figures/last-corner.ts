// The last corner of the x-y diagram, eight times larger: where the steps shrink and stop.

import { fixedAxis } from './axes.js';
import type { PlotName, Drawing, FigureSize, Mark, RightScale } from './figure.js';
import { cornerSide, cornerWindow } from './last-corner-window.js';
import { nameOf } from './names.js';
import type { StaircaseDiagramRows } from '../rows/equilibrium.js';
import { staircaseMarks, staircaseTable } from './staircase-marks.js';
import { fixed } from '../text/format.js';

/** Px kept free between labels of the right-hand scale. */
const scaleGap = 18;
/** Strengths, % vol / 100, whose first step is named. */
const namedStrengths = [0.95, 0.96];
const times = ['', 'once', 'twice', 'three', 'four', 'five', 'six', 'seven', 'eight'][Math.floor(1 / cornerSide)];

export function lastCorner(rows: StaircaseDiagramRows, size: FigureSize): Drawing {
  const room = size.layout === 'narrow' ? 38 : 0;
  const side = size.width - room;
  const window = cornerWindow(rows.azeotrope);
  const axis = fixedAxis({ title: 'alcohol in the liquid', unit: 'mole fraction' }, window, 0.02, 2);
  const marks: Mark[] = [...staircaseMarks(rows)];
  const names: PlotName[] = [];
  const { azeotrope } = rows;
  if (azeotrope !== null) {
    const at = azeotrope.moleFraction;
    marks.push(
      { kind: 'level', key: 'azeotrope', hand: 'print', weight: 'azeotrope', y: at, reach: 'plot' },
      { kind: 'dot', key: 'azeotrope point', hand: 'print', x: at, y: at },
    );
    const text = size.layout === 'wide' ? 'azeotrope: here the steps stop' : 'azeotrope';
    names.push(nameOf('azeotrope', text, 'print', true, { kind: 'level', mark: 'azeotrope', side: 'left' }));
  }
  names.push(...stepNames(rows, window, size.layout));
  return {
    description: describe(rows, window),
    x: axis,
    panels: [
      {
        key: 'corner',
        height: side,
        y: { ...axis, title: 'The last corner', unit: `${times} times larger` },
        marks,
        names,
        cursorSeries: [],
        framed: true,
        rightScale: rightScale(rows, window, side),
      },
    ],
    rightRoom: room,
    cursor: null,
    readOut: null,
    table: () => staircaseTable(rows),
  };
}

// The last step and the first past each named strength, in ink right of the diagonal.
function stepNames(
  rows: StaircaseDiagramRows,
  window: readonly [number, number],
  layout: FigureSize['layout'],
): PlotName[] {
  const step = layout === 'wide' ? 'step ' : '';
  const { vapourMoleFraction: vapour, strength } = rows.staircase;
  const all = Array.from(strength);
  const chosen = [all.length - 1, ...namedStrengths.map((at) => all.findIndex((s) => s >= at))];
  return [...new Set(chosen)]
    .filter((k) => k >= 0 && vapour[k]! > window[0] && vapour[k]! < window[1])
    .map((k) => {
      const text = `${step}${k + 1} at ${fixed(rows.units.strength.toShown(strength[k]!), 2)}`;
      const of = { kind: 'point', x: vapour[k]!, y: vapour[k]!, side: 'right' } as const;
      return nameOf(`step ${k + 1}`, text, 'ink', false, of);
    });
}

function rightScale(rows: StaircaseDiagramRows, window: readonly [number, number], height: number): RightScale {
  const { strength } = rows.units;
  const px = (y: number): number => ((window[1] - y) / (window[1] - window[0])) * height;
  const ticks: { y: number; text: string; bold: boolean }[] = [];
  if (rows.azeotrope !== null) {
    ticks.push({ y: rows.azeotrope.moleFraction, text: strength.text(rows.azeotrope.strength), bold: true });
  }
  for (const { moleFraction, strength: value } of rows.strengthScale) {
    if (moleFraction <= window[0] || moleFraction >= window[1] || px(moleFraction) < scaleGap) continue;
    if (ticks.some((tick) => Math.abs(px(tick.y) - px(moleFraction)) < scaleGap)) continue;
    ticks.push({ y: moleFraction, text: String(Math.round(strength.toShown(value) * 10) / 10), bold: false });
  }
  return { title: strength.unit, ticks };
}

function describe(rows: StaircaseDiagramRows, window: readonly [number, number]): string {
  const { strength, vapourMoleFraction: vapour } = rows.staircase;
  const inside = Array.from(vapour).filter((y) => y >= window[0]).length;
  const last = strength[strength.length - 1];
  const reached = last === undefined ? '' : `; step ${strength.length} stands at ${rows.units.strength.withUnit(last)}`;
  const stop =
    rows.azeotrope === null
      ? 'there is no azeotrope'
      : `the steps stop at the azeotrope, mole fraction ${fixed(rows.azeotrope.moleFraction, 4)}, ${rows.units.strength.withUnit(rows.azeotrope.strength)}`;
  return `The corner of the diagram from ${fixed(window[0], 2)} to ${fixed(window[1], 2)} mole fraction, ${inside} steps end in it${reached}; ${stop}.`;
}
