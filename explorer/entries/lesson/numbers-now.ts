// The numbers of a lesson as its latest answers have them.

import type { Here } from '../entry.js';
import type { Lesson, LessonNumbers } from '../../pages/course/lesson.js';

/** What a part of a lesson needs to know. */
export type LessonHere = Pick<Here, 'id' | 'now' | 'kept' | 'units' | 'once'>;

/** Undefined until the first answers come. */
export function numbersNow(lesson: Lesson, { now, kept, units }: LessonHere): LessonNumbers | undefined {
  return (
    now &&
    lesson.numbers(
      { ...now, units },
      kept.map((one) => ({ ...one, units })),
    )
  );
}
