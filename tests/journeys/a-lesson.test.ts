// An apprentice on a page of the course: guesses, sees the answer, answers a question wrongly and then rightly,
// says it in their own words, finds it all there on coming back, and can undo it; a leader sees more and prints a worksheet.

import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults, explorerInBrowser } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();
/** Share of the plot from left and from its foot. */
type Place = readonly [across: number, up: number];

async function opened(name: string): Promise<{ page: Page; problems: readonly string[] }> {
  const { page, problems } = await explorer.open(`#${name}`);
  await page.getByRole('application').waitFor();
  await page.locator('.setup-figure svg').first().waitFor();
  return { page, problems };
}

/** Draws through places of the plot with the mouse. */
async function draw(page: Page, panel: string, places: readonly Place[]): Promise<void> {
  await page.getByRole('application').scrollIntoViewIfNeeded();
  const plot = await page.evaluate((key) => {
    const guess = document.querySelector('kp-guess')!;
    const figure = guess.querySelector('kp-figure') as HTMLElement & {
      plotOf(panel: string): { left: number; top: number; width: number; height: number };
    };
    const { left, top } = guess.querySelector('.guess-surface')!.getBoundingClientRect();
    const { left: x, top: y, width, height } = figure.plotOf(key);
    return { left: left + x, top: top + y, width, height };
  }, panel);
  const at = ([across, up]: Place): [number, number] => [
    plot.left + across * plot.width,
    plot.top + (1 - up) * plot.height,
  ];
  await page.mouse.move(...at(places[0]!));
  await page.mouse.down();
  for (const place of places.slice(1)) await page.mouse.move(...at(place), { steps: 8 });
  await page.mouse.up();
}

const text = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().innerText()).replace(/\s+/gu, ' ').trim();

describe('a lesson', () => {
  it('goes from guess to answer, from a wrong number to a right one, to words of one’s own that stay', async () => {
    const { page, problems } = await opened('why-it-stops');
    await draw(page, 'plates', [
      [0.25, 0.7],
      [0.6, 0.85],
      [1, 0.98],
    ]);
    expect(await page.locator('kp-guess figure').getAttribute('aria-label')).toContain('not shown yet');
    await page.getByRole('button', { name: 'Show the answer' }).click();
    await expect.poll(() => text(page, '.guess-reply')).toContain('No column does that');
    expect(await text(page, '.guess-reply')).toMatch(/Your line misses most at [\d.]+ plates/u);

    const question = page.locator('kp-answer').first();
    await question.getByRole('textbox').fill('100');
    await question.getByRole('button', { name: 'Check' }).click();
    await expect.poll(() => text(page, 'kp-answer .reply')).toContain('weaker than itself');
    await question.getByRole('textbox').fill('97,2');
    await question.getByRole('textbox').press('Enter');
    await expect.poll(() => text(page, 'kp-answer .reply')).toContain('Yes. At 97.2 % vol');

    const words = page.getByRole('textbox', { name: /A visitor says/u });
    await words.fill('There the vapour is as strong as the liquid.');
    await words.blur();
    await page.evaluate(() => (location.hash = '#reflux'));
    await page.getByRole('heading', { name: 'Reflux', level: 1 }).waitFor();
    await page.evaluate(() => (location.hash = '#why-it-stops'));
    await expect.poll(() => words.inputValue()).toBe('There the vapour is as strong as the liquid.');
    await expect.poll(() => text(page, '.guess-reply')).toContain('No column does that');
    expect(await question.getByRole('textbox').inputValue()).toBe('97,2');
    const frame = page.getByRole('navigation');
    await frame.getByRole('button', { name: /^Undo/u }).click();
    await expect.poll(() => words.inputValue()).toBe('');
    await frame.getByRole('button', { name: /^Redo/u }).click();
    await expect.poll(() => words.inputValue()).toBe('There the vapour is as strong as the liquid.');

    // Kept in this browser, it stands again after the window was left, at once.
    await page.reload();
    await expect.poll(() => words.inputValue()).toBe('There the vapour is as strong as the liquid.');
    await expect.poll(() => text(page, '.guess-reply')).toContain('No column does that');
    expect(await question.getByRole('textbox').inputValue()).toBe('97,2');
    expect(problems).toEqual([]);
  });

  it('can be guessed by keyboard alone', async () => {
    const { page } = await opened('reflux');
    const surface = page.getByRole('application');
    await surface.focus();
    for (const key of ['End', ' ']) await surface.press(key);
    await page.getByRole('button', { name: 'Show the answer' }).press('Enter');
    await expect.poll(() => text(page, '.guess-reply')).toContain('as if reflux cost nothing');
  });

  it('follows its sentence: the words under the figure are those of the numbers set', async () => {
    const { page } = await opened('what-boils');
    const reader = new Reader(page);
    await reader.type('strength of the charge', '40');
    await reader.sees(() => text(page, '.result-words'), 'A liquid of 40.0 % vol boils at 83.7 °C');
  });

  it('opens a word in place', async () => {
    const { page } = await opened('what-boils');
    const word = page.getByRole('button', { name: 'vapour', exact: true });
    await word.click();
    expect(await word.getAttribute('aria-expanded')).toBe('true');
    expect(await page.getByText('What a boiling liquid turns into').isVisible()).toBe(true);
  });
});

