// Published points beside the model's curve, and under it how far each lies from the curve: whether points scatter, and
// whether a whole set lies to one side.

import type { MeasuredPointsRows, MeasuredSetRows } from '../../rows/measured.js';
import { fixed } from '../../text/format.js';
import { extentOf, fixedAxis, roundAxis } from '../axes.js';
import type { Axis, DataTable, Drawing, FigureSize } from '../figure.js';
import { nameOf, printedName } from '../names.js';
import { curve, dots, level, panelOf, type Plotted } from './theme.js';

/** Heights of the plot rectangles, px. */
const height = { points: { wide: 270, narrow: 240 }, differences: { wide: 190, narrow: 170 } };

export function measuredPoints({ curve: model, sets }: MeasuredPointsRows, { layout }: FigureSize): Drawing {
  const { liquidMoleFraction, vapourMoleFraction } = model;
  const line = { hand: 'print', weight: 'equilibrium', shape: 'monotone' } as const;
  const base = { cursorSeries: [], rightScale: null };
  return {
    description: described(sets),
    x: fixedAxis({ title: 'alcohol in the liquid', unit: 'mole fraction' }, [0, 1], 0.2, 1),
    panels: [
      panelOf({
        ...base,
        key: 'points',
        height: height.points[layout],
        y: fixedAxis({ title: 'Alcohol in the vapour', unit: 'mole fraction' }, [0, 1], 0.2, 1),
        plotted: [
          curve('model', line, liquidMoleFraction, vapourMoleFraction),
          ...dotsOf(sets, ({ vapourMoleFraction: measured }) => measured),
        ],
        names: [printedName('model', 'the model at 1\u00a0atm', 0.35, 'below')],
      }),
      panelOf({
        ...base,
        key: 'differences',
        height: height.differences[layout],
        y: differenceAxis(sets),
        plotted: [level('none', 'print', 0), ...dotsOf(sets, ({ difference }) => difference)],
        names: [nameOf('none', 'the model', 'print', false, { kind: 'level', mark: 'none', side: 'right' })],
      }),
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => table(sets),
  };
}

function dotsOf(sets: readonly MeasuredSetRows[], of: (set: MeasuredSetRows) => ArrayLike<number>): Plotted[] {
  return sets.map((one) => {
    const { set, form, filled, liquidMoleFraction } = one;
    return dots(set, { form, filled, hand: 'print' }, liquidMoleFraction, of(one));
  });
}

function differenceAxis(sets: readonly MeasuredSetRows[]): Axis {
  const extent = extentOf(sets.map(({ difference }) => difference));
  return roundAxis({ title: 'Measured less the model', unit: 'mole fraction' }, extent, { steps: 5, ticks: 4 });
}

/** Mean distance of a set from the model, pure ends not counted. */
export function meanDistance({ liquidMoleFraction, difference }: MeasuredSetRows): number {
  const mixed = Array.from(difference).filter((_one, i) => liquidMoleFraction[i]! > 0 && liquidMoleFraction[i]! < 1);
  return mixed.reduce((sum, one) => sum + Math.abs(one), 0) / mixed.length;
}

function described(sets: readonly MeasuredSetRows[]): string {
  const each = sets.map((one) => `${one.source} by ${fixed(meanDistance(one), 4)}`);
  return `Measured mole fraction of alcohol in the vapour against that in the liquid, with the curve of the model at 1 atm. Less the model the sets differ in the mean: ${each.join('; ')}.`;
}

function table(sets: readonly MeasuredSetRows[]): DataTable {
  return {
    caption: 'Measured points and the model in numbers',
    columns: [
      { title: 'liquid', unit: 'mole fraction' },
      { title: 'vapour', unit: 'mole fraction' },
      { title: 'less the model', unit: 'mole fraction' },
      { title: 'from', unit: '' },
    ],
    rows: sets.flatMap(({ source, liquidMoleFraction, vapourMoleFraction, difference }) =>
      Array.from(difference, (one, i) => [
        fixed(liquidMoleFraction[i]!, 4),
        fixed(vapourMoleFraction[i]!, 4),
        fixed(one, 4),
        source,
      ]),
    ),
  };
}
