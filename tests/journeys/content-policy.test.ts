// The content policy holds whatever a reader does, and a breach would be seen.

import { describe, expect, it } from 'vitest';
import { contentPolicy } from '../../explorer/build/content-policy.js';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

describe('the content policy', () => {
  it('allows nothing inline, nothing evaluated and nothing from elsewhere', () => {
    expect(contentPolicy).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self';/u);
    expect(contentPolicy).not.toContain('unsafe');
    expect(contentPolicy).not.toContain('http');
  });

  it('stands in the page itself, so that it holds on any host', async () => {
    const { page } = await explorer.open();
    const meta = page.locator('meta[http-equiv="Content-Security-Policy"]');
    expect(await meta.getAttribute('content')).toBe(contentPolicy);
  });

  // That each page keeps it is seen in reads-well.test.ts.
  it('is kept by figures that show their numbers', async () => {
    const { page, problems } = await explorer.open('#the-ceiling');
    await page.locator('main figure').nth(3).waitFor();
    const words = page.getByRole('button', { name: 'Show the numbers' });
    for (let left = await words.count(); left > 0; left--) await words.first().click();
    expect(problems).toEqual([]);
  });

  it('is kept by a unit that the formula engine reads', async () => {
    const { page, problems } = await explorer.open('#the-ceiling');
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('volume of the charge', '100 qt');
    await reader.sees(() => reader.number('volume of the charge'), '94.6 L');
    expect(problems).toEqual([]);
  });

  it('would be seen to be broken: an inline style, an evaluated text, a request to elsewhere', async () => {
    const { page, problems } = await explorer.open();
    await page.locator('main figure').first().waitFor();
    expect(problems).toEqual([]);
    await page.evaluate(() => {
      document.body.append(Object.assign(document.createElement('style'), { textContent: 'p { color: red }' }));
      document.body.setAttribute('style', 'color: red');
      const script = document.createElement('script');
      try {
        script.textContent = 'document.title = "evil"';
      } catch {
        // Refused as it is written; a browser without Trusted Types refuses it when it is put in.
      }
      document.body.append(script);
      void fetch('https://elsewhere.invalid/').catch(() => undefined);
    });
    await page.evaluate("void import('https://elsewhere.invalid/evil.js').catch(() => undefined)");
    const refused = (directive: string): boolean => problems.some((line) => line.includes(`refused by ${directive}`));
    for (const directive of [
      'style-src-elem',
      'style-src-attr',
      'script-src-elem',
      'connect-src',
      'require-trusted-types-for',
    ]) {
      await expect.poll(() => refused(directive)).toBe(true);
    }
    expect(await page.title()).not.toBe('evil');
  });
});
