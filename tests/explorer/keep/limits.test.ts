// What can be written can be read: at each limit a notebook is written and opened again as it was; one beyond it the
// act is not done and says why, and a file that holds it is refused in the same words.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindNamed, kindNames } from '../../../explorer/entries/registry.js';
import { limits } from '../../../explorer/keep/format.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import type { Reading } from '../../../explorer/keep/reading.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { copyPageAct } from '../../../explorer/pages/editing/page-making.js';
import { whyNot } from '../../../explorer/pages/refused-act.js';
import { readyEntries } from '../../../explorer/pages/registry.js';
import { keepPencil, keepWork, setValue } from '../../../explorer/state/acts.js';
import { startHistory } from '../../../explorer/state/history.js';
import { counts, letters } from '../../../explorer/state/limits.js';
import { newNotebook, type Json, type Notebook } from '../../../explorer/state/notebook-record.js';
import type { NotebookState } from '../../../explorer/state/notebook.js';
import * as acts from '../../../explorer/state/page-acts.js';
import { sizeOf } from '../../../explorer/state/record-size.js';
import { beyondLimits } from '../../../explorer/state/within-limits.js';
import { anyNotebook, anyJson } from './notebooks.js';
import { startingScenario } from '../../../explorer/state/scenario.js';

const now = new Date('2026-11-28T12:00:00Z');
const readAgain = (notebook: Notebook): Promise<Reading> => readNotebookFile(notebookFile(notebook, now), [], now);

// An act is judged with the kinds of the entries it touches, which stand on the page then.
await Promise.all(kindNames.map(kindNamed));

const page = (name: string): Notebook['pages'][number] => ({ name, ...acts.blankPage });
const onePage = acts.addPage(newNotebook, page('page-1'));
const withEntry = (kind: string, data: Json): Notebook =>
  acts.addEntry(onePage, 'page-1', { id: 'e1', kind, data }, null);
const written = (length: number): string => 'a'.repeat(length);
const changed = (kind: string, start: Json, data: Json): Notebook =>
  acts.changeEntry(withEntry(kind, start), 'page-1', 'e1', () => data);
const own = { lead: 'a', tail: '', answer: 1, within: 2, hints: ['', ''] };

interface Row {
  readonly what: string;
  readonly most: number;
  /** A notebook with so many of it. */
  readonly holds: (count: number) => Notebook;
}

const rows: readonly Row[] = [
  {
    what: 'letters in its name',
    most: letters.notebookName.most,
    holds: (n) => ({ ...newNotebook, name: written(n) }),
  },
  {
    what: 'letters in a title',
    most: letters.title.most,
    holds: (n) => acts.namePage(onePage, 'page-1', { title: written(n) }),
  },
  {
    what: 'letters in a promise',
    most: letters.promise.most,
    holds: (n) => acts.namePage(onePage, 'page-1', { promise: written(n) }),
  },
  {
    what: 'letters in a heading',
    most: letters.heading.most,
    holds: (n) => acts.headEntry(withEntry('text', { text: '' }), 'page-1', 'e1', written(n)),
  },
  {
    what: 'letters in a text',
    most: letters.text.most,
    holds: (n) => changed('text', { text: '' }, { text: written(n) }),
  },
  {
    what: 'letters in a setup sentence',
    most: letters.sentence.most,
    holds: (n) => changed('setup', { sentence: [] }, { sentence: [written(n)] }),
  },
  {
    what: 'letters in a formula',
    most: letters.formula.most,
    holds: (n) => changed('formula', { text: '', plot: null }, { text: written(n), plot: null }),
  },
  {
    what: 'letters in an end of a range',
    most: letters.rangeEnd.most,
    holds: (n) => changed('formula', { text: '' }, { text: 'x', plot: { against: 'x', from: written(n), to: '1' } }),
  },
  {
    what: 'letters in a question',
    most: letters.question.most,
    holds: (n) => changed('question', { own }, { own: { ...own, lead: written(n) } }),
  },
  {
    what: 'letters in an answer',
    most: letters.answer.most,
    holds: (n) => keepWork(withEntry('question', { own }), 'page-1', 'e1', () => ({ written: written(n), met: false })),
  },
  {
    what: 'letters in own words',
    most: letters.ownWords.most,
    holds: (n) =>
      keepWork(withEntry('own-words', { prompt: '', ours: '' }), 'page-1', 'e1', () => ({ text: written(n) })),
  },
  {
    what: 'letters in what is kept of any entry',
    most: letters.any.most,
    holds: (n) => keepWork(onePage, 'the-ceiling', 'e1', () => ({ rows: [written(n)] })),
  },
  {
    what: 'levels in what is kept of any entry',
    most: counts.depth,
    holds: (n) => keepWork(onePage, 'the-ceiling', 'e1', () => deep(n)),
  },
  { what: 'pages', most: counts.pages, holds: pagesOf },
  { what: 'entries on a page', most: counts.entries, holds: entriesOf },
  {
    what: 'steps in a run sheet',
    most: 12,
    holds: (n) =>
      setValue(
        onePage,
        'page-1',
        'sheet',
        Array.from({ length: n }, () => ({ reflux: 'total', until: [{ kind: 'firstVapour' }] })),
      ),
  },
];

function deep(levels: number): Json {
  return levels === 0 ? 1 : [deep(levels - 1)];
}

function pagesOf(count: number): Notebook {
  return { ...newNotebook, pages: Array.from({ length: count }, (_, at) => page(`page-${String(at + 1)}`)) };
}

function entriesOf(count: number): Notebook {
  const entries = Array.from({ length: count }, (_, at) => ({
    id: `e${String(at)}`,
    kind: 'text',
    data: { text: '' },
  }));
  return { ...newNotebook, pages: [{ ...page('page-1'), entries }] };
}

