// Choosing one of the pieces a kind can show: the editor that figures, words and tables share.

import { html } from 'lit';
import { live } from 'lit/directives/live.js';

export interface Choice {
  readonly name: string;
  readonly title: string;
}

export function choosing(
  label: string,
  choices: readonly Choice[],
  chosen: string,
  choose: (name: string) => void,
): unknown {
  return html`<label class="edit-field">
    <span>${label}</span>
    <select .value=${live(chosen)} @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
      ${choices.map(({ name, title }) => html`<option value=${name} ?selected=${name === chosen}>${title}</option>`)}
    </select>
  </label>`;
}
