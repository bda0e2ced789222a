// What stands at the end of a text and says nothing.

import { describe, expect, it } from 'vitest';
import { withoutEnd, withoutZeros } from '../../../explorer/text/ends.js';

describe('the end of a text', () => {
  it.each([
    ['9.50', '9.5'],
    ['9,500', '9,5'],
    ['9.0', '9'],
    ['0.10', '0.1'],
    ['1\u200900.0', '1\u200900'],
  ])('%j is written %j without zeros that say nothing', (text, short) => {
    expect(withoutZeros(text)).toBe(short);
  });

  it('is taken off, letter by letter, and nothing else', () => {
    expect(withoutEnd('a-b--', '-')).toBe('a-b');
    expect(withoutEnd('---', '-')).toBe('');
    expect(withoutEnd('', '-')).toBe('');
  });
});
