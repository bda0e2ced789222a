// 'What boils': the strength of what rises, and the liquid behind a thermometer.

import { moleFractionFromStrength, temperatureOnSlice, type CurveSlice } from '#lib/index.js';
import { boilOf } from '../../pages/course/rows.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { QuestionDefinition } from './definition.js';
import { roundStrength } from '../words.js';
import { strengthReadIn } from './readable.js';
import { boilingOf } from '../../state/derive.js';

type Asks = { readonly equilibrium: EquilibriumQuestion };

/** Asked about, unless it is the reader's own liquid: then the other. */
const liquids = [0.3, 0.5] as const;
/** % vol / 100 to either side that the second hint looks at. */
const beside = 0.05;
/** How near counts: what can be read off the figure. */
const readOff = { absolute: 0.02 } as const;
/** What the thermometer of the second question stands above the azeotrope's boil, K. */
const above_K = 12;
const nearInWash = { absolute: 0.015 } as const;

/** Strength of what rises from a liquid other than the reader's. */
export const whatRises: QuestionDefinition<Asks> = {
  name: 'what-rises',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  pose: ({ answers: { equilibrium }, scenario, units }) => {
    const { strength } = units;
    const { slice, azeotrope } = equilibrium;
    const liquid = Math.abs(scenario.charge.strength - liquids[0]) > 0.03 ? liquids[0] : liquids[1];
    const rises = (from: number): string => strength.withUnit(boilOf(slice, from).vapour);
    const asked = roundStrength(liquid, units);
    const reached = (given: number): string => {
      if (given <= liquid)
        return `${strength.withUnit(given)} is no stronger than the liquid itself, and boiling would part nothing.`;
      if (azeotrope !== null && given >= azeotrope.strength)
        return `${strength.withUnit(given)} is as strong as the azeotrope or stronger: nothing weaker gives that off.`;
      return `A vapour of ${strength.withUnit(given)} rises from a liquid of ${strength.withUnit(liquidUnder(slice, given))}.`;
    };
    return {
      lead: `A kettle of ${asked} comes to the boil. What rises first holds, condensed,`,
      tail: `${strength.unit}.`,
      read: strengthReadIn(units),
      asked: {
        answer: boilOf(slice, liquid).vapour,
        tolerance: readOff,
        reached,
        answerWords: `Over a liquid of ${asked} the vapour holds ${rises(liquid)}.`,
        hints: [
          `Find ${asked} along the foot of the figure, go straight up to the curve, and read across.`,
          `Over ${roundStrength(liquid - beside, units)} the curve stands at ${rises(liquid - beside)}, over ${roundStrength(liquid + beside, units)} at ${rises(liquid + beside)}.`,
        ],
      },
    };
  },
};

/** The liquid whose boil a thermometer shows. */
export const whatBoilsAt: QuestionDefinition<Asks> = {
  name: 'what-boils-at',
  asks: whatRises.asks,
  pose: ({ answers: { equilibrium }, units }) => {
    const { slice, azeotrope } = equilibrium;
    if (azeotrope === null) return null;
    const { strength, temperature } = units;
    const shown = Math.round(temperature.toShown(azeotrope.temperature_K + above_K));
    const temperature_K = temperature.fromShown(shown);
    const boils = (liquid: number): number => temperatureOnSlice(slice, moleFractionFromStrength(liquid));
    const answer = bisected((liquid) => boils(liquid) - temperature_K);
    const at = (liquid: number): string =>
      `${roundStrength(liquid, units)} boils at ${temperature.withUnit(boils(liquid))}`;
    const [low, high] = [Math.floor(20 * answer) / 20, Math.ceil(20 * answer + 1e-9) / 20];
    const reading = `${String(shown)}\u00a0${temperature.unit}`;
    return {
      lead: `The kettle’s thermometer reads ${reading} at the boil. The liquid in it holds`,
      tail: `${strength.unit}.`,
      read: strengthReadIn(units),
      asked: {
        answer,
        tolerance: nearInWash,
        reached: (given) =>
          `A liquid of ${strength.withUnit(given)} boils at ${temperature.withUnit(boils(Math.min(Math.max(given, 0), 1)))}.`,
        answerWords: `${reading} is the boil of a liquid of ${strength.withUnit(answer)}.`,
        hints: [
          'Use the lower panel: from the temperature across to the curve, and down.',
          `A liquid of ${at(low)}, one of ${at(high)}.`,
        ],
      },
    };
  },
};

/** The liquid that gives off a vapour of this strength. */
function liquidUnder(slice: CurveSlice, vapour: number): number {
  return bisected((liquid) => vapour - boilOf(slice, liquid).vapour);
}

/** Where a falling function of strength passes zero, on the side of the weak liquids; % vol / 100. */
function bisected(falling: (liquid: number) => number): number {
  let [low, high] = [0, 0.95];
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
