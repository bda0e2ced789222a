// Text typed into a blank becomes one number, or is refused for a stated reason; nothing is guessed.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixed } from '../../../explorer/text/format.js';
import type { DecimalMark } from '../../../explorer/text/locale.js';
import { readText, type Readable } from '../../../explorer/text/parse.js';

const plain: Readable = {
  fromShown: (shown) => shown,
  units: new Map([['kg', (value) => 1000 * value]]),
  engine: false,
};
const withEngine: Readable = { ...plain, engine: true };

describe('a typed text', () => {
  it.each([
    ['9.5', 9.5],
    ['9,5', 9.5],
    [' 9.5 ', 9.5],
    ['9.', 9],
    ['.5', 0.5],
    [',5', 0.5],
    ['0,125', 0.125],
    ['18 767', 18767],
    ['18\u202f767', 18767],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['−3', -3],
    ['-3', -3],
    ['+3', 3],
    ['18.767', 18.767],
  ])("'%s' is read as %d", (text, value) => {
    expect(readText(text, plain)).toEqual({ kind: 'value', si: value });
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['twelve', 'noNumber'],
    ['1.2.3', 'noNumber'],
    ['1 2', 'noNumber'],
    ['--3', 'noNumber'],
    ['1,000', 'ambiguousComma'],
    ['18,767', 'ambiguousComma'],
    ['3 furlongs', 'unknownUnit'],
  ])("'%s' is refused: %s", (text, reason) => {
    expect(readText(text, plain)).toEqual({ kind: 'refused', reason });
  });

  it('with one mark before three digits is decimal where it is the reader’s own mark, and refused where it is not', () => {
    expect(readText('1,234', plain, ',')).toEqual({ kind: 'value', si: 1.234 });
    expect(readText('18.767', plain, ',')).toEqual({ kind: 'refused', reason: 'ambiguousComma' });
    expect(readText('18.767', plain, '.')).toEqual({ kind: 'value', si: 18.767 });
    expect(readText('1.2', plain, ',')).toEqual({ kind: 'value', si: 1.2 });
  });

  it('is read back as it was written, with either mark', () => {
    const numbers = fc.tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(numbers, fc.constantFrom<DecimalMark>('.', ','), ([digits, decimals], mark) => {
        const value = digits / 10 ** decimals;
        expect(readText(fixed(value, decimals, mark), plain, mark)).toEqual({ kind: 'value', si: value });
      }),
    );
  });

  it('with a unit of the small table is read in that unit, however it is spelt', () => {
    for (const text of ['2 kg', '2kg', '2 KG', '2 k.g.']) {
      expect(readText(text, plain)).toEqual({ kind: 'value', si: 2000 });
    }
  });

  it('with any other unit is left to the formula engine', () => {
    expect(readText('21 qt', withEngine)).toEqual({ kind: 'ask', number: 21, unit: 'qt' });
  });

  it('is the same number with a decimal comma as with a decimal point', () => {
    // Three digits after a comma may be thousands and are refused; every other number of digits is decimal.
    const decimals = fc.tuple(fc.integer({ min: 0, max: 9999 }), fc.stringMatching(/^\d{1,2}$|^\d{4,6}$/));
    fc.assert(
      fc.property(decimals, ([whole, part]) => {
        const point = readText(`${String(whole)}.${part}`, plain);
        expect(point.kind).toBe('value');
        expect(readText(`${String(whole)},${part}`, plain)).toEqual(point);
      }),
    );
  });

  it('never throws, whatever it is', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(['value', 'ask', 'refused']).toContain(readText(text, withEngine).kind);
      }),
    );
  });
});