describe.each(rows)('a notebook with as many $what as it may have ($most)', ({ what, most, holds }) => {
  it('is let be, and opened again as it was', async () => {
    const notebook = holds(most);
    expect(whyNot(notebook, onePage)).toBeUndefined();
    expect(await readAgain(notebook)).toEqual({ kind: 'read', notebook, notes: [] });
  });

  it(`has no more ${what} by any act, which says so, and a file with more is refused`, async () => {
    const beyond = holds(most + 1);
    const why = whyNot(beyond, holds(most));
    expect(why).toContain(String(most));
    expect(why).toMatch(/^[A-Z`].+\. Nothing was changed\.$/u);
    const reading = await readAgain(beyond);
    expect(reading.kind === 'refused' && reading.refusal.says).toContain(String(most));
  });
});

describe('a notebook as large as it may be', () => {
  /** Texts of the greatest length, and one that leaves so many letters free. */
  const ofSize = (size: number): Notebook => {
    const texts = Array.from({ length: 19 }, () => written(letters.any.most));
    const with_ = (last: number): Notebook =>
      keepWork(newNotebook, 'the-ceiling', 'e1', () => [...texts, written(last)]);
    return with_(size - sizeOf(with_(0)).letters);
  };

  it('is let be, and opened again as it was', async () => {
    const notebook = ofSize(counts.record);
    expect(sizeOf(notebook).letters).toBe(counts.record);
    expect(beyondLimits(notebook)).toBeUndefined();
    expect(await readAgain(notebook)).toEqual({ kind: 'read', notebook, notes: [] });
  });

  it('takes nothing more, but can be made smaller', () => {
    const full = ofSize(counts.record);
    const more = keepWork(full, 'the-ceiling', 'e2', () => 1);
    expect(whyNot(more, full)).toBe(
      `A notebook has at most 2000000 letters in all, and this has ${String(sizeOf(more).letters)}. Nothing was changed.`,
    );
    const less = keepWork(more, 'the-ceiling', 'e1', () => undefined);
    expect(whyNot(less, more)).toBeUndefined();
  });

  it('comes to a file that is not too large, whatever is in it', () => {
    fc.assert(
      fc.property(anyNotebook, (notebook) => {
        const file = notebookFile(notebook, now).length;
        expect(file).toBeLessThan(1.5 * sizeOf(notebook).letters + 4000);
      }),
    );
    expect(1.5 * counts.record + 4000).toBeLessThan(limits.letters);
  });

  it('is one whose file was let in: a file that would grow when it is written again is refused', async () => {
    // Without a line break in it a list of ones is a twelfth of what it is written as.
    const ones = `[${Array.from({ length: 150_000 }, () => '[[[1]]]').join(',')}]`;
    const file = notebookFile(
      keepWork(newNotebook, 'the-ceiling', 'e1', () => 'here'),
      now,
    );
    const small = JSON.stringify(JSON.parse(file)).replace('"here"', ones);
    expect(small.length).toBeLessThan(counts.record);
    const reading = await readNotebookFile(small, [], now);
    expect(reading.kind === 'refused' && reading.refusal.says).toContain('It holds more than a notebook may');
  });
});

describe('work on a ready page', () => {
  it('that its entry could not use when it is opened again is not taken by an act either', async () => {
    const entries = await readyEntries('why-it-stops');
    expect(entries?.map(({ id }) => id)).toContain('own-words');
    const tried = (work: Json): string | undefined =>
      whyNot(
        keepWork(newNotebook, 'why-it-stops', 'own-words', () => work),
        newNotebook,
      );
    expect(tried({ text: 'Mine.' })).toBeUndefined();
    expect(tried({ text: 7 })).toContain('need `text`, a string. Nothing was changed.');
  });
});

describe('the size of a record', () => {
  it('is what writing it comes to', () => {
    fc.assert(
      fc.property(anyJson, (value) => {
        expect(sizeOf(value).letters).toBe(JSON.stringify(value, null, 2).length);
      }),
      { numRuns: 500 },
    );
  });

  it('looks at what changed only', () => {
    let looks = 0;
    const watched = (text: string): object => ({
      get text() {
        looks += 1;
        return text;
      },
    });
    const many = Array.from({ length: 500 }, (_, at) => watched(String(at)));
    sizeOf(many);
    const before = looks;
    sizeOf(many.with(3, watched('new')));
    expect(looks - before).toBeLessThanOrEqual(2);
  });
});

describe('the same act again and again', () => {
  it('copies a page as often as there may be pages, each under a title that can be kept', async () => {
    const state = (notebook: Notebook): NotebookState => ({
      page: 'page-1',
      history: startHistory(notebook),
      units: 'metric',
      complaints: [],
    });
    let notebook = acts.namePage(onePage, 'page-1', { title: `The run of \u{1f33e} ${written(150)}` });
    for (let copies = 0; copies < 60; copies += 1) {
      const next = copyPageAct(state(notebook), notebook.pages.at(-1)!).next(notebook);
      expect(whyNot(next, notebook)).toBeUndefined();
      notebook = next;
    }
    expect(notebook.pages.at(-1)!.title).toMatch(/…(?:, again)$/u);
    expect((await readAgain(notebook)).kind).toBe('read');
  });

  it('keeps as many pencil lines as are opened again', async () => {
    let notebook: Notebook = newNotebook;
    for (let lines = 0; lines < 10; lines += 1) notebook = keepPencil(notebook, 'the-ceiling', startingScenario);
    expect(notebook.work['the-ceiling']!.pencils).toHaveLength(counts.pencils);
    expect((await readAgain(notebook)).kind).toBe('read');
  });
});
