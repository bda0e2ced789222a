// A page printed or saved as PDF: A4, figures at the width of a book whatever screen they come from, nothing that
// only a hand on a screen can use.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

describe('a page on paper', () => {
  it('from a phone is as from a desk: figures at book width, no buttons, the notebook’s name beside the book’s', async () => {
    const { page, problems } = await explorer.open('#the-ceiling', { viewport: { width: 390, height: 844 } });
    const reader = new Reader(page);
    await page.locator('main figure').nth(3).waitFor();
    await reader.type('plates', '20');
    await page.getByRole('link', { name: 'Keep and open' }).click();
    await page.getByLabel('Its name').fill('October "wash"');
    await page.getByRole('link', { name: 'The ceiling' }).click();
    await page.getByLabel('Its name').waitFor({ state: 'detached' });
    await page.locator('main figure').nth(3).waitFor();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const widths = await page
      .locator('.kp-figure-svg')
      .evaluateAll((all) => all.map((svg) => svg.getAttribute('width')));
    expect(new Set(widths)).toEqual(new Set(['608', '432']));
    expect(await page.locator('button:visible').count()).toBe(0);
    const head = await page.locator('.page-head').evaluate((element) => getComputedStyle(element, '::before').content);
    expect(head).toContain('October');
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(problems).toEqual([]);
  });

  it('is saved as PDF on A4, in as many pages as a book would take', async () => {
    const { page } = await explorer.open('#the-ceiling');
    await page.locator('main figure').nth(3).waitFor();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const sizes = [...pdf.matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/gu)].map((match) =>
      [match[1], match[2]].map(Number),
    );
    // 210 by 297 mm in points.
    expect(sizes.length).toBeGreaterThan(2);
    expect(sizes.length).toBeLessThan(8);
    for (const [width, height] of sizes) {
      expect(Math.abs(width! - 595.28)).toBeLessThan(1);
      expect(Math.abs(height! - 841.89)).toBeLessThan(1);
    }
  });
});
