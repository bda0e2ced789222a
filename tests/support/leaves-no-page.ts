// Before every test file in the browser: the page after a test is the page before it, and is as slow as it is told to be.

import { afterEach, beforeAll, inject } from 'vitest';
import { cdp, page } from 'vitest/browser';

beforeAll(async () => {
  const rate = inject('slowness');
  if (rate > 1) await cdp().send('Emulation.setCPUThrottlingRate', { rate });
});

const address = location.href;
const { innerWidth: width, innerHeight: height } = window;

// Runs after what a test file itself does after each test: hooks are undone in the order they were not made in.
afterEach(async () => {
  document.body.replaceChildren();
  for (const root of [document.documentElement, document.body])
    for (const name of root.getAttributeNames()) if (!own.has(name)) root.removeAttribute(name);
  localStorage.clear();
  sessionStorage.clear();
  if (location.href !== address) history.replaceState(null, '', address);
  scrollTo(0, 0);
  if (innerWidth !== width || innerHeight !== height) await page.viewport(width, height);
});

const own = new Set([document.documentElement, document.body].flatMap((root) => root.getAttributeNames()));
