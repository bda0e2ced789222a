// Reads a CSV file of reference/: lines that begin with # are its header, then names, then rows.

import { readFileSync } from 'node:fs';

export interface PublishedTable {
  readonly columns: readonly string[];
  /** Rows as printed; a number is a string of digits here. */
  readonly rows: readonly Readonly<Record<string, string>>[];
}

/** The table in `reference/<path>`. */
export function publishedTable(path: string): PublishedTable {
  const text = readFileSync(new URL(`../../reference/${path}`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const columns = lines[0]!.split(',');
  const rows = lines.slice(1).map((line) => {
    const cells = line.split(',');
    if (cells.length !== columns.length) throw new Error(`${path}: '${line}' has ${cells.length} cells`);
    return Object.fromEntries(columns.map((column, i) => [column, cells[i]!]));
  });
  return { columns, rows };
}