describe('a leader', () => {
  it('sees answers and what to listen for, on every page of the course, and axe has nothing to complain of', async () => {
    const { page } = await opened('reflux');
    expect(await page.getByText('Listen for.').count()).toBe(0);
    await page.getByRole('button', { name: 'Leader’s view' }).click();
    await page.getByText('Listen for.').waitFor();
    expect(await page.locator('.leader-answer').allInnerTexts()).toEqual(
      expect.arrayContaining([expect.stringContaining('3 sent back and 1 kept')]),
    );
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.evaluate(() => (location.hash = '#one-plate-more'));
    await page.getByText('Listen for.').waitFor();
  });

  it('prints a worksheet without answers, and one with them', async () => {
    const { page } = await opened('what-boils');
    await draw(page, 'vapour', [
      [0.05, 0.3],
      [1, 1],
    ]);
    await page.getByRole('button', { name: 'Leader’s view' }).click();
    await page.evaluate(() => {
      const printed: { shown: number; guess: string }[] = [];
      Object.assign(window, {
        printed,
        print: () => {
          const shown = document.querySelectorAll('.leader-answer').length;
          printed.push({ shown, guess: document.querySelector('kp-guess figure')!.getAttribute('aria-label')! });
        },
      });
    });
    const printed = (): Promise<{ shown: number; guess: string }[]> =>
      page.evaluate(() => (window as unknown as { printed: { shown: number; guess: string }[] }).printed);
    await page.getByRole('button', { name: 'Print the worksheet' }).click();
    await expect.poll(async () => (await printed()).length).toBe(1);
    await page.getByRole('button', { name: 'Print it with answers' }).click();
    await expect.poll(async () => (await printed()).length).toBe(2);
    const [sheet, answers] = await printed();
    expect(sheet).toEqual({ shown: 0, guess: expect.stringContaining('nothing is drawn yet') as string });
    expect(sheet!.guess).toContain('not shown yet');
    expect(answers!.shown).toBeGreaterThan(3);
    expect(answers!.guess).toContain('alike at 97.2');
    // Afterwards the guess stands as it was drawn.
    await expect.poll(() => page.locator('kp-guess figure').getAttribute('aria-label')).toContain('your guess runs to');
  });
});

describe('the page of words', () => {
  it('holds every word with its line', async () => {
    const { page } = await explorer.open('#words');
    await page.getByRole('heading', { name: 'Boiling' }).waitFor();
    expect(await page.locator('dt').count()).toBeGreaterThan(50);
  });
});
