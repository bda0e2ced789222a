// The guess of 'Reflux': how long the first measure of spirit takes at each reflux ratio.

import { guessFigure } from '../../figures/guess-figure.js';
import { refluxAnswer, refluxPrice } from '../../figures/reflux-price.js';
import type { RefluxPriceRows } from '../../rows/course.js';
import { measureOf, untilMeasure, whenFull, type MeasureQuestion } from '../../pages/course/questions.js';
import { azeotropeRow } from '../../state/equilibrium-rows.js';
import type { Scenario } from '../../state/scenario.js';
import type { AnswerTo, Question, Asks } from '../../worker/questions.js';
import { fieldOf, type GuessDefinition } from './definition.js';
import { minutes, ratio } from './quantities.js';
import { refluxWords } from './reflux-words.js';
import { withRatio } from '../../state/problems.js';
import { stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

const figure = guessFigure<RefluxPriceRows>({
  figure: refluxPrice,
  panel: 'time',
  hidden: refluxAnswer,
  answer: ({ reflux, time_s }) => ({ x: reflux, y: time_s }),
});

/** Ratios that are run; the first is the one whose time is known. */
export const ratios = [1, 2, 3, 4, 6, 8, 10, 12] as const;
const lowest = 0.8;

/** The runs by ratio and the equilibrium at their pressure. */
export function refluxAsks(scenario: Scenario): Asks {
  const runs = ratios.map((reflux): [string, Question] => [String(reflux), untilMeasure(withRatio(scenario, reflux))]);
  return { equilibrium: boilingOf(scenario), ...Object.fromEntries(runs) };
}

export const reflux: GuessDefinition = {
  name: 'reflux',
  title: 'what reflux costs',
  axes: () => ({ x: ratio, y: { ...minutes, step: 5 } }),
  caution: 'spout',
  asks: refluxAsks,
  pose: ({ answers, scenario, units }) => {
    const full = ratios.map((one) => whenFull(answers[String(one)] as AnswerTo<MeasureQuestion>));
    const times = full.map(({ time_s }) => time_s);
    const start = { x: ratios[0], y: times[0]! };
    const measure = units.volume.withUnit(measureOf(scenario));
    const { equilibrium } = answers;
    const rows: RefluxPriceRows = {
      reflux: ratios,
      strength: full.map(({ strength }) => strength),
      time_s: times,
      known: start.x,
      strengthFrom: Math.min(lowest, full[0]!.strength),
      azeotrope:
        equilibrium?.kind === 'equilibrium'
          ? azeotropeRow(equilibrium, stillOf(scenario).air.pressure_Pa, units.pressure)
          : null,
      measure,
      minutes,
      units,
    };
    return {
      task: `At 1 : 1 the first ${measure} take ${minutes.withUnit(start.y)}. Draw how long they take at 2 : 1, 3 : 1 and so on to 12 : 1, with the same heat.`,
      figure,
      rows,
      panel: 'time',
      field: fieldOf(start, ratios.at(-1)!, [0, 1.6 * Math.max(...times)]),
      asked: { start, answer: { x: ratios, y: times }, x: ratio, y: minutes, says: 'it takes' },
      means: (reading) => refluxWords(reading, minutes),
    };
  },
};
