// The explorer opens without a network once it was opened with one, and says when a new version lies ready; from a
// path below another site, too.

import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { explorerInBrowser, type OpenPage } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';
import { unrulyHost, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
let host: UnrulyHost;
beforeAll(async () => (host = await unrulyHost(inject('url'))));
afterAll(async () => host.close());

/** Opens the explorer and waits until it can do without the network. */
async function openedForGood(): Promise<OpenPage> {
  const open = await explorer.open('', { host: host.url, serviceWorkers: 'allow' });
  await open.page.locator('main figure').first().waitFor();
  await expect.poll(() => open.page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  return open;
}

const cacheNames = (page: Page): Promise<string[]> => page.evaluate(() => caches.keys());

describe('the explorer without a network', () => {
  it('opens, computes, and has every page, its words and its formulas', async () => {
    const { page, problems } = await openedForGood();
    await page.context().setOffline(true);
    const before = host.asked().length;
    await page.reload();
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await reader.sees(() => reader.figure(), '20 plates');
    await reader.type('volume of the charge', '100 qt'); // the formula engine was never loaded before
    await reader.sees(() => reader.number('volume of the charge'), '94.6 L');
    for (const name of ['The doubler', 'One plate more', 'Words']) {
      await page.getByRole('link', { name, exact: true }).click();
      await page.getByRole('heading', { name, exact: true, level: 1 }).waitFor();
    }
    expect(host.asked().length).toBe(before);
    expect(problems).toEqual([]);
  });

  it('can be installed: a name, icons of the sizes it promises, and a start within its own path', async () => {
    const { page } = await explorer.open('', { host: host.url });
    const address = await page.locator('link[rel=manifest]').getAttribute('href');
    const manifestUrl = new URL(address!, host.url);
    const manifest = (await (await fetch(manifestUrl)).json()) as {
      name: string;
      start_url: string;
      icons: { src: string; sizes: string; type: string }[];
    };
    expect(manifest.name).toBe('Kettle & Plate');
    expect(new URL(manifest.start_url, manifestUrl).href).toBe(host.url);
    const pngs = manifest.icons.filter(({ type }) => type === 'image/png');
    expect(pngs.map(({ sizes }) => sizes)).toEqual(['192x192', '512x512', '512x512']);
    for (const { src, sizes } of pngs) {
      const bytes = Buffer.from(await (await fetch(new URL(src, manifestUrl))).arrayBuffer());
      expect(`${String(bytes.readUInt32BE(16))}x${String(bytes.readUInt32BE(20))}`).toBe(sizes);
    }
  });
});

describe('a new version', () => {
  it('is said to lie ready, changes nothing by itself, and is taken when the reader says so, with the work kept', async () => {
    const { page, problems } = await openedForGood();
    const reader = new Reader(page);
    await reader.type('plates', '20');
    const [old] = await cacheNames(page);
    const worker = await (await fetch(`${inject('url')}service-worker.js`)).text();
    const next = worker.replaceAll('`kettle-and-plate', '`kettle-and-plate next');
    host.treat((file) => (file === 'service-worker.js' ? { body: next } : undefined));
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.update());
    await reader.sees(() => page.locator('.notice').innerText(), 'A new version of Kettle & Plate lies ready.');
    await page.evaluate(() => Object.assign(globalThis, { sameWindow: true }));
    expect(await reader.number('plates')).toBe('20 plates');
    await page.getByRole('button', { name: 'Take it now' }).click();
    await page.waitForFunction(() => !('sameWindow' in globalThis));
    await reader.sees(() => reader.number('plates'), '20 plates');
    const names = await cacheNames(page);
    expect(names).toHaveLength(2);
    expect(names).toContain(old);
    expect(await page.locator('.notice p').count()).toBe(0);
    expect(problems).toEqual([]);
  });
});
