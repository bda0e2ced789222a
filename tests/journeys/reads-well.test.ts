// Every page on a phone and on a desk, by day and by night: nothing for axe to complain of, nothing that moves
// while the page comes, nothing that runs off it at any width, also where the page is set from right to left.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { pages } from '../../explorer/pages/registry.js';
import { accessibilityFaults, contrastFaults, explorerInBrowser } from '../support/open-explorer.js';

const explorer = explorerInBrowser();
const extremes = '?v=1&strength=90&plates=60&reflux=30&pressure=70';
/** Movement of what can be seen (layout shift as browsers measure it) that nobody would notice. */
const unseen = 0.001;

/** On a page of the course the first figure is a guess; the one that follows the numbers comes after it. */
const cases = pages.map(({ name, title, group }) => {
  const withoutFigure = ['words', 'notebooks', 'what-the-gauges-say', 'the-books'].includes(name);
  const live = withoutFigure ? undefined : group === 'Course' ? 'main .setup-figure figure' : 'main figure';
  // The figure of this page follows numbers of its own, which no address sets.
  const follows = live !== undefined && name !== 'down-to-strength';
  return { name, title, live, follows };
});

describe.each(cases)('$title', ({ name, live, follows }) => {
  it('on a desk gives axe nothing to complain of, by night as well, and comes without anything moving', async () => {
    const { page, problems } = await explorer.open(`#${name}`);
    await stands(page, live);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await contrastFaults(page)).toEqual([]);
    expect(await movement(page)).toBeLessThan(unseen);
    expect(problems).toEqual([]);
  });

  // One test, since opening a page is what takes time.
  it('on a phone does so too, by night as well, and keeps every word at any width, either way, at the limits', async () => {
    const { page, problems } = await explorer.open(`#${name}`, { viewport: { width: 390, height: 844 } });
    await stands(page, live);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await contrastFaults(page)).toEqual([]);
    expect(await movement(page)).toBeLessThan(unseen);
    for (const dir of ['ltr', 'rtl']) {
      await page.evaluate((way) => (document.documentElement.dir = way), dir);
      for (const width of [390, 768, 1100, 1440, 2560]) {
        await widened(page, width);
        expect([width, dir, await page.evaluate(wordsOffThePage)]).toEqual([width, dir, []]);
      }
    }
    await page.evaluate(() => (document.documentElement.dir = 'ltr'));
    if (live !== undefined && follows) {
      const figure = page.locator(live).first();
      const before = await figure.getAttribute('aria-label');
      // The sheet of this page boils beyond what water does at so low a pressure, and says so.
      const limits = name === 'the-stills-limits' ? extremes.replace('&pressure=70', '') : extremes;
      await page.evaluate((hash) => (location.hash = hash), `#${name}${limits}`);
      await expect.poll(() => figure.getAttribute('aria-label')).not.toBe(before);
      for (const width of [390, 1440]) {
        await widened(page, width);
        expect([width, await page.evaluate(wordsOffThePage)]).toEqual([width, []]);
      }
    }
    expect(problems).toEqual([]);
  });
});

/** Waits until the page stands, its figure included where it has one. */
async function stands(page: Page, live: string | undefined): Promise<void> {
  await page
    .locator(live ?? 'main h1')
    .first()
    .waitFor();
}

/** Gives the window another width and waits until the figures have followed. */
async function widened(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** How much of what can be seen moved while the page came: the sum of layout shifts. */
function movement(page: Page): Promise<number> {
  return page.evaluate(async () => {
    // What moved in the last frame is noted with it.
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const observer = new PerformanceObserver(() => undefined);
    observer.observe({ type: 'layout-shift', buffered: true });
    const shifts = observer.takeRecords() as (PerformanceEntry & { readonly value: number })[];
    observer.disconnect();
    return shifts.reduce((sum, { value }) => sum + value, 0);
  });
}

/** Words that stand, in part, left or right of the window. */
function wordsOffThePage(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  const off = [...document.querySelectorAll('main :is(text, td, th, p, h1, h2, button, input)')].filter((element) => {
    const { left, right, width } = element.getBoundingClientRect();
    const scrolls = element.closest('.ruler, .numbers, .wide-table, .spoken-only') !== null;
    return width > 0 && !scrolls && (left < -0.5 || right > clientWidth + 0.5);
  });
  const words = off.map((element) => (element.textContent || element.tagName).trim());
  return scrollWidth > clientWidth ? [...words, `the page is ${String(scrollWidth)} px wide`] : words;
}
