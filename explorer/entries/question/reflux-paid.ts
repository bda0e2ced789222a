// 'Reflux': how much is boiled for each part kept, and how long another ratio takes.

import { measureOf, untilMeasure, whenFull, type MeasureQuestion } from '../../pages/course/questions.js';
import type { Scenario } from '../../state/scenario.js';
import { fixed, joined, trimmed } from '../../text/format.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { QuestionDefinition } from './definition.js';
import { readCount, readMinutes } from './readable.js';
import { ratioOf, withRatio } from '../../state/problems.js';
import { boilingOf } from '../../state/derive.js';

/** A ratio at which each part kept costs twice or half as many boiled, on the page's scale. */
export function otherRatio(reflux: number): number {
  return reflux <= 10 ? 2 * reflux + 1 : (reflux - 1) / 2;
}

const timeTolerance = { relative: 0.08 } as const;
const toOne = (ratio: number): string => joined(trimmed(ratio, 2), ': 1');

/** Parts boiled for each part kept. */
export const boiledPerKept: QuestionDefinition<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'boiled-per-kept',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: ({ scenario }) => {
    const reflux = ratioOf(scenario);
    const answer = reflux + 1;
    const sent = trimmed(reflux, 2);
    return {
      lead: `At ${toOne(reflux)}, for each part of spirit kept`,
      tail: 'parts are boiled and condensed.',
      read: readCount,
      asked: {
        answer,
        tolerance: { absolute: 0.001 },
        reached: (given) =>
          given < 1
            ? 'Less than one part boiled could not fill the part that is kept.'
            : `To boil ${trimmed(given, 2)} for each part kept is a ratio of ${toOne(given - 1)}.`,
        answerWords: `${sent} sent back and 1 kept: ${trimmed(answer, 2)} boiled for each part kept.`,
        hints: ['Count both: what runs back, and what runs out.', `${sent} run back for each 1 that runs out.`],
      },
    };
  },
};

type TimeAsks = { readonly here: MeasureQuestion; readonly there: MeasureQuestion };

/** Time of the first measure at another ratio. */
export const timeAtRatio: QuestionDefinition<TimeAsks> = {
  name: 'time-at-ratio',
  asks: (scenario: Scenario) => ({
    here: untilMeasure(scenario),
    there: untilMeasure(withRatio(scenario, otherRatio(ratioOf(scenario)))),
  }),
  pose: ({ answers, scenario, units }) => {
    const reflux = ratioOf(scenario);
    const other = otherRatio(reflux);
    const [here_s, there_s] = [whenFull(answers.here).time_s, whenFull(answers.there).time_s];
    const measure = units.volume.withUnit(measureOf(scenario));
    const time = (seconds: number): string => joined(fixed(seconds / 60, 0), 'min');
    return {
      lead: `The first ${measure} take ${time(here_s)} at ${toOne(reflux)}. With the same heat, at ${toOne(other)} they take about`,
      tail: 'min.',
      read: readMinutes,
      asked: {
        answer: there_s,
        tolerance: timeTolerance,
        reached: (given) =>
          `In ${time(given)} at ${toOne(other)} there would be ${units.volume.withUnit((measureOf(scenario) * given) / there_s)} in the jar.`,
        answerWords: `At ${toOne(other)} the first ${measure} take ${time(there_s)}.`,
        hints: [
          'The heat boils the same amount each minute. What changes is how much of it must be boiled for each part kept.',
          `At ${toOne(reflux)} that is ${trimmed(reflux + 1, 2)} parts boiled for one kept, at ${toOne(other)} it is ${trimmed(other + 1, 2)}.`,
        ],
      },
    };
  },
};
