// A page whose script does not come is not blank: it says so by itself, and goes on when it is loaded again.

import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { explorerInBrowser } from '../support/open-explorer.js';
import { page as hostsPage, unrulyHost, type Treatment, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
let host: UnrulyHost;
beforeEach(async () => (host = await unrulyHost(inject('url'))));
afterEach(async () => host.close());

const faults: readonly (readonly [string, Treatment])[] = [
  ['is not there', { status: 404, body: 'not found' }],
  ['is a page of the host', hostsPage],
  ['breaks off', { drop: true }],
];

describe('an explorer whose script', () => {
  it.each(faults)('%s says so in the page itself, and comes when it is loaded again', async (_name, fault) => {
    const { page: plain } = await explorer.open('', { host: host.url });
    const script = await plain.evaluate(() => [...document.scripts].map(({ src }) => src).find((src) => src !== ''));
    expect(await plain.locator('.not-started').count()).toBe(0);
    const file = script!.slice(host.url.length);
    host.treat((asked) => (asked === file ? fault : undefined));
    const { page } = await explorer.open('#the-doubler', { host: host.url });
    const words = page.locator('.not-started');
    await words.waitFor({ state: 'visible' });
    expect(await words.innerText()).toContain('load the page again');
    host.treat(() => undefined);
    await page.reload();
    await page.locator('main h1').waitFor();
    expect(await words.count()).toBe(0);
    expect(await page.locator('main h1').innerText()).toBe('The doubler');
  });
});
