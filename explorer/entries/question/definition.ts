// What a question with a number for an answer is made of. A new question is one file like those beside this
// one and one line in the list.

import type { Reading } from '../../components/number/number-spec.js';
import type { Scenario } from '../../state/scenario.js';
import type { Asks } from '../../worker/questions.js';
import type { Given } from '../entry.js';
import type { AskedNumber } from './judge.js';

/** A question ready to be answered. */
export interface PosedQuestion {
  /** The sentence before and after the blank. */
  readonly lead: string;
  readonly tail: string;
  /** How the text in the blank becomes SI: a bare number in the unit of the sentence, or one with a unit. */
  readonly read: (text: string) => Reading;
  readonly asked: AskedNumber;
}

export interface QuestionDefinition<Asked extends Asks = Asks> {
  /** In a notebook's file; never changed once published. */
  readonly name: string;
  readonly asks: (scenario: Scenario) => Asked;
  /** Null where these settings leave nothing to ask. */
  readonly pose: (given: Given<Asked>) => PosedQuestion | null;
}

/** A definition in a list of several, which ask different things. */
export function defined<Asked extends Asks>(definition: QuestionDefinition<Asked>): QuestionDefinition {
  return definition as unknown as QuestionDefinition;
}
