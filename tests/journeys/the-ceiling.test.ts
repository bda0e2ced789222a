// A reader of 'The ceiling': sets numbers by typing and by keyboard, and figure and words follow.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();
const words = 'The run in words';

async function opened(address = '#the-ceiling'): Promise<{ reader: Reader; problems: readonly string[] }> {
  const { page, problems } = await explorer.open(address);
  await page.locator('main figure svg').first().waitFor();
  return { reader: new Reader(page), problems };
}

describe('The ceiling', () => {
  it('follows a charge strength that is typed, as it is typed', async () => {
    const { reader, problems } = await opened();
    const before = await reader.figure();
    expect(before).toContain('12 plates');
    await reader.type('strength of the charge', '40');
    const after = await reader.seesChange(() => reader.figure(), before);
    expect(after).toMatch(/^Strength at the spout against litres/u);
    expect(await reader.number('strength of the charge')).toBe('40 % vol');
    expect(problems).toEqual([]);
  });

  it('follows plates and reflux by keyboard, a step at a time, ten, and to the limits', async () => {
    const { reader } = await opened();
    await reader.press('plates', 'ArrowUp');
    await reader.sees(() => reader.figure(), '13 plates');
    await reader.sees(() => reader.entry(words), 'With 13 plates');
    await reader.press('plates', 'PageUp');
    await reader.sees(() => reader.figure(), '23 plates');
    await reader.press('plates', 'Home');
    await reader.sees(() => reader.entry(words), 'With 0 plates the spout never reaches 90 % vol');
    await reader.press('plates', 'Escape');
    await reader.sees(() => reader.entry(words), 'With 12 plates the spout stays above 90 % vol');
    const before = await reader.entry(words);
    await reader.press('reflux ratio', 'ArrowUp', 'ArrowUp');
    await reader.seesChange(() => reader.entry(words), before);
    expect(await reader.number('reflux ratio')).toBe('4 : 1');
  });

  it('is shared by its address, and comes back from it', async () => {
    const { reader } = await opened();
    await reader.type('plates', '20');
    await reader.type('reflux ratio', '6');
    await expect.poll(() => reader.page.url()).toMatch(/#the-ceiling\?v=2&plates=20&reflux=6$/u);
    await reader.sees(() => reader.entry(words), 'With 20 plates');
    const shared = await reader.entry(words);
    const { reader: other } = await opened(new URL(reader.page.url()).hash);
    expect(await other.number('plates')).toBe('20 plates');
    expect(await other.number('reflux ratio')).toBe('6 : 1');
    await other.sees(() => other.entry(words), shared);
  });

  it('keeps the last good figure while a number cannot be used, says why, and puts it back', async () => {
    const { reader, problems } = await opened();
    await reader.sees(() => reader.entry(words), 'With 12 plates');
    const [figure, text] = [await reader.figure(), await reader.entry(words)];
    await reader.type('efficiency of each plate', '650');
    const correction = reader.page.locator('#correction');
    await reader.sees(() => correction.innerText(), 'is more than a plate can do');
    expect(await correction.innerText()).toContain('1 to 100');
    expect(await reader.figure()).toBe(figure);
    expect(await reader.entry(words)).toBe(text);
    await reader.page.getByRole('button', { name: 'Put 65 back' }).click();
    await expect.poll(() => correction.innerText()).toBe('');
    expect(await reader.number('efficiency of each plate')).toBe('65 %');
    expect(problems).toEqual([]);
  });

  it('says what it could not read in an address, and runs on what it could', async () => {
    const { reader } = await opened('#the-ceiling?v=1&plates=700&reflux=6');
    expect(await reader.page.locator('.complaint').innerText()).toContain('0 to 60');
    expect(await reader.number('plates')).toBe('12 plates');
    expect(await reader.number('reflux ratio')).toBe('6 : 1');
  });

  it('shows other units without another run, keeps them for the next visit, and reads a typed unit', async () => {
    const { reader } = await opened();
    await reader.page.getByRole('button', { name: 'US gal, °F, proof, BTU/h' }).click();
    await reader.sees(() => reader.figure(), 'proof');
    expect(await reader.number('heat into the kettle')).toBe('18 767 BTU/h');
    expect(await reader.number('volume of the charge')).toBe('31.7 US gal');
    expect(new URL(reader.page.url()).hash).toBe('#the-ceiling');
    await reader.page.reload();
    await reader.sees(() => reader.number('volume of the charge'), '31.7 US gal');
    await reader.type('heat into the kettle', '6 kW');
    await reader.sees(() => reader.number('heat into the kettle'), '20 473 BTU/h');
  });

  it('keeps a run as a pencil line, reads both at the cursor, and rubs it out', async () => {
    const { reader } = await opened();
    await reader.page.getByRole('button', { name: 'Keep as a pencil line' }).click();
    await reader.press('plates', 'Home');
    await reader.sees(() => reader.figure(), '12 plates, before');
    await reader.sees(() => reader.entry(words), 'The 12 plates you had before held it');
    const cursor = reader.page.getByRole('slider').first();
    const before = await cursor.getAttribute('aria-valuetext');
    await cursor.press('PageDown');
    await expect.poll(() => cursor.getAttribute('aria-valuetext')).not.toBe(before);
    await reader.page.getByRole('button', { name: 'Rub out', exact: true }).click();
    await expect.poll(() => reader.figure()).not.toContain('before');
  });
});
