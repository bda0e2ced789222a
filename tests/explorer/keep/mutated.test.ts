// Whatever is done to a notebook's file, it is refused in words or read as what can be used: every entry can be named,
// asked for, drawn and put into words, and the notebook can be written and read again. Some hundred files here;
// `npm run mutated` tries 10 000.

import fc from 'fast-check';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { createEthanolWater, problemFaults } from '#lib/index.js';
import type { Asks } from '../../../explorer/worker/questions.js';
import type { Here } from '../../../explorer/entries/entry.js';
import { kindNamed, kindNames } from '../../../explorer/entries/registry.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { lessonPage } from '../../../explorer/pages/course/records.js';
import { lessons } from '../../../explorer/pages/course/lessons.js';
import { oneChargeThreeStills } from '../../../explorer/pages/one-charge-three-stills/record.js';
import { theCeiling } from '../../../explorer/pages/the-ceiling/record.js';
import { theStillsLimits } from '../../../explorer/pages/the-stills-limits/record.js';
import { workOn, type EntryRecord, type Notebook, type PageRecord } from '../../../explorer/state/notebook-record.js';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { anyMutation, fullFile, mutated } from '../../support/mutated-files.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';

const files = Number(process.env['MUTATED_FILES'] ?? '300');
/** Files of one test. */
const batch = 500;
const now = new Date('2026-11-28T12:00:00Z');
const ready: readonly PageRecord[] = [
  theCeiling,
  oneChargeThreeStills,
  theStillsLimits,
  lessonPage(lessons.find(({ name }) => name === 'why-it-stops')!),
];
const readyNames = ready.map(({ name }) => name);
const system = createEthanolWater();
const read = (text: string): ReturnType<typeof readNotebookFile> =>
  readNotebookFile(text, readyNames, now, (page) => {
    return Promise.resolve(ready.find(({ name }) => name === page)?.entries);
  });

let full = '';
beforeAll(async () => {
  full = await fullFile();
  await Promise.all(kindNames.map(kindNamed));
});

// What views look at of a page besides what they are handed.
beforeEach(() => void vi.stubGlobal('document', { documentElement: { dataset: {} } }));

/** Uses a notebook as its pages do: each entry of the reader's own pages and of ready ones. */
async function use(notebook: Notebook): Promise<void> {
  for (const page of [...notebook.pages, ...ready])
    for (const entry of page.entries) await useEntry(notebook, page, entry);
}

async function useEntry(notebook: Notebook, page: PageRecord, entry: EntryRecord): Promise<void> {
  const kind = await kindNamed(entry.kind);
  const checked = kind?.check(entry.data);
  if (kind === undefined || checked?.good !== true) return;
  const { data } = checked;
  const { common, entries } = workOn(notebook, page.name);
  await kind.prepare?.(data);
  for (const scenario of [scenarioOn(notebook, page.name), ...workOn(notebook, page.name).pencils]) {
    for (const asks of [kind.asks, kind.asksLater]) askedFor(asks?.(data, scenario, common) ?? {});
  }
  const here = {
    ...stub,
    id: entry.id,
    data,
    work: entries[entry.id],
    scenario: scenarioOn(notebook, page.name),
    common,
    own: true,
  } as unknown as Here;
  kind.view(here);
  kind.notes?.(here);
  kind.provides?.(here);
  const words = [kind.label(data), kind.words(here), ...(kind.cautions?.(data) ?? [])];
  expect(words.every((one) => typeof one === 'string')).toBe(true);
}

/** Whether the library can compute it is its own to say, without falling over. */
function askedFor(asks: Asks): void {
  for (const question of Object.values(asks)) {
    if ('problem' in question) problemFaults(question.problem, system);
    JSON.stringify(question);
  }
}

const units = unitSystems.metric;
const nothing = (): undefined => undefined;
const stub: Partial<Here> = {
  now: undefined,
  kept: [],
  later: undefined,
  entries: [],
  results: [],
  units,
  specs: numberSpecs(units),
  place: 'desk',
  cursor: { along: 'volume', x: null },
  moveCursor: nothing,
  setCommon: nothing,
  change: nothing,
  keep: nothing,
  offer: nothing,
  blank: nothing,
  setup: nothing,
  rows: (_figure, fresh) => fresh(),
  once: (_name, _from, make) => make(),
  mark: (figure) => figure,
  shared: (make) => make(),
  redraw: nothing,
};

describe('a file with something wrong in it', () => {
  it('is made from one that is read and can be used', async () => {
    const reading = await read(full);
    expect(reading.kind).toBe('read');
    if (reading.kind === 'read') await use(reading.notebook);
  });

  const batches = Array.from({ length: Math.ceil(files / batch) }, (_, at) => Math.min(batch, files - at * batch));

  it.each(batches)('is refused in words, or can be used, written and read again (%d files)', async (count) => {
    const seen = { read: 0, refused: 0 };
    await fc.assert(
      fc.asyncProperty(anyMutation, async (mutation) => {
        const reading = await read(mutated(full, mutation));
        seen[reading.kind] += 1;
        if (reading.kind === 'refused') {
          expect(reading.refusal.says).toMatch(/^(It|A) [^]{5,1000}\.$/u);
          return;
        }
        await use(reading.notebook);
        expect(await read(notebookFile(reading.notebook, now))).toEqual({
          kind: 'read',
          notebook: reading.notebook,
          notes: [],
        });
      }),
      { numRuns: count },
    );
    expect(Math.min(seen.read, seen.refused)).toBeGreaterThan(count / 20);
  });
});
