// A reader of 'The still's limits' and 'The doubler': a run by its sheet, changed on the way, and what the metal says to it.

import { describe, expect, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

async function opened(address: string): Promise<{ reader: Reader; problems: readonly string[] }> {
  const { page, problems } = await explorer.open(address);
  await page.locator('main figure svg').first().waitFor();
  return { reader: new Reader(page), problems };
}

describe('The still’s limits', () => {
  it('runs by its sheet, says what the plates stand, and follows a change of the sheet and its undoing', async () => {
    const { reader, problems } = await opened('#the-stills-limits');
    const { page } = reader;
    const before = await reader.figure();
    expect(before).toContain('heating up until');
    await page.getByRole('combobox', { name: 'reflux of step 3' }).selectOption('none');
    await reader.seesChange(() => reader.figure(), before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => reader.figure()).toBe(before);
    await reader.type('heat into the kettle', '12');
    await expect.poll(() => page.locator('[data-limit="flooding"]').count()).toBe(1);
    expect(await page.locator('[data-limit="flooding"]').innerText()).toMatch(/From .* wider column/su);
    expect(problems).toEqual([]);
  });

  it('says how much reflux a strength would take that the step’s cannot give', async () => {
    const { reader } = await opened('#the-stills-limits');
    const said = reader.page.locator('[data-limit="refluxShort"]');
    expect(await said.count()).toBe(0);
    await reader.type('step 3: reflux ratio', '0.5');
    await reader.page.getByRole('combobox', { name: 'end of step 3' }).first().selectOption('spoutStrengthBelow');
    await reader.type('step 3: strength the spout falls to', '96');
    await expect.poll(() => said.count()).toBe(1);
    expect(await said.innerText()).toMatch(/at least \d.* : 1 .* the step has 0\.5 : 1/su);
  });

  it('shows the still where the cursor stands', async () => {
    const { reader } = await opened('#the-stills-limits');
    const picture = reader.page.locator('kp-still [role="img"]');
    await picture.scrollIntoViewIfNeeded();
    const before = await picture.getAttribute('aria-label');
    await reader.page.getByRole('slider').first().focus();
    await reader.page.keyboard.press('PageUp');
    await reader.page.keyboard.press('PageUp');
    await picture.scrollIntoViewIfNeeded();
    await expect.poll(() => picture.getAttribute('aria-label')).not.toBe(before);
  });
});

describe('The doubler', () => {
  it('follows what it is charged with', async () => {
    const { reader, problems } = await opened('#the-doubler');
    const before = await reader.entry('First and later');
    await reader.type('strength of the doubler’s charge', '60');
    await reader.seesChange(() => reader.entry('First and later'), before);
    expect(problems).toEqual([]);
  });
});
