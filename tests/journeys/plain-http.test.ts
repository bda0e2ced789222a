// Over plain HTTP, as from a small server in the still house: browsers leave out what they keep for HTTPS, and the
// explorer works all the same.

import { describe, expect, inject, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

describe('over plain HTTP', () => {
  it('a notebook is kept as it changes, and can be saved as a file', async () => {
    const { page, problems } = await explorer.open('#the-ceiling', { host: inject('plainUrl') });
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await page.getByRole('link', { name: 'Keep and open' }).click();
    await reader.sees(() => page.getByRole('region', { name: 'This notebook' }).innerText(), 'Kept in this browser');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).click();
    expect((await download).suggestedFilename()).toBe('notebook.kettle');
    await page.goto('about:blank');
    await page.goto(inject('plainUrl'));
    await reader.sees(() => reader.number('plates'), '20 plates');
    expect(problems).toEqual([]);
  });
});
