// Nothing that can be seen moves while a page comes, however slow the machine and in whatever order its files arrive:
// typefaces, kinds of entry, figures and what computes them are held back and let go one by one, the last asked for
// first, each after the one before has been drawn.

import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { pages } from '../../explorer/pages/registry.js';
import { explorerInBrowser } from '../support/open-explorer.js';
import { unrulyHost, type UnrulyHost } from '../support/unruly-host.js';

const explorer = explorerInBrowser();
/** Movement of what can be seen (layout shift as browsers measure it) that nobody would notice. */
const unseen = 0.001;
/** How many times slower than it is the processor is made. */
const slowness = 4;

let host: UnrulyHost;
beforeEach(async () => (host = await unrulyHost(inject('url'))));
afterEach(async () => host.close());

describe.each(pages.map(({ name, title }) => ({ name, title })))('$title', ({ name }) => {
  // A window higher than any, so that much can be seen to move.
  it.each([
    { on: 'a phone', viewport: { width: 390, height: 1600 } },
    { on: 'a desk', viewport: { width: 1440, height: 1600 } },
  ])('comes without anything moving on $on', async ({ viewport }) => {
    const parts = new Set(inject('parts'));
    const held: (() => void)[] = [];
    host.treat((file) => {
      if (!parts.has(file) && !file.endsWith('.woff2')) return undefined;
      return { after: new Promise<void>((resolve) => held.push(resolve)) };
    });
    // A file that is not held back first, so that all is made ready before the page begins to come.
    const { page } = await explorer.open('licences.txt', { host: host.url, viewport });
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowness });
    await page.addInitScript(noteMovement);
    await page.goto(`${host.url}#${name}`, { waitUntil: 'commit' });
    // Over once the page stands and nothing is on its way.
    const over = async (): Promise<boolean> => {
      const next = held.pop();
      next?.();
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      return next === undefined && (await page.evaluate(stands));
    };
    await expect.poll(over, { interval: 0 }).toBe(true);
    const moved = await page.evaluate(() => (globalThis as unknown as Seen).moved);
    const sum = moved.reduce((all, { value }) => all + value, 0);
    expect([sum < unseen, sum < unseen ? [] : moved]).toEqual([true, []]);
  });
});

describe('what stands under a figure', () => {
  it('is there where the solver refuses the numbers, so that the figure does not come', async () => {
    // A solver that refuses everything.
    const body = `onmessage = ({ data: { id } }) =>
      postMessage({ id, reply: { kind: 'refused', faults: [] } });`;
    host.treat((file) => (file.includes('solver.worker') ? { body } : undefined));
    const { page } = await explorer.open('#the-stills-limits', { host: host.url });
    await page.getByText('The solver could not answer').waitFor();
    await page.locator('main .page-foot').waitFor();
    const last = page.locator('main section').last();
    await expect.poll(() => last.evaluate((section) => getComputedStyle(section).visibility)).toBe('visible');
  });

  it('is there where the solver cannot be loaded', async () => {
    host.treat((file) => (file.includes('solver.worker') ? { status: 503, body: 'too busy' } : undefined));
    const { page } = await explorer.open('#reflux', { host: host.url });
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    await expect
      .poll(() =>
        page
          .locator('main section')
          .last()
          .evaluate((section) => getComputedStyle(section).visibility),
      )
      .toBe('visible');
  });
});

interface Seen {
  /** Each movement, with what moved. */
  readonly moved: { readonly value: number; readonly what: readonly string[] }[];
}

/** On the page: notes what moves, from the very start. */
function noteMovement(): void {
  interface Shift extends PerformanceEntry {
    readonly value: number;
    readonly sources: readonly { node: Node | null; previousRect: DOMRect; currentRect: DOMRect }[];
  }
  const moved: Seen['moved'] = [];
  Object.assign(globalThis, { moved });
  const named = (node: Node | null): string =>
    node instanceof Element ? `${node.localName}.${node.getAttribute('class') ?? ''}` : (node?.nodeName ?? 'gone');
  new PerformanceObserver((list) => {
    for (const { value, sources } of list.getEntries() as Shift[])
      moved.push({
        value,
        what: sources.map(
          ({ node, previousRect, currentRect }) => `${named(node)} ${previousRect.y} → ${currentRect.y}`,
        ),
      });
  }).observe({ type: 'layout-shift', buffered: true });
}

/** On the page: whether it has all it waits for, keeping included, and all its typefaces are decided on. */
function stands(): boolean {
  return (
    document.querySelector('main h1') !== null &&
    document.querySelector('main :is(.figure-to-come, .guess-to-come, .entry-to-come)') === null &&
    document.querySelector('main > kp-entries-page:not([complete])') === null &&
    document.querySelector('.about-words') !== null &&
    document.fonts.status === 'loaded'
  );
}
