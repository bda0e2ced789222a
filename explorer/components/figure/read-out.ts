// The values at the cursor as a small table: in the margin when there is one, else under the figure.

import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { valueAt } from '../../figures/columns.js';
import type { ReadOut } from '../../figures/figure.js';

export function readOutTable(readOut: ReadOut, x: number): TemplateResult {
  // A run that has ended before the cursor has nothing to say there.
  const over = readOut.columns.map((column) => x > (column.x[column.x.length - 1] ?? -Infinity) * (1 + 1e-9));
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
            ${readOut.columns.map(
              (column, c) =>
                html`<td class=${column.hand}>
                  ${over[c] ? 'ended' : row.text(valueAt(column.x, row.values[c]!, x))}
                </td>`,
            )}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The same in words, for a screen reader at each step of the cursor. */
export function readOutWords(readOut: ReadOut, x: number): string {
  const column = readOut.columns[0];
  if (column === undefined) return readOut.at(x);
  const values = readOut.rows.map((row) => `${row.label} ${row.text(valueAt(column.x, row.values[0]!, x))}`);
  return `${readOut.at(x)}, ${readOut.note(x)}: ${values.join('; ')}`;
}
