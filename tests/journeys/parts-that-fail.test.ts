// Every part of the explorer that is loaded when it is first wanted may fail to come: once, and nobody notices; again
// and again, and it is said with a word to press that tries again and then works. The parts are read from the build, so
// a new one is tried by itself, or this fails since nothing wants it.

import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { everyPart } from '../support/every-part.js';
import { explorerInBrowser } from '../support/open-explorer.js';
import { page as hostsPage, unrulyHost, type Treatment, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
let host: UnrulyHost;
beforeAll(async () => (host = await unrulyHost(inject('url'))));
afterAll(async () => host.close());

/** Ways to fail, taken in turn. */
const faults: readonly Treatment[] = [{ status: 503, body: 'too busy' }, hostsPage, { drop: true }];
const faultOf = (file: string): Treatment => faults[file.length % faults.length]!;

describe('parts that fail to come', () => {
  it('once are fetched again, and the reader sees nothing of it', async () => {
    const parts = new Set(inject('parts'));
    host.treat((file, before) => (parts.has(file) && before === 0 ? faultOf(file) : undefined));
    const { page } = await explorer.open('', { host: host.url });
    for (const { name, walk } of everyPart) {
      await walk(page);
      expect([name, await tryAgain(page).count()]).toEqual([name, 0]);
    }
    await expect.poll(() => [...parts].filter((part) => !host.asked().includes(part))).toEqual([]);
  });

  it('again and again are missed aloud, and come when the reader has it tried again', async () => {
    const parts = new Set(inject('parts'));
    const refused = new Set<string>();
    const given = new Set<string>();
    const open = new Set<string>();
    host.treat((file) => {
      if (!parts.has(file)) return undefined;
      if (open.has(file)) {
        given.add(file);
        return undefined;
      }
      refused.add(file);
      return faultOf(file);
    });
    const { page } = await explorer.open('', { host: host.url });
    for (const { name, walk } of everyPart) {
      const walked = walk(page).then(() => true);
      let there = false;
      void walked.then(() => (there = true));
      const outcome = async (): Promise<string> => {
        const missing = [...refused].filter((file) => !given.has(file));
        const word = tryAgain(page).first();
        if (await word.isVisible()) {
          missing.forEach((file) => open.add(file));
          // Not by the mouse: the walk has it, and two clicks at a time would land in each other's place.
          await word.dispatchEvent('click');
          return 'is tried again';
        }
        return missing.length > 0 ? `misses ${missing.join(', ')}` : there ? 'stands' : 'comes';
      };
      await expect.poll(async () => [name, await outcome()]).toEqual([name, 'stands']);
      await walked;
    }
    expect([...parts].filter((part) => !refused.has(part) || !given.has(part))).toEqual([]);
  });
});

function tryAgain(page: Page): ReturnType<Page['getByRole']> {
  return page.getByRole('button', { name: 'Try again' });
}
