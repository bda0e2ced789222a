// Notebooks on the shelf: named, deleted, put back; refused files aside, byte for byte; a full or blocked storage
// never loses what was there.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asideBytes, asideFiles, dropAside, keepAside, largestAside } from '../../../explorer/keep/aside.js';
import { deletedOnes, keyOf, putBack, rename, shelved, takeOff, textOf } from '../../../explorer/keep/shelf.js';
import { put } from '../../../explorer/keep/storage.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { blockedShelves, memoryShelves } from './memory-shelves.js';
import { octoberWash } from './notebooks.js';

const at = (day: number): Date => new Date(Date.UTC(2026, 10, day));
const record = (name: string, day: number): string => notebookFile({ ...octoberWash, name }, at(day));

describe('the shelf', () => {
  it('lists notebooks by name, the latest first, and nothing else that is kept', () => {
    const shelves = memoryShelves();
    put(shelves, keyOf('a'), record('first', 1));
    put(shelves, keyOf('b'), record('second', 2));
    put(shelves, 'kettle-and-plate.units', 'us');
    expect(shelved(shelves).map(({ name }) => name)).toEqual(['second', 'first']);
  });

  it('gives a notebook another name and leaves all else as it was', () => {
    const shelves = memoryShelves();
    put(shelves, keyOf('a'), record('first', 1));
    expect(rename(shelves, 'a', 'better')).toBeUndefined();
    expect(textOf(shelves, 'a')).toBe(record('better', 1));
  });

  it('lists a damaged record too, and never writes over it', () => {
    const shelves = memoryShelves();
    put(shelves, keyOf('a'), '{"name": "fir');
    expect(shelved(shelves)).toEqual([{ id: 'a', name: '', written: '' }]);
    rename(shelves, 'a', 'better');
    expect(textOf(shelves, 'a')).toBe('{"name": "fir');
  });

  it('puts a deleted notebook back as it was', () => {
    const shelves = memoryShelves();
    put(shelves, keyOf('a'), record('first', 1));
    takeOff(shelves, 'a');
    expect(shelved(shelves)).toEqual([]);
    expect(deletedOnes(shelves).map(({ name }) => name)).toEqual(['first']);
    putBack(shelves, 'a');
    expect(textOf(shelves, 'a')).toBe(record('first', 1));
    expect(deletedOnes(shelves)).toEqual([]);
  });

  it('remembers the last five that were deleted', () => {
    const shelves = memoryShelves();
    for (const day of [1, 2, 3, 4, 5, 6, 7]) {
      put(shelves, keyOf(String(day)), record(`day ${String(day)}`, day));
      takeOff(shelves, String(day));
    }
    expect(deletedOnes(shelves).map(({ id }) => id)).toEqual(['7', '6', '5', '4', '3']);
  });

  it('can be emptied when the storage is full to the last character', () => {
    const text = record('first', 1);
    const shelves = memoryShelves(keyOf('a').length + text.length + 1);
    put(shelves, keyOf('a'), text);
    expect(takeOff(shelves, 'a')).toBeUndefined();
    expect(putBack(shelves, 'a')).toBeUndefined();
    expect(textOf(shelves, 'a')).toBe(text);
  });

  it('keeps a notebook that cannot be put aside, and says why', () => {
    const text = record('first', 1);
    const shelves = memoryShelves();
    put(shelves, keyOf('a'), text);
    const { setItem } = shelves;
    const closed = {
      ...shelves,
      length: 1,
      setItem: (key: string, value: string) => {
        if (key.includes('deleted')) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
        setItem(key, value);
      },
    };
    expect(takeOff(closed, 'a')).toBe('full');
    expect(textOf(shelves, 'a')).toBe(text);
  });

  it('keeps a deleted notebook that the storage is too full to put back, and puts it back once there is room', () => {
    const text = record('first', 1);
    const unlimited = memoryShelves();
    put(unlimited, keyOf('a'), text);
    takeOff(unlimited, 'a');
    const [[key, deleted]] = [...unlimited.records] as [[string, string]];
    // Full to the last character: a kept notebook has the longer name.
    const shelves = memoryShelves(key.length + deleted.length);
    shelves.setItem(key, deleted);
    expect(putBack(shelves, 'a')).toBe('full');
    expect(textOf(shelves, 'a')).toBeNull();
    expect(deletedOnes(shelves).map(({ name }) => name)).toEqual(['first']);
    const roomy = memoryShelves();
    shelves.records.forEach((value, name) => roomy.setItem(name, value));
    expect(putBack(roomy, 'a')).toBeUndefined();
    expect(textOf(roomy, 'a')).toBe(text);
  });

  it('is empty where the storage is blocked, without an exception', () => {
    for (const shelves of [blockedShelves(), undefined]) {
      expect(shelved(shelves)).toEqual([]);
      expect(put(shelves, 'x', 'y')).toBe('blocked');
      expect(textOf(shelves, 'a')).toBeNull();
    }
  });

  it('says that it is full and keeps what was there', () => {
    const shelves = memoryShelves(100);
    put(shelves, keyOf('a'), 'old');
    expect(put(shelves, keyOf('a'), 'x'.repeat(200))).toBe('full');
    expect(textOf(shelves, 'a')).toBe('old');
  });
});

describe('a refused file kept aside', () => {
  const file = { name: 'x.kettle', at: at(1).toISOString(), why: 'It is damaged.' };

  it('comes back byte for byte, text or not', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const shelves = memoryShelves();
        expect(keepAside(shelves, file, bytes)).toBe(true);
        const [kept] = asideFiles(shelves);
        expect(kept).toMatchObject(file);
        expect([...asideBytes(shelves, kept!.id)!]).toEqual([...bytes]);
      }),
    );
  });

  it('is one of five at most, the latest first, and can be thrown away', () => {
    const shelves = memoryShelves();
    for (const day of [1, 2, 3, 4, 5, 6]) {
      keepAside(shelves, { ...file, name: String(day), at: at(day).toISOString() }, new Uint8Array([day]));
    }
    expect(asideFiles(shelves).map(({ name }) => name)).toEqual(['6', '5', '4', '3', '2']);
    dropAside(shelves, asideFiles(shelves)[0]!.id);
    expect(asideFiles(shelves).map(({ name }) => name)).toEqual(['5', '4', '3', '2']);
  });

  it('is not kept where it is huge or the storage is full or blocked, and that is said', () => {
    expect(keepAside(memoryShelves(), file, new Uint8Array(largestAside + 1))).toBe(false);
    expect(keepAside(memoryShelves(50), file, new Uint8Array(40))).toBe(false);
    expect(keepAside(blockedShelves(), file, new Uint8Array(1))).toBe(false);
  });
});
