// Choosing a question, or writing one.

import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import type { Here } from '../entry.js';
import type { QuestionData } from './kind.js';
import { questions } from './list.js';
import { noQuestion, type OwnQuestion } from './own.js';

const written = 'written here';

export function edit(here: Here<QuestionData>): unknown {
  const { data, change, keep } = here;
  const choose = (event: Event): void => {
    const name = (event.target as HTMLSelectElement).value;
    keep(() => undefined, { together: 'question chosen' });
    const next: QuestionData = name === written ? { own: noQuestion } : { question: name };
    change(() => next, { says: 'question chosen', together: 'question chosen' });
  };
  return html`<label class="edit-field">
      <span>Which question</span>
      <select @change=${choose}>
        <option value=${written} ?selected=${'own' in data}>one of your own</option>
        ${questions.map(
          ({ name }) =>
            html`<option value=${name} ?selected=${'question' in data && data.question === name}>
              ${name.replaceAll('-', ' ')}
            </option>`,
        )}
      </select>
    </label>
    ${'own' in data ? fields(here, data.own) : nothing}`;
}

function fields({ id, change }: Here<QuestionData>, own: OwnQuestion): unknown {
  const field = (label: string, value: string, put: (text: string) => Partial<OwnQuestion>): unknown => {
    const type = (event: Event): void => {
      const part = put((event.target as HTMLInputElement).value);
      change((data) => ('own' in data ? { own: { ...data.own, ...part } } : data), {
        says: 'question written',
        together: `question:${id}:${label}`,
      });
    };
    return html`<label class="edit-field">
      <span>${label}</span>
      <input type="text" data-in-history ${atMost(letters.question)} .value=${live(value)} @input=${type} />
    </label>`;
  };
  const number = (text: string): number => Number(text.replace(',', '.'));
  return [
    field('Words before the blank', own.lead, (lead) => ({ lead })),
    field('Words after it, its unit first', own.tail, (tail) => ({ tail })),
    field('The answer: a number in that unit, or the name of a result of this page', String(own.answer), (text) => ({
      answer: text.trim() !== '' && Number.isFinite(number(text)) ? number(text) : text.trim(),
    })),
    field('Near enough, per cent of the answer', String(own.within), (text) =>
      number(text) >= 0 ? { within: number(text) } : {},
    ),
    field('First hint, in general', own.hints[0], (hint) => ({ hints: [hint, own.hints[1]] })),
    field('Second hint, with numbers', own.hints[1], (hint) => ({ hints: [own.hints[0], hint] })),
  ];
}
