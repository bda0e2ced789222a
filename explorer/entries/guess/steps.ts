// The guess of 'One plate more': how strong is what rises from each ideal plate, everything sent back.

import { guessFigure } from '../../figures/guess-figure.js';
import { platesAnswer, strengthByPlates } from '../../figures/strength-by-plates.js';
import type { StrengthByPlatesRows } from '../../rows/course.js';
import { ladderOf } from '../../pages/course/rows.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import { fieldOf, type GuessDefinition } from './definition.js';
import { plates } from './quantities.js';
import { stepsWords } from './steps-words.js';
import { stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

const figure = guessFigure<StrengthByPlatesRows>({
  figure: strengthByPlates,
  panel: 'plates',
  hidden: platesAnswer,
  answer: ({ plates: x, strength }) => ({ x, y: strength }),
});

const mostPlates = 8;
/** The axis begins here, or lower where the kettle gives less. */
const lowest = 0.5;

export const steps: GuessDefinition<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'steps',
  title: 'what each plate adds',
  axes: ({ strength }) => ({ x: plates, y: { ...strength, step: Math.round(strength.toShown(0.01)) } }),
  caution: 'spout',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: ({ answers: { equilibrium }, scenario, units }) => {
    const { strength } = units;
    const ladder = ladderOf(equilibrium.slice, scenario.charge.strength, mostPlates);
    const azeotrope = azeotropeRow(equilibrium, stillOf(scenario).air.pressure_Pa, units.pressure);
    const counts = ladder.map((_, plate) => plate);
    const start = { x: 0, y: ladder[0]! };
    const rows: StrengthByPlatesRows = {
      plates: counts,
      strength: ladder,
      known: [0],
      strengthFrom: Math.min(lowest, ladder[0]!),
      azeotrope,
      title: 'Strength at the top, everything sent back',
      units,
    };
    return {
      task: `From the kettle rises ${strength.withUnit(start.y)}. Draw how strong it is above one ideal plate, above two, and so on to eight, with everything sent back.`,
      figure,
      rows,
      panel: 'plates',
      field: fieldOf(start, mostPlates, [Math.floor(10 * rows.strengthFrom) / 10, 1]),
      asked: { start, answer: { x: counts, y: ladder }, x: plates, y: strength, says: 'the plates give' },
      means: (reading) => stepsWords(reading, azeotrope?.strength ?? null, strength),
    };
  },
};
