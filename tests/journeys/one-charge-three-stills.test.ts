// A reader of 'One charge, three stills': the same numbers, three runs, and what each is worth.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();
const words = 'What comes over';

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

  it('has the doubler fall onto the pot when nothing runs back', async () => {
    const { reader } = await opened();
    await reader.press('reflux ratio of the doubler', 'Home');
    await reader.sees(() => reader.entry('The doubler, honestly'), 'its line lies on the pot’s');
    const cells = reader.page.getByRole('row', { name: /^all collected/u }).getByRole('cell');
    await expect.poll(async () => (await cells.allInnerTexts())[1]).toBe((await cells.allInnerTexts())[0]);
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
    await expect.poll(() => link.getAttribute('href')).toBe('#the-ceiling?v=1&plates=5');
    await link.click();
    await reader.sees(() => reader.entry('The run in words'), 'With 5 plates');
    expect(await reader.page.title()).toContain('The ceiling');
  });
});
