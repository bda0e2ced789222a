// Files of version 2, as they were written: their numbers, sheets, pencil lines and sentences are all there afterwards.

import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import { notebookFile } from '../../../explorer/keep/write-file.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { newNotebook, type Notebook } from '../../../explorer/state/notebook-record.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';
import { numberAt } from '../../../explorer/state/paths.js';
import { short } from '../../support/settings.js';

const now = new Date('2026-11-28T12:00:00Z');
const ready = ['the-ceiling', 'one-charge-three-stills', 'the-doubler', 'the-stills-limits'];

async function kept(): Promise<Record<string, unknown>> {
  return JSON.parse(await readFile(new URL('kept/version-2.kettle', import.meta.url), 'utf8')) as Record<
    string,
    unknown
  >;
}

async function read(change: (file: Record<string, unknown>) => void = () => undefined): Promise<Notebook> {
  const file = await kept();
  change(file);
  const reading = await readNotebookFile(JSON.stringify(file), ready, now);
  if (reading.kind === 'refused') throw new Error(reading.refusal.says);
  return reading.notebook;
}

async function refused(change: (file: Record<string, unknown>) => void): Promise<string> {
  const file = await kept();
  change(file);
  const reading = await readNotebookFile(JSON.stringify(file), ready, now);
  return reading.kind === 'refused' ? reading.refusal.says : 'it was read';
}

describe('a file of version 2', () => {
  it('keeps its thirteen numbers, as still, charge and sheet', async () => {
    const notebook = await read();
    const scenario = scenarioOn(notebook, 'the-ceiling');
    const numbers = Object.entries(short).map(([name, path]) => [name, numberAt(scenario, path)]);
    expect(Object.fromEntries(numbers)).toEqual({
      chargeVolume: 0.2,
      chargeStrength: 0.11,
      plates: 17,
      efficiency: 0.7,
      reflux: 4.5,
      heat: 7000,
      pressure: 95_000,
      doublerVolume: 0.03,
      doublerStrength: 0.25,
      columnDiameter: 0.12,
      plateSpacing: 0.16,
      wantedStrength: 0.85,
      ceilingPressure: 20_000,
    });
    // A kettle that takes 200 L, and a doubler that takes 30 L.
    expect(scenario.still.kettle.volume_m3).toBeCloseTo(0.27, 12);
    const doubling = scenarioOn(notebook, 'the-doubler').still;
    expect([doubling.kettle.power_W, doubling.kettle.volume_m3, doubling.doublers?.[0]?.volume_m3]).toEqual([
      7000,
      scenario.still.kettle.volume_m3,
      0.06,
    ]);
  });

  it('gives each page that had a sheet of its own that sheet, by a name', async () => {
    const notebook = await read();
    expect(notebook.sheets.map(({ name }) => name)).toEqual([
      'Your run sheet',
      'Sheet of the stills limits',
      'Sheet of My run',
    ]);
    const { sheet, jars } = scenarioOn(notebook, 'the-stills-limits');
    expect(jars).toEqual({ kind: 'size', volume_m3: 0.002 });
    expect(sheet.map(({ reflux, heat }) => [reflux, heat])).toEqual([
      ['total', undefined],
      ['total', { kind: 'power', power_W: 3000 }],
      [6, { kind: 'power', power_W: 4000 }],
    ]);
    expect(scenarioOn(notebook, 'page-1').jars).toEqual({ kind: 'perStep' });
    expect(scenarioOn(notebook, 'the-ceiling').sheet).toHaveLength(3);
  });

  it('keeps its pencil lines, with the sheet of their page', async () => {
    const { work } = await read();
    const plates = (page: string): unknown[] =>
      work[page]!.pencils.map((pencil) => numberAt(pencil, 'still.column.count'));
    expect(plates('the-ceiling')).toEqual([12, 8]);
    expect(plates('the-stills-limits')).toEqual([5]);
    expect(work['the-stills-limits']!.pencils[0]!.sheet[2]!.reflux).toBe(6);
    expect(work['the-ceiling']!.pencils[0]!.sheet[2]!.reflux).toBe(3);
  });

  it('keeps what the reader did, and sentences set the same numbers as before', async () => {
    const { work, pages } = await read();
    expect(work['the-ceiling']!.entries).toEqual({ e2: [1, 2, 3] });
    expect(work['one-charge-three-stills']!.common).toEqual({
      'own-stills': [{ plates: 3, efficiency: 0.7, reflux: 2 }],
    });
    expect(pages[0]!.entries[1]!.data).toEqual({
      sentence: ['With ', { blank: 'still.column.count' }, ' and ', { blank: 'charge.volume_m3' }, '.'],
      hands: true,
    });
    expect(pages[0]!.entries).toHaveLength(4);
  });

  it('is written as version 3 and read back as the same notebook', async () => {
    const notebook = await read();
    const again = await readNotebookFile(notebookFile(notebook, now), ready, now);
    expect(again).toEqual({ kind: 'read', notebook, notes: [] });
  });

  it('with the numbers it started with is a new notebook', async () => {
    const notebook = await read((file) => Object.assign(file, { numbers: {}, pages: [], work: {}, name: '' }));
    for (const { key } of inputs) {
      for (const page of ready) {
        expect(numberAt(scenarioOn(notebook, page), key)).toBe(numberAt(scenarioOn(newNotebook, page), key));
      }
    }
  });

  it.each<[string, (file: Record<string, unknown>) => void, string]>([
    [
      'a number out of range',
      (file) => (file['numbers'] = { plates: 61 }),
      '‘plates’ is 61 and would have to be 0 to 60',
    ],
    ['half a plate', (file) => (file['numbers'] = { plates: 2.5 }), 'no whole number'],
    ['a number nobody knows', (file) => (file['numbers'] = { moons: 2 }), '‘moons’ is no number that these pages know'],
    [
      'a bad pencil line',
      (file) => (file['work'] = { x: { pencils: [{ plates: 99 }], common: {}, entries: {} } }),
      'work.x.pencils',
    ],
    [
      'a run sheet of an unknown rule',
      (file) =>
        (file['work'] = {
          x: {
            pencils: [],
            common: { runSheet: { steps: [{ reflux: 3, until: [{ kind: 'rain' }] }], jar_m3: 1 } },
            entries: {},
          },
        }),
      'at work.x.common.runSheet: step 1: a rule is of the kind',
    ],
  ])('with %s is refused, and says where', async (_, change, says) => {
    expect(await refused(change)).toContain(says);
  });
});
