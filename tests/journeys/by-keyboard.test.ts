// A reader without a mouse: Tab comes to everything that can be pressed or set, in the order it stands, and it is
// seen where one is.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';

const explorer = explorerInBrowser();

describe.each(['the-ceiling', 'one-plate-more', 'the-stills-limits', 'notebooks'])(
  'the page %s by keyboard',
  (name) => {
    it('can be gone through by Tab alone, each stop marked', async () => {
      const { page, problems } = await explorer.open(`#${name}`);
      await page.locator('.page-foot, .shelf, #bring-in').first().waitFor();
      await page.getByRole('link', { name: 'Keep and open' }).waitFor();
      // Until all runs are worked out a Stop stands beside their count; it goes when they are done.
      await expect.poll(() => page.getByRole('button', { name: 'Stop', exact: true }).count()).toBe(0);
      const wanted = await page.evaluate(() => {
        const all = [
          ...document.querySelectorAll<HTMLElement>(
            'button, a[href], input, select, textarea, summary, [tabindex="0"]',
          ),
        ];
        const stops = all.filter((one) => one.tabIndex >= 0 && one.checkVisibility({ visibilityProperty: true }));
        stops.forEach((one, index) => (one.dataset.stop = String(index)));
        return stops.filter((one) => !(one as HTMLButtonElement).disabled).map((one) => one.dataset.stop!);
      });
      expect(wanted.length).toBeGreaterThan(15);
      const reached: string[] = [];
      const unmarked: string[] = [];
      for (let presses = 0; presses < wanted.length; presses++) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate(() => {
          const one = document.activeElement as HTMLElement;
          const marked = [one, one.closest('label'), one.closest('.blank')].some((element) => {
            if (element === null) return false;
            const style = getComputedStyle(element);
            const background = style.backgroundColor !== 'rgba(0, 0, 0, 0)';
            return style.outlineStyle !== 'none' || background || Number.parseFloat(style.borderBottomWidth) >= 2;
          });
          return { stop: one.dataset.stop ?? one.tagName, marked, words: one.outerHTML.slice(0, 120) };
        });
        reached.push(at.stop);
        if (!at.marked) unmarked.push(at.words);
      }
      expect(reached).toEqual(wanted);
      expect(unmarked).toEqual([]);
      expect(problems).toEqual([]);
    });
  },
);
