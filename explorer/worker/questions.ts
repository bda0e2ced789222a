// What may be asked of the solver, as plain data, and what comes back: types alone, so that a page loads nothing of
// how it is answered.

import type { InputFault } from '#lib/index.js';
import type { kinds } from './kinds/registry.js';
import type { RunAnswer, RunPart, RunQuestion } from './kinds/run.js';

type Kinds = typeof kinds;
export type Question = { [Name in keyof Kinds]: Parameters<Kinds[Name]>[0] }[keyof Kinds];
export type Answer = { [Name in keyof Kinds]: Awaited<ReturnType<Kinds[Name]>> }[keyof Kinds];

/** The answer that belongs to a question; of a run whose parts are not known by type, its facts alone. */
export type AnswerTo<Asked extends Question> =
  Asked extends RunQuestion<infer Kept>
    ? RunAnswer<[RunPart] extends [Kept] ? never : Kept>
    : Extract<Answer, { readonly kind: Asked['kind'] }>;

/** Questions by name. */
export type Asks = Readonly<Record<string, Question>>;
/** The answers to them. */
export type Answers<Asked extends Asks> = { readonly [Name in keyof Asked]: AnswerTo<Asked[Name]> };

/** An answer, or the faults of a question that cannot be answered. */
export type Reply =
  | { readonly kind: 'answered'; readonly answer: Answer }
  | { readonly kind: 'refused'; readonly faults: readonly InputFault[] };

/** What a question is known by: its content. */
export function keyOf(question: Question): string {
  return JSON.stringify(question);
}
