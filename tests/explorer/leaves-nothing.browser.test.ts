// Nothing a test changes on the page outlives it, whether it puts it back or not (tests/support/leaves-no-page.ts).

import { describe, expect, it } from 'vitest';
import { page } from 'vitest/browser';

const state = (): unknown => ({
  things: document.body.children.length,
  marks: [...document.documentElement.getAttributeNames(), ...document.body.getAttributeNames()],
  kept: [localStorage.length, sessionStorage.length],
  hash: location.hash,
  size: [innerWidth, innerHeight],
});

describe('what a test changes on its page', () => {
  const before = state();

  it('stands while it runs', async () => {
    document.body.innerHTML = '<p>left</p>';
    document.documentElement.dataset.theme = 'dark';
    document.body.setAttribute('class', 'left');
    localStorage.setItem('left', 'yes');
    sessionStorage.setItem('left', 'yes');
    location.hash = '#left';
    await page.viewport(500, 300);
    expect(state()).not.toEqual(before);
  });

  it('is gone in the next', () => {
    expect(state()).toEqual(before);
  });
});
