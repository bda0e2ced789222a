// The volume that is lost when pure ethanol and water are mixed, against the strength of the mixture.

import type { ContractionRows } from '../../rows/contraction.js';
import { fixed } from '../../text/format.js';
import { fixedAxis, strengthAxis } from '../axes.js';
import type { Drawing, FigureSize } from '../figure.js';
import { nameOf, printedName } from '../names.js';
import { curve, dot, panelOf } from './theme.js';

/** Height of the plot rectangle, px. */
const height = { wide: 250, narrow: 220 };
/** Up to which loss is drawn, per cent. */
const most = 4;

export function contractionFigure(rows: ContractionRows, size: FigureSize): Drawing {
  const { units, own } = rows;
  const x = rows.strength.map(units.strength.toShown);
  const y = rows.lost.map((share) => 100 * share);
  const greatest = y.indexOf(Math.max(...y));
  return {
    description: `Volume lost on mixing ethanol with water against the strength of the mixture: nothing at either end, most at ${units.strength.withUnit(rows.strength[greatest]!)}, ${fixed(y[greatest]!, 2)} per cent. ${own
      .map(
        ({ name, strength, lost }) =>
          `${name}, ${units.strength.withUnit(strength)}: ${fixed(100 * lost, 2)} per cent.`,
      )
      .join(' ')}`,
    x: strengthAxis(units, 0, 'strength of the mixture'),
    panels: [
      panelOf({
        key: 'lost',
        height: height[size.layout],
        y: fixedAxis({ title: 'Volume lost', unit: '%' }, [0, most], 1, 0),
        plotted: [
          curve('lost', { hand: 'print', weight: 'equilibrium', shape: 'monotone' }, x, y),
          ...own.map(({ name, strength, lost }) => dot(name, 'ink', units.strength.toShown(strength), 100 * lost)),
        ],
        names: [
          printedName('lost', 'ethanol and water', 0.3, 'left'),
          ...own.map(({ name, strength, lost }) =>
            nameOf(name, name, 'ink', false, {
              kind: 'point',
              x: units.strength.toShown(strength),
              y: 100 * lost,
              side: 'below',
            }),
          ),
        ],
        cursorSeries: [],
        rightScale: null,
      }),
    ],
    rightRoom: 0,
    cursor: null,
    readOut: null,
    table: () => ({
      caption: 'Volume lost on mixing in numbers',
      columns: [
        { title: 'strength', unit: units.strength.unit },
        { title: 'volume lost', unit: '%' },
        { title: 'from', unit: '' },
      ],
      rows: [
        ...rows.strength
          .map((strength, i) => [units.strength.text(strength), fixed(y[i]!, 2), 'ethanol and water'])
          .filter((_, i) => i % 5 === 0),
        ...own.map(({ name, strength, lost }) => [units.strength.text(strength), fixed(100 * lost, 2), name]),
      ],
    }),
  };
}
