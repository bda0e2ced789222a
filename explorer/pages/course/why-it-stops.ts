// Lesson 4: at the azeotrope the vapour is as strong as the liquid, and no column goes beyond.

import { massFractionFromMoleFraction, toSI } from '#lib/index.js';
import { ofRuns } from '../../figures/run/of-runs.js';
import { runFigure } from '../../figures/run/run-figure.js';
import { strengthCorner } from '../../figures/strength-steps.js';
import type { Given } from '../../entries/entry.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { RunQuestion } from '../../worker/kinds/run.js';
import { boilingAt, measureOf, wholeRun } from './questions.js';
import { boilOf, lessonRunRows, strengthStepsRows } from './rows.js';
import { type DrawnPart, runResults } from '../../state/run-results.js';
import { fixed, joined, trimmed } from '../../text/format.js';
import type { Lesson, Saying } from './lesson.js';
import { degrees, modelSource, round, spoutCaution, whenMeasureIsIn } from './shared.js';
import { ratioOf } from '../../state/problems.js';
import { numberAt, stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

type Asked = {
  readonly run: RunQuestion<DrawnPart>;
  readonly equilibrium: EquilibriumQuestion;
  readonly lowerPressure: EquilibriumQuestion;
};

/** A change of weather, Pa: invented, an ordinary one. */
const weather_Pa = toSI(1, 'kPa');
const counted = 0.9;
/** Ideal plates in the figure of the last tenth. */
const manyPlates = 30;

export const whyItStops: Lesson<Asked> = {
  name: 'why-it-stops',
  title: 'Why it stops',
  promise: 'Why no column, however tall, runs pure.',
  goal: 'say what the azeotrope is, and why plates and reflux lead up to it and not past it.',
  opening: [
    'Each plate lifts the spirit a little. Then enough of them should lift it all the way: build the column tall enough, send enough back, and pure alcohol must run from the [[spout]]. When it does not, people blame the column, the packing, the thermometer.',
    'Take the column of the last page. With four plates and with twelve you see below what it gives. What would it give with twenty, forty, sixty? Draw it before you scroll on.',
  ],
  guess: 'ceiling',
  sentence: [
    'A column of ',
    { blank: 'still.column.count' },
    ', each ',
    { blank: 'still.column.efficiency' },
    ' efficient, runs at reflux ',
    { blank: 'sheet[2].reflux' },
    ' in air of ',
    { blank: 'still.air.pressure_Pa' },
    '.',
  ],
  inFocus: 'still.column.count',
  asks: (scenario) => ({
    run: wholeRun(scenario),
    equilibrium: boilingOf(scenario),
    lowerPressure: boilingAt(stillOf(scenario).air.pressure_Pa - weather_Pa),
  }),
  numbers: (now, kept) => {
    const { scenario, answers, units } = now;
    const { equilibrium } = answers;
    const rows = lessonRunRows(named(now), kept.map(named), equilibrium, stillOf(scenario).air.pressure_Pa, units);
    const { best } = runResults(answers.run.solution, counted);
    const measure = units.volume.withUnit(measureOf(scenario));
    const stands = units.strength.withUnit(whenMeasureIsIn(scenario, answers.run));
    const { azeotrope } = equilibrium;
    const { strength } = units;
    const short = azeotrope === null ? '' : `, and the line stands at ((${strength.withUnit(azeotrope.strength)}))`;
    return {
      tries: {
        figures: [{ figure: runFigure, rows: ofRuns(rows), keeps: true }],
        words: [
          `When the first ((${measure})) are in, the spout stands at {{${stands}}}. It never stood higher than {{${strength.withUnit(best)}}}, in the first drops after the holding${short}. Try to get past it.`,
        ],
      },
      why: why(now),
      whyFigure: {
        figure: strengthCorner,
        rows: strengthStepsRows(
          equilibrium,
          scenario.charge.strength,
          manyPlates,
          stillOf(scenario).air.pressure_Pa,
          units,
        ),
        keeps: false,
      },
      sayings: sayings(now),
      source: `Measured at 1 atm: mole fraction 0.8943 at 78.15 °C (Carey and Lewis, 1932). ${modelSource(equilibrium)}`,
    };
  },
  steps: [
    'Do your best to cross the line: sixty plates, 100 % efficient, reflux 30 : 1. Write down the highest the spout ever stands.',
    'Go back to twelve plates at 65 % and 3 : 1. Change one of the three at a time, as far as it goes. Which lifts the spout most when the first litres are in, and which stops helping first?',
    'Climb a mountain: set the pressure to 70 kPa. Does the ceiling move?',
  ],
  caution: spoutCaution,
  assumed:
    'Charge and still are invented; 120 L at 9.5 % vol unless you set another on an earlier page. The staircase in the last tenth is ideal and everything is sent back: thirty plates above the same kettle.',
  questions: ['over-azeotrope', 'reflux-for-ninety-six'],
  ownWords: {
    prompt:
      'A visitor says: ‘Ours makes 95 %. A few plates more and we shall have a hundred.’ Answer in three sentences.',
    ours: 'A plate lifts the spirit only because the vapour is stronger than the liquid it rises from. That difference shrinks as the spirit gets stronger and is gone at 97.2 % vol, the azeotrope: there liquid and vapour are the same, and boiling it changes nothing. More plates and more reflux bring you nearer to that line, but no number of them takes you over it.',
  },
  leader: {
    before:
      'The heart of the course. Let the guesses stand next to each other before the answer is shown; nearly every group has lines that run to 100, and they remember the hatched region afterwards.',
    minutes: [8, 12, 10, 8, 8],
    found: [
      'At best 97.17 % vol in the first drops, and 97.12 when the first 2 L are in. The line stands at 97.20, and nothing crosses it.',
      'From 93.7 % vol: sixty plates 95.8, reflux 30 : 1 95.1, ideal plates 95.0. Plates lift it most, but thirty do as much as sixty; from there on only reflux helps, at the price of hours.',
      'By a few tenths: from 97.2 to 97.4 % vol. Thin air is no way out; only deep vacuum would be, and no open still has it.',
    ],
    listen: [
      '‘The column is not good enough.’ Ask what an ideal plate would do with a liquid of 97.2 % vol.',
      '‘The rest is dirt’ or ‘the rest is something that will not boil’. The rest is water, and it boils along with the alcohol.',
      '‘But 96 % is on the bottle.’ That is the end of push, not of physics; or it is per cent by mass. Both numbers are on the page.',
    ],
  },
};

function why({ scenario, answers, units }: Given<Asked>): readonly string[] {
  const { azeotrope, slice } = answers.equilibrium;
  const { strength } = units;
  if (azeotrope === null)
    return ['At this pressure the model has no azeotrope: the vapour is stronger than the liquid to the end.'];
  const rises = (liquid: number): string =>
    `((${round(liquid, units)})) gives ((${strength.withUnit(boilOf(slice, liquid).vapour)}))`;
  const mass = fixed(100 * massFractionFromMoleFraction(azeotrope.moleFraction), 1);
  const at = strength.withUnit(azeotrope.strength);
  return [
    `A plate lifts the spirit because the vapour is stronger than the liquid it rises from. A liquid of ${rises(0.5)}, one of ${rises(0.9)}, one of ${rises(0.95)}: the lift gets less and less. If it came to nothing at 100, a tall column could creep up to pure alcohol. It comes to nothing before that, at ((${at})). There the vapour is exactly as strong as the liquid. Boil it, condense it, boil it again: nothing changes. That mixture is the [[azeotrope]].`,
    'It is no fault of the still. In a weak liquid the water pushes alcohol out; that is why the first plates do so much. In a strong one it is the water that is scarce, and it is the water that is pushed out, until it leaves as readily as the alcohol. Past the azeotrope it leaves *more* readily, and the vapour would be weaker than the liquid. Reflux and plates run up to that line. Reflux decides how near: at a low ratio liquid and vapour agree somewhere lower in the column, a [[pinch]], and further plates change nothing. Yours runs at {{' +
      `${joined(trimmed(ratioOf(scenario), 2), ': 1')}}}.`,
    `The same mixture is ((${mass} %)) [[by mass]] and ((${at})): who says that a column stops at 96 is often quoting the first as if it were the second.`,
  ];
}

function sayings({ answers, units }: Given<Asked>): readonly Saying[] {
  const { azeotrope, slice } = answers.equilibrium;
  const lower = answers.lowerPressure.azeotrope;
  const more: Saying = {
    says: 'More plates will get me to 100 %.',
    answer: 'They get you to the azeotrope, and there each of them has the same liquid above and below it.',
  };
  if (azeotrope === null || lower === null) return [more];
  const span = boilOf(slice, counted).temperature_K - azeotrope.temperature_K;
  const drift = azeotrope.temperature_K - lower.temperature_K;
  return [
    more,
    {
      says: 'The head’s thermometer tells exactly how pure it is.',
      answer: `From ((${round(counted, units)})) to the azeotrope the boil moves by ((${degrees(span, units)})) in all, and a change of ((${units.pressure.withUnit(weather_Pa)})) in the weather moves it by ((${degrees(drift, units)})). Near the ceiling a [[hydrometer]] tells, read at its own temperature; the [[head temperature]] tells when the strength has *fallen*.`,
    },
  ];
}

function named({ scenario, answers }: Given<Asked>): { label: string; run: LessonRunOf } {
  const plates = numberAt(scenario, 'still.column.count') ?? 0;
  return { label: `${plates} ${plates === 1 ? 'plate' : 'plates'}`, run: answers.run.solution };
}

type LessonRunOf = Given<Asked>['answers']['run']['solution'];
