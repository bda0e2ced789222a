// A reader writes formulas on a page of their own: they follow the sentence, are corrected, stopped, plotted, kept.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults, explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

/** A page of the reader's own with a setup sentence and these formulas. */
async function opened(
  texts: readonly string[],
  options: Parameters<typeof explorer.open>[1] = {},
): Promise<{ page: Page; reader: Reader; problems: readonly string[] }> {
  const { page, problems } = await explorer.open('#the-ceiling', options);
  await page.locator('main figure svg').first().waitFor();
  await page.getByRole('button', { name: 'Blank page' }).click();
  await add(page, 'Setup sentence');
  await page.keyboard.press('Escape');
  for (const text of texts) {
    await add(page, 'Formula');
    await page.keyboard.type(text);
  }
  return { page, reader: new Reader(page), problems };
}

async function add(page: Page, kind: string): Promise<void> {
  await page.locator('.page-adding button, [data-do=add]').last().click();
  await page.locator('.add-list').getByRole('button', { name: kind, exact: true }).click();
  await page.locator('[data-entry] :is(textarea, select, input):focus').waitFor();
}

const lines = (page: Page): ReturnType<Page['locator']> => page.locator('kp-formula');

async function shows(page: Page, line: number, text: string): Promise<void> {
  await expect.poll(async () => plain(await lines(page).nth(line).innerText())).toContain(text);
}

function plain(text: string): string {
  return text.replace(/[\s\u00a0\u200b]+/gu, ' ');
}

describe('formulas', () => {
  it('are typed, follow the numbers of the sentence and each other, and are undone', async () => {
    const { page, reader, problems } = await opened(['pure = volume * strength', 'bottles = pure / 40% / (0.7 L)']);
    await shows(page, 0, '= 11.4 L');
    await shows(page, 1, '= 40.714');
    await reader.type('strength of the charge', '10');
    await shows(page, 0, '= 12 L');
    await shows(page, 1, '= 42.857');
    await page.keyboard.press('Control+z');
    await shows(page, 0, '= 11.4 L');
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(problems).toEqual([]);
  });

  it('say what is wrong with nonsense and circles, and mend a name on request', async () => {
    const { page, problems } = await opened(['volum * 2', 'a = b', 'b = a + 1']);
    await shows(page, 0, 'Nothing here is called ‘volum’: did you mean volume?');
    await shows(page, 1, 'This goes in a circle: a needs b and b needs a: give one of them a value of its own.');
    await shows(page, 2, 'This goes in a circle: b needs a and a needs b');
    await page.getByRole('button', { name: 'Put volume' }).click();
    await shows(page, 0, '= 240 L');
    await lines(page).nth(1).getByRole('textbox', { name: 'Formula' }).fill('a = 3');
    await shows(page, 2, '= 4');
    await lines(page).nth(0).getByRole('textbox', { name: 'Formula' }).fill('import("x")');
    await shows(page, 0, 'Text in quotes has no place in a formula');
    await shows(page, 0, '240 L, before');
    expect(problems).toEqual([]);
  });

  it('are stopped when they take too long, while the page goes on', async () => {
    const twelve = (call: string): string => `sum(${Array.from({ length: 12 }, () => call).join(', ')})`;
    const calls = ['azeotropeStrength(x)', 'd0(x)', 'd1(x)', 'd2(x)'];
    const { page, reader, problems } = await opened([
      'volume / 2',
      ...calls.map((call, k) => `d${String(k)}(x) = ${twelve(call)}`),
      '2 * d3(1 atm) + d3(90 kPa)',
    ]);
    await shows(page, 5, 'It took too long (more than 1 s) or too much memory, and was stopped');
    await reader.type('volume of the charge', '100');
    await shows(page, 0, '= 50 L');
    await lines(page).nth(5).getByRole('textbox', { name: 'Formula' }).fill('d0(1 atm) / 12');
    await shows(page, 5, '= 0.97');
    expect(problems).toEqual([]);
  });

  it('are plotted, shown in the reader’s units, and kept over a reload', async () => {
    const { page, reader, problems } = await opened(['t = boilingPoint(strength, pressure)']);
    await shows(page, 0, '= 92.517 °C');
    await page.getByRole('button', { name: 'Plot it' }).click();
    await reader.sees(() => reader.figure(), 't against strength, from');
    await reader.sees(() => reader.figure(), 'now 92.517 °C at 9.5 % vol');
    await page.getByRole('button', { name: 'US gal, °F, proof, BTU/h' }).click();
    await shows(page, 0, '= 198.53 °F');
    await reader.sees(() => reader.figure(), 'now 198.53 °F at 18.927 proof');
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.reload();
    // The address names a page of the reader's own: it is there again without a click.
    await shows(page, 0, '= 198.53 °F');
    expect(new URL(page.url()).hash).toMatch(/^#page-1/u);
    await reader.sees(() => reader.figure(), 'now 198.53 °F at 18.927 proof');
    expect(problems).toEqual([]);
  });

  it('load mathjs when a page first holds one, and not before', async () => {
    const asked: string[] = [];
    const { page } = await explorer.open('#the-ceiling');
    page.on('request', (request) => asked.push(request.url()));
    await page.locator('main figure svg').first().waitFor();
    await page.getByRole('button', { name: 'Blank page' }).click();
    await add(page, 'Text');
    await page.keyboard.press('Escape');
    expect(asked.filter((url) => /formula\.worker/u.test(url))).toEqual([]);
    await add(page, 'Formula');
    await page.keyboard.type('2 + 3');
    await shows(page, 0, '= 5');
    expect(asked.filter((url) => /formula\.worker/u.test(url))).toHaveLength(1);
  });

  it('fit a phone, with their list of names open', async () => {
    const { page, problems } = await opened(['heatUp = heatToBoil(volume, strength, 18 °C, pressure) / heat'], {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
    });
    await shows(page, 0, '= 1.9128 h');
    await page.getByRole('button', { name: 'Names and functions' }).click();
    await page.locator('kp-names li').first().waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(problems).toEqual([]);
  });
});
