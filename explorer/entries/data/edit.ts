// Writing, pasting or opening the rows of a data entry, and choosing what they are drawn along.

import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { letters, tooLong } from '../../state/limits.js';
import type { Here } from '../entry.js';
import { rowsOf, type OwnData } from './kind.js';

export function edit({ id, data: { text, along }, change }: Here<OwnData>): unknown {
  const take = (field: HTMLElement, written: string, together?: string): void => {
    const said = field.closest('.data-editor')!.querySelector('.said')!;
    const long = tooLong(written, letters.any);
    said.textContent = long === undefined ? '' : `${long}. What was here before stays.`;
    if (long !== undefined) return;
    change((data) => ({ ...data, text: written }), {
      says: 'rows written',
      ...(together === undefined ? {} : { together }),
    });
  };
  const open = (event: Event): void => {
    const field = event.target as HTMLInputElement;
    const [file] = field.files ?? [];
    if (file === undefined) return;
    void file.text().then((written) => take(field, written));
    field.value = '';
  };
  const columns = rowsOf(text).columns;
  return html`<div class="data-editor">
    <label class="edit-field">
      <span
        >Rows as CSV. The first line names the columns with their units: collected [L], spout [% vol], head [°C]</span
      >
      <textarea
        rows="8"
        spellcheck="false"
        data-in-history
        .value=${live(text)}
        @input=${(event: Event) => take(event.target as HTMLElement, (event.target as HTMLTextAreaElement).value, `data:${id}`)}
      ></textarea>
    </label>
    <label class="edit-field">
      <span>Or open a file; it takes the place of the rows above, and Undo brings them back</span>
      <input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @change=${open} />
    </label>
    <label class="edit-field">
      <span>Drawn along</span>
      <select
        .value=${live(String(along))}
        ?disabled=${columns.length === 0}
        @change=${(event: Event) => {
          const chosen = Number((event.target as HTMLSelectElement).value);
          change((data) => ({ ...data, along: chosen }), { says: 'axis chosen' });
        }}
      >
        ${columns.map(({ name }, i) => html`<option value=${String(i)} ?selected=${i === along}>${name}</option>`)}
      </select>
    </label>
    <p class="said" role="status"></p>
  </div>`;
}
