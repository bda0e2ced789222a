// Whether a text is nothing but an address.

import { describe, expect, it } from 'vitest';
import { addressIn } from '../../../explorer/keep/address-text.js';

describe('a text', () => {
  it.each([
    ['#the-ceiling', 'the-ceiling'],
    ['#the-ceiling?v=1&plates=9', 'the-ceiling?v=1&plates=9'],
    ['https://still.example/kp/#the-doubler?v=1', 'the-doubler?v=1'],
    ['http://localhost:5173/?x#words', 'words'],
  ])('%j is the address %j', (text, address) => {
    expect(addressIn(text)).toBe(address);
  });

  it.each([
    '',
    'words',
    'see #words',
    'ftp://a/#words',
    '#Words',
    '#',
    '#9',
    '#a b',
    '# a',
    '#a?b c',
    'https://a b/#words',
    '{"#": 1}',
  ])('%j is none', (text) => {
    expect(addressIn(text)).toBeUndefined();
  });

  it('that is longer than any address is looked at no further than to its first #', () => {
    let looked = 0;
    const text = `https://still.example/#a?${'#a?'.repeat(700_000)} `;
    // The very text behind an object that counts what is asked of it.
    const watched = {
      length: text.length,
      indexOf: (part: string) => {
        looked += text.indexOf(part);
        return text.indexOf(part);
      },
    };
    expect(addressIn(watched as unknown as string)).toBeUndefined();
    expect(looked).toBeLessThan(100);
  });
});
