// The guess of 'What boils': how strong is what rises from a liquid of each strength.

import { guessFigure } from '../../figures/guess-figure.js';
import { vapourOverLiquid } from '../../figures/vapour-over-liquid.js';
import type { OverTheLiquidRows } from '../../rows/course.js';
import { overLiquidRows } from '../../pages/course/rows.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import { fieldOf, type GuessDefinition } from './definition.js';
import { vapourWords } from './vapour-words.js';
import { stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

const figure = guessFigure<OverTheLiquidRows>({
  figure: vapourOverLiquid,
  panel: 'vapour',
  hidden: ['vapour', 'azeotrope'],
  answer: ({ liquidStrength, vapourStrength }) => ({ x: liquidStrength, y: vapourStrength }),
});

/** Water gives water: the one point that is known. */
const start = { x: 0, y: 0 };

export const vapour: GuessDefinition<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'vapour',
  title: 'what rises from which liquid',
  axes: ({ strength }) => ({
    x: { ...strength, step: Math.round(strength.toShown(0.05)) },
    y: { ...strength, step: Math.round(strength.toShown(0.01)) },
  }),
  caution: 'kettle',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: ({ answers, scenario, units }) => {
    const rows = overLiquidRows(answers.equilibrium, null, stillOf(scenario).air.pressure_Pa, units);
    const { strength } = units;
    return {
      task: 'Draw how strong the vapour is, condensed, over a boiling liquid of each strength, from water on the left to pure alcohol on the right.',
      figure,
      rows,
      panel: 'vapour',
      field: fieldOf(start, 1, [0, 1]),
      asked: {
        start,
        answer: { x: rows.liquidStrength, y: rows.vapourStrength },
        x: strength,
        y: strength,
        says: 'the vapour holds',
      },
      means: (reading) => vapourWords(reading, strength),
    };
  },
};
