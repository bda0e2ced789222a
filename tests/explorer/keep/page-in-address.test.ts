// A page of the reader's own in an address: it comes back as it was, and what is no such page is refused.

import { describe, expect, it } from 'vitest';
import { packPage, unpackPage } from '../../../explorer/keep/page-in-address.js';
import type { PageRecord } from '../../../explorer/state/notebook-record.js';

/** A page with this many letters of text on it, in two texts: one alone may not be as long. */
const page = (letters: number): PageRecord => ({
  name: 'page-1',
  title: 'Mine',
  promise: '',
  entries: ['e1', 'e2'].map((id) => ({ id, kind: 'text', data: { text: 'a'.repeat(letters / 2) } })),
});

describe('a page in an address', () => {
  it('comes back as it was, in letters that addresses allow', async () => {
    const packed = await packPage(page(2000));
    expect(packed).toMatch(/^[\w-]+$/u);
    expect(await unpackPage(packed, [])).toEqual(page(2000));
  });

  it('may unpack to 200 kB and no more, however short it is', async () => {
    const [allowed, tooMuch] = await Promise.all([packPage(page(199_000)), packPage(page(201_000))]);
    expect(tooMuch.length).toBeLessThan(2000);
    expect(await unpackPage(allowed, [])).toEqual(page(199_000));
    expect(await unpackPage(tooMuch, [])).toBeUndefined();
  });

  it.each(['', 'nonsense', 'AAAA', '%%%'])('is nothing where it cannot be read: %j', async (packed) => {
    expect(await unpackPage(packed, [])).toBeUndefined();
  });
});
