// Records in the browser's own database keep the same contract as those in memory; and what only a browser does: closing
// the connection, having no room, refusing altogether.

import { afterEach, describe, expect, it } from 'vitest';
import { recordsInBrowser } from '../../../explorer/keep/records-in-browser.js';
import { recordsInMemory } from '../../../explorer/keep/records-in-memory.js';
import { RecordsFault, storeNames, whyNotKept, type Records } from '../../../explorer/keep/records.js';

const name = 'kettle-and-plate';

/** Deletes everything, as from the browser's settings; open connections make way. */
function deleteAll(): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error!);
  });
}

afterEach(deleteAll);

describe.each<[string, () => Promise<Records>]>([
  ['in memory', () => Promise.resolve(recordsInMemory(true))],
  ['in the browser', recordsInBrowser],
])('records %s', (_, open) => {
  it('are read as they were written, in order, one store beside the other', async () => {
    const records = await open();
    const bytes = new Uint8Array([0, 1, 255]);
    await records.change(['heads', 'aside-bytes'], (all) => {
      all.put('heads', 'b', { name: 'second' });
      all.put('heads', 'a', { name: 'first' });
      all.put('aside-bytes', 'a', bytes);
    });
    expect(await records.look(['heads'], (all) => all.get('heads', 'a'))).toEqual({ name: 'first' });
    expect(await records.look(['heads'], (all) => all.get('heads', 'none'))).toBeUndefined();
    expect(await records.look(['heads'], (all) => all.all('heads'))).toEqual([
      ['a', { name: 'first' }],
      ['b', { name: 'second' }],
    ]);
    expect(await records.look(['aside-bytes'], (all) => all.get('aside-bytes', 'a'))).toEqual(bytes);
  });

  it('under an id come in the order of their numbers, and go together', async () => {
    const records = await open();
    await records.change(['journal'], (all) => {
      for (const number of [10, 9, 2]) all.put('journal', ['a', number], number);
      all.put('journal', ['ab', 1], 'another');
      all.put('journal', ['B', 1], 'another');
    });
    const numbers = await records.look(['journal'], (all) => all.all('journal', 'a'));
    expect(numbers.map(([, number]) => number)).toEqual([2, 9, 10]);
    await records.change(['journal'], (all) => all.removeUnder('journal', 'a'));
    expect((await records.look(['journal'], (all) => all.all('journal'))).length).toBe(2);
  });

  it('are changed all or not at all', async () => {
    const records = await open();
    await records.change(['marks'], (all) => all.put('marks', 'a', 1));
    const fault = records.change(['marks'], async (all) => {
      all.put('marks', 'a', 2);
      all.put('marks', 'b', 2);
      await all.get('marks', 'a');
      throw new Error('in the middle');
    });
    await expect(fault).rejects.toThrow();
    expect(await records.look(['marks'], (all) => all.all('marks'))).toEqual([['a', 1]]);
  });

  it('are changed one after the other: none is lost between reading and writing', async () => {
    const records = await open();
    const add = (): Promise<void> =>
      records.change(['marks'], async (all) => {
        const number = (await all.get('marks', 'sum')) ?? 0;
        all.put('marks', 'sum', Number(number) + 1);
      });
    await Promise.all(Array.from({ length: 20 }, add));
    expect(await records.look(['marks'], (all) => all.get('marks', 'sum'))).toBe(20);
  });

  it('take one that is handed over within a call', async () => {
    const records = await open();
    records.putAtOnce('left', 'a', { text: 'last words' });
    expect(await records.look(['left'], (all) => all.get('left', 'a'))).toEqual({ text: 'last words' });
  });

  it('have all their stores', async () => {
    const records = await open();
    for (const store of storeNames) expect(await records.look([store], (all) => all.all(store))).toEqual([]);
  });
});

describe('records in the browser', () => {
  it('are written with strict durability', async () => {
    const asked: unknown[] = [];
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (stores, mode, options) {
      if (mode === 'readwrite') asked.push(options?.durability);
      return transaction.call(this, stores, mode, options);
    };
    try {
      const records = await recordsInBrowser();
      await records.change(['marks'], (all) => all.put('marks', 'a', 1));
      records.putAtOnce('marks', 'b', 1);
    } finally {
      IDBDatabase.prototype.transaction = transaction;
    }
    expect(asked).toEqual(['strict', 'strict']);
  });

  it('go on where the browser closed them, or where everything was deleted', async () => {
    const records = await recordsInBrowser();
    await records.change(['marks'], (all) => all.put('marks', 'a', 1));
    await deleteAll();
    await records.change(['marks'], (all) => all.put('marks', 'b', 2));
    expect(await records.look(['marks'], (all) => all.all('marks'))).toEqual([['b', 2]]);
  });

  it('make way for a newer version, which is said then', async () => {
    const records = await recordsInBrowser();
    const newer = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name, 2);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error!);
    });
    await expect(records.change(['marks'], (all) => all.put('marks', 'a', 1))).rejects.toMatchObject({ why: 'newer' });
    newer.close();
  });

  it('are refused in words where there is no database, or it cannot be opened', async () => {
    const failing = {
      open: () => {
        throw new DOMException('Not allowed.', 'SecurityError');
      },
    } as unknown as IDBFactory;
    await expect(recordsInBrowser(failing)).rejects.toMatchObject({ why: 'blocked' });
  });

  it.each([
    [new DOMException('', 'QuotaExceededError'), 'full'],
    [new DOMException('', 'SecurityError'), 'blocked'],
    [new DOMException('', 'VersionError'), 'newer'],
    [new DOMException('', 'UnknownError'), 'failed'],
    [new RecordsFault('silent'), 'silent'],
    [new TypeError('a mistake'), 'failed'],
  ])('name the reason of %s', (error, why) => {
    expect(whyNotKept(error)).toBe(why);
  });
});
