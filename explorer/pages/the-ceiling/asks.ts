// The questions of 'The ceiling', a few of them at a time: each piece asks what it shows and no more.

import { ceilingQuestions, type CeilingQuestions } from '../../state/derive.js';
import type { Scenario } from '../../state/scenario.js';
import type { Answered } from '../../entries/entry.js';

/** Some of the questions of 'The ceiling'. */
export type CeilingAsks<Names extends keyof CeilingQuestions> = { readonly [Name in Names]: CeilingQuestions[Name] };
/** The answers to them. */
export type CeilingNow<Names extends keyof CeilingQuestions> = Answered<CeilingAsks<Names>>;

/** Asks these of a scenario. */
export function asking<Names extends keyof CeilingQuestions>(
  ...names: readonly Names[]
): (scenario: Scenario) => CeilingAsks<Names> {
  return (scenario) => {
    const all = ceilingQuestions(scenario);
    return Object.fromEntries(names.map((name) => [name, all[name]])) as CeilingAsks<Names>;
  };
}
