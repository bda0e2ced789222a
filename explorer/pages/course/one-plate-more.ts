// Lesson 2: a plate boils once more what rose to it, and has less and less to gain.

import { strengthCorner, strengthSteps } from '../../figures/strength-steps.js';
import { strengthStepsRows } from './rows.js';
import { countInWords, ordinal } from '../../text/format.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { Lesson } from './lesson.js';
import { gain, modelSource, spoutCaution } from './shared.js';
import { stillOf, numberAt } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

export const onePlateMore: Lesson<{ readonly equilibrium: EquilibriumQuestion }> = {
  name: 'one-plate-more',
  title: 'One plate more',
  promise: 'What a plate does, and why the tenth does less than the first.',
  goal: 'follow the staircase of a column, and say what one plate adds at its foot and what it adds at its top.',
  opening: [
    'What rises from a kettle is stronger than what is in it. Condense it, pour it into a second kettle and boil that: what rises now is stronger again. A [[plate]] is such a second kettle without a fire. Vapour from below condenses in the little liquid it holds, and the heat that sets free boils the liquid anew. A [[doubler]] does the same in a vessel of its own.',
    'So one plate is one boil more. How far do you get with two, with four, with eight? Draw it before you scroll on.',
  ],
  guess: 'steps',
  sentence: [
    'A kettle of ',
    { blank: 'charge.strength' },
    ' under ',
    { blank: 'still.column.count' },
    ', each of them ideal, with everything sent back.',
  ],
  inFocus: 'still.column.count',
  asks: (scenario) => ({ equilibrium: boilingOf(scenario) }),
  numbers: ({ scenario, answers: { equilibrium }, units }) => {
    const { strength } = units;
    const { strength: kettleStrength } = scenario.charge;
    const plates = numberAt(scenario, 'still.column.count') ?? 0;
    const { pressure_Pa } = stillOf(scenario).air;
    const rows = strengthStepsRows(equilibrium, kettleStrength, plates, pressure_Pa, units);
    const steps = Array.from(rows.steps);
    const [kettle, top] = [steps[0]!, steps.at(-1)!];
    const ladder = strengthStepsRows(equilibrium, kettleStrength, 10, pressure_Pa, units).steps;
    const adds = (plate: number): string => gain(ladder[plate - 1]!, ladder[plate]!, units);
    const words =
      plates === 0
        ? [`The kettle alone gives {{${strength.withUnit(kettle)}}}: one step, and no plate to take another.`]
        : plates === 1
          ? [
              `From the kettle rises {{${strength.withUnit(kettle)}}}, and the one plate makes {{${strength.withUnit(top)}}} of it.`,
            ]
          : [
              `From the kettle rises {{${strength.withUnit(kettle)}}}. The first plate adds {{${adds(1)}}}, the {{${ordinal(plates)}}} only {{${gain(steps[plates - 1]!, top, units)}}}. At the top stands {{${strength.withUnit(top)}}}.`,
            ];
    return {
      tries: {
        figures: [
          { figure: strengthSteps, rows, keeps: false },
          { figure: strengthCorner, rows, keeps: false },
        ],
        words,
      },
      why: [
        'Each step goes *up* from the liquid to what rises from it, and *over* to the thin diagonal: condensed, that vapour is the liquid of the next plate. So the height of a step is the gap between the curve and the diagonal, and nothing else. Where the liquid is weak the gap is wide. Where it is strong the gap is narrow, and a plate standing there can do no more than one boil does there.',
        `From this kettle the first plate adds {{${adds(1)}}}, the fifth {{${adds(5)}}}, the tenth {{${adds(10)}}}. It is the same plate each time.`,
        'These plates are [[ideal plates]] and everything is sent back. A real one makes only part of the step, its [[efficiency]], and whatever you draw off makes all the steps smaller. No real column stands above this staircase; all stand below.',
      ],
      whyFigure: null,
      sayings: [
        {
          says: 'Twice the plates give twice the strength.',
          answer: `Four plates above this kettle give {{${strength.withUnit(ladder[4]!)}}}, eight give {{${strength.withUnit(ladder[8]!)}}}. What more plates give you is less what you see at the start of a run than how long it lasts: a column with plates to spare holds its strength while the kettle grows weak.`,
        },
      ],
      source: modelSource(equilibrium),
    };
  },
  steps: [
    'Set no plates at all, then one, two, three, four. Write down what stands at the top, and what the last plate added.',
    'Go on to eight, twelve, twenty. What does the last plate add now? Look for it in the right-hand figure, which is the last tenth made larger.',
    'With twelve plates, make the kettle stronger: 20 % vol, then 40. Which steps shrink, and which stay as they were?',
  ],
  caution: spoutCaution,
  assumed: `Ideal plates at total reflux, all at one pressure, and a kettle that does not weaken: the best ${countInWords(1)} charge could do at its first moment.`,
  questions: ['plates-to-ninety', 'plates-to-ninety-six'],
  ownWords: {
    prompt:
      'A friend wants to swap a column of fifteen plates for one of thirty, ‘to get it twice as strong’. What do you tell them?',
    ours: 'A plate is one boil more, and a boil can only add the gap between liquid and vapour where it stands. The first plates stand where that gap is wide and add a lot; by the fifteenth there is hardly a gap left, so fifteen more add a few tenths of a per cent. What they would gain is that the strength holds longer as the kettle weakens.',
  },
  leader: {
    before:
      'Best after ‘What boils’: the curve is the same one. A sheet with the curve and the diagonal, and a ruler, lets everyone draw a staircase by hand first.',
    minutes: [6, 12, 8, 8, 6],
    found: [
      'From 9.5 % vol: 54.8 from the kettle, then 82.5, 89.0, 91.7, 93.2. The first plate adds 28, the fourth 1.5.',
      'Hundredths. The twelfth plate adds 0.14 % vol, the twentieth 0.04.',
      'The first steps shrink, for the kettle already stands further up the curve. The steps near the top stay almost exactly where they were.',
    ],
    listen: [
      '‘Each plate adds so and so much.’ Have them read three steps off the figure, from three places.',
      '‘More plates, so purer.’ Ask what the last plate added, and what it would have added lower down.',
      '‘The plate is heated.’ Ask where its heat comes from. Vapour that condenses on it gives up what it took to boil.',
    ],
  },
};
