// Notebook files with something wrong in them: a file with all that a notebook can hold, changed in one to three
// places by what a person, another program or a bad disk might do to it. Invented, and the same for the same seed.

import fc from 'fast-check';
import { figureLines } from '../../explorer/entries/figure/list.js';
import { kindNamed, kindNames } from '../../explorer/entries/registry.js';
import { tableLines } from '../../explorer/entries/table/list.js';
import { wordLines } from '../../explorer/entries/words/list.js';
import { notebookFile } from '../../explorer/keep/write-file.js';
import { STILL_PRESETS } from '#lib/index.js';
import {
  newNotebook,
  type EntryRecord,
  type Json,
  type Notebook,
  type PageWork,
} from '../../explorer/state/notebook-record.js';
import { startingScenario } from '../../explorer/state/scenario.js';

const written = new Date('2026-11-28T12:00:00Z');
const common: PageWork['common'] = {
  'own-stills': [{ plates: 3, efficiency: 0.7, reflux: 2 }],
  measured: true,
};
/** Every kind of still, and a sheet with every way to send back. */
const everything: Pick<Notebook, 'stills' | 'sheets'> = {
  stills: [
    ...newNotebook.stills,
    ...STILL_PRESETS.map(({ name, still }) => ({ name, what: still })),
    { name: 'packed', what: { kettle: { volume_m3: 0.1 }, column: { kind: 'packing', height_m: 1 } } },
  ],
  sheets: [
    ...newNotebook.sheets,
    {
      name: 'held',
      what: {
        jars: { kind: 'perStep' },
        sheet: [
          ...newNotebook.sheets[0]!.what.sheet,
          {
            reflux: { kind: 'hold', strength: 0.94, leastShare: 0.3, mostShare: 0.97 },
            heat: { kind: 'power', power_W: 3000 },
            until: [{ kind: 'refluxAbove', ratio: 9 }],
          },
        ],
      },
    },
  ],
};
const guess: Json = {
  points: [
    { x: 0.1, y: 0.4 },
    { x: 0.5, y: 0.7 },
  ],
  answered: true,
};

/** The file of a notebook with every kind of entry, every figure, table and result in words, and work on all pages. */
export async function fullFile(): Promise<string> {
  const plain: EntryRecord[] = [];
  for (const name of kindNames)
    plain.push({ id: name, kind: name, data: (await kindNamed(name))!.start, heading: 'A heading' });
  const more = (kind: string, data: Json): EntryRecord => ({ id: `e${String(plain.length)}`, kind, data });
  const add = (kind: string, data: Json): void => void plain.push(more(kind, data));
  figureLines.forEach(({ name }) => add('figure', { figures: [name] }));
  wordLines.forEach(({ name }) => add('words', { show: name }));
  tableLines.forEach(({ name }) => add('table', { show: name }));
  add('formula', { text: 'pure = volume * strength', plot: { against: 'strength', from: '1%', to: '95%' } });
  add('question', { own: { lead: 'How much', tail: 'L.', answer: 'pure', within: 2, hints: ['Think.', 'It is 11.'] } });
  const entries = { guess, question: { written: '3', met: false }, 'own-words': { text: 'As I see it.' } };
  const work: PageWork = { pencils: [startingScenario], common, entries };
  const readyWork: PageWork = {
    ...work,
    entries: {
      guess,
      'over-azeotrope': { written: '3', met: true },
      'own-words': { text: 'Mine.' },
      'no entry': guess,
    },
  };
  const pages = [
    { name: 'page-1', title: 'All there is', promise: 'Everything once.', entries: plain },
    { name: 'page-2', title: '', promise: '', entries: [] },
  ];
  const ready = ['the-ceiling', 'one-charge-three-stills', 'the-stills-limits', 'why-it-stops'];
  return notebookFile(
    {
      ...newNotebook,
      ...everything,
      name: 'Everything',
      pages,
      work: Object.fromEntries([['page-1', work], ...ready.map((name) => [name, readyWork])]),
    },
    written,
  );
}

/** Put in place of a value; the texts in 'raw' are put into the file as they stand. */
const strange: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    false,
    '',
    [],
    {},
    -1,
    0,
    0.5,
    1,
    1e9,
    -1e300,
    5e-324,
    2 ** 53,
    'total',
    'toString',
  ),
  fc.constantFrom('raw:1e999', 'raw:-1e999', 'raw:{"__proto__": 1}', 'raw:{"length": 3}', 'raw:"\\ud800"'),
  fc.jsonValue({ maxDepth: 3 }),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.integer({ min: 1, max: 3000 }).map((times) => '[[*'.repeat(times)),
);

type Change = 'replace' | 'delete' | 'rename' | 'swap' | 'twice' | 'more';
const change: fc.Arbitrary<readonly [Change, number, number, unknown]> = fc.tuple(
  fc.constantFrom<Change>('replace', 'replace', 'replace', 'delete', 'rename', 'swap', 'twice', 'more'),
  fc.nat(),
  fc.nat(),
  strange,
);

/** What is done to a file: to its values, or to its letters. */
export type Mutation =
  | { readonly values: readonly (readonly [Change, number, number, unknown])[] }
  | { readonly at: number; readonly drop: number; readonly put: string };

export const anyMutation: fc.Arbitrary<Mutation> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ values: fc.array(change, { minLength: 1, maxLength: 3 }) }) },
  {
    weight: 1,
    arbitrary: fc.record({ at: fc.nat(), drop: fc.nat(6), put: fc.string({ unit: 'binary', maxLength: 4 }) }),
  },
);

/** The text of a file after a mutation. */
export function mutated(full: string, mutation: Mutation): string {
  if ('put' in mutation) {
    const at = mutation.at % full.length;
    return full.slice(0, at) + mutation.put + full.slice(at + mutation.drop);
  }
  const file = JSON.parse(full) as object;
  for (const one of mutation.values) apply(file, one);
  const raw = (_all: string, text: string): string => JSON.parse(`"${text}"`) as string;
  return JSON.stringify(file, null, 1).replace(/"raw:((?:[^"\\]|\\.)*)"/gu, raw);
}

/** A place in a file: in which list or record, under which name. */
interface Spot {
  readonly inside: Record<string, unknown> | unknown[];
  readonly name: string;
}

function spotsOf(value: unknown): Spot[] {
  if (typeof value !== 'object' || value === null) return [];
  const inside = value as Spot['inside'];
  return Object.entries(value).flatMap(([name, part]) => [{ inside, name }, ...spotsOf(part)]);
}

function apply(file: object, [what, first, second, value]: readonly [Change, number, number, unknown]): void {
  const spots = spotsOf(file);
  const { inside, name } = spots[first % spots.length]!;
  const record = inside as Record<string, unknown>;
  const other = spots[second % spots.length]!;
  if (what === 'replace') record[name] = value;
  else if (what === 'swap') record[name] = structuredClone((other.inside as Record<string, unknown>)[other.name]);
  else if (what === 'more' && !Array.isArray(inside)) record[String(value).slice(0, 20)] = value;
  else if (Array.isArray(inside))
    inside.splice(Number(name), what === 'delete' ? 1 : 0, ...(what === 'delete' ? [] : [inside[Number(name)]]));
  else {
    const held = record[name];
    Reflect.deleteProperty(record, name);
    if (what !== 'delete') record[other.name] = held;
  }
}
