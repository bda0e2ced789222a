// 'Why it stops': what the azeotrope gives off, and what lifts a tall column.

import { untilMeasure, whenFull, type MeasureQuestion } from '../../pages/course/questions.js';
import { boilOf } from '../../pages/course/rows.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { AnswerTo, Question } from '../../worker/questions.js';
import { joined, trimmed } from '../../text/format.js';
import { roundStrength } from '../words.js';
import type { QuestionDefinition } from './definition.js';
import { readRatio, strengthReadIn } from './readable.js';
import { withRatio } from '../../state/problems.js';
import { withValue } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

/** A tenth of a per cent and a bit: what is printed. */
const printed = { absolute: 0.0015 } as const;
/** To either side of the azeotrope that the second hint looks at. */
const beside = 0.01;

/** Strength over a kettle that holds the azeotrope. */
export const overAzeotrope: QuestionDefinition<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'over-azeotrope',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: ({ answers: { equilibrium }, units }) => {
    const { azeotrope, slice } = equilibrium;
    if (azeotrope === null) return null;
    const { strength } = units;
    const at = azeotrope.strength;
    const gives = (liquid: number): string =>
      `a liquid of ${strength.withUnit(liquid)} gives off ${strength.withUnit(boilOf(slice, Math.min(Math.max(liquid, 0), 1)).vapour)}`;
    return {
      lead: 'The kettle holds the azeotrope of this page’s pressure, the column has sixty plates, and everything is sent back. At the top stands',
      tail: `${strength.unit}.`,
      read: strengthReadIn(units),
      asked: {
        answer: at,
        tolerance: printed,
        reached: (given) =>
          given > at
            ? `But ${gives(given)}, weaker than itself: no plate could have lifted it there.`
            : `But ${gives(given)}, stronger than itself: such a plate would still be climbing.`,
        answerWords: `At ${strength.withUnit(at)} the vapour is as strong as the liquid, and sixty plates change nothing.`,
        hints: [
          'Ask what rises from the kettle, and then what rises from that.',
          `Just below it ${gives(at - beside)}; just above it ${gives(at + beside)}. Between them there is a liquid that gives off itself.`,
        ],
      },
    };
  },
};

const tall = 60;
const ratios = [2, 3, 4, 5, 6, 8, 12, 20] as const;
/** Strength asked for, % vol / 100. */
const wanted = 0.96;
const aboutRight = { relative: 0.12 } as const;

/** Reflux with which sixty plates pass 96 % vol. */
export const refluxForNinetySix: QuestionDefinition = {
  name: 'reflux-for-ninety-six',
  asks: (scenario) =>
    Object.fromEntries(
      ratios.map((reflux): [string, Question] => [
        String(reflux),
        untilMeasure(withRatio(withValue(scenario, 'still.column.count', tall), reflux)),
      ]),
    ),
  pose: ({ answers, units }) => {
    const { strength } = units;
    const strengths = ratios.map((ratio) => whenFull(answers[String(ratio)] as AnswerTo<MeasureQuestion>).strength);
    const answer = crossing(ratios, strengths, wanted);
    if (answer === null) return null;
    const toOne = (ratio: number): string => joined(trimmed(ratio, 1), ': 1');
    const stands = (k: number): string => `at ${toOne(ratios[k]!)} ${strength.withUnit(strengths[k]!)}`;
    const after = ratios.findIndex((ratio) => ratio >= answer);
    const goal = roundStrength(wanted, units);
    return {
      lead: `Sixty plates, and still short of ${goal}. To pass it, set the reflux to about`,
      tail: ': 1.',
      read: readRatio,
      asked: {
        answer,
        tolerance: aboutRight,
        reached: (given) =>
          `At ${toOne(given)} sixty plates stand at about ${strength.withUnit(between(ratios, strengths, given))}.`,
        answerWords: `At about ${toOne(answer)} sixty plates pass ${goal}.`,
        hints: [
          'Plates are not what is short. Set sixty of them in the sentence above and turn the reflux up.',
          `With sixty plates it is ${stands(after - 1)}, and ${stands(after)}.`,
        ],
      },
    };
  },
};

/** Where rising heights pass a level, straight between points; null where they do not. */
function crossing(x: readonly number[], y: readonly number[], level: number): number | null {
  const k = y.findIndex((height) => height >= level);
  if (k < 1) return null;
  return x[k - 1]! + ((level - y[k - 1]!) / (y[k]! - y[k - 1]!)) * (x[k]! - x[k - 1]!);
}

/** Height at x, straight between points; the ends hold outside. */
function between(x: readonly number[], y: readonly number[], at: number): number {
  const next = x.findIndex((one) => one >= at);
  if (next === 0) return y[0]!;
  if (next < 0) return y.at(-1)!;
  return y[next - 1]! + ((at - x[next - 1]!) / (x[next]! - x[next - 1]!)) * (y[next]! - y[next - 1]!);
}
