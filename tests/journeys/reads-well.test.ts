// Every page on a phone and on a desk, by day and by night: nothing for axe to complain of, nothing that
// runs off the page.

import { describe, expect, it } from 'vitest';
import { pages } from '../../explorer/pages/registry.js';
import { accessibilityFaults, explorerInBrowser } from '../support/open-explorer.js';

const explorer = explorerInBrowser();
const extremes = '?v=1&strength=90&plates=60&pressure=70&reflux=30';

/** On a page of the course the first figure is a guess; the one that follows the numbers comes after it. */
const figureOf = { course: 'main .setup-figure figure', pages: 'main figure' };
const cases = pages
  .filter(({ name }) => name !== 'words')
  .flatMap(({ name, title, group }) => {
    const live = group === 'Course' ? figureOf.course : figureOf.pages;
    return [390, 1440].map((width) => ({ name, title, width, live }));
  });

describe.each(cases)('$title at $width px', ({ name, width, live }) => {
  it('gives axe nothing to complain of by day and by night, and keeps every word on the page at the limits too', async () => {
    const { page, problems } = await explorer.open(`#${name}`, { viewport: { width, height: 900 } });
    const figure = page.locator(live).first();
    await figure.waitFor();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect([colorScheme, await accessibilityFaults(page)]).toEqual([colorScheme, []]);
    }
    expect(await page.evaluate(wordsOffThePage)).toEqual([]);
    const before = await figure.getAttribute('aria-label');
    await page.evaluate((hash) => (location.hash = hash), `#${name}${extremes}`);
    await expect.poll(() => figure.getAttribute('aria-label')).not.toBe(before);
    expect(await page.evaluate(wordsOffThePage)).toEqual([]);
    expect(problems).toEqual([]);
  });
});

/** Words that stand, in part, left or right of the window. */
function wordsOffThePage(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  const off = [...document.querySelectorAll('main :is(text, td, th, p, h1, h2, button, input)')].filter((element) => {
    const { left, right, width } = element.getBoundingClientRect();
    return width > 0 && element.closest('.ruler') === null && (left < -0.5 || right > clientWidth + 0.5);
  });
  const words = off.map((element) => (element.textContent || element.tagName).trim());
  return scrollWidth > clientWidth ? [...words, `the page is ${String(scrollWidth)} px wide`] : words;
}
