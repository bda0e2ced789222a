// A reader whose system writes a decimal comma sees and types one everywhere; addresses and files keep the point.

import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

describe('a reader with a decimal comma', () => {
  it('reads it in sentences, figures and tables, types it, and hands on points', async () => {
    const { page, problems } = await explorer.open('#the-ceiling', { locale: 'de-DE' });
    const reader = new Reader(page);
    const figure = page.locator('main kp-figure').first();
    await figure.locator('figure').waitFor();
    expect(await reader.number('strength of the charge')).toBe('9,5 % vol');
    await reader.type('strength of the charge', '12,25');
    await reader.sees(() => reader.number('strength of the charge'), '12,25 % vol');
    await reader.sees(() => reader.entry('The run in words'), ',');
    expect(await reader.figure()).toMatch(/\d,\d % vol/u);
    await expect.poll(() => page.url()).toMatch(/#the-ceiling\?v=2&strength=12\.25$/u);
    await figure.getByRole('button', { name: 'Show the numbers' }).click();
    const cells = await figure.locator('.numbers td').allInnerTexts();
    expect(cells.filter((cell) => /^\d+,\d+$/u.test(cell)).length).toBeGreaterThan(10);
    expect(cells.filter((cell) => cell.includes('.'))).toEqual([]);
    await figure.getByRole('button', { name: 'Take it along' }).click();
    const download = page.waitForEvent('download');
    await figure.getByRole('button', { name: 'Save as CSV' }).click();
    const csv = await text(await (await download).createReadStream());
    expect(csv.split('\r\n')[1]).toMatch(/^\d+\.\d+(,\d+\.\d+){6}$/u);
    expect(problems).toEqual([]);
  });
});
