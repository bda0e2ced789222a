// The numbers of a figure as CSV: what another program reads is what the page shows.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvOf, plainCell } from '../../../../explorer/components/figure/take/csv.js';
import { fileName } from '../../../../explorer/components/hand/hand-over.js';
import { fixed } from '../../../../explorer/text/format.js';

const table = {
  caption: 'The run in numbers',
  columns: [
    { title: 'still', unit: '' },
    { title: 'head', unit: '°C' },
  ],
  rows: [
    ['12 plates', '78.4'],
    ['the "old" one, before', '−3,5'],
  ],
};

describe('a table as comma-separated values', () => {
  it('names each column with its unit and ends its lines as RFC 4180 has it', () => {
    expect(csvOf(table).split('\r\n')).toEqual([
      'still,head [°C]',
      '12 plates,78.4',
      '"the ""old"" one, before",-3.5',
      '',
    ]);
  });

  it('has each number with a decimal point and no other mark, whatever the page shows', () => {
    expect(
      ['18\u2009767', '18\u2009767,5', '−1.30', '0,5', '3 : 1', 'total', '9.5\u00a0%\u00a0vol'].map(plainCell),
    ).toEqual(['18767', '18767.5', '-1.30', '0.5', '3 : 1', 'total', '9.5 % vol']);
  });

  it('holds nothing that a spreadsheet would take for a formula', () => {
    expect(['=1+1', '+1 and more', '@sum', '-x'].map(plainCell)).toEqual(["'=1+1", "'+1 and more", "'@sum", "'-x"]);
    expect(plainCell('-3')).toBe('-3');
  });

  it('gives back every number the page can write', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (value, decimals) => {
          expect(Number(plainCell(fixed(value, decimals)))).toBe(Number(value.toFixed(decimals)) + 0);
        },
      ),
    );
  });

  it('can be read back cell by cell, whatever stands in it', () => {
    const cells = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(cells, (rows) => {
        const read = readCsv(csvOf({ ...table, rows })).slice(1);
        expect(read).toEqual(rows.map((row) => row.map(plainCell)));
      }),
    );
  });
});

describe('the name of a saved file', () => {
  it('is made of the title, in plain letters', () => {
    expect(fileName('Strength at the spout, by plates', 'csv')).toBe('strength-at-the-spout-by-plates.csv');
    expect(fileName('Pêche & poire: l’été', 'svg')).toBe('peche-poire-l-ete.svg');
  });

  it('is never empty, long, or a path', () => {
    fc.assert(
      fc.property(fc.string(), (title) => {
        expect(fileName(title, 'svg')).toMatch(/^[\p{L}\p{N}-]{1,60}\.svg$/u);
      }),
    );
    expect(fileName('../..', 'svg')).toBe('notebook.svg');
  });
});

/** Reads what RFC 4180 describes; no more than that. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      at++;
      while (text[at] !== '"' || text[at + 1] === '"') {
        if (text[at] === '"') at++;
        cell += text[at++]!;
      }
      at++;
    } else {
      while (text[at] !== ',' && text[at] !== '\r') cell += text[at++]!;
    }
    row.push(cell);
    if (text[at] === ',') at++;
    else {
      rows.push(row);
      row = [];
      at += 2;
    }
  }
  return rows;
}
