// A guess as a kind of entry: one of the guesses there are, drawn by the reader before the answer is shown.

import { html } from 'lit';
import type { GuessState } from '../../components/guess/kp-guess.js';
import type { Json } from '../../state/notebook-record.js';
import { anyKind, good, wrong, type Checked, type Here } from '../entry.js';
import { paperWanted } from '../leader.js';
import './kp-guess-entry.js';
import { guesses, guessNamed } from './list.js';
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
  view,
  cautions: (data) => (data.cautioned === true ? [] : [guessNamed(data.guess)!.caution]),
  edit: () => import('./edit.js'),
  checkWork: (work) => (work === null || guessWork(work) === untouched ? guessNeeds : undefined),
  words,
});

const guessNeeds = 'a guess needs `points`, a list of places that go to the right, and `answered`, true or false';

function view({ data, work, solver, scenario, units, keep }: Here<GuessData>): unknown {
  const drawn = ({ detail }: CustomEvent<GuessState>): void => {
    const { points, answered } = detail;
    const before = guessWork(work).answered;
    keep(() => ({ points: points.map(({ x, y }) => ({ x, y })), answered }), {
      says: answered === before ? 'guess drawn' : answered ? 'answer shown' : 'answer put away',
    });
  };
  return html`<kp-guess-entry
    .name=${data.guess}
    .state=${onPaper(guessWork(work))}
    .solver=${solver}
    .scenario=${scenario}
    .units=${units}
    @kp-guess=${drawn}
  ></kp-guess-entry>`;
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
