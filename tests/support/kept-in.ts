// What a browser has of the notebooks in its database, read and changed there past the explorer.

import type { Page } from 'playwright';
import { withChanges, type Step } from '../../explorer/keep/patch.js';
import type { Json } from '../../explorer/state/notebook-record.js';

const recordsEnd = '\u0000';

/** All that is kept of notebooks, as one text: the state each was last written in whole, and all changes since. */
export function keptIn(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const open = indexedDB.open('kettle-and-plate');
    open.onupgradeneeded = () => open.transaction!.abort(); // it is not there yet
    const there = await new Promise<boolean>((resolve) => {
      open.onsuccess = () => resolve(true);
      open.onerror = () => resolve(false);
    });
    if (!there) return '';
    const going = open.result.transaction(['bases', 'journal']);
    const found = ['bases', 'journal'].map((name) => going.objectStore(name).getAll());
    await new Promise((resolve) => (going.oncomplete = resolve));
    open.result.close();
    const records = found.flatMap(({ result }) => result as unknown[]);
    return records
      .map((record) => (typeof record === 'string' ? record : (record as { text: string }).text))
      .join('\u0000');
  });
}

/** What is kept of the letters that killed.mjs types: the state written whole, with the changes since. */
export async function keptTyping(page: Page): Promise<string> {
  const [base, ...changes] = (await keptIn(page)).split(recordsEnd);
  if (base === undefined || base === '') return '';
  const steps = changes.flatMap((change) => JSON.parse(change) as readonly Step[]);
  const now = JSON.stringify(withChanges(JSON.parse(base) as Json, steps));
  return /qqqq([a-z]*)/u.exec(now)?.[1] ?? '';
}

/** Puts something else in the place of the last record of a store, as damage would. */
export function damage(page: Page, store: string, record: unknown): Promise<void> {
  return page.evaluate(
    async ([name, value]) => {
      const open = indexedDB.open('kettle-and-plate');
      await new Promise((resolve) => (open.onsuccess = resolve));
      const going = open.result.transaction([name], 'readwrite');
      const keys = going.objectStore(name).getAllKeys();
      keys.onsuccess = () => going.objectStore(name).put(value, keys.result.at(-1));
      await new Promise((resolve) => (going.oncomplete = resolve));
      open.result.close();
    },
    [store, record] as const,
  );
}
