// Notebooks on the shelf: deleted and put back by the time of deletion; what could not be read aside, byte for byte, in
// a budget of its own. Nothing damaged takes anything else with it.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asideBudget,
  asideBytes,
  asideFiles,
  dropAside,
  keepAside,
  largestAside,
  putAside,
} from '../../../explorer/keep/aside.js';
import { OnShelf } from '../../../explorer/keep/on-shelf.js';
import { mostDeleted, notebookText, putBack, shelfOf, takeOff } from '../../../explorer/keep/shelf.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { fakeRecords } from './fake-records.js';
import { keep } from './kept-notebooks.js';
import { octoberWash } from './notebooks.js';

const day = (number: number): Date => new Date(Date.UTC(2026, 10, number));
const named = (name: string): typeof octoberWash => ({ ...octoberWash, name });

describe('the shelf', () => {
  it('lists notebooks by name, the latest first', async () => {
    const records = fakeRecords();
    await keep(records, [named('first')], day(1));
    await keep(records, [named('second'), named('second, changed')], day(2));
    expect((await shelfOf(records)).kept.map(({ name }) => name)).toEqual(['second, changed', 'first']);
  });

  it('has the very text of the file of each', async () => {
    const records = fakeRecords();
    const id = await keep(records, [named('first'), named('better')], day(1));
    expect(await notebookText(records, id)).toBe(notebookFile(named('better'), day(1)));
  });

  it('lists a damaged record too, and gives what is there of it', async () => {
    const records = fakeRecords();
    await records.change(['heads', 'bases'], (all) => {
      all.put('heads', 'a', 'not a head');
      all.put('bases', 'a', { text: '{"name": "fir' });
    });
    await keep(records, [named('good')], day(1));
    expect((await shelfOf(records)).kept).toMatchObject([{ name: 'good' }, { id: 'a', name: '', written: '' }]);
    expect(await notebookText(records, 'a')).toBe('{"name": "fir');
  });

  it('puts a deleted notebook back as it was', async () => {
    const records = fakeRecords();
    const id = await keep(records, [named('first')], day(1));
    await takeOff(records, id);
    expect(await shelfOf(records)).toMatchObject({ kept: [], deleted: [{ name: 'first' }] });
    await putBack(records, id);
    expect(await shelfOf(records)).toMatchObject({ kept: [{ name: 'first' }], deleted: [] });
    expect(await notebookText(records, id)).toBe(notebookFile(named('first'), day(1)));
  });

  it('puts back the notebook deleted last, however old it is and whatever the clock does', async () => {
    const records = fakeRecords();
    const old = await keep(records, [named('old')], day(1));
    // Written on days that go backwards, as after the clock was set.
    for (let i = 0; i < mostDeleted; i++) {
      await takeOff(records, await keep(records, [named(`newer ${String(i)}`)], day(28 - i)));
    }
    await takeOff(records, old);
    const { deleted } = await shelfOf(records);
    expect(deleted.length).toBe(10);
    expect(deleted[0]).toMatchObject({ id: old, name: 'old' });
    expect(deleted.map(({ name }) => name)).not.toContain('newer 0');
    await putBack(records, old);
    expect(await notebookText(records, old)).toBe(notebookFile(named('old'), day(1)));
  });

  it('gives the latest that were deleted back, in any order of deleting, putting back and writing', async () => {
    const act = fc.record({ what: fc.constantFrom('keep', 'delete', 'put back'), which: fc.nat(30), when: fc.nat(27) });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 40 }), async (acts) => {
        const records = fakeRecords();
        const kept: string[] = [];
        let deleted: string[] = [];
        for (const { what, which, when } of acts) {
          if (what === 'keep') kept.push(await keep(records, [named('one')], day(1 + when)));
          const [from, to] = what === 'delete' ? [kept, deleted] : [deleted, kept];
          const id = what === 'keep' ? undefined : from.splice(which % Math.max(1, from.length), 1)[0];
          if (id === undefined) continue;
          if (what === 'delete') await takeOff(records, id);
          else await putBack(records, id);
          to.push(id);
          deleted = deleted.slice(-mostDeleted);
        }
        const shelf = await shelfOf(records);
        expect(shelf.deleted.map(({ id }) => id)).toEqual(deleted.toReversed());
        expect(shelf.kept.map(({ id }) => id).sort()).toEqual(kept.sort());
      }),
      { numRuns: 100 },
    );
  });
});

