// The explorer opens without a network once it was opened with one, behind any host: from a path below another site,
// with headers and types of the host's own, at an address with a query.

import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { listedFiles } from '../support/next-version.js';
import { explorerInBrowser, type OpenPage } from '../support/open-explorer.js';
import { Reader } from '../support/reader.js';
import { page as hostsPage, unrulyHost, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
let host: UnrulyHost;
beforeEach(async () => (host = await unrulyHost(inject('url'))));
afterEach(async () => host.close());

/** Opens the explorer and waits until it can do without the network. */
async function openedForGood(): Promise<OpenPage> {
  const open = await explorer.open('', { host: host.url, serviceWorkers: 'allow' });
  await open.page.getByText('Opens without a network.').waitFor();
  await expect.poll(() => open.page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  return open;
}

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

  it('opens behind a host that says its answers vary with everything and calls files what they are not', async () => {
    host.treat((file) => ({
      headers: { vary: '*', ...(file.endsWith('.woff2') ? { 'content-type': 'application/octet-stream' } : {}) },
    }));
    const { page, problems } = await openedForGood();
    await page.context().setOffline(true);
    await page.reload();
    await page.locator('main figure').first().waitFor();
    const types = await page.evaluate(async () => {
      const font = document.querySelector<HTMLLinkElement>('link[rel=preload][as=font]')!.href;
      return Promise.all([font, 'licences.txt'].map(async (file) => (await fetch(file)).headers.get('content-type')));
    });
    expect(types).toEqual(['font/woff2', 'text/plain; charset=utf-8']);
    expect(problems).toEqual([]);
  });

  it.each(['?from=a-letter#words', 'index.html?from=a-letter#words', 'index.html#words'])(
    'opens at %s',
    async (address) => {
      const { page } = await openedForGood();
      await page.context().setOffline(true);
      await page.goto(host.url + address);
      await page.getByRole('heading', { name: 'Words', level: 1 }).waitFor();
    },
  );

  it('is served under the content policy, workers too, where the host sends none', async () => {
    host.treat(() => ({ headers: {} }));
    const { page } = await openedForGood();
    await page.reload();
    await page.waitForFunction(() =>
      performance.getEntriesByType('resource').some(({ name }) => name.includes('worker')),
    );
    const policies = await page.evaluate(async () => {
      const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.includes('worker'));
      return Promise.all(
        ['./', scripts[0]!.name].map(async (file) => (await fetch(file)).headers.get('content-security-policy')),
      );
    });
    for (const policy of policies) expect(policy).toContain("script-src 'self'");
  });

  it('is not promised where the host sends a page in place of a file, works all the same, and is made good later', async () => {
    const late = (await listedFiles(inject('url'))).map(([name]) => name).find((name) => name.includes('/engine-'))!;
    host.treat((file) => (file === late ? hostsPage : undefined));
    const { page } = await explorer.open('', { host: host.url, serviceWorkers: 'allow' });
    await page.getByText('Does not open without a network yet.').waitFor();
    expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
    expect(await page.locator('main figure').count()).toBeGreaterThan(0);
    host.treat(() => undefined);
    await page.reload();
    await page.getByText('Opens without a network.').waitFor();
  });

  it('fetches a file again that the browser threw away, and takes no other in its place', async () => {
    const { page } = await openedForGood();
    const lose = (part: string): Promise<string> =>
      page.evaluate(async (name) => {
        for (const key of await caches.keys()) {
          const store = await caches.open(key);
          const lost = (await store.keys()).find(({ url }) => url.includes(name));
          if (lost !== undefined && (await store.delete(lost))) return lost.url;
        }
        throw new Error(`${name} is not kept`);
      }, part);
    const lost = await lose('/engine-');
    host.treat((file) =>
      lost.endsWith(file) ? { ...hostsPage, headers: { 'content-type': 'text/javascript' } } : undefined,
    );
    const reader = new Reader(page);
    await reader.type('volume of the charge', '100 qt');
    await page.getByText('the part that knows it could not be loaded').waitFor();
    host.treat(() => undefined);
    await page.getByRole('button', { name: 'Try again' }).click();
    await reader.sees(() => reader.number('volume of the charge'), '94.6 L');
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

describe('what is kept for it', () => {
  it('is every file that was built but for maps, each with its type and hash', async () => {
    const files = await listedFiles(inject('url'));
    const names = files.map(([name]) => name);
    expect(names).toContain('index.html');
    expect(names).toContain('licences.txt');
    for (const part of inject('parts')) expect(names).toContain(part);
    expect(names.filter((name) => name.endsWith('.map'))).toEqual([]);
    for (const [name, type, integrity] of files) {
      expect([name, type]).toEqual([name, expect.stringMatching(/^\w+\/[\w+-]+/u)]);
      expect([name, integrity]).toEqual([name, expect.stringMatching(/^sha256-[\w+/]{43}=$/u)]);
    }
  });
});
