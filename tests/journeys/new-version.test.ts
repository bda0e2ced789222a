// A new version of the explorer: it is said to lie ready once all of it is there, changes nothing by itself, is taken when
// the reader says so, and never mixes with the one before, in whatever order a host gets its files.

import type { Page } from 'playwright';
import { afterEach, beforeAll, beforeEach, describe, expect, inject, it } from 'vitest';
import { nextVersion, type NextVersion } from '../support/next-version.js';
import { explorerInBrowser, type OpenPage } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';
import { page as hostsPage, unrulyHost, type Treatment, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
let host: UnrulyHost;
let next: NextVersion;
beforeAll(async () => (next = await nextVersion(inject('url'), 'glossary-page')));
beforeEach(async () => (host = await unrulyHost(inject('url'))));
afterEach(async () => host.close());

async function opened(): Promise<OpenPage> {
  const open = await explorer.open('', { host: host.url, serviceWorkers: 'allow' });
  await open.page.getByText('Opens without a network.').waitFor();
  await expect.poll(() => open.page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  return open;
}

/** The file as the next version has it. */
function asNext(file: string): Treatment | undefined {
  if (next.gone.includes(file)) return { status: 404, body: 'gone' };
  const body = next.changed.get(file === '' ? 'index.html' : file);
  if (body === undefined) return undefined;
  const type = file.endsWith('.js') ? 'text/javascript' : 'text/html';
  return { status: 200, headers: { 'content-type': type }, body };
}

/** Has the browser look for a new version; resolves when what it found is put by, or could not be. */
const look = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    await registration.update().catch(() => undefined);
    const coming = registration.installing ?? registration.waiting;
    if (coming === null) return 'nothing new';
    if (coming.state === 'installing')
      await new Promise((resolve) => coming.addEventListener('statechange', resolve, { once: true }));
    return coming.state;
  });
const notice = (page: Page): Promise<string> => page.locator('.notice').innerText();
const isNext = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.querySelector('[data-version=next]') !== null);
const ready = 'A new version of Kettle & Plate lies ready.';

describe('a new version', () => {
  it('is said to lie ready, changes nothing by itself, and is taken when the reader says so, with the work kept', async () => {
    const { page, problems } = await opened();
    const reader = new Reader(page);
    await reader.type('plates', '20');
    host.treat(asNext);
    expect(await look(page)).toBe('installed');
    await reader.sees(() => notice(page), ready);
    await page.reload();
    await reader.sees(() => notice(page), ready);
    expect(await isNext(page)).toBe(false);
    await reader.sees(() => reader.number('plates'), '20 plates');
    await page.getByRole('button', { name: 'Take it now' }).click();
    await expect.poll(() => isNext(page).catch(() => false)).toBe(true);
    await reader.sees(() => reader.number('plates'), '20 plates');
    await page.getByText('Opens without a network.').waitFor();
    expect(await page.locator('.notice p').count()).toBe(0);
    expect(problems).toEqual([]);
  });

  it('waits even when every window was closed, and is said again when one opens', async () => {
    const { page } = await opened();
    host.treat(asNext);
    expect(await look(page)).toBe('installed');
    const context = page.context();
    await page.close();
    const again = await context.newPage();
    await again.goto(host.url);
    await again.getByText(ready).waitFor();
    expect(await isNext(again)).toBe(false);
  });

  it('leaves another window the version it runs, with parts it has not loaded yet', async () => {
    const { page } = await opened();
    const other = await page.context().newPage();
    await other.goto(host.url);
    await other.locator('main figure').first().waitFor();
    host.treat(asNext);
    expect(await look(page)).toBe('installed');
    await page.getByRole('button', { name: 'Take it now' }).click();
    await expect.poll(() => isNext(page).catch(() => false)).toBe(true);
    // The host has this part no more, and in the next version it has another name.
    await other.getByRole('link', { name: 'Words', exact: true }).click();
    await other.getByRole('heading', { name: 'Words', level: 1 }).waitFor();
    expect(await isNext(other)).toBe(false);
  });

  it.each<[string, (file: string) => Treatment | undefined]>([
    ['the service worker before the page', (file) => (file === 'service-worker.js' ? asNext(file) : undefined)],
    ['a page of the host’s own in place of a part', (file) => (file.includes('nextnext') ? hostsPage : asNext(file))],
    ['no part at all', (file) => (file.includes('nextnext') ? { status: 404, body: 'not yet' } : asNext(file))],
    [
      'half a part',
      (file) => (file.includes('nextnext') ? { ...asNext(file), body: 'export const half = ' } : asNext(file)),
    ],
  ])(
    'is not offered while a host has %s; the old one goes on, and it is offered once all is there',
    async (_, half) => {
      const { page } = await opened();
      host.treat(half);
      expect(await look(page)).toBe('redundant');
      await page.reload();
      await page.locator('main figure').first().waitFor();
      expect(await isNext(page)).toBe(false);
      expect(await page.locator('.notice p').count()).toBe(0);
      await page.context().setOffline(true);
      await page.reload();
      await page.getByRole('link', { name: 'Words', exact: true }).click();
      await page.getByRole('heading', { name: 'Words', level: 1 }).waitFor();
      await page.context().setOffline(false);
      host.treat(asNext);
      expect(await look(page)).toBe('installed');
      await page.getByText(ready).waitFor();
    },
  );
});
