// Choosing which guess an entry is.

import { html } from 'lit';
import type { Here } from '../entry.js';
import type { GuessData } from './kind.js';
import { guesses } from './list.js';

export function edit({ data, change, keep }: Here<GuessData>): unknown {
  const choose = (event: Event): void => {
    const guess = (event.target as HTMLSelectElement).value;
    keep(() => undefined, { together: 'guess chosen' });
    change(() => ({ guess }), { says: 'guess chosen', together: 'guess chosen' });
  };
  return html`<label class="edit-field">
    <span>What is to be guessed</span>
    <select @change=${choose}>
      ${guesses.map(
        ({ name, title }) => html`<option value=${name} ?selected=${name === data.guess}>${title}</option>`,
      )}
    </select>
  </label>`;
}
