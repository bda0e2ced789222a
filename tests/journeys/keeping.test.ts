// A reader keeps a notebook, comes back to it, hands it on and opens what others hand on; nothing is lost on the way.

import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import type { Download, Page } from 'playwright';
import { describe, expect, inject, it } from 'vitest';
import { explorerInBrowser, type OpenPage } from '../support/open-explorer.js';
import { damage, keptIn } from '../support/kept-in.js';
import { Reader } from '../support/reader.js';

const explorer = explorerInBrowser();

async function opened(address = '', options = {}): Promise<OpenPage & { reader: Reader }> {
  const open = await explorer.open(address, options);
  await open.page.locator('main h1').waitFor();
  return { ...open, reader: new Reader(open.page) };
}

/** Goes to the page of kept notebooks, once it can be reached. */
async function toNotebooks(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Keep and open' }).click();
  await page.getByRole('heading', { name: 'This notebook' }).waitFor();
}

const shelf = (page: Page): ReturnType<Page['locator']> =>
  page.locator('section[aria-labelledby=the-shelf] > ul.shelf').first();

async function contentOf(download: Promise<Download>): Promise<string> {
  return text(await (await download).createReadStream());
}

/** The file of the part that keeps, as a pattern of addresses. */
async function keepingPart(page: Page): Promise<string> {
  const part = await page.evaluate(() => [...document.scripts].map(({ src }) => src).find((src) => src !== ''));
  const start = /"[^"]*\/(start-[^"/]+\.js)"/u.exec(await (await fetch(part!)).text())?.[1];
  expect(start).toBeDefined();
  return `**/${start!}`;
}

/** Drops a file on the page, as from a folder of the system. */
async function drop(page: Page, name: string, content: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, inside]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([inside!], fileName!));
      return transfer;
    },
    [name, content],
  );
  for (const type of ['dragover', 'drop']) await page.dispatchEvent('main', type, { dataTransfer: data });
}

