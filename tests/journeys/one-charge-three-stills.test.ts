// A reader of 'One charge, three stills': the same numbers, three runs, and what each is worth.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();
const words = 'What comes over from each still';

async function opened(address = '#one-charge-three-stills'): Promise<{ reader: Reader; problems: readonly string[] }> {
  const { page, problems } = await explorer.open(address);
  await page.locator('main figure svg').first().waitFor();
  return { reader: new Reader(page), problems };
}

describe('One charge, three stills', () => {
  it('follows charge strength, plates and reflux, typed and by keyboard', async () => {
    const { reader, problems } = await opened();
    const first = await reader.figure();
    await reader.type('strength of the charge', '12');
    await reader.seesChange(() => reader.figure(), first);
    await reader.press('plates', 'ArrowDown');
    await reader.sees(() => reader.figure(), '11 plates');
    const withEleven = await reader.figure();
    await reader.press('reflux ratio', 'PageUp');
    await reader.seesChange(() => reader.figure(), withEleven);
    // 3 : 1 and ten steps of a half.
    expect(await reader.number('reflux ratio')).toBe('8 : 1');
    expect(problems).toEqual([]);
  });

  it('says of each still whether it reaches the strength that counts', async () => {
    const { reader } = await opened();
    await reader.sees(() => reader.entry(words), 'The bare pot never reaches 80 % vol');
    await reader.type('strength that counts', '40');
    await reader.sees(() => reader.entry(words), 'The bare pot stays above 40 % vol');
  });

  it('lets the doubler’s own charge lift its first spirit', async () => {
    const { reader } = await opened();
    const doubler = 'The doubler, honestly';
    const weak = await reader.entry(doubler);
    await reader.type('strength of the doubler’s charge', '70');
    await reader.seesChange(() => reader.entry(doubler), weak);
    await reader.sees(() => reader.entry(doubler), 'Its best is 8');
  });

  it('sets a column of the reader’s own beside the others, and takes it away', async () => {
    const { reader, problems } = await opened();
    await reader.page.getByRole('button', { name: 'Set this column beside the others' }).click();
    await reader.type('plates', '4');
    await reader.sees(() => reader.figure(), '12 plates, reflux 3 : 1');
    await reader.sees(() => reader.figure(), '4 plates, reflux 3 : 1');
    await reader.page.getByRole('button', { name: 'Take away 12 plates, reflux 3 : 1' }).click();
    await expect.poll(async () => (await reader.figure()).includes('12 plates')).toBe(false);
    expect(problems).toEqual([]);
  });

  it('names the still without plates and without reflux for what it is', async () => {
    const { reader, problems } = await opened('#one-charge-three-stills?v=1&plates=0&reflux=0');
    await reader.sees(() => reader.figure(), 'no plates');
    expect(await reader.entry(words)).toContain('With nothing sent back');
    expect(problems).toEqual([]);
  });

  it('takes its settings along to the other page', async () => {
    const { reader } = await opened();
    await reader.type('plates', '5');
    const link = reader.page.getByRole('navigation', { name: 'Contents' }).getByRole('link', { name: 'The ceiling' });
    await expect.poll(() => link.getAttribute('href')).toBe('#the-ceiling?v=2&plates=5');
    await link.click();
    await reader.sees(() => reader.entry('The run in words'), 'With 5 plates');
    expect(await reader.page.title()).toContain('The ceiling');
  });
});
