// The values at the cursor as a small table: in the margin when there is one, else under the figure.

import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { ReadOut } from '../../figures/figure.js';

export function readOutTable(readOut: ReadOut, x: number): TemplateResult {
  return html`<table class="read-out">
    <caption>
      <b>At ${readOut.at(x)}</b>
      ${readOut.note(x)}
    </caption>
    <thead>
      <tr>
        <td></td>
        ${readOut.columns.map((column) => html`<th scope="col" class=${column.hand}>${column.label}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${readOut.rows.map(
        (row) =>
          html`<tr>
            <th scope="row">${row.label}</th>
            ${row.texts(x).map((text, c) => html`<td class=${readOut.columns[c]!.hand}>${text}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The same in words, for a screen reader at each step of the cursor. */
export function readOutWords(readOut: ReadOut, x: number): string {
  const values = readOut.rows.map((row) => `${row.label} ${row.texts(x)[0] ?? ''}`);
  return `${readOut.at(x)}, ${readOut.note(x)}: ${values.join('; ')}`;
}
