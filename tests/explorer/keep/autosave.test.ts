// The open notebook is kept as it changes, however long the reader goes on without a rest; two windows with the same
// notebook never write over each other; a browser that refuses, or does not answer, is said.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Autosave, patience_ms, rest_ms, type KeptState } from '../../../explorer/keep/autosave.js';
import { gatherLastWords } from '../../../explorer/keep/last-words.js';
import { mostJournal, NotebookWriter } from '../../../explorer/keep/notebook-writer.js';
import { recordsInMemory } from '../../../explorer/keep/records-in-memory.js';
import type { Records } from '../../../explorer/keep/records.js';
import { notebookText, shelfOf, takeOff } from '../../../explorer/keep/shelf.js';
import type { Json } from '../../../explorer/state/notebook-record.js';
import { Clock, fakeRecords, settled } from './fake-records.js';

/** A window in which a notebook is open that holds a name and a text. */
class Window {
  name = '';
  pages: Json = [];
  text = '';
  readonly told: KeptState[] = [];
  readonly writer: NotebookWriter;
  readonly autosave: Autosave;

  constructor(records: Records, clock: Clock) {
    this.writer = new NotebookWriter({
      records: () => records,
      record: (written, copy) => {
        if (copy) this.name += ', a copy';
        return { written, name: this.name, text: this.text, pages: this.pages };
      },
      name: () => this.name,
      now: () => new Date(clock.time_ms),
      check: () => Promise.resolve(true),
    });
    this.autosave = new Autosave(this.writer, (state) => this.told.push(state), clock.timer);
  }

  write(text: string): void {
    this.text = text;
    this.autosave.changed();
  }

  /** Opens what another window has on the shelf, as it stands there now. */
  async open(records: Records, id: string, count: number): Promise<void> {
    const record = JSON.parse((await notebookText(records, id))!) as Json;
    Object.assign(this, { name: '', ...(record as object) });
    this.writer.open(id, record, count);
    this.autosave.opened(true);
  }
}

async function textIn(records: Records, id: string): Promise<string | undefined> {
  const text = await notebookText(records, id);
  return text === undefined ? undefined : (JSON.parse(text) as { text: string }).text;
}

