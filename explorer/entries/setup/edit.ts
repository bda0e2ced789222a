// Writing a setup sentence: words, and a word to press for each number that can stand in it.

import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import { inputs, type Input } from '../../state/inputs.js';
import type { Here } from '../entry.js';
import type { SetupData } from './kind.js';
import { readSentence, written } from './written.js';

/** Those that formulas know, too. */
const often = inputs.filter(({ inFormulas }) => inFormulas !== undefined);
const others = inputs.filter((row) => !often.includes(row));

export function edit({ id, data, change }: Here<SetupData>): unknown {
  const text = written(data.sentence);
  const set = (next: string, together?: string): void =>
    change((before) => ({ ...before, sentence: readSentence(next) }), {
      says: 'setup sentence written',
      ...(together === undefined ? {} : { together }),
    });
  const type = (event: Event): void => set((event.target as HTMLTextAreaElement).value, `setup:${id}`);
  const insert = (event: Event, name: string): void => {
    const area = (event.target as Element).closest('.entry-editor')!.querySelector('textarea')!;
    const token = `{${name}}`;
    const at = area.selectionStart;
    set(area.value.slice(0, at) + token + area.value.slice(area.selectionEnd));
    area.focus();
    requestAnimationFrame(() => area.setSelectionRange(at + token.length, at + token.length));
  };
  const word = ({ name, label }: Input): unknown =>
    html`<button type="button" class="word-button" @click=${(event: Event) => insert(event, name)}>${label}</button> `;
  return html`<label class="edit-field">
      <span>Sentence; a name in braces is a number</span>
      <textarea rows="4" data-in-history ${atMost(letters.sentence)} .value=${live(text)} @input=${type}></textarea>
    </label>
    <p class="edit-choices">
      <span>Put a number in:</span>
      ${often.map(word)}
    </p>
    <details class="edit-choices">
      <summary>More numbers of stills and sheets</summary>
      ${others.map(word)}
    </details>`;
}
