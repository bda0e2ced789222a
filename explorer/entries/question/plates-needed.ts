// 'One plate more': how many ideal plates pass a strength, and how many more the next per cent takes.

import { ladderOf } from '../../pages/course/rows.js';
import type { Given } from '../entry.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import { roundStrength } from '../words.js';
import type { PosedQuestion, QuestionDefinition } from './definition.js';
import { readPlates } from './readable.js';
import { countInWords } from '../../text/format.js';
import { boilingOf } from '../../state/derive.js';

type Asks = { readonly equilibrium: EquilibriumQuestion };

/** Plates that are counted at most. */
const most = 40;

/** How many plates pass 90 % vol. */
export const platesToNinety: QuestionDefinition<Asks> = {
  name: 'plates-to-ninety',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: (given) => {
    const ladder = ladderOf(given.answers.equilibrium.slice, given.scenario.charge.strength, most);
    const plates = ladder.findIndex((strength) => strength > 0.9);
    if (plates < 1) return null;
    const goal = roundStrength(0.9, given.units);
    const kettle = given.units.strength.withUnit(given.scenario.charge.strength);
    return posed(given, ladder, 0, plates, {
      lead: `A kettle of ${kettle}, everything sent back. To pass ${goal} takes`,
      tail: 'ideal plates.',
      general:
        'Follow the staircase: up to the curve, over to the thin diagonal, and count each rise after the kettle’s own.',
    });
  },
};

/** How many plates more from passing 95 to passing 96 % vol. */
export const platesToNinetySix: QuestionDefinition<Asks> = {
  name: 'plates-to-ninety-six',
  asks: platesToNinety.asks,
  pose: (given) => {
    const ladder = ladderOf(given.answers.equilibrium.slice, given.scenario.charge.strength, most);
    const from = ladder.findIndex((strength) => strength > 0.95);
    const to = ladder.findIndex((strength) => strength > 0.96);
    if (from < 1 || to <= from) return null;
    const { units } = given;
    return posed(given, ladder, from, to - from, {
      lead: `${capital(countInWords(from))} plates are the first to pass ${roundStrength(0.95, units)}. To pass ${roundStrength(0.96, units)} takes`,
      tail: 'more.',
      general:
        'It is not one, though it is only one per cent. Set more plates in the sentence above and read the table under the figure.',
    });
  },
};

/** Plates counted from `from` on, until the strength that so many more reach. */
function posed(
  { units }: Given<Asks>,
  ladder: readonly number[],
  from: number,
  answer: number,
  words: { readonly lead: string; readonly tail: string; readonly general: string },
): PosedQuestion {
  const { strength } = units;
  const stands = (more: number): string => {
    const at = ladder[from + more];
    return at === undefined ? 'beyond what is counted here' : `at ${strength.withUnit(at)}`;
  };
  const plates = (count: number): string =>
    `${countInWords(count)} ${count === 1 ? 'plate' : 'plates'}${from > 0 ? ' more' : ''}`;
  return {
    lead: words.lead,
    tail: words.tail,
    read: readPlates,
    asked: {
      answer,
      tolerance: { absolute: 0 },
      reached: (given) => {
        const count = Math.max(0, Math.round(given));
        return `With ${plates(count)} it stands ${stands(count)}.`;
      },
      answerWords: `With ${plates(answer)} it stands ${stands(answer)}; with one less, ${stands(answer - 1)}.`,
      hints: [words.general, `With ${plates(Math.max(0, answer - 1))} it stands ${stands(answer - 1)}, just short.`],
    },
  };
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
