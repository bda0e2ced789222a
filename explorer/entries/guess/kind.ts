// A guess as a kind of entry: one of the guesses there are, drawn by the reader before the answer is shown.

import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../../components/guess/kp-guess.js';
import type { GuessState } from '../../components/guess/kp-guess.js';
import type { Json } from '../../state/notebook-record.js';
import { anyKind, good, wrong, type Checked, type Here } from '../entry.js';
import { paperWanted } from '../leader.js';
import type { PosedGuess } from './definition.js';
import { guesses, guessNamed } from './list.js';
import { gapInNumbers, readGuess } from './reading.js';
import { guessWork, untouched } from './work.js';

export interface GuessData {
  /** Name of a guess. */
  readonly guess: string;
  /** Its caution stands beside it already, as in a lesson. */
  readonly cautioned?: true;
}

export const guess = anyKind<GuessData, Record<string, never>>({
  name: 'guess',
  title: 'Your guess',
  about: 'an empty figure to draw on before its answer is shown',
  start: { guess: guesses[0]!.name },
  check,
  label: (data) => `your guess: ${guessNamed(data.guess)!.title}`,
  asksLater: (data, scenario) => guessNamed(data.guess)!.asks(scenario),
  view,
  cautions: (data) => (data.cautioned === true ? [] : [guessNamed(data.guess)!.caution]),
  edit: () => import('./edit.js'),
  checkWork: (work) => (work === null || guessWork(work) === untouched ? guessNeeds : undefined),
  words,
});

const guessNeeds = 'a guess needs `points`, a list of places that go to the right, and `answered`, true or false';

function view(here: Here<GuessData>): unknown {
  const { data, work, later, units, keep, once } = here;
  const whole = later?.whole;
  if (whole === undefined) {
    return later?.state === 'finished'
      ? html`<p class="entry-trouble" role="status">The solver cannot answer for these numbers: set others.</p>`
      : html`<div class="guess-to-come"></div>`;
  }
  const drawn = ({ detail }: CustomEvent<GuessState>): void => {
    const { points, answered } = detail;
    const before = guessWork(work).answered;
    keep(() => ({ points: points.map(({ x, y }) => ({ x, y })), answered }), {
      says: answered === before ? 'guess drawn' : answered ? 'answer shown' : 'answer put away',
    });
  };
  const definition = guessNamed(data.guess)!;
  const posed = once('posed', [data.guess, whole, units], () => ({
    ...definition.pose({ ...whole, units }),
    axes: definition.axes(units),
  }));
  const state = onPaper(guessWork(work));
  return html`<p class="guess-task">${posed.task}</p>
    ${keyed(
      data.guess,
      html`<kp-guess
        .figure=${posed.figure}
        .rows=${posed.rows}
        .panel=${posed.panel}
        .x=${posed.axes.x}
        .y=${posed.axes.y}
        .start=${posed.asked.start}
        .field=${posed.field}
        .points=${state.points}
        .answered=${state.answered}
        .task=${posed.task}
        .reply=${state.answered ? reply(posed, state) : nothing}
        @kp-guess=${drawn}
      ></kp-guess>`,
    )}`;
}

/** What the gap comes to and means. */
function reply({ asked, means }: PosedGuess, { points }: GuessState): unknown {
  const reading = readGuess(points, asked);
  const meaning = means(reading);
  return html`<p>${gapInNumbers(reading, asked)}</p>
    ${meaning === '' ? nothing : html`<p>${meaning}</p>`}`;
}

/** A worksheet has an empty figure, the sheet with answers has the answer. */
function onPaper(drawn: GuessState): GuessState {
  const paper = paperWanted();
  return paper === null ? drawn : { points: [], answered: paper === 'answers' };
}

function words({ data, work, units }: Here<GuessData>): string {
  const { title, axes } = guessNamed(data.guess)!;
  const { x, y } = axes(units);
  const { points, answered } = guessWork(work);
  const places = points.map((point) => `${y.withUnit(point.y)} at ${x.withUnit(point.x)}`);
  const drawn =
    places.length === 0
      ? 'nothing drawn yet'
      : `drawn through ${String(places.length)} points, from ${places[0]!} to ${places.at(-1)!}`;
  return `Your guess, ${title}: ${drawn}${answered ? '; the answer is shown' : ''}.`;
}

function check(data: Json): Checked<GuessData> {
  const { guess: name, cautioned } = (data ?? {}) as { guess?: Json; cautioned?: Json };
  if (typeof name === 'string' && guessNamed(name) !== undefined) {
    return good(cautioned === true ? { guess: name, cautioned } : { guess: name });
  }
  return wrong(`a guess needs \`guess\`, one of ${guesses.map((one) => one.name).join(', ')}`);
}
