// Lesson 3: what is sent back buys strength, and every part of it is boiled again.

import { ofRuns } from '../../figures/run/of-runs.js';
import { runFigure } from '../../figures/run/run-figure.js';
import { measureOf, wholeRun } from './questions.js';
import { lessonRunRows } from './rows.js';
import { type DrawnPart, runResults } from '../../state/run-results.js';
import type { Given } from '../../entries/entry.js';
import type { EquilibriumQuestion } from '../../worker/kinds/equilibrium.js';
import type { RunQuestion } from '../../worker/kinds/run.js';
import { clock, joined, trimmed } from '../../text/format.js';
import type { Lesson } from './lesson.js';
import { modelSource, round, spoutCaution, whenMeasureIsIn } from './shared.js';
import { ratioOf } from '../../state/problems.js';
import { stillOf } from '../../state/paths.js';
import { boilingOf } from '../../state/derive.js';

type Asked = { readonly run: RunQuestion<DrawnPart>; readonly equilibrium: EquilibriumQuestion };

/** Strength that is counted, % vol / 100. */
const counted = 0.9;
const toOne = (ratio: number): string => joined(trimmed(ratio, 2), ': 1');

export const reflux: Lesson<Asked> = {
  name: 'reflux',
  title: 'Reflux',
  promise: 'What sending spirit back buys you, and what you pay for it.',
  goal: 'say what a reflux ratio is, what more of it buys, and what it costs in hours and heat.',
  opening: [
    'The [[reflux condenser]] turns vapour at the head back into liquid. Part of it runs out of the [[spout]] and is yours. The rest runs back down the plates: that is [[reflux]]. At a [[reflux ratio]] of ((3 : 1)) three parts go back for each part you keep. Without it no liquid would come down to be boiled again, and a column would be nothing but a tall pipe.',
    'Sending spirit back makes the spout stronger; the upper figure shows it, for the first measure of spirit from an invented charge. And it looks as if it cost nothing, since what goes back is not lost. Does it? Draw into the lower figure how long that measure takes.',
  ],
  guess: 'reflux',
  sentence: [
    'A column of ',
    { blank: 'still.column.count' },
    ', each ',
    { blank: 'still.column.efficiency' },
    ' efficient, runs at reflux ',
    { blank: 'sheet[2].reflux' },
    ', heated by ',
    { blank: 'still.kettle.power_W' },
    '.',
  ],
  inFocus: 'sheet[2].reflux',
  asks: (scenario) => ({ run: wholeRun(scenario), equilibrium: boilingOf(scenario) }),
  numbers: (now, kept) => {
    const { scenario, answers, units } = now;
    const { equilibrium } = answers;
    const rows = lessonRunRows(named(now), kept.map(named), equilibrium, stillOf(scenario).air.pressure_Pa, units);
    const boiled = trimmed(ratioOf(scenario) + 1, 2);
    return {
      tries: {
        figures: [{ figure: runFigure, rows: ofRuns(rows), keeps: true }],
        words: [`${inWords(now, 'ink')}${kept.length === 0 ? '' : ` ${inWords(kept.at(-1)!, 'before')}`}`],
      },
      why: [
        'On each plate rising vapour meets liquid coming down; that meeting is what parts them. More coming down means that each plate makes nearly its whole step, so the spout is stronger and keeps so for longer, up to what the plates can do.',
        `But the kettle boils the same amount every minute, whatever you do at the head. The ratio only divides it. At {{${toOne(ratioOf(scenario))}}} you keep one part in {{${boiled}}}, at ((9 : 1)) one part in ten. So the hours, the heat and the cooling water for each litre you keep grow with the ratio *plus one*: a straight line up. The strength it buys presses against a ceiling. The first parts sent back are cheap at the price, the last are not.`,
      ],
      whyFigure: null,
      sayings: [
        {
          says: 'Reflux costs nothing, it only goes round in a circle.',
          answer: `The circle leads through the fire. At {{${toOne(ratioOf(scenario))}}} you boil {{${boiled}}} parts for each one you keep, and the condenser has to take the heat of all of them away again.`,
        },
      ],
      source: modelSource(equilibrium),
    };
  },
  steps: [
    'Press *Keep as a pencil line*. Then set the reflux to 6 : 1 and compare: the litres that come over strong, and the hours.',
    'Set 12 : 1, then 24 : 1. What do you still gain, and what does each doubling cost?',
    'Set the reflux to 0. What is left of twelve plates?',
    'Back at 3 : 1, halve the heat. What changes, and what does not?',
  ],
  caution: spoutCaution,
  assumed:
    'The charge is 120 L of wash at 9.5 % vol unless you set another on an earlier page; charge and still are invented. Time counts from the first vapour and includes thirty minutes of holding at total reflux, which make the first drops as strong as the plates can, at any ratio. The same heat boils the same amount of vapour each minute; heat lost through walls is not in it.',
  questions: ['boiled-per-kept', 'time-at-ratio'],
  ownWords: {
    prompt:
      'It is four in the afternoon, the spout has slipped to 88 % vol, and you want it back above 90. What will turning up the reflux do, and what does it cost you this evening?',
    ours: 'More of what condenses runs back down, each plate works better, and the spout climbs back for a while. But the kettle boils no faster, so what I keep each minute gets less: going from 3 : 1 to 7 : 1 halves it. I shall be here longer and burn more for each litre, and as the kettle weakens I shall have to turn it up again. At some point it is better to stop and keep the rest as feints.',
  },
  leader: {
    before:
      'A jug, and two cups to pour into, make the ratio plain: of every four cups boiled three go back into the jug. Ask how many times the jug is emptied to fill one cup.',
    minutes: [6, 14, 8, 8, 6],
    found: [
      'At 6 : 1 the spout stays above 90 % vol for 9.5 L instead of 6.3 L, and stands 0.8 % vol higher when the first 2 L are in. The run takes 4 h 40 min instead of 4 h 2 min.',
      'At 12 : 1 it is 10.8 L in 6 h 44 min, at 24 : 1 it is 11.3 L in 12 h 6 min: half a litre more for close to twice the hours.',
      'The plates give up what they held, and then the column gives no more than a kettle alone: nothing comes down to meet the vapour.',
      'The hours double, but for the thirty minutes of holding. The litres above 90 % vol stay what they were: the ratio sets them, not the fire. Only the first drop is a little weaker, for in thirty minutes the plates have seen half as much vapour. (A real still’s fire has limits of its own, flooding and weeping, which are not in this model.)',
    ],
    listen: [
      '‘It is not lost, so it is free.’ Ask what boils it the next time round.',
      '‘More heat makes it stronger.’ Let them try the heat with everything else left alone.',
      'Ratio taken as a share: 3 : 1 heard as a third. Ask how much of four parts is kept.',
    ],
  },
};

function named({ scenario, answers }: Given<Asked>): {
  label: string;
  run: Given<Asked>['answers']['run']['solution'];
} {
  return { label: toOne(ratioOf(scenario)), run: answers.run.solution };
}

function inWords({ scenario, answers, units }: Given<Asked>, hand: 'ink' | 'before'): string {
  const { volumeAbove_m3, duration_s } = runResults(answers.run.solution, counted);
  const number = (text: string): string => (hand === 'ink' ? `{{${text}}}` : `((${text}))`);
  const at = number(toOne(ratioOf(scenario)));
  const strong =
    volumeAbove_m3 === null
      ? `never reaches ((${round(counted, units)}))`
      : `stays above ((${round(counted, units)})) for ${number(units.volume.withUnit(volumeAbove_m3))}`;
  const measure = units.volume.withUnit(measureOf(scenario));
  const stands = number(units.strength.withUnit(whenMeasureIsIn(scenario, answers.run)));
  const head = hand === 'ink' ? `At ${at}` : `Before, at ${at},`;
  return `${head} the spout stands at ${stands} when the first ((${measure})) are in, and ${strong}. The whole run takes ${number(clock(duration_s))} from the first vapour.`;
}
