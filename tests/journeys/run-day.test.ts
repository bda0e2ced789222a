// The pages of a run day that ask no run: what the gauges say, bringing spirit down, the books.

import { describe, expect, it } from 'vitest';
import { accessibilityFaults, explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

describe('a run day', () => {
  it('brings a spirit down: typed, undone, there again after the page was left', async () => {
    const { page, problems } = await explorer.open('#down-to-strength');
    const reader = new Reader(page);
    const answer = (): Promise<string> => page.locator('.working-answer').first().innerText();
    await reader.sees(answer, 'Weigh in');
    const before = await answer();
    await reader.type('strength that is wanted', '40');
    await expect.poll(answer).not.toBe(before);
    await reader.sees(
      () =>
        page
          .locator('kp-figure figure')
          .first()
          .getAttribute('aria-label')
          .then((text) => text ?? ''),
      '40.0',
    );
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(answer).toBe(before);
    await reader.type('strength that is wanted', '30');
    await expect.poll(answer).not.toBe(before);
    await page.reload();
    await reader.sees(() => reader.number('strength that is wanted'), '30 % vol');
    expect(problems).toEqual([]);
  });

  it('pours jars of the run together at a press', async () => {
    const { page, problems } = await explorer.open('#down-to-strength');
    const reader = new Reader(page);
    const together = (): Promise<string> => reader.entry('Pouring together');
    await page.getByRole('button', { name: /^Put in jar 1 of the run/u }).click();
    await expect.poll(() => page.getByRole('spinbutton', { name: 'spirit 4: volume of the spirit' }).count()).toBe(1);
    const four = await together();
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await reader.seesChange(together, four);
    expect(problems).toEqual([]);
  });

  it('reads the kettle on a phone, and says when two readings cannot both be right', async () => {
    const { page, problems } = await explorer.open('#what-the-gauges-say', { viewport: { width: 390, height: 844 } });
    const reader = new Reader(page);
    const kettle = (): Promise<string> => reader.entry('The kettle');
    await reader.sees(kettle, 'What boils there holds 5.7 ± 0.3 % vol');
    await reader.sees(() => reader.entry('Can both be right?'), 'These agree.');
    await reader.type('what the kettle’s thermometer shows', '93');
    await reader.sees(() => reader.entry('Can both be right?'), 'These cannot both be right.');
    await reader.type('air pressure, or an altitude', '1500 m');
    await reader.sees(() => reader.number('air pressure, or an altitude'), '84.56 kPa');
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(problems).toEqual([]);
  });

  it('closes the books, and saves them for other programs', async () => {
    const { page, problems } = await explorer.open('#the-books');
    const reader = new Reader(page);
    const books = (): Promise<string> => page.locator('.working-answer').innerText();
    await reader.sees(books, 'are missing');
    await reader.type('line 6: strength of the spirit', '1.8');
    await reader.sees(books, 'the books close');
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as CSV' }).click();
    expect((await saved).suggestedFilename()).toBe('the-books.csv');
    expect(problems).toEqual([]);
  });
});
