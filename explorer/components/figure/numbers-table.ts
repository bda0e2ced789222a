// The numbers behind a figure as a real table, shown when asked for.

import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { DataTable } from '../../figures/figure.js';

export function numbersTable(table: DataTable): TemplateResult {
  return html`<div class="numbers" role="region" aria-label=${table.caption} tabindex="0">
    <table class="figures-table">
      <caption class="spoken-only">
        ${table.caption}
      </caption>
      <thead>
        <tr>
          ${table.columns.map(({ title, unit }) => html`<th scope="col">${title}${unit === '' ? '' : `, ${unit}`}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${table.rows.map(
          ([head, ...cells]) =>
            html`<tr>
              <th scope="row">${head}</th>
              ${cells.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
