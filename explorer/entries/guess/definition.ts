// What a guess is made of: what it asks of the solver, and from the answers a figure to draw on, the known
// point, and the words on the gap. A new guess is one file like those beside this one and one line in the list.

import type { GuessField, Point } from '../../components/guess/guess.js';
import type { GuessQuantity } from '../../components/guess/kp-guess.js';
import type { Figure } from '../../figures/figure.js';
import type { GuessRows } from '../../figures/guess-figure.js';
import type { Scenario } from '../../state/scenario.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import type { Asks } from '../../worker/questions.js';
import type { CautionName, Given } from '../entry.js';
import type { Asked, Reading } from './reading.js';

/** A guess ready to be drawn. */
export interface PosedGuess {
  /** What is to be drawn, in a sentence or two. */
  readonly task: string;
  readonly figure: Figure<GuessRows<never>>;
  readonly rows: unknown;
  readonly panel: string;
  readonly field: GuessField;
  readonly asked: Asked;
  /** What the gap means. */
  readonly means: (reading: Reading) => string;
}

export interface GuessDefinition<Asked extends Asks = Asks> {
  /** In a notebook's file; never changed once published. */
  readonly name: string;
  /** What is guessed: 'what rises from which liquid'. */
  readonly title: string;
  readonly axes: (units: UnitSystem) => { readonly x: GuessQuantity; readonly y: GuessQuantity };
  readonly caution: CautionName;
  readonly asks: (scenario: Scenario) => Asked;
  readonly pose: (given: Given<Asked>) => PosedGuess;
}

/** Points nearer than this part of the way are one. */
const apartShare = 1 / 160;

/** The field from the known point to the answer's end, over these heights. */
export function fieldOf(start: Point, to: number, y: readonly [number, number]): GuessField {
  return { x: [start.x, to], y, apart: apartShare * (to - start.x) };
}

/** A definition whose figure and answers have been checked against each other, in a list of several. */
export function defined<Asked extends Asks>(definition: GuessDefinition<Asked>): GuessDefinition {
  return definition as unknown as GuessDefinition;
}
