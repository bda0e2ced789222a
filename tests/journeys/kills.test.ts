// A browser that is killed while a reader types: what was on disk is there again, and what is there is what was typed. How
// much typing is lost is measured by `npm run kills`, which has a clock; here the database itself says what it had.

import { afterEach, describe, expect, inject, it } from 'vitest';
import { killable, type Killable } from '../kills/killed.mjs';
import { keptTyping } from '../support/kept-in.js';

describe('a browser that is killed', () => {
  let browser: Killable | undefined;
  afterEach(() => browser?.remove());

  it.each([40, 120])('in the middle of a word, after %i letters, has what was written before', async (letters) => {
    browser = await killable(`${inject('url')}#page-1`);
    let written = '';
    const { text } = await browser.typeAndKill(async (page, typed) => {
      await expect.poll(async () => (await keptTyping(page)).length).toBeGreaterThan(letters);
      written = await keptTyping(page);
      expect(typed().startsWith(written.slice(0, letters))).toBe(true);
    });
    const there = await browser.reopened();
    expect(text.startsWith(there) || there.startsWith(text)).toBe(true);
    expect(there.length).toBeGreaterThanOrEqual(written.length);
  });
});
