// A setup sentence written by hand and read again.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSentence, written } from '../../../explorer/entries/setup/written.js';
import { inputs } from '../../../explorer/state/inputs.js';

const words = fc.string({ minLength: 1 }).filter((text) => !/[{}]/u.test(text));
const blank = fc.constantFrom(...inputs).map(({ key }) => ({ blank: key }));

describe('a setup sentence', () => {
  it('is read as it was written, numbers and words', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(words, blank)), (pairs) => {
        const sentence = pairs.flat();
        expect(readSentence(written(sentence))).toEqual(sentence);
      }),
    );
  });

  it('loses nothing of a text, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(written(readSentence(text))).toBe(text);
      }),
    );
  });

  it('leaves a name in braces that no number has as words', () => {
    expect(readSentence('With {plates} and {plate}.')).toEqual([
      'With ',
      { blank: 'still.column.count' },
      ' and {plate}.',
    ]);
  });
});
