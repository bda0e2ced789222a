// A walk through the explorer that wants every part of it which is loaded when first wanted: all pages, all kinds of
// entry and what edits them, all that is loaded at a word of the reader.

import type { Page } from 'playwright';
import { pages } from '../../explorer/pages/registry.js';

/** One stretch of the walk. */
export interface Stretch {
  readonly name: string;
  /** Does it; what it waits for may take until its parts are there. */
  readonly walk: (page: Page) => Promise<void>;
}

const shown = async (page: Page, name: string, title: string): Promise<void> => {
  await page.evaluate((hash) => (location.hash = hash), `#${name}`);
  await page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor();
  await page.waitForFunction(
    () =>
      document.querySelector(
        'main :is(.figure-to-come, .entry-to-come, .guess-to-come, .entry-trouble), main > kp-entries-page:not([complete])',
      ) === null,
  );
};

const pressed = (page: Page, name: string): Promise<void> =>
  page.locator('main').getByRole('button', { name, exact: true }).first().click();

/** Kinds that load something of their own to be edited. */
const kinds = [
  'Text',
  'Setup sentence',
  'Figure',
  'Your guess',
  'Question',
  'Own words',
  'Table',
  'Result in words',
  'Formula',
];

export const everyPart: readonly Stretch[] = [
  ...pages.map(({ name, title }) => ({ name: title, walk: (page: Page) => shown(page, name, title) })),
  {
    name: 'what is laid over figures',
    walk: async (page) => {
      await shown(page, 'the-ceiling', 'The ceiling');
      await pressed(page, 'Lay the measured points over it');
      await page.getByRole('button', { name: 'Rub out the measured points' }).first().waitFor();
      await page.getByText('Measured near 1 atm').first().waitFor();
    },
  },
  {
    name: 'what a page uses',
    walk: async (page) => {
      await shown(page, 'the-ceiling', 'The ceiling');
      await page.locator('details.page-parts > summary').click();
      await page.locator('details.page-parts > :not(summary)').first().waitFor();
      await page.locator('details.page-parts > summary').click();
    },
  },
  {
    name: 'a figure to take along',
    walk: async (page) => {
      await pressed(page, 'Take it along');
      await page.getByRole('button', { name: 'Save as SVG' }).waitFor();
    },
  },
  {
    name: 'a page of one’s own, with every kind of entry in its editor',
    walk: async (page) => {
      await page.getByRole('button', { name: 'Blank page' }).click();
      await page.getByLabel('Title', { exact: true }).fill('Mine');
      for (const kind of kinds) {
        await page.locator('.page-adding button, [data-do=add]').last().click();
        await page.locator('.add-list').getByRole('button', { name: kind, exact: true }).click();
        await page.locator('.entry-editor').waitFor();
      }
      await page.getByLabel('Formula', { exact: true }).fill('pure = volume * strength');
      await page.getByRole('button', { name: 'Plot it' }).click();
      await page.locator('kp-figure[data-figure] svg').last().waitFor();
    },
  },
  {
    name: 'data of the reader’s own',
    walk: async (page) => {
      await page.locator('.page-adding button, [data-do=add]').last().click();
      await page.locator('.add-list').getByRole('button', { name: 'Data', exact: true }).click();
      await page.locator('.entry-editor textarea').fill('time (min),strength (% vol)\n0,94\n60,92\n120,85\n');
      await page.locator('kp-entries-page section figure svg').last().waitFor();
    },
  },
  {
    name: 'a unit that is typed',
    walk: async (page) => {
      await page.getByRole('spinbutton', { name: 'volume of the charge', exact: true }).first().fill('100 qt');
      await page.locator('[role=spinbutton][aria-valuetext*="94.6"]').first().waitFor();
    },
  },
];