describe('what could not be read', () => {
  const file = { name: 'x.kettle', at: day(1).toISOString(), why: 'It is damaged.' };

  it('comes back byte for byte, text or not', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
        const records = fakeRecords();
        expect(await keepAside(records, file, new Uint8Array(bytes))).toBe(true);
        const [kept] = await asideFiles(records);
        expect(kept).toMatchObject({ ...file, kind: 'file' });
        expect([...(await asideBytes(records, kept!.id))!]).toEqual([...bytes]);
      }),
    );
  });

  it('is there the latest first, so many at most, whatever the clock does, and can be thrown away', async () => {
    const records = fakeRecords();
    for (let i = 0; i <= asideBudget.count; i++) {
      await keepAside(records, { ...file, name: String(i), at: day(28 - i).toISOString() }, new Uint8Array([i]));
    }
    const names = async (): Promise<string[]> => (await asideFiles(records)).map(({ name }) => name);
    expect(await names()).toEqual(['10', '9', '8', '7', '6', '5', '4', '3', '2', '1']);
    await dropAside(records, (await asideFiles(records))[0]!.id);
    expect(await names()).toEqual(['9', '8', '7', '6', '5', '4', '3', '2', '1']);
  });

  it('is kept once, however often the same is refused', async () => {
    const records = fakeRecords();
    for (let i = 0; i < 3; i++) await keepAside(records, file, new Uint8Array([1, 2, 3]));
    await keepAside(records, file, new Uint8Array([1, 2, 4]));
    expect((await asideFiles(records)).length).toBe(2);
  });

  it('stays within its bytes, and files never push out notebooks', async () => {
    const records = fakeRecords();
    const notebook = new Uint8Array([7]);
    await records.change(['asides', 'aside-bytes'], (all) =>
      putAside(all, { ...file, name: 'a notebook', kind: 'notebook' }, notebook),
    );
    for (let i = 0; i < 6; i++) {
      const bytes = new Uint8Array(largestAside);
      bytes[0] = i;
      expect(await keepAside(records, file, bytes)).toBe(true);
    }
    const kept = await asideFiles(records);
    expect(kept.filter(({ kind }) => kind === 'file').length).toBe(asideBudget.bytes / largestAside);
    expect(kept.filter(({ kind }) => kind === 'notebook').map(({ name }) => name)).toEqual(['a notebook']);
    const bytes = await records.look(['aside-bytes'], (all) => all.all('aside-bytes'));
    expect(bytes.length).toBe(kept.length);
  });

  it('is not kept where it is huge or the browser refuses, and that is said', async () => {
    const records = fakeRecords();
    expect(await keepAside(records, file, new Uint8Array(largestAside + 1))).toBe(false);
    records.fault = 'full';
    expect(await keepAside(records, file, new Uint8Array(1))).toBe(false);
  });

  it('damaged itself takes nothing with it', async () => {
    const records = fakeRecords();
    await keepAside(records, file, new Uint8Array([1]));
    await records.change(['asides'], (all) => {
      for (const [key, record] of [
        ['a', null],
        ['b', 'text'],
        ['c', { name: 5, order: 'x' }],
        ['d', []],
      ] as const)
        all.put('asides', key, record);
    });
    const shelf = new OnShelf(records, () => undefined);
    await shelf.refresh();
    expect(shelf.trouble).toBeUndefined();
    expect(shelf.lists.aside.map(({ name }) => name)).toEqual(['x.kettle', ...Array<string>(4).fill('without a name')]);
    expect(await shelf.asideBytes('a')).toBeUndefined();
    await shelf.dropAside('a');
    expect(shelf.lists.aside.length).toBe(4);
  });
});

describe('a shelf that cannot be read', () => {
  it('is empty and says why, and is there again when it can', async () => {
    const records = fakeRecords();
    await keep(records, [named('first')]);
    const shelf = new OnShelf(records, () => undefined);
    records.fault = 'failed';
    await shelf.refresh();
    expect(shelf.lists.kept).toEqual([]);
    expect(shelf.trouble).toBe('failed');
    records.fault = undefined;
    await shelf.refresh();
    expect(shelf.lists.kept.length).toBe(1);
    expect(shelf.trouble).toBeUndefined();
  });
});
