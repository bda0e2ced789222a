// Every measurement file says what it is, whose it is and in which units; the bibliography knows the source.

import { describe, expect, it } from 'vitest';
import publishedSets from '../../reference/regression/published-sets.json' with { type: 'json' };
import { publishedTable } from '../support/published-table.js';
import { filesUnder, read } from '../support/tree.js';

const keys = [...read('reference/bibliography.bib').matchAll(/^@\w+\s*\{\s*([^,\s]+)\s*,/gm)].map((match) => match[1]);
const files = filesUnder('reference/measurements', /\.csv$/);

describe.each(files)('%s', (path) => {
  const header = read(path)
    .split('\n')
    .filter((line) => line.startsWith('#'))
    .map((line) => line.slice(2))
    .join('\n');
  const table = publishedTable(path.replace('reference/', ''));

  it('has a title, a source in the bibliography, units and what is known of its error', () => {
    expect(header.split('\n')[0]).toMatch(/\w+ .*\.$/);
    expect(header).toMatch(/^Units: /m);
    if (path.endsWith('azeotrope.csv')) {
      for (const { source } of table.rows) expect(keys).toContain(source);
      return;
    }
    const source = /^Source: (\w+);/m.exec(header)?.[1];
    expect(keys).toContain(source);
    expect(header).toMatch(/^Uncertainty/m);
  });

  it('has numbers in every cell but those of names', () => {
    for (const row of table.rows) {
      for (const [column, cell] of Object.entries(row)) {
        if (column !== 'source' && column !== 'kind') expect(cell, column).toMatch(/^-?\d+(\.\d+)?$/);
      }
    }
  });

  it('has mole fractions between 0 and 1, vapour richer than liquid below the azeotrope', () => {
    expect(table.rows.length).toBeGreaterThan(4);
    for (const row of table.rows) {
      const x = row.x1 === undefined ? undefined : Number(row.x1);
      const y = row.y1 === undefined ? undefined : Number(row.y1);
      for (const each of [x, y]) {
        if (each !== undefined) expect(each).toBeGreaterThanOrEqual(0);
        if (each !== undefined) expect(each).toBeLessThanOrEqual(1);
      }
      if (x !== undefined && y !== undefined && x > 0 && x < 0.8) expect(y, `x ${x}`).toBeGreaterThan(x);
    }
  });
});

describe('published sets', () => {
  it('cite the bibliography and give digits as printed', () => {
    for (const { key, source, coefficients } of publishedSets.sets) {
      expect(keys, key).toContain(source);
      for (const digits of Object.values(coefficients)) expect(digits).toMatch(/^-?\d+(\.\d+)?$/);
    }
  });

  it('have each a key of its own', () => {
    const names = publishedSets.sets.map(({ key }) => key);
    expect(new Set(names).size).toBe(names.length);
  });
});