describe('a notebook', () => {
  it('is there again after the page was left, under its name, with numbers and pencil lines', async () => {
    const { page, problems, reader } = await opened('#the-ceiling');
    await page.locator('main figure').first().waitFor();
    await page.getByRole('button', { name: 'Keep as a pencil line' }).first().click();
    await reader.type('plates', '20');
    await expect.poll(() => keptIn(page)).toMatch(/"count": 20|"set":20/u);
    await toNotebooks(page);
    await page.getByLabel('Its name').fill('October wash');
    await expect.poll(() => shelf(page).innerText()).toContain('October wash');
    await page.reload();
    await expect.poll(() => page.locator('.notebook-name').innerText()).toBe('October wash');
    await page.goto(page.url().split('#')[0]!);
    await reader.sees(() => reader.number('plates'), '20 plates');
    await reader.sees(() => reader.figure(), '12 plates, before');
    expect(problems).toEqual([]);
  });

  it('can be begun anew beside others, opened, deleted and put back', async () => {
    const { page, problems, reader } = await opened('#the-ceiling');
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await toNotebooks(page);
    await page.getByLabel('Its name').fill('first');
    await page.getByRole('button', { name: 'Begin another' }).click();
    await page.getByLabel('Its name').fill('second');
    await expect.poll(() => shelf(page).innerText()).toMatch(/second[\s\S]+first/u);
    await page.getByRole('button', { name: 'Open first' }).click();
    await expect.poll(() => page.getByLabel('Its name').inputValue()).toBe('first');
    await page.getByRole('button', { name: 'Delete second' }).click();
    await expect.poll(() => shelf(page).innerText()).not.toContain('second');
    await page.getByRole('button', { name: 'Put second back' }).click();
    await expect.poll(() => shelf(page).innerText()).toContain('second');
    await page.getByRole('link', { name: 'The ceiling' }).click();
    await reader.sees(() => reader.number('plates'), '20 plates');
    expect(problems).toEqual([]);
  });

  it('changed in two windows is kept twice, and the second window says so', async () => {
    const { page, reader } = await opened('#the-ceiling');
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await expect.poll(() => keptIn(page)).toContain('"count": 20');
    const other = await page.context().newPage();
    await other.goto(page.url().split('#')[0]!);
    const second = new Reader(other);
    await second.sees(() => second.number('plates'), '20 plates');
    await reader.type('plates', '21');
    await expect.poll(() => keptIn(page)).toContain('"set":21');
    await second.type('plates', '22');
    await second.sees(() => other.locator('.notice').innerText(), 'Another window changed the same notebook');
    await other.getByRole('button', { name: 'See to it' }).click();
    await second.sees(() => shelf(other).innerText(), 'Untitled, from another window');
    await other.getByRole('button', { name: 'Open Untitled', exact: true }).click();
    await other.getByRole('link', { name: 'The ceiling' }).click();
    await second.sees(() => second.number('plates'), '21 plates');
  });

  it('is there to the last letter when the page is left right behind it', async () => {
    const { page, reader } = await opened('#the-ceiling');
    await toNotebooks(page);
    const name = page.getByLabel('Its name');
    for (const written of ['Left in a hurry', 'Left again, later', 'And once more']) {
      await name.fill(written);
      await page.reload();
      await reader.sees(() => name.inputValue(), written);
    }
  });

  it('left before keeping has loaded is there again, in this window and in the next, once', async () => {
    const { page } = await explorer.open();
    const file = await keepingPart(page);
    await page.route(file, () => new Promise(() => undefined));
    await page.goto(`${page.url().split('#')[0]!}?again#the-ceiling`);
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    // Looked at another window and back: nothing stays behind of that.
    await page.evaluate(() => {
      for (const event of ['pagehide', 'pageshow', 'pagehide']) dispatchEvent(new Event(event));
    });
    await page.goto('about:blank');
    await page.unroute(file);
    await page.goto(inject('url'));
    await reader.sees(() => reader.number('plates'), '20 plates');
    await expect.poll(() => keptIn(page)).toContain('"count": 20');
    const other = await page.context().newPage();
    await other.goto(inject('url'));
    await new Reader(other).sees(() => new Reader(other).number('plates'), '20 plates');
    await toNotebooks(other);
    await expect.poll(() => shelf(other).locator('li').count()).toBe(1);
  });

  it('that earlier versions kept is taken over', async () => {
    const { page, reader } = await opened('#the-ceiling');
    const file = await readFile(new URL('../explorer/keep/kept/version-2.kettle', import.meta.url), 'utf8');
    await page.evaluate((record) => {
      localStorage.setItem('kettle-and-plate.notebook.old', record);
      localStorage.setItem('kettle-and-plate.latest', 'old');
    }, file);
    await page.goto('about:blank');
    await page.goto(inject('url'));
    await reader.sees(() => page.locator('.notebook-name').innerText(), 'Old wash');
    await reader.sees(() => reader.number('plates'), '17 plates');
    await expect.poll(() => page.evaluate(() => localStorage.getItem('kettle-and-plate.notebook.old'))).toBeNull();
    await reader.type('plates', '18');
    await page.reload();
    await reader.sees(() => reader.number('plates'), '18 plates');
  });

  it('whose newest state is damaged opens in the last good one and says why, once', async () => {
    const { page, reader } = await opened('#the-ceiling');
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await expect.poll(() => keptIn(page)).toContain('"count": 20');
    await reader.type('plates', '21');
    await expect.poll(() => keptIn(page)).toContain('"set":21');
    await damage(page, 'journal', '[{"at":["numbers","pl');
    await page.reload();
    await reader.sees(() => page.locator('.notice').innerText(), 'the last good one is open. It is damaged');
    await reader.sees(() => reader.number('plates'), '20 plates');
    await page.getByRole('button', { name: 'See to it' }).click();
    const aside = page.getByRole('region', { name: 'Open a file' });
    await reader.sees(() => aside.innerText(), 'A notebook that was kept here. It is damaged: it is not complete');
    await page.reload();
    await page.getByRole('heading', { name: 'Kept aside' }).waitFor();
    expect(await page.locator('.notice p').count()).toBe(0);
  });

  const unable: readonly (readonly [string, string, () => void])[] = [
    [
      'lets no page keep anything',
      'what you do is gone when you leave',
      (): void => {
        for (const name of ['localStorage', 'sessionStorage', 'indexedDB'])
          Object.defineProperty(window, name, {
            get: () => {
              throw new DOMException('The operation is insecure.', 'SecurityError');
            },
          });
      },
    ],
    [
      'has no database',
      'what you do is gone when you leave',
      (): void => void Object.defineProperty(window, 'indexedDB', { value: undefined }),
    ],
    [
      'has no room',
      'has no room left',
      (): void => {
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = function (...given) {
          if ('room' in window) return put.apply(this, given);
          throw new DOMException('No room.', 'QuotaExceededError');
        };
      },
    ],
  ];

  it.each(unable)('in a browser that %s is said not to be kept, with the way that is left', async (_, says, spoil) => {
    const { page } = await explorer.open();
    await page.addInitScript(spoil);
    await page.goto(`${page.url().split('#')[0]!}?again#the-ceiling`);
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await reader.sees(() => page.locator('.notice').innerText(), says);
    const file = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the notebook as a file' }).click();
    expect(await contentOf(file)).toContain('"count": 20');
    await page.getByRole('button', { name: 'See to it' }).click();
    await reader.sees(() => page.getByRole('region', { name: 'This notebook' }).innerText(), says);
    const again = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).click();
    expect(await contentOf(again)).toContain('"count": 20');
  });

  it('is kept again by itself when there is room again, and the line goes', async () => {
    const { page } = await explorer.open();
    await page.addInitScript(unable[2]![2]);
    await page.goto(`${page.url().split('#')[0]!}?again#the-ceiling`);
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await reader.sees(() => page.locator('.notice').innerText(), 'has no room left');
    await page.evaluate(() => Object.assign(window, { room: true }));
    await expect.poll(() => page.locator('.notice p').count()).toBe(0);
    expect(await keptIn(page)).toContain('"count": 20');
  });

  it('that cannot be kept for want of a part can be saved as a file, and is kept once the part is there', async () => {
    const { page } = await explorer.open();
    const file = await keepingPart(page);
    await page.route(file, (route) => route.abort());
    await page.goto(`${page.url().split('#')[0]!}?again#the-ceiling`);
    const reader = new Reader(page);
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await reader.sees(() => page.locator('.notice').innerText(), 'Nothing you do is kept');
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the notebook as a file' }).click();
    expect(await contentOf(saved)).toContain('"count": 20');
    await page.unroute(file);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect.poll(() => keptIn(page)).toContain('"count": 20');
    expect(await page.locator('.notice p').count()).toBe(0);
  });
});

