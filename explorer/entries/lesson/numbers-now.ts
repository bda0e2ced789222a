// The numbers of a lesson as they stand: with the settings of this moment where they ask nothing new, else with
// those the latest answers belong to.

import type { Given } from '../asking.js';
import type { Here } from '../entry.js';
import type { Lesson, LessonNumbers } from '../../pages/course/lesson.js';

/** What a part of a lesson needs to know. */
export type LessonHere = Pick<Here, 'id' | 'now' | 'kept' | 'units' | 'scenario'>;

/** Undefined until the first answers come. */
export function numbersNow(lesson: Lesson, { now, kept, units, scenario }: LessonHere): LessonNumbers | undefined {
  if (now === undefined) return undefined;
  const fits = JSON.stringify(lesson.asks(scenario)) === JSON.stringify(lesson.asks(now.scenario));
  const given: Given = { ...now, scenario: fits ? scenario : now.scenario, units };
  return lesson.numbers(
    given,
    kept.map((one) => ({ ...one, units })),
  );
}
