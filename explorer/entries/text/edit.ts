// Writing a text entry: the text as it is kept, with its marks.

import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { atMost } from '../../components/field/at-most.js';
import { letters } from '../../state/limits.js';
import type { Here } from '../entry.js';
import type { TextData } from './kind.js';

export function edit({ id, data: { text }, change }: Here<TextData>): unknown {
  const type = (event: Event): void => {
    const written = (event.target as HTMLTextAreaElement).value;
    change(() => ({ text: written }), { says: 'text written', together: `text:${id}` });
  };
  return html`<label class="edit-field">
    <span>Text; an empty line begins a new paragraph, *stars* stress, [[double brackets]] explain a word</span>
    <textarea rows="6" data-in-history ${atMost(letters.text)} .value=${live(text)} @input=${type}></textarea>
  </label>`;
}
