// Rows of one's own: typed on a page of one's own, drawn by Plot with the page's curves, known to a formula, still there
// after the page is loaded again.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults, explorerInBrowser } from '../support/open-explorer.js';

const explorer = explorerInBrowser();
const log = 'collected [L],spout [% vol],head [°C]\n0.5,93,78.5\n4,92.5,78.6\n8,80,82\nmany,70,85\n';

async function add(page: Page, kind: string): Promise<void> {
  await page.locator('.page-adding button, [data-do=add]').last().click();
  await page.locator('.add-list').getByRole('button', { name: kind, exact: true }).click();
  await page.locator('[data-entry] :is(textarea, select, input):focus').waitFor();
}

describe('data of one’s own', () => {
  it('are drawn, named in a formula, kept, and their faults said', async () => {
    const { page, problems } = await explorer.open('#the-ceiling');
    await page.locator('main figure svg').first().waitFor();
    await page.getByRole('button', { name: 'Blank page' }).click();
    await add(page, 'Data');
    await page.locator('.data-editor textarea').fill(log);
    await page.locator('.kp-plot').first().waitFor();
    expect(await page.locator('.data-faults').innerText()).toMatch(/Line 5, collected: many/u);
    await page.keyboard.press('Escape');
    await add(page, 'Formula');
    await page.locator('kp-formula').getByRole('textbox', { name: 'Formula' }).fill('spoutHighest - spoutLast');
    await expect.poll(() => page.locator('kp-formula').innerText()).toContain('23');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.reload();
    await page.locator('.kp-plot').first().waitFor();
    expect(await page.locator('.kp-plot .kp-points').count()).toBe(2);
    expect(problems).toEqual([]);
  });
});
