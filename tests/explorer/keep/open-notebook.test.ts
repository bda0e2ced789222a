// Opening a kept notebook: as it was left, or, where that cannot be read, in the last good state, with the reason; what
// cannot be read is set aside once and for all.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asideBytes, asideFiles } from '../../../explorer/keep/aside.js';
import { openNotebook, type Check, type Opening } from '../../../explorer/keep/open-notebook.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import type { Records } from '../../../explorer/keep/records.js';
import { notebookText, shelfOf } from '../../../explorer/keep/shelf.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import type { Notebook } from '../../../explorer/state/notebook-record.js';
import { fakeRecords } from './fake-records.js';
import { keep, titled } from './kept-notebooks.js';
import { anyNotebook, octoberWash } from './notebooks.js';

const now = new Date(0);
const check: Check = (text) => readNotebookFile(text, ['the-ceiling'], now);
const open = (records: Records, id: string): Promise<Opening> =>
  openNotebook(records, id, check, { writer: 'me', now: () => now });

/** A title that no reading check lets pass. */
const tooLong = 1_000_000;
const text = (notebook: Notebook): string => notebookFile(notebook, now);

async function opened(records: Records, id: string): Promise<Opening & { kind: 'opened' }> {
  const opening = await open(records, id);
  if (opening.kind !== 'opened') throw new Error(`It is ${opening.kind}`);
  return opening;
}

describe('a kept notebook', () => {
  it('opens as it was left, after any changes', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyNotebook, { minLength: 1, maxLength: 6 }), async (states) => {
        const records = fakeRecords();
        const id = await keep(records, states);
        const { reading, instead, record } = await opened(records, id);
        // The order of fields says nothing; that of lists does.
        expect(reading.notebook).toEqual(states.at(-1));
        expect(record).toEqual(JSON.parse(text(states.at(-1)!)));
        expect(instead).toBeUndefined();
        // And again, now that it was found good.
        expect((await opened(records, id)).reading.notebook).toEqual(states.at(-1));
      }),
      { numRuns: 60 },
    );
  });

  it('that is not there opens nothing', async () => {
    expect(await open(fakeRecords(), 'none')).toEqual({ kind: 'none' });
  });
});

describe('a notebook whose newest state cannot be read', () => {
  const good = Array.from({ length: 9 }, (_, i) => titled(octoberWash, i + 1));

  it('opens in the last state that can, which loses only what came after', async () => {
    for (const place of [1, 4, 9]) {
      const records = fakeRecords();
      const bad = titled(octoberWash, tooLong);
      const states = [...good.slice(0, place), bad, { ...bad, name: 'later' }];
      const id = await keep(records, states);
      const { reading, instead } = await opened(records, id);
      expect(text(reading.notebook)).toBe(text(good[place - 1]!));
      expect(instead?.refusal.kind).toBe('damaged');
      expect(instead?.aside).toBe(true);
    }
  });

  it('is set aside once, with all that was in it, and opens without a word from then on', async () => {
    const records = fakeRecords();
    const bad = titled(octoberWash, tooLong);
    const id = await keep(records, [...good, bad]);
    await opened(records, id);
    for (let start = 0; start < 3; start++) expect((await opened(records, id)).instead).toBeUndefined();
    const asides = await asideFiles(records);
    expect(asides).toMatchObject([{ kind: 'notebook', name: 'October wash.json' }]);
    expect(new TextDecoder().decode(await asideBytes(records, asides[0]!.id))).toBe(text(bad));
  });

  it('opens after the last change that is whole where one of them is missing or damaged', async () => {
    for (const damage of ['missing', 'damaged', 'of something else'] as const) {
      const records = fakeRecords();
      const id = await keep(records, good);
      await records.change(['journal'], (all) => {
        if (damage === 'missing') all.remove('journal', [id, 5]);
        else all.put('journal', [id, 5], damage === 'damaged' ? '[{"at":' : '[{"at":["no","such"],"set":1}]');
      });
      const { reading, instead } = await opened(records, id);
      expect(text(reading.notebook)).toBe(text(good[3]!));
      expect(instead?.aside).toBe(true);
    }
  });

  it('opens in the state it was last opened in where the base is damaged', async () => {
    const records = fakeRecords();
    const id = await keep(records, [good[0]!]);
    await opened(records, id);
    const { count } = await opened(records, id);
    // Written whole again, and spoiled.
    await records.change(['bases', 'earlier'], async (all) => {
      all.put('earlier', id, await all.get('bases', id));
      all.put('bases', id, { count, text: '{"format": "kett', good: false });
    });
    const { reading, instead } = await opened(records, id);
    expect(text(reading.notebook)).toBe(text(good[0]!));
    expect(instead?.refusal.says).toContain('not complete');
    expect((await opened(records, id)).instead).toBeUndefined();
  });

  it('is set aside whole where nothing of it can be read, and is met no more', async () => {
    const records = fakeRecords();
    const id = await keep(records, [titled(octoberWash, tooLong)]);
    const opening = await open(records, id);
    expect(opening).toMatchObject({ kind: 'refused', name: 'October wash', stays: false });
    expect(await open(records, id)).toEqual({ kind: 'none' });
    expect((await shelfOf(records)).kept).toEqual([]);
    expect((await asideFiles(records)).length).toBe(1);
    const left = await records.look(['heads', 'bases', 'earlier', 'journal'], async (all) =>
      (await Promise.all((['heads', 'bases', 'earlier', 'journal'] as const).map((store) => all.all(store)))).flat(),
    );
    expect(left).toEqual([]);
  });

  it('is set aside once, however large it is', async () => {
    const records = fakeRecords();
    const id = await keep(records, [good[0]!, titled(octoberWash, 10_000_000)]);
    const opening = await opened(records, id);
    expect(opening).toMatchObject({ id, instead: { aside: true } });
    expect(text(opening.reading.notebook)).toBe(text(good[0]!));
    const [aside] = await asideFiles(records);
    expect((await asideBytes(records, aside!.id))!.length).toBeGreaterThan(10_000_000);
    expect((await opened(records, id)).instead).toBeUndefined();
  });

  it('stays as it is where it cannot be set aside, and what is done then goes to another', async () => {
    const records = fakeRecords();
    const id = await keep(records, [good[0]!, titled(octoberWash, tooLong)]);
    const { change } = records;
    records.change = () => Promise.reject(new DOMException('No room.', 'QuotaExceededError'));
    const opening = await opened(records, id);
    records.change = change;
    expect(text(opening.reading.notebook)).toBe(text(good[0]!));
    expect(opening).toMatchObject({ record: null, count: 0, instead: { aside: false } });
    expect(opening.id).not.toBe(id);
    expect(await notebookText(records, id)).toBe(text(titled(octoberWash, tooLong)));
  });
});

describe('a notebook that a newer explorer wrote', () => {
  it('stays on the shelf as it is, and nothing is set aside', async () => {
    const records = fakeRecords();
    const id = await keep(records, [octoberWash]);
    const newer = text(octoberWash).replace(/"version": \d+/u, '"version": 99');
    await records.change(['bases'], (all) => all.put('bases', id, { count: 1, text: newer, good: true }));
    expect(await open(records, id)).toMatchObject({ kind: 'refused', refusal: { kind: 'newer' }, stays: true });
    expect(await asideFiles(records)).toEqual([]);
    expect(await notebookText(records, id)).toBe(newer);
  });
});
