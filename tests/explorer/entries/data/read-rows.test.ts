// A reader's own table: every sort of separator, units in the header, and each cell that cannot be read said with its
// line, its value and what would be right, while all others are kept.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offered, spelled } from '../../../../explorer/entries/data/offered.js';
import { mostRows, readRows } from '../../../../explorer/entries/data/read-rows.js';

const log = 'time [h],collected [L],spout [% vol],head [°C]\n0:00,0,91.5,78.4\n0:30,1.2,90,78.6\n1:00,2.5,,79.1\n';

describe('rows of a log', () => {
  it('become columns in SI with names and quantities, clock times too', () => {
    const { columns, rows, faults } = readRows(log);
    expect(faults).toEqual([]);
    expect(rows).toBe(3);
    expect(columns.map(({ name, unit }) => [name, unit?.quantity])).toEqual([
      ['time', 'time'],
      ['collected', 'volume'],
      ['spout', 'strength'],
      ['head', 'temperature'],
    ]);
    expect(columns[0]!.values).toEqual([0, 1800, 3600]);
    expect(columns[1]!.values).toEqual([0, expect.closeTo(0.0012, 12), expect.closeTo(0.0025, 12)]);
    expect(columns[2]!.values).toEqual([expect.closeTo(0.915, 12), 0.9, NaN]);
    expect(columns[3]!.values[0]).toBeCloseTo(351.55, 9);
  });

  it.each([
    ['semicolons and decimal commas', 'spout, % vol;head (°F)\n91,5;173,1\n'],
    ['tabs', 'spout [% vol]\thead [°F]\n91.5\t173.1\n'],
    ['a mark of byte order and lines that end twice', '\ufeffspout [% vol],head [°F]\r\n91.5,173.1\r\n'],
  ])('may be separated by %s', (_, text) => {
    const { columns, faults } = readRows(text);
    expect(faults).toEqual([]);
    expect(columns.map(({ name, unit }) => `${name} ${unit!.unit}`)).toEqual(['spout % vol', 'head °F']);
    expect(columns.map(({ values }) => values[0])).toEqual([expect.closeTo(0.915, 12), expect.closeTo(351.54, 2)]);
  });

  it('may have bare numbers and names in quotes with commas in them', () => {
    const { columns, faults } = readRows('"what, exactly",note\n1,2\n');
    expect(faults).toEqual([]);
    expect(columns.map(({ name, unit, values }) => [name, unit, values])).toEqual([
      ['what, exactly', null, [1]],
      ['note', null, [2]],
    ]);
  });
});

describe('what cannot be read', () => {
  it('is said with line, column, value and what would be right; all else is kept', () => {
    const { columns, rows, faults } = readRows('collected [L],spout [% vol]\n1,91\ntwo,90\n3,140\n\n4,88,7\n');
    expect(faults).toEqual([
      { line: 3, column: 'collected', value: 'two', right: 'a number in L, such as 12.5' },
      { line: 4, column: 'spout', value: '140', right: 'a strength from 0 to 100 % vol' },
      { line: 6, column: '', value: '3 cells', right: 'as many cells as the header has, 2' },
    ]);
    expect(rows).toBe(4);
    expect(columns[0]!.values).toEqual([0.001, NaN, 0.003, 0.004]);
    expect(columns[1]!.values).toEqual([0.91, 0.9, NaN, 0.88]);
  });

  it('counts lines of the text, also after a cell that goes over two', () => {
    expect(readRows('"a\nb",c\n1,x\n').faults).toEqual([
      { line: 3, column: 'c', value: 'x', right: 'a number, such as 12.5' },
    ]);
  });

  it('is a unit nobody knows: its numbers are taken as bare', () => {
    const { columns, faults } = readRows('depth [fathom]\n3\n');
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ line: 1, column: 'depth', value: 'fathom' });
    expect(faults[0]!.right).toContain('% vol');
    expect(columns[0]).toEqual({ name: 'depth', unit: null, values: [3] });
  });

  it('are rows beyond the limit: they are not drawn, and that is said', () => {
    const { rows, faults } = readRows(`n\n${'1\n'.repeat(mostRows + 2)}`);
    expect(rows).toBe(mostRows);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ line: mostRows + 2, value: `${String(mostRows + 2)} rows` });
  });

  it('is never a reason to fall over: any text is read, each row of it in every column', () => {
    const text = fc.array(fc.constantFrom('a', '1', ',', ';', '\t', '\n', '"', '[L]', '1,5', '%', ' '), {
      maxLength: 60,
    });
    fc.assert(
      fc.property(text, (parts) => {
        const { columns, rows, faults } = readRows(parts.join(''));
        for (const { values } of columns) expect(values).toHaveLength(rows);
        for (const { line, value, right } of faults)
          expect([line > 0, value !== '', right !== '']).toEqual([true, true, true]);
      }),
    );
  });
});

describe('names for formulas', () => {
  it('are written as a formula writes them', () => {
    expect(['spout', 'Head, read', 'Stärke 2', '°', '2nd run'].map(spelled)).toEqual([
      'spout',
      'headRead',
      'starke2',
      'column',
      'column2ndRun',
    ]);
  });

  it('hold first, last, lowest, highest and mean, gaps left out; nothing where a column has no number', () => {
    const values = new Map(offered(readRows(log).columns).map(({ name, value }) => [name, value]));
    expect(values.get('spoutFirst')).toBeCloseTo(0.915, 12);
    expect(values.get('spoutLast')).toBe(0.9);
    expect(values.get('headHighest')).toBeCloseTo(352.25, 9);
    expect(values.get('collectedMean')).toBeCloseTo(0.0037 / 3, 12);
    expect(offered(readRows('spout [% vol]\n,\n').columns)[0]!.value).toBeNull();
  });
});
