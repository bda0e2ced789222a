// A reader makes a page of their own: from nothing, and from a ready page; edits, moves, undoes and redoes.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults, contrastFaults, explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

async function opened(
  address = '#the-ceiling',
  options: Parameters<typeof explorer.open>[1] = {},
): Promise<{ page: Page; reader: Reader; problems: readonly string[] }> {
  const { page, problems } = await explorer.open(address, options);
  await page.locator('main figure svg').first().waitFor();
  return { page, reader: new Reader(page), problems };
}

/** Adds an entry of a kind behind all others. */
async function add(page: Page, kind: string): Promise<void> {
  await page.locator('.page-adding button, [data-do=add]').last().click();
  await page.locator('.add-list').getByRole('button', { name: kind, exact: true }).click();
  await page.locator('.entry-editor :focus').waitFor();
}

const kinds = (page: Page): Promise<string[]> =>
  page.locator('main [data-entry]').evaluateAll((bodies) =>
    bodies.map((body) => {
      if (body.querySelector('kp-setup') !== null) return 'sentence';
      return body.querySelector('kp-figure') === null ? 'words' : 'figure';
    }),
  );
const title = (page: Page): Promise<string> => page.getByRole('heading', { level: 1 }).innerText();

describe('Blank page', () => {
  it('becomes a page that computes, is edited by hand and keyboard, and all of it is undone and redone', async () => {
    const { page, reader, problems } = await opened();
    await page.getByRole('button', { name: 'Blank page' }).click();
    await page.getByLabel('Title', { exact: true }).fill('My still');
    await page.getByLabel('Title', { exact: true }).press('Enter');
    await expect.poll(() => page.title()).toBe('My still · Kettle & Plate');
    await add(page, 'Setup sentence');
    await page.keyboard.press('Escape');
    await add(page, 'Figure');
    await page.keyboard.press('Escape');
    await reader.sees(() => reader.figure(), '12 plates');
    await add(page, 'Text');
    await page.keyboard.type('This is *mine*.');
    await page.keyboard.press('Escape');
    await reader.type('plates', '20');
    await reader.sees(() => reader.figure(), '20 plates');
    expect(await kinds(page)).toEqual(['sentence', 'figure', 'words']);

    await page.getByRole('button', { name: /^Up: text ‘This is mine/u }).press('Enter');
    await expect.poll(() => kinds(page)).toEqual(['sentence', 'words', 'figure']);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-do'))).toBe('up');
    await page.getByRole('button', { name: 'Delete: setup sentence' }).click();
    await expect.poll(() => kinds(page)).toEqual(['words', 'figure']);

    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => kinds(page)).toEqual(['sentence', 'figure', 'words']);
    await page.keyboard.press('Control+z');
    await reader.sees(() => reader.figure(), '12 plates');
    for (let steps = 0; steps < 3; steps += 1) await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => kinds(page)).toEqual(['words', 'figure']);
    await reader.sees(() => reader.figure(), '20 plates');
    expect(problems).toEqual([]);
  });

  it('is undone to the page it was begun from, and comes back whole', async () => {
    const { page } = await opened('#one-charge-three-stills');
    await page.getByRole('button', { name: 'Blank page' }).click();
    await add(page, 'Text');
    await page.keyboard.type('Words');
    await page.keyboard.press('Escape');
    const undo = page.getByRole('navigation', { name: 'Contents' }).getByRole('button', { name: /^Undo/u });
    for (let steps = 0; steps < 3; steps += 1) await undo.click();
    await expect.poll(() => title(page)).toBe('One charge, three stills');
    expect(await undo.getAttribute('aria-disabled')).toBe('true');
    const redo = page.getByRole('navigation', { name: 'Contents' }).getByRole('button', { name: /^Redo/u });
    for (let steps = 0; steps < 3; steps += 1) await redo.click();
    await expect.poll(() => title(page)).toBe('A page of my own');
    expect(await page.locator('[data-entry] p').first().innerText()).toBe('Words');
  });

  it('is deleted with all its entries and brought back by one word', async () => {
    const { page } = await opened();
    await page.getByRole('button', { name: 'Blank page' }).click();
    await add(page, 'Text');
    await page.keyboard.type('Not to be lost');
    await page.getByRole('button', { name: 'Delete page' }).click();
    await expect.poll(() => title(page)).toBe('The ceiling');
    await page.keyboard.press('Control+z');
    await expect.poll(() => title(page)).toBe('A page of my own');
    expect(await page.locator('[data-entry] p').first().innerText()).toBe('Not to be lost');
  });
});

describe('A ready page', () => {
  it('takes back numbers that were set on it, one gesture at a time', async () => {
    const { page, reader } = await opened();
    await reader.press('plates', 'ArrowUp', 'ArrowUp', 'ArrowUp');
    await reader.sees(() => reader.figure(), '15 plates');
    await reader.type('reflux ratio', '6');
    await page.keyboard.press('Control+z');
    expect(await reader.number('reflux ratio')).toBe('3 : 1');
    await page.keyboard.press('Control+z');
    await reader.sees(() => reader.figure(), '12 plates');
    await page.keyboard.press('Control+y');
    await reader.sees(() => reader.figure(), '15 plates');
  });

  it('becomes a page of one’s own with everything on it', async () => {
    const { page, reader, problems } = await opened();
    await reader.sees(() => reader.entry('The run in words'), 'With 12 plates');
    const words = await reader.entry('The run in words');
    await page.getByRole('button', { name: 'Make a page of your own from this one' }).click();
    await expect.poll(() => title(page)).toBe('The ceiling, my own');
    await reader.sees(() => reader.entry('Why the steps stop'), 'Boil a mixture');
    await reader.sees(() => reader.entry('The run in words'), words.split('.')[0]!);
    await page.getByRole('button', { name: 'Delete: The azeotrope' }).click();
    await expect.poll(() => page.getByRole('region', { name: 'The azeotrope', exact: true }).count()).toBe(0);
    expect(problems).toEqual([]);
  });
});

describe.each([390, 1440])('A page of one’s own at %d px', (width) => {
  it('gives axe nothing to complain of by day and by night while it is edited', async () => {
    const { page, problems } = await opened('#the-ceiling', { viewport: { width, height: 900 } });
    await page.getByRole('button', { name: 'Make a page of your own from this one' }).click();
    await page.locator('[data-entry=run-words] [data-do=edit]').focus();
    await page.keyboard.press('Enter');
    await page.locator('.entry-editor select').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await contrastFaults(page)).toEqual([]);
    const { scroll, client } = await page.evaluate(() => ({
      scroll: document.documentElement.scrollWidth,
      client: document.documentElement.clientWidth,
    }));
    expect(scroll).toBeLessThanOrEqual(client);
    expect(problems).toEqual([]);
  });
});
