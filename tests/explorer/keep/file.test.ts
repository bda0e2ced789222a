// A notebook's file: what is written is read back, older versions are carried over, and what is damaged,
// newer, too large or nothing of ours is refused in a clear sentence.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limits } from '../../../explorer/keep/format.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import type { Reading } from '../../../explorer/keep/reading.js';
import { notebookFile, notebookFileName } from '../../../explorer/keep/write-file.js';
import { newNotebook, type EntryRecord, type Json } from '../../../explorer/state/notebook-record.js';
import { anyNotebook, octoberWash } from './notebooks.js';
import { scenarioOn, withScenario } from '../../../explorer/state/page-scenario.js';
import { numberAt } from '../../../explorer/state/paths.js';
import { startingScenario } from '../../../explorer/state/scenario.js';
import { settings } from '../../support/settings.js';

const now = new Date('2026-11-25T12:00:00Z');
const ready = ['the-ceiling', 'the-doubler'];
const read = (text: string): Promise<Reading> => readNotebookFile(text, ready, now);

/** The file of a notebook, with something changed in it. */
function changed(change: (file: Record<string, unknown>) => void): string {
  const file = JSON.parse(notebookFile(octoberWash, now)) as Record<string, unknown>;
  change(file);
  return JSON.stringify(file);
}

async function refusal(text: string): Promise<{ kind: string; says: string }> {
  const reading = await read(text);
  if (reading.kind === 'read') throw new Error('The file was read.');
  return reading.refusal;
}

describe('the file of a notebook', () => {
  it('is read back as the very notebook that was written', async () => {
    await fc.assert(
      fc.asyncProperty(anyNotebook, async (notebook) => {
        const reading = await read(notebookFile(notebook, now));
        expect(reading).toEqual({ kind: 'read', notebook, notes: [] });
      }),
      { numRuns: 200 },
    );
  });

  it('once read is written the same again', async () => {
    await fc.assert(
      fc.asyncProperty(anyNotebook, async (notebook) => {
        const text = notebookFile(notebook, now);
        const reading = await read(text);
        expect(reading.kind === 'read' && notebookFile(reading.notebook, now)).toBe(text);
      }),
    );
  });

  it('can be read by people: its kind and version first, numbers with their units, one thing a line', () => {
    const lines = notebookFile(octoberWash, now).split('\n');
    expect(lines.slice(0, 6)).toEqual([
      '{',
      '  "format": "kettle-and-plate notebook",',
      '  "version": 3,',
      '  "written": "2026-11-25T12:00:00.000Z",',
      '  "name": "October wash",',
      '  "stills": [',
    ]);
    expect(lines.map((line) => line.trim())).toEqual(expect.arrayContaining(['"volume_m3": 0.2,', '"count": 20,']));
  });

  it('is called after the notebook', () => {
    expect(notebookFileName('October wash')).toBe('october-wash.kettle');
    expect(notebookFileName('')).toBe('notebook.kettle');
  });
});

describe('what was done on a ready page', () => {
  const entries: readonly EntryRecord[] = [
    { id: 'guess', kind: 'guess', data: { guess: 'ceiling' } },
    { id: 'own-words', kind: 'own-words', data: { prompt: 'Why?', ours: 'So.' } },
  ];
  const readDone = async (done: Json, on = entries): Promise<Reading & { kind: 'read' }> => {
    const text = changed((file) => (file.work = { 'the-ceiling': { pencils: [], common: {}, entries: done } }));
    const reading = await readNotebookFile(text, ready, now, (page) =>
      Promise.resolve(page === 'the-ceiling' ? on : undefined),
    );
    if (reading.kind !== 'read') throw new Error(reading.refusal.says);
    return reading;
  };
  const good = { guess: { points: [{ x: 0.1, y: 0.4 }], answered: true }, 'own-words': { text: 'Mine.' } };

  it('is kept as it is where the entries can use it, or none is known that could', async () => {
    for (const done of [good, { 'no entry of this page': [1, 2] }]) {
      const { notebook, notes } = await readDone(done);
      expect(notebook.work['the-ceiling']?.entries).toEqual(done);
      expect(notes).toEqual([]);
    }
  });

  it('and cannot be used is set aside in the notebook, with words, once; the rest is as it was', async () => {
    const { notebook, notes } = await readDone({ ...good, guess: { points: 'abc' }, 'guess, set aside': 'before' });
    const kept = {
      'own-words': good['own-words'],
      'guess, set aside': 'before',
      'guess, set aside 2': { points: 'abc' },
    };
    expect(notebook.work['the-ceiling']?.entries).toEqual(kept);
    expect(notes).toEqual([
      expect.stringMatching(
        /^What was done at ‘guess’ on the page ‘the-ceiling’ cannot be used: a guess needs .*‘guess, set aside 2’\.$/u,
      ),
    ]);
    const again = await readNotebookFile(notebookFile(notebook, now), ready, now, () => Promise.resolve(entries));
    expect(again).toEqual({ kind: 'read', notebook, notes: [] });
  });

  it('with an entry that is of another kind by now is set aside, too', async () => {
    const { notebook } = await readDone({ guess: good.guess }, [{ ...entries[1]!, id: 'guess' }]);
    expect(notebook.work['the-ceiling']?.entries).toEqual({ 'guess, set aside': good.guess });
  });
});

