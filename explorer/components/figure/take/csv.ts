// The numbers of a figure as a table for other programs: comma-separated values as RFC 4180 has them, in
// UTF-8, with the unit beside each name and a decimal point whatever the page shows.

import type { DataTable } from '../../../figures/figure.js';

/** Without it some spreadsheets take the file for another encoding and spoil '°C'. */
export const byteOrderMark = '\ufeff';

export function csvOf(table: DataTable): string {
  const head = table.columns.map(({ title, unit }) => (unit === '' ? title : `${title} [${unit}]`));
  return [head, ...table.rows.map((row) => row.map(plainCell))]
    .map((row) => `${row.map(quoted).join(',')}\r\n`)
    .join('');
}

/**
 * A number as other programs read it: '18\u2009767,5' and '−3' become '18767.5' and '-3'. Other words stay, but a
 * spreadsheet must not take them for a formula.
 */
export function plainCell(cell: string): string {
  const digits = cell.replace(/[\u2009\u202f\u00a0]/gu, '').replace('−', '-');
  if (/^-?\d+(?:[.,]\d+)?$/u.test(digits)) return digits.replace(',', '.');
  const words = cell.replaceAll(/[\u2009\u202f\u00a0]/gu, ' ');
  return /^[=+\-@\t\r]/u.test(words) ? `'${words}` : words;
}

function quoted(cell: string): string {
  return /[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