describe('the open notebook', () => {
  it('comes onto the shelf a short rest after its first change', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    window.write('a');
    window.write('ab');
    await clock.pass(rest_ms - 1);
    expect((await shelfOf(records)).kept).toEqual([]);
    await clock.pass(1);
    expect(await textIn(records, window.writer.id)).toBe('ab');
    expect(window.told).toEqual([{ kind: 'kept' }]);
  });

  it('is never behind by more than a rest and two writings, typed without a pause', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    const writing_ms = 150;
    const typed: { readonly at: number; readonly letters: number }[] = [];
    for (let letters = 1; letters <= 600; letters++) {
      // A database that takes its time.
      records.gate = new Promise((resolve) => clock.timer(() => resolve(null), writing_ms));
      window.write('x'.repeat(letters));
      typed.push({ at: clock.time_ms, letters });
      await clock.pass(50);
      records.gate = undefined;
      const kept = (await textIn(records, window.writer.id))?.length ?? 0;
      const missing = typed.find((one) => one.letters > kept);
      expect(clock.time_ms - (missing?.at ?? clock.time_ms)).toBeLessThanOrEqual(rest_ms + 2 * writing_ms + 50);
    }
    await clock.pass(1000);
    expect(await textIn(records, window.writer.id)).toBe('x'.repeat(600));
  });

  it('is written as what changed, however large it is: as many records and letters as a small one', async () => {
    const cost = async (pages: number, entries: number): Promise<readonly [records: number, letters: number]> => {
      const [records, clock] = [fakeRecords(), new Clock()];
      const window = new Window(records, clock);
      window.pages = Array.from({ length: pages }, (_, page) => ({
        name: `page-${String(page)}`,
        entries: Array.from({ length: entries }, (__, entry) => ({
          id: `e${String(entry)}`,
          text: 'so it is. '.repeat(8),
        })),
      }));
      window.write('a');
      await clock.pass(1000);
      const { records: before, letters } = { ...records.account };
      for (let typed = 1; typed <= 20; typed++) {
        window.write(`a${'b'.repeat(typed)}`);
        await clock.pass(1000);
      }
      return [records.account.records - before, records.account.letters - letters];
    };
    const small = await cost(0, 0);
    const large = await cost(200, 500);
    expect(large).toEqual(small);
    expect(small[0]).toBe(2 * 20);
    expect(small[1] / 20).toBeLessThan(250);
  });

  it('is written whole when the changes since then have become long, so that opening stays quick', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    const some = 'y'.repeat(mostJournal / 4);
    for (let i = 1; i <= 12; i++) {
      window.write(some.repeat(i));
      await clock.pass(1000);
    }
    const journal = await records.look(['journal'], (all) => all.all('journal', window.writer.id));
    expect(journal.length).toBeLessThan(6);
    expect(await textIn(records, window.writer.id)).toBe(some.repeat(12));
  });

  it('is not written at all when nothing waits, nor where a change was taken back', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    await window.autosave.flush();
    window.autosave.leave();
    expect(records.account.records).toBe(0);
    window.write('a');
    await window.autosave.flush();
    const before = records.account.records;
    window.write('ab');
    window.write('a');
    await window.autosave.flush();
    expect(records.account.records).toBe(before);
  });

  it.each(['full', 'blocked', 'failed', 'newer'] as const)(
    'is said not to be kept where the browser is %s, is tried again by itself, and is said to be kept then',
    async (why) => {
      const [records, clock] = [fakeRecords(), new Clock()];
      const window = new Window(records, clock);
      records.fault = why;
      window.write('a');
      await clock.pass(rest_ms);
      expect(window.told).toEqual([{ kind: 'not-kept', why }]);
      records.fault = undefined;
      await clock.pass(10_000);
      expect(window.told.at(-1)).toEqual({ kind: 'kept' });
      expect(await textIn(records, window.writer.id)).toBe('a');
    },
  );

  it('is said not to be kept where the browser does not answer, and to be kept when it does', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    let answer = (): void => undefined;
    records.gate = new Promise<void>((resolve) => (answer = resolve));
    window.write('a');
    await clock.pass(rest_ms + patience_ms);
    expect(window.told).toEqual([{ kind: 'not-kept', why: 'silent' }]);
    await window.autosave.flush(); // does not wait for ever
    answer();
    await settled();
    expect(window.told.at(-1)).toEqual({ kind: 'kept' });
  });

  it('is said not to be kept where it is only in memory', async () => {
    const [records, clock] = [recordsInMemory(), new Clock()];
    const window = new Window(records, clock);
    window.write('a');
    await clock.pass(rest_ms);
    expect(window.told).toEqual([{ kind: 'not-kept', why: 'blocked' }]);
    expect(await textIn(records, window.writer.id)).toBe('a');
  });

  it('is not mistaken for the one that is opened while it is being written', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    let answer = (): void => undefined;
    records.gate = new Promise<void>((resolve) => (answer = resolve));
    window.write('first');
    await clock.pass(rest_ms);
    const first = window.writer.id;
    window.writer.open('second', null, 0);
    window.autosave.opened(false);
    window.write('second');
    answer();
    records.gate = undefined;
    await clock.pass(1000);
    expect(await textIn(records, 'second')).toBe('second');
    expect(await textIn(records, first)).not.toBe('second');
  });
});

describe('a window that is left', () => {
  it('hands over what waits within that moment, and the next window finds it', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    window.write('a');
    await clock.pass(rest_ms);
    window.write('ab');
    window.autosave.leave();
    // No timer runs any more: the window is gone.
    await gatherLastWords(records);
    expect(await textIn(records, window.writer.id)).toBe('ab');
    expect((await shelfOf(records)).kept.length).toBe(1);
  });

  it('hands over a notebook that was never written, too', async () => {
    const records = fakeRecords();
    const window = new Window(records, new Clock());
    window.write('first letter');
    window.autosave.leave();
    await gatherLastWords(records);
    expect(await textIn(records, window.writer.id)).toBe('first letter');
    expect(await records.look(['marks'], (all) => all.get('marks', 'latest'))).toBe(window.writer.id);
  });

  it('that comes back goes on where it was, without a copy', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    window.write('a');
    await clock.pass(rest_ms);
    window.write('ab');
    window.autosave.leave();
    await gatherLastWords(records); // another window started meanwhile
    window.autosave.back();
    window.write('abc');
    await clock.pass(1000);
    expect(await textIn(records, window.writer.id)).toBe('abc');
    expect((await shelfOf(records)).kept.length).toBe(1);
    await gatherLastWords(records);
    expect(await textIn(records, window.writer.id)).toBe('abc');
  });

  it('does not write over what another window wrote: its words become a copy', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const first = new Window(records, clock);
    first.write('a');
    await clock.pass(rest_ms);
    const second = new Window(records, clock);
    await second.open(records, first.writer.id, 1);
    second.write('a, by the second');
    await clock.pass(rest_ms);
    first.write('a, by the first');
    first.autosave.leave();
    await gatherLastWords(records);
    const { kept } = await shelfOf(records);
    const texts = await Promise.all(kept.map(({ id }) => textIn(records, id)));
    expect(texts.sort()).toEqual(['a, by the first', 'a, by the second']);
    expect(kept.map(({ name }) => name).sort()).toEqual(['', 'Untitled, from another window']);
  });
});

