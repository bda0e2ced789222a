// A question as a kind of entry: one of the questions there are, or one that somebody wrote.

import { html, nothing } from 'lit';
import { letters, tooLong } from '../../state/limits.js';
import type { Json } from '../../state/notebook-record.js';
import { anyKind, good, wrong, type Checked, type Here } from '../entry.js';
import { leaderLooksOn, paperWanted } from '../leader.js';
import { questionNamed, questions } from './list.js';
import { noQuestion, poseOwn, type OwnQuestion } from './own.js';
import { questionView } from './question-view.js';

/** The name of a question, or one that somebody wrote. */
export type QuestionData = { readonly question: string } | { readonly own: OwnQuestion };

export const question = anyKind<QuestionData, Record<string, never>>({
  name: 'question',
  title: 'Question',
  about: 'a sentence with a blank for a number, checked and with hints',
  start: { own: noQuestion },
  check,
  label: (data) => ('own' in data ? `question ‘${data.own.lead}’` : `question: ${data.question.replaceAll('-', ' ')}`),
  asksLater: (data, scenario) => ('own' in data ? {} : questionNamed(data.question)!.asks(scenario)),
  view,
  edit: () => import('./edit.js'),
  checkWork,
  words,
});

function view(here: Here<QuestionData>): unknown {
  const { data, later, units } = here;
  const leads = leaderLooksOn();
  const shown = paperWanted() === null ? writtenIn(here) : '';
  const answered = ({ detail }: HTMLElementEventMap['kp-answered']): void => {
    const { text, met } = detail;
    here.keep(() => ({ written: text, met }), { says: 'answer written', together: `answer:${here.id}` });
  };
  if ('own' in data) {
    const posed = poseOwn(data.own, here.results, units);
    if (posed === null) return html`<p class="nothing-yet">This question is not finished yet.</p>`;
    return html`<div @kp-answered=${answered}>${questionView(posed, shown, leads)}</div>`;
  }
  const whole = later?.whole;
  if (whole === undefined) return nothing;
  const name = data.question;
  const posed = here.once('posed', [name, whole, units], () => questionNamed(name)!.pose({ ...whole, units }));
  return posed === null ? nothing : html`<div @kp-answered=${answered}>${questionView(posed, shown, leads)}</div>`;
}

function words(here: Here<QuestionData>): string {
  const { data } = here;
  const written = writtenIn(here);
  const asks = 'own' in data ? `${data.own.lead} … ${data.own.tail}` : data.question.replaceAll('-', ' ');
  return `Question: ${asks} ${written === '' ? 'Not answered yet.' : `Answered: ${written}.`}`;
}

/** What was written before, read without trust. */
function writtenIn({ work }: Here<QuestionData>): string {
  const { written } = (work ?? {}) as { written?: Json };
  return typeof written === 'string' ? written : '';
}

function checkWork(work: Json): string | undefined {
  const { written, met } = (work ?? {}) as { written?: Json; met?: Json };
  if (typeof written !== 'string' || typeof met !== 'boolean') {
    return 'an answer needs `written`, a string, and `met`, true or false';
  }
  return tooLong(written, letters.answer);
}

function check(data: Json): Checked<QuestionData> {
  const { question: name, own } = (data ?? {}) as { question?: Json; own?: Json };
  if (own !== undefined) return checkOwn(own);
  if (typeof name === 'string' && questionNamed(name) !== undefined) return good({ question: name });
  return wrong(`a question needs \`question\`, one of ${questions.map((one) => one.name).join(', ')}, or \`own\``);
}

function checkOwn(own: Json): Checked<QuestionData> {
  const { lead, tail, answer, within, hints } = (own ?? {}) as Partial<Record<keyof OwnQuestion, Json>>;
  const isText = (value: unknown): value is string => typeof value === 'string';
  if (!isText(lead) || !isText(tail)) return wrong('`own` needs `lead` and `tail`, two strings');
  const named = isText(answer) || (typeof answer === 'number' && Number.isFinite(answer));
  if (!named) return wrong('`own` needs `answer`, a number or the name of a result');
  if (typeof within !== 'number' || !(within >= 0) || !Number.isFinite(within))
    return wrong('`own` needs `within`, per cent, at least 0');
  const [first, second] = Array.isArray(hints) ? (hints as readonly Json[]) : [];
  if (!isText(first) || !isText(second)) return wrong('`own` needs `hints`, two strings');
  const texts = [lead, tail, first, second, String(answer)];
  const why = texts.map((one) => tooLong(one, letters.question)).find((one) => one !== undefined);
  if (why !== undefined) return wrong(why);
  return good({ own: { lead, tail, answer, within, hints: [first, second] } });
}
