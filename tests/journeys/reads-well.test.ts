// Every page on a phone and on a desk, by day and by night: nothing for axe to complain of, nothing that
// runs off the page.

import { describe, expect, it } from 'vitest';
import { pages } from '../../explorer/pages/registry.js';
import { accessibilityFaults, explorerInBrowser, type OpenPage } from '../support/open-explorer.js';

const explorer = explorerInBrowser();
const extremes = '?v=1&strength=90&plates=60&pressure=70&reflux=30';

const views = [390, 1440].flatMap((width) =>
  (['light', 'dark'] as const).map((colorScheme) => ({ width, colorScheme })),
);
const cases = pages.flatMap(({ name, title }) => views.map((view) => ({ name, title, ...view })));

describe.each(cases)('$title, $width px, $colorScheme', ({ name, width, colorScheme }) => {
  const open = async (settings = ''): Promise<OpenPage> => {
    const opened = await explorer.open(`#${name}${settings}`, { colorScheme, viewport: { width, height: 900 } });
    await opened.page.locator('main figure svg').first().waitFor();
    return opened;
  };

  it('has nothing for axe to complain of', async () => {
    const { page } = await open();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it('keeps every word on the page, at the limits too', async () => {
    const { page, problems } = await open(extremes);
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