describe('two windows with the same notebook', () => {
  it('lose nothing: the second to write goes on in a copy of its own', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const first = new Window(records, clock);
    first.write('wash');
    await clock.pass(rest_ms);
    const { id } = first.writer;
    const second = new Window(records, clock);
    await second.open(records, id, 1);
    first.write('wash of the first');
    await clock.pass(rest_ms);
    second.write('wash of the second');
    await clock.pass(rest_ms);
    expect(await textIn(records, id)).toBe('wash of the first');
    expect(second.writer.id).not.toBe(id);
    expect(second.autosave.state).toEqual({ kind: 'parted', deleted: false });
    second.write('wash of the second, later');
    first.write('wash of the first, later');
    await clock.pass(1000);
    expect(await textIn(records, id)).toBe('wash of the first, later');
    expect(await textIn(records, second.writer.id)).toBe('wash of the second, later');
    expect((await shelfOf(records)).kept.length).toBe(2);
    expect(first.autosave.state).toEqual({ kind: 'kept' });
    expect(second.autosave.state).toEqual({ kind: 'parted', deleted: false });
  });

  it('may take turns as long as each has read what the other wrote', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const first = new Window(records, clock);
    first.write('wash');
    await clock.pass(rest_ms);
    const second = new Window(records, clock);
    await second.open(records, first.writer.id, 1);
    second.write('wash, second hand');
    await clock.pass(rest_ms);
    expect(second.writer.id).toBe(first.writer.id);
    expect((await shelfOf(records)).kept.length).toBe(1);
  });

  it('keep what one of them does after the other deleted the notebook, in a copy', async () => {
    const [records, clock] = [fakeRecords(), new Clock()];
    const window = new Window(records, clock);
    window.write('wash');
    await clock.pass(rest_ms);
    const { id } = window.writer;
    await takeOff(records, id);
    await window.autosave.flush();
    expect((await shelfOf(records)).kept).toEqual([]);
    window.write('wash again');
    await clock.pass(rest_ms);
    expect(window.autosave.state).toEqual({ kind: 'parted', deleted: true });
    expect(await textIn(records, window.writer.id)).toBe('wash again');
    expect(await textIn(records, id)).toBe('wash');
  });

  it('lose not a letter, whatever they do and in which order, and whoever is left', async () => {
    const act = fc.record({
      who: fc.constantFrom(0, 1),
      what: fc.constantFrom('type', 'type', 'wait', 'leave', 'delete', 'fail', 'mend'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 25 }), async (acts) => {
        const [records, clock] = [fakeRecords(), new Clock()];
        const windows = [new Window(records, clock), new Window(records, clock)] as const;
        windows[0].write('begun');
        await clock.pass(1000);
        await windows[1].open(records, windows[0].writer.id, 1);
        let letters = 0;
        const typed = new Set<Window>();
        for (const { who, what } of acts) {
          const window = windows[who];
          if (what === 'type') {
            typed.add(window);
            window.write(`${window.text}${String.fromCharCode(97 + (letters++ % 26))}`);
          }
          if (what === 'wait') await clock.pass(300);
          if (what === 'leave') window.autosave.leave();
          if (what === 'delete') await takeOff(records, window.writer.id).catch(() => undefined);
          if (what === 'fail') records.fault = 'failed';
          if (what === 'mend') records.fault = undefined;
        }
        const deleted = acts.some(({ what }) => what === 'delete');
        records.fault = undefined;
        // The one is left for good, the other goes on.
        windows[0].autosave.leave();
        await windows[1].autosave.flush();
        await clock.pass(10_000);
        await gatherLastWords(records);
        const { kept, deleted: gone } = await shelfOf(records);
        const texts = await Promise.all([...kept, ...gone].map(({ id }) => textIn(records, id)));
        for (const { text } of typed) expect(texts).toContain(text);
        if (!deleted) expect(kept.length).toBeLessThanOrEqual(2);
      }),
      { numRuns: 300 },
    );
  });
});
