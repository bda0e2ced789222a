// What the x-y diagram and its last corner share: the staircase as corners, the equilibrium curve and
// the diagonal as marks, and the table of steps.

import type { Column } from '../rows/shown.js';
import type { DataTable, Mark } from './figure.js';
import type { StaircaseDiagramRows, StaircaseRows } from '../rows/equilibrium.js';
import { fixed } from '../text/format.js';

/** Corners of the staircase from the x axis up: each step rises to the curve, then goes over to the next liquid. */
export function corners(staircase: StaircaseRows): { readonly x: number[]; readonly y: number[] } {
  const { liquidMoleFraction: liquid, vapourMoleFraction: vapour } = staircase;
  const x: number[] = [];
  const y: number[] = [];
  for (let k = 0; k < liquid.length; k++) {
    x.push(liquid[k]!, liquid[k]!);
    y.push(k === 0 ? 0 : vapour[k - 1]!, vapour[k]!);
  }
  if (liquid.length > 0) {
    // The last vapour goes over to the diagonal: condensed, it is a liquid of its own strength.
    x.push(vapour[liquid.length - 1]!);
    y.push(vapour[liquid.length - 1]!);
  }
  return { x, y };
}

/** Diagonal, equilibrium, operating line and staircase, back to front. */
export function staircaseMarks(rows: StaircaseDiagramRows): Mark[] {
  const marks: Mark[] = [straight('diagonal', 'print', 'diagonal', [0, 1], [0, 1])];
  if (rows.raoult !== null) marks.push(equilibrium('raoult', 'raoult', rows.raoult));
  marks.push(equilibrium('equilibrium', 'equilibrium', rows.curve));
  const line = rows.operatingLine;
  if (line !== null) {
    const from = rows.staircase.liquidMoleFraction[0] ?? 0;
    const to = line.slope < 1 ? Math.min(1, line.intercept / (1 - line.slope)) : 1;
    const y = [from, to].map((x) => line.slope * x + line.intercept);
    marks.push(straight('operating', 'ink', 'operating', [from, to], y));
  }
  const { x, y } = corners(rows.staircase);
  marks.push(straight('staircase', 'ink', 'staircase', x, y));
  return marks;
}

/** Every step in numbers. */
export function staircaseTable(rows: StaircaseDiagramRows): DataTable {
  const { staircase, units } = rows;
  return {
    caption: 'The steps in numbers',
    columns: [
      { title: 'step', unit: '' },
      { title: 'alcohol in the liquid', unit: 'mole fraction' },
      { title: 'alcohol in the vapour', unit: 'mole fraction' },
      { title: 'vapour, condensed', unit: units.strength.unit },
    ],
    rows: Array.from(staircase.strength, (strength, k) => [
      k === 0 ? '1, the kettle' : String(k + 1),
      fixed(staircase.liquidMoleFraction[k] ?? NaN, 4),
      fixed(staircase.vapourMoleFraction[k] ?? NaN, 4),
      fixed(units.strength.toShown(strength), 2),
    ]),
  };
}

function equilibrium(key: string, weight: 'equilibrium' | 'raoult', curve: StaircaseDiagramRows['curve']): Mark {
  const { liquidMoleFraction: x, vapourMoleFraction: y } = curve;
  return { kind: 'curve', key, hand: 'print', weight, shape: 'monotone', x, y };
}

function straight(
  key: string,
  hand: 'print' | 'ink',
  weight: 'diagonal' | 'operating' | 'staircase',
  x: Column,
  y: Column,
): Mark {
  return { kind: 'curve', key, hand, weight, shape: 'straight', x, y };
}
