// The guess of 'Why it stops': how strong the spout is with more and more plates at one reflux ratio.

import { guessFigure } from '../../figures/guess-figure.js';
import { platesAnswer, strengthByPlates } from '../../figures/strength-by-plates.js';
import type { StrengthByPlatesRows } from '../../rows/course.js';
import { measureOf, untilMeasure, whenFull, type MeasureQuestion } from '../../pages/course/questions.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';
import type { AnswerTo, Question } from '../../worker/questions.js';
import { ceilingWords } from './ceiling-words.js';
import { fieldOf, type GuessDefinition } from './definition.js';
import { plates, ratio } from './quantities.js';
import { ratioOf } from '../../state/problems.js';
import { withValue, stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

const figure = guessFigure<StrengthByPlatesRows>({
  figure: strengthByPlates,
  panel: 'plates',
  hidden: platesAnswer,
  answer: ({ plates: x, strength }) => ({ x, y: strength }),
});

/** Plates that are run; the first two are known before the rest is guessed. */
const counts = [4, 12, 20, 30, 45, 60] as const;
const lowest = 0.8;

export const ceiling: GuessDefinition = {
  name: 'ceiling',
  title: 'where more plates lead',
  axes: ({ strength }) => ({
    x: { ...plates, step: 4 },
    y: { ...strength, step: strength.toShown(0.505) - strength.toShown(0.5) },
  }),
  caution: 'spout',
  asks: (scenario) => {
    const runs = counts.map((count): [string, Question] => [
      String(count),
      untilMeasure(withValue(scenario, 'still.column.count', count)),
    ]);
    return { equilibrium: boilingOf(scenario), ...Object.fromEntries(runs) };
  },
  pose: ({ answers, scenario, units }) => {
    const { strength } = units;
    const strengths = counts.map((count) => whenFull(answers[String(count)] as AnswerTo<MeasureQuestion>).strength);
    const [few, known] = [strengths[0]!, strengths[1]!];
    const start = { x: counts[1], y: known };
    const { equilibrium } = answers;
    const azeotrope =
      equilibrium?.kind === 'equilibrium'
        ? azeotropeRow(equilibrium, stillOf(scenario).air.pressure_Pa, units.pressure)
        : null;
    const after = units.volume.withUnit(measureOf(scenario));
    const at = ratio.withUnit(ratioOf(scenario));
    const rows: StrengthByPlatesRows = {
      plates: counts,
      strength: strengths,
      known: [counts[0], counts[1]],
      strengthFrom: Math.min(lowest, few),
      azeotrope,
      title: `Strength at the spout after ${after}`,
      units,
    };
    return {
      task: `At ${at}, four plates run at ${strength.text(few)} and twelve at ${strength.withUnit(known)}. Where do twenty, forty and sixty land? Draw on from the filled dot.`,
      figure,
      rows,
      panel: 'plates',
      field: fieldOf(start, counts.at(-1)!, [Math.floor(10 * rows.strengthFrom) / 10, 1]),
      asked: {
        start,
        answer: { x: counts.slice(1), y: strengths.slice(1) },
        x: plates,
        y: strength,
        says: 'the column gives',
      },
      means: (reading) => ceilingWords(reading, azeotrope?.strength ?? null, at, strength),
    };
  },
};