describe('a file of version 1, an address', () => {
  it('becomes a notebook with its numbers, on its page', async () => {
    const reading = await read(
      JSON.stringify({
        format: 'kettle-and-plate notebook',
        version: 1,
        address: '#the-doubler?v=1&plates=20&charge=200',
      }),
    );
    expect(reading).toEqual({
      kind: 'read',
      notebook: withScenario(
        newNotebook,
        'the-doubler',
        settings({ plates: 20, chargeVolume: 0.2 }, scenarioOn(newNotebook, 'the-doubler')),
      ),
      page: 'the-doubler',
      notes: [],
    });
  });

  it('may be nothing but the address, as it was copied', async () => {
    for (const text of ['#the-ceiling?v=1&plates=9', 'https://still.example/kp/#the-ceiling?v=1&plates=9\n']) {
      const reading = await read(text);
      expect(reading.kind === 'read' && [reading.page, platesOf(reading.notebook)]).toEqual(['the-ceiling', 9]);
    }
  });

  it('says what of the address could not be used', async () => {
    const reading = await read('#the-ceiling?v=1&plates=700&reflux=6');
    expect(reading.kind === 'read' && reading.notes).toEqual([expect.stringContaining('0 to 60')]);
  });
});

describe('a file that is refused', () => {
  it.each([
    ['an empty one', ''],
    ['prose', 'Dear diary, today I lit the still.'],
    ['JSON of another program', '{"plates": 12}'],
    ['a list', '[1, 2, 3]'],
    ['null', 'null'],
  ])('as nothing of ours: %s', async (_, text) => {
    expect(await refusal(text)).toEqual({
      kind: 'not-a-notebook',
      says: 'It is not a notebook of Kettle & Plate, nor an address of one of its pages.',
    });
  });

  it('as newer says both versions and what to do', async () => {
    const { kind, says } = await refusal(changed((file) => (file.version = 4)));
    expect(kind).toBe('newer');
    expect(says).toContain('in version 4 of the format; this one reads up to 3.');
    expect(says).toContain('Take the new version');
  });

  it('as too large says how large it may be', async () => {
    const { kind, says } = await refusal(' '.repeat(limits.letters + 1));
    expect(kind).toBe('too-large');
    expect(says).toContain('at most 20 MB');
  });

  it.each<[string, (file: Record<string, unknown>) => void, string]>([
    ['without a version', (file) => delete file.version, 'which version of the format'],
    ['with a version that is no whole number', (file) => (file.version = 1.5), 'which version of the format'],
    ['with a field nobody knows', (file) => (file.colour = 'red'), 'at colour: this is an unknown field.'],
    ['without its stills', (file) => delete file.stills, 'at stills: this field is missing.'],
    ['with no still at all', (file) => (file.stills = []), 'stills'],
    [
      'with too many plates',
      (file) => (file.stills = [{ name: 'A', still: still({ count: 61 }) }]),
      'at stills.0: `still.column.count` is 61 and would have to be a whole number of plates from 1 to 60.',
    ],
    ['with half a plate', (file) => (file.stills = [{ name: 'A', still: still({ count: 2.5 }) }]), 'whole number'],
    [
      'with a field of a still that nobody knows',
      (file) => (file.stills = [{ name: 'A', still: still({ colour: 'red' }) }]),
      '`still.column.colour`',
    ],
    [
      'with two stills of one name',
      (file) => (file.stills = [1, 2].map(() => ({ name: 'A', still: still({}) }))),
      'at stills: two of them have the same name.',
    ],
    [
      'with a charge of no strength',
      (file) => (file.charges = [{ name: 'A', charge: { kind: 'volume', volume_m3: 1 }, doublerCharges: [] }]),
      'at charges.0: `charge` is of the kind ‘volume’, with `volume_m3` and `strength`.',
    ],
    [
      'with text for a number',
      (file) => (file.stills = [{ name: 'A', still: still({ count: '12' }) }]),
      '`still.column.count` is "12" and would',
    ],
    ['with a page name that is none', (file) => (file.work = { 'a/b': {} }), 'work'],
    ['with a name all objects have', (file) => (file.work = { constructor: {} }), '‘constructor’'],
    [
      'with four pencil lines',
      (file) => (file.work = { x: { pencils: [{}, {}, {}, {}], common: {}, entries: {} } }),
      'work.x.pencils',
    ],
    [
      'with a title that is too long',
      (file) => (file.pages = [{ ...page(), title: 'a'.repeat(201) }]),
      'at pages.0.title: at most 200 letters are allowed, and 201 stand there.',
    ],
    [
      'with a field nobody knows deep in a page',
      (file) => (file.pages = [page('p', [{ ...entry(), colour: 'red' }])]),
      'at pages.0.entries.0.colour: this is an unknown field.',
    ],
    [
      'with a run sheet of an unknown rule',
      (file) =>
        (file.sheets = [{ name: 'A', sheet: [{ reflux: 3, until: [{ kind: 'rain' }] }], jars: { kind: 'perStep' } }]),
      'at sheets.0: step 1: a rule is of the kind',
    ],
    [
      'with a still of its own that no still can be',
      (file) => (file.work = { x: shares('own-stills', [{ plates: 1e9, efficiency: 1, reflux: 3 }]) }),
      'at work.x.common.own-stills: an own still needs `plates`, 0 to 60.',
    ],
    [
      'with an answer that is none, to an entry of its own',
      (file) => {
        file.pages = [page('p', [{ id: 'e1', kind: 'own-words', data: { prompt: '', ours: '' } }])];
        file.work = { p: { pencils: [], common: {}, entries: { e1: { text: 3 } } } };
      },
      'at work.p.entries.e1: words of one’s own need `text`, a string.',
    ],
    [
      'with a bad pencil line',
      (file) => (file.work = { x: { pencils: [{ ...startingScenario, charge: 3 }], common: {}, entries: {} } }),
      'work.x.pencils',
    ],
    ['with two pages of one name', (file) => (file.pages = [page(), page()]), 'two pages have the same name'],
    ['with a page called as a ready one', (file) => (file.pages = [page('the-ceiling')]), 'one that is always there'],
    [
      'with two entries of one id',
      (file) => (file.pages = [page('p', [entry(), entry()])]),
      'two entries have the same id',
    ],
    [
      'with data that its kind refuses',
      (file) => (file.pages = [page('p', [{ ...entry(), kind: 'text', data: 7 }])]),
      'pages.0.entries.0',
    ],
  ])('as damaged says where and why: %s', async (_, change, where) => {
    const { kind, says } = await refusal(changed(change));
    expect(kind).toBe('damaged');
    expect(says).toMatch(/^It is damaged.+\.$/u);
    expect(says).toContain(where);
  });

  it.each(['__proto__', 'constructor', 'prototype'])('for the name %s, wherever it stands', async (name) => {
    const { says } = await refusal(notebookFile(octoberWash, now).replace('"laid"', `"${name}"`));
    expect(says).toContain(`‘${name}’`);
    expect(({} as Record<string, unknown>).laid).toBeUndefined();
  });

  it('for a number that is too large, which JSON can write and no one can compute with', async () => {
    const { says } = await refusal(notebookFile(octoberWash, now).replace('"count": 20', '"count": 1e999'));
    expect(says).toBe('It is damaged: it holds a number that is too large.');
  });

  it('in a sentence that is never long, whatever stands in the file', async () => {
    const long = 'x'.repeat(300_000);
    for (const change of [
      (file: Record<string, unknown>) => (file[long] = 1),
      (file: Record<string, unknown>) => (file.asked = { [long]: 1 }),
      (file: Record<string, unknown>) => (file.stills = [{ name: 'A', still: still({ [long]: long }) }]),
      (file: Record<string, unknown>) => (file.version = long),
      (file: Record<string, unknown>) =>
        (file.pages = [page('p', [{ ...entry(), kind: 'figure', data: { figures: [long] } }])]),
      (file: Record<string, unknown>) =>
        (file.pages = [page('p', [{ ...entry(), kind: 'setup', data: { sentence: [{ blank: long }] } }])]),
    ]) {
      expect((await refusal(changed(change))).says.length).toBeLessThan(1000);
    }
  });

  it('for going too deep, without a stack running over', async () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    const { kind } = await refusal(changed(() => undefined).replace('[1,2,3]', deep));
    expect(kind).toBe('damaged');
  });

  it('wherever it was cut off', async () => {
    const whole = notebookFile(octoberWash, now).trimEnd();
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: whole.length - 1 }), async (length) => {
        expect(['damaged', 'not-a-notebook']).toContain((await refusal(whole.slice(0, length))).kind);
      }),
    );
  });

  it('or read, but never an exception, whatever one character is changed to', async () => {
    const whole = notebookFile(octoberWash, now);
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.string({ maxLength: 3 }), async (at, put) => {
        const reading = await read(whole.slice(0, at) + put + whole.slice(at + 1));
        expect(['read', 'refused']).toContain(reading.kind);
      }),
      { numRuns: 500 },
    );
  });
});

const shares = (name: string, value: unknown): object => ({ pencils: [], common: { [name]: value }, entries: {} });
const still = (column: object): object => ({ kettle: { volume_m3: 0.1 }, column: { kind: 'plates', ...column } });
const platesOf = (notebook: typeof newNotebook): number | undefined =>
  numberAt(scenarioOn(notebook, 'the-ceiling'), 'still.column.count');
const entry = (): object => ({ id: 'e1', kind: 'not-a-kind', data: null });
const page = (name = 'page-1', entries: readonly object[] = []): object => ({ name, title: '', promise: '', entries });