describe('the file of a notebook', () => {
  it('goes out by a word and comes in by drag and drop, on another machine', async () => {
    const { page, reader } = await opened('#the-ceiling');
    await page.locator('main figure').first().waitFor();
    await reader.type('plates', '20');
    await toNotebooks(page);
    await page.getByLabel('Its name').fill('To hand on');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save it as a file' }).click();
    expect((await download).suggestedFilename()).toBe('to-hand-on.kettle');
    const content = await contentOf(download);

    const { page: there, problems, reader: other } = await opened('#the-doubler');
    await there.getByRole('link', { name: 'Keep and open' }).waitFor();
    await drop(there, 'to-hand-on.kettle', content);
    await other.sees(() => there.locator('.notebook-name').innerText(), 'To hand on');
    await other.sees(() => other.number('plates'), '20 plates');
    await toNotebooks(there);
    expect(await shelf(there).innerText()).toContain('To hand on');
    expect(problems).toEqual([]);
  });

  it.each([
    ['damaged', '{"format": "kettle-and-plate notebook", "version": 2, "na', 'It is damaged'],
    ['newer', '{"format": "kettle-and-plate notebook", "version": 7}', 'A newer Kettle & Plate wrote it'],
    ['something else', '<html><script>document.title = "evil"</script></html>', 'It is not a notebook'],
  ])('that is %s is refused, kept aside, and comes back unchanged', async (_, content, why) => {
    const { page, problems, reader } = await opened('#the-ceiling');
    await page.getByRole('link', { name: 'Keep and open' }).waitFor();
    await reader.type('plates', '20');
    await drop(page, 'from-a-friend.kettle', content);
    await reader.sees(() => page.getByRole('alert').innerText(), why);
    await page.reload();
    await page.getByRole('heading', { name: 'Kept aside' }).waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save from-a-friend.kettle unchanged' }).click();
    expect(await contentOf(download)).toBe(content);
    await page.getByRole('link', { name: 'The ceiling' }).click();
    await reader.sees(() => reader.number('plates'), '20 plates');
    expect(await page.title()).not.toBe('evil');
    expect(problems).toEqual([]);
  });
});

