// Lesson 1: a mixture has one boil, and what rises from it is neither alcohol nor water.

import { overTheLiquid } from '../../figures/over-the-liquid.js';
import { boilOf, overLiquidRows } from './rows.js';
import { fixed } from '../../text/format.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { Lesson } from './lesson.js';
import { kettleCaution, modelSource, round } from './shared.js';
import { stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

export const whatBoils: Lesson<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'what-boils',
  title: 'What boils',
  promise: 'One boil, not two, and what rises from it.',
  goal: 'say at what temperature a wash boils, how strong is what rises from it, and why that is neither pure alcohol nor water.',
  opening: [
    'In the open air at sea level alcohol boils at ((78 °C)) (173 °F) and water at ((100 °C)) (212 °F). So it seems plain what happens in a kettle of [[wash]]: at 78 the alcohol goes over, and when it has gone the water begins. Many who have never run a still believe something like it. Distilling would be easy then: one run, pure alcohol, stop.',
    'It is not so, and the curve below says by how much. But first your own idea of it, before you scroll on. Along the foot stands how strong the boiling liquid is; draw above it how strong you think the [[vapour]] is that rises from it, once it has been [[condensed]].',
  ],
  guess: 'vapour',
  sentence: [
    'A kettle of ',
    { blank: 'charge.strength' },
    ' comes to the boil in air of ',
    { blank: 'still.air.pressure_Pa' },
    '.',
  ],
  inFocus: 'charge.strength',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  numbers: ({ scenario, answers: { equilibrium }, units }) => {
    const { strength, temperature } = units;
    const own = boilOf(equilibrium.slice, scenario.charge.strength);
    const [water, alcohol] = [boilOf(equilibrium.slice, 0), boilOf(equilibrium.slice, 1)];
    const half = boilOf(equilibrium.slice, 0.5);
    const times = own.vapour / own.liquid;
    const stronger =
      times >= 1.05
        ? `, {{${fixed(times, 1)} times}} as strong as what it rose from`
        : ', hardly stronger than what it rose from';
    return {
      tries: {
        figures: [
          {
            figure: overTheLiquid,
            rows: overLiquidRows(equilibrium, scenario.charge.strength, stillOf(scenario).air.pressure_Pa, units),
            keeps: false,
          },
        ],
        words: [
          `A liquid of {{${strength.withUnit(own.liquid)}}} boils at {{${temperature.withUnit(own.temperature_K)}}}. The first vapour holds {{${strength.withUnit(own.vapour)}}}${stronger}.`,
        ],
      },
      why: [
        `A mixture is *one* liquid, and it has one [[boiling point]]. Here water alone boils at ((${temperature.withUnit(water.temperature_K)})), alcohol alone at ((${temperature.withUnit(alcohol.temperature_K)})), and a liquid of ((${round(0.5, units)})) at ((${temperature.withUnit(half.temperature_K)})), which is neither. At its boil both leave together. Alcohol leaves more readily, so the vapour is stronger than the liquid; but water goes with it from the first bubble on.`,
        'Because alcohol leaves faster than water, the liquid that stays grows weaker, and a weaker liquid boils hotter. That is why the [[kettle temperature]] does not stand at 78 and then jump. It creeps up through the whole run, and what runs from the [[spout]] grows weaker all the while.',
      ],
      whyFigure: null,
      sayings: [
        {
          says: 'Water starts boiling after the alcohol has gone.',
          answer: `Then the kettle would stand at ((${temperature.withUnit(alcohol.temperature_K)})) until the alcohol was out, and what ran first would be pure. Yours boils at {{${temperature.withUnit(own.temperature_K)}}} and gives {{${strength.withUnit(own.vapour)}}}: what is missing to 100 is water that boiled with it.`,
        },
      ],
      source: modelSource(equilibrium),
    };
  },
  steps: [
    'Set the strength to 5, 10, 20, 40 and 80 % vol, one after the other. Each time write down the boil and what rises.',
    'Where does one boil do most for you? Where hardly anything?',
    'Now take the pressure down to 80 kPa, as on a mountain. Which panel moves, and which hardly does?',
  ],
  caution: kettleCaution,
  assumed:
    'The first vapour of a large kettle, before the boil has changed what is in it; its strength is that of the spirit it condenses to, measured at 20 °C.',
  questions: ['what-rises', 'what-boils-at'],
  ownWords: {
    prompt: 'A new hand says: ‘At 78 degrees the alcohol comes off, and after that the water.’ What do you tell them?',
    ours: 'A mixture does not boil in two goes. It is one liquid with a boil of its own, somewhere between that of alcohol and that of water, and nearer to water’s the weaker it is. Both leave together, alcohol more readily, so what rises is stronger than what stays, but there is water in it from the start. As the kettle grows weaker it boils hotter and what rises is weaker too.',
  },
  leader: {
    before:
      'Nothing is heated. Show the guess on a wall or hand out the worksheet; everyone draws before anyone speaks. Ask two people with different lines to explain theirs, and only then show the answer.',
    minutes: [8, 10, 8, 8, 6],
    found: [
      'The boil falls and the vapour grows stronger, but not in step: from 5 to 20 % vol the vapour gains some 31 % vol, from 40 to 80 only 9.',
      'Most at the weak end, where the curve stands far over the thin diagonal; hardly anything above 90 % vol.',
      'The whole boil moves down by some 6 °C. What rises hardly changes: pressure shifts when it boils, not what comes of it.',
    ],
    listen: [
      '‘78 degrees’ as the point where alcohol boils off. Ask at what temperature the kettle on the page boils, and where 78 stands on the figure: only at the strong end.',
      '‘Pure at first, then diluted.’ Ask what else is in the first drop, if it is 55 % vol.',
      'Vapour and liquid confused. Ask which of the two axes is in the kettle and which runs from the spout.',
    ],
  },
};
