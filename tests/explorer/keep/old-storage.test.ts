// What earlier versions kept in the browser's simple storage is taken over once, all of it, and removed there only when
// it is in the records.

import { describe, expect, it } from 'vitest';
import { asideBytes, asideFiles } from '../../../explorer/keep/aside.js';
import { takeOver, type OldStorage } from '../../../explorer/keep/old-storage.js';
import { recordsInMemory } from '../../../explorer/keep/records-in-memory.js';
import { notebookText, putBack, shelfOf, takeOff } from '../../../explorer/keep/shelf.js';
import { latestMark } from '../../../explorer/keep/write-notebook.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { fakeRecords } from './fake-records.js';
import { octoberWash } from './notebooks.js';

const day = (number: number): Date => new Date(Date.UTC(2026, 10, number));
const record = (name: string, number: number): string => notebookFile({ ...octoberWash, name }, day(number));

function simpleStorage(records: Readonly<Record<string, string>>): OldStorage & { readonly left: Map<string, string> } {
  const left = new Map(Object.entries(records).map(([key, text]) => [`kettle-and-plate.${key}`, text]));
  return {
    left,
    get length() {
      return left.size;
    },
    key: (index) => [...left.keys()][index] ?? null,
    getItem: (key) => left.get(key) ?? null,
    removeItem: (key) => void left.delete(key),
  };
}

const before = {
  'notebook.a': record('first', 1),
  'notebook.b': record('second', 2),
  'deleted.c': record('deleted late', 4),
  'deleted.d': record('deleted early', 3),
  'aside.2026-11-01.x': JSON.stringify({
    name: 'x.kettle',
    at: day(1).toISOString(),
    why: 'It is damaged.',
    bytes: btoa('abc'),
  }),
  'aside.2026-11-01.y': '{"name": "y',
  latest: 'a',
  units: 'us',
};

describe('what the simple storage holds', () => {
  it('of a page that was left before keeping had loaded is what was open last; what this very page left stays', async () => {
    const [records, storage] = [fakeRecords(), simpleStorage({ 'notebook.a': record('first', 1), latest: 'a' })];
    await takeOver(records, storage);
    storage.left.set('kettle-and-plate.notebook.b', record('left in its first second', 2));
    storage.left.set('kettle-and-plate.latest', 'b');
    await takeOver(records, storage, 'kettle-and-plate.notebook.b');
    expect(await records.look(['marks'], (all) => all.get('marks', latestMark))).toBe('a');
    await takeOver(records, storage);
    expect(await records.look(['marks'], (all) => all.get('marks', latestMark))).toBe('b');
    expect((await shelfOf(records)).kept.map(({ name }) => name)).toEqual(['left in its first second', 'first']);
    expect([...storage.left.keys()]).toEqual(['kettle-and-plate.latest']);
  });

  it('is taken over: notebooks, deleted ones, what was aside, and which was open last', async () => {
    const [records, storage] = [fakeRecords(), simpleStorage(before)];
    await takeOver(records, storage);
    const { kept, deleted } = await shelfOf(records);
    expect(kept.map(({ id, name }) => [id, name])).toEqual([
      ['b', 'second'],
      ['a', 'first'],
    ]);
    expect(deleted.map(({ name }) => name)).toEqual(['deleted late', 'deleted early']);
    expect(await notebookText(records, 'a')).toBe(before['notebook.a']);
    await putBack(records, 'c');
    expect(await notebookText(records, 'c')).toBe(before['deleted.c']);
    const asides = await asideFiles(records);
    const bytes = await Promise.all(
      asides.map(async ({ id }) => new TextDecoder().decode(await asideBytes(records, id))),
    );
    expect(bytes.sort()).toEqual(['abc', '{"name": "y'].sort());
    expect(await records.look(['marks'], (all) => all.get('marks', latestMark))).toBe('a');
    expect([...storage.left.keys()]).toEqual(['kettle-and-plate.latest', 'kettle-and-plate.units']);
  });

  it('is taken once, also where the browser forgot that it was removed', async () => {
    const records = fakeRecords();
    await takeOver(records, simpleStorage(before));
    await takeOff(records, 'b');
    await takeOver(records, simpleStorage(before));
    expect((await shelfOf(records)).kept.map(({ id }) => id)).toEqual(['a']);
    expect((await asideFiles(records)).length).toBe(2);
  });

  it('is taken beside what is there where an older window wrote it again', async () => {
    const records = fakeRecords();
    await takeOver(records, simpleStorage({ 'notebook.a': record('first', 1) }));
    await takeOver(records, simpleStorage({ 'notebook.a': record('first, later', 2) }));
    expect((await shelfOf(records)).kept.map(({ name }) => name)).toEqual(['first, later', 'first']);
  });

  it('stays where it is when it cannot be taken, or only into memory', async () => {
    const storage = simpleStorage(before);
    const records = fakeRecords();
    records.fault = 'full';
    await expect(takeOver(records, storage)).rejects.toThrow('full');
    expect(storage.left.size).toBe(Object.keys(before).length);
    const memory = recordsInMemory();
    await takeOver(memory, storage);
    expect((await shelfOf(memory)).kept.length).toBe(2);
    expect(storage.left.size).toBe(Object.keys(before).length);
  });

  it('may be nothing, or forbidden', async () => {
    const refuse = (): never => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    const records = fakeRecords();
    await takeOver(records, undefined);
    await takeOver(records, simpleStorage({ units: 'us' }));
    await takeOver(records, { length: 1, key: refuse, getItem: refuse, removeItem: refuse });
    expect(records.account.records).toBe(0);
  });
});