describe('a notebook as full as it may be', () => {
  it('takes no more, says why where the reader is, and is opened again as it was', async () => {
    const { page, problems, reader } = await opened('#the-ceiling');
    await page.getByRole('link', { name: 'Keep and open' }).waitFor();
    const pages = Array.from({ length: 400 }, (_, at) => ({
      name: `page-${String(at + 1)}`,
      title: `Day ${String(at + 1)}`,
      promise: '',
      entries: [],
    }));
    const written = new Date(0).toISOString();
    const file = {
      format: 'kettle-and-plate notebook',
      version: 2,
      written,
      name: 'Full',
      numbers: {},
      pages,
      work: {},
    };
    await drop(page, 'full.kettle', JSON.stringify(file));
    await reader.sees(() => page.locator('.notebook-name').innerText(), 'Full');
    await page.getByRole('button', { name: 'Blank page' }).click();
    await reader.sees(
      () => page.locator('.refused-act').innerText(),
      'A notebook has at most 400 pages, and this has 401. Nothing was changed.',
    );
    await page.getByRole('button', { name: 'Put this away' }).click();
    await expect.poll(() => page.locator('.refused-act').innerText()).toBe('');
    await page.reload();
    await reader.sees(() => page.locator('.notebook-name').innerText(), 'Full');
    expect(await page.getByRole('link', { name: 'Day 400' }).count()).toBe(1);
    expect(problems).toEqual([]);
  });
});

describe('what is no file', () => {
  it('is refused where the reader is, and what is open stays', async () => {
    const { page, problems, reader } = await opened('#the-ceiling');
    await page.getByRole('link', { name: 'Keep and open' }).waitFor();
    await reader.type('plates', '20');
    // As browsers hand over a folder, or a file that was taken away.
    await page.evaluate(() => {
      File.prototype.arrayBuffer = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
    });
    await drop(page, 'a-folder', '');
    await reader.sees(() => page.getByRole('alert').innerText(), 'it is a folder, or a file that is no longer there');
    expect(await page.getByRole('button', { name: 'Save it unchanged' }).count()).toBe(0);
    await page.getByRole('link', { name: 'The ceiling' }).click();
    await reader.sees(() => reader.number('plates'), '20 plates');
    expect(problems).toEqual([]);
  });
});

describe('an address to hand on', () => {
  it('is copied with the numbers of the page', async () => {
    const { page, reader } = await opened('#the-ceiling', { permissions: ['clipboard-read', 'clipboard-write'] });
    await reader.type('plates', '20');
    await page.getByRole('button', { name: 'Share this page' }).click();
    await reader.sees(() => page.locator('.contents .said').innerText(), 'is copied');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/#the-ceiling\?v=2&plates=20$/u);
  });

  it('carries a short page of the reader’s own', async () => {
    const { page, reader } = await opened('', { permissions: ['clipboard-read', 'clipboard-write'] });
    await page.getByRole('button', { name: 'Blank page' }).click();
    await page.getByRole('button', { name: 'Share this page' }).click();
    await reader.sees(() => page.locator('.contents .said').innerText(), 'your page is in it');
    const address = await page.evaluate(() => navigator.clipboard.readText());
    expect(address.length).toBeLessThan(2000);
    const { page: there, problems } = await opened(new URL(address).hash);
    const own = there.getByRole('link', { name: 'A page of my own' });
    await own.waitFor();
    expect(await own.getAttribute('aria-current')).toBe('page');
    expect(await there.locator('.complaint').count()).toBe(0);
    expect(problems).toEqual([]);
  });
});
