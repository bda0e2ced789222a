// A file's text -> a notebook. Everything is checked before anything is used: size, JSON, layout, numbers, and
// the data of each entry by its own kind. A text that is only an address is read as what it is, version 1.

import * as v from 'valibot';
import { kindNamed } from '../entries/registry.js';
import type { StillDescription } from '#lib/index.js';
import type { EntryRecord, Notebook, PageRecord, PageWork, Parts } from '../state/notebook-record.js';
import { faultInPart, type PartName } from '../state/parts-check.js';
import type { ChargeSet, SheetSet } from '../state/scenario.js';
import { beyondLimits } from '../state/within-limits.js';
import { formatName, formatVersion, limits } from './format.js';
import { fromVersion1, fromVersion2, type Migrated } from './migrate.js';
import { addressIn } from './address-text.js';
import { faultOfLayout } from './layout-fault.js';
import { faultInJson, isReserved } from './plain-json.js';
import { beyond, damaged, newer, notANotebook, tooLarge, type Reading } from './reading.js';
import { readWork } from './read-work.js';
import { asJson, version1, version2, version3, type FileV3 } from './schema.js';

/** The entries of a ready page; undefined where it has none. */
export type ReadyEntries = (page: string) => Promise<readonly EntryRecord[] | undefined>;

/** `pages` are the names of the ready pages, which an address may mean; `entries` tells what stands on them. */
export async function readNotebookFile(
  text: string,
  pages: readonly string[],
  now: Date,
  entries: ReadyEntries = () => Promise.resolve(undefined),
): Promise<Reading> {
  if (text.length > limits.letters) return tooLarge(text.length);
  const plain = text.replace(/^\ufeff/u, '').trim();
  const address = addressIn(plain);
  if (address !== undefined) return fromParsed({ format: formatName, version: 1, address }, pages, now, entries);
  let parsed: unknown;
  try {
    parsed = JSON.parse(plain);
  } catch {
    // A file that begins as ours does and ends early is damaged; anything else never was one.
    return plain.includes(formatName) ? damaged('', 'it is not complete, or was changed by hand') : notANotebook();
  }
  return fromParsed(parsed, pages, now, entries);
}

async function fromParsed(
  parsed: unknown,
  pages: readonly string[],
  now: Date,
  entries: ReadyEntries,
): Promise<Reading> {
  if (typeof parsed !== 'object' || parsed === null || !('format' in parsed) || parsed.format !== formatName) {
    return notANotebook();
  }
  const version: unknown = 'version' in parsed ? parsed.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return damaged('version', 'it does not say which version of the format it is');
  }
  if (version > formatVersion) return newer(version);
  const fault = faultInJson(parsed);
  if (fault !== undefined) return damaged('', `it ${fault}`);
  const read =
    version === 1 ? readVersion1(parsed, pages, now) : version === 2 ? readVersion2(parsed) : readVersion3(parsed);
  return 'kind' in read ? read : toNotebook(read, pages, entries);
}

function readVersion1(parsed: object, pages: readonly string[], now: Date): Migrated | Reading {
  const result = v.safeParse(version1, parsed);
  return result.success ? fromVersion1(result.output, pages, now) : damaged(...faultOfLayout(result.issues[0]));
}

function readVersion2(parsed: object): Migrated | Reading {
  const result = v.safeParse(version2, parsed);
  if (!result.success) return damaged(...faultOfLayout(result.issues[0]));
  const migrated = fromVersion2(result.output);
  return 'why' in migrated ? damaged(migrated.where, migrated.why) : migrated;
}

function readVersion3(parsed: object): Migrated | Reading {
  const result = v.safeParse(version3, parsed);
  if (!result.success) return damaged(...faultOfLayout(result.issues[0]));
  return { file: result.output, page: undefined, notes: [] };
}

/** What is wrong with the stills, charges and sheets of a file. */
function faultInParts({ stills, charges, sheets, asked }: FileV3): [where: string, why: string] | undefined {
  const lists = { stills, charges, sheets } as const;
  for (const [list, parts] of Object.entries(lists) as [string, readonly Readonly<Record<string, unknown>>[]][]) {
    const names = parts.map(({ name }) => name);
    if (new Set(names).size < names.length) return [list, 'two of them have the same name'];
    for (const [at, part] of parts.entries()) {
      for (const [name, value] of Object.entries(part)) {
        const why = name === 'name' ? undefined : faultInPart(name as PartName, value);
        if (why !== undefined) return [`${list}.${String(at)}`, why];
      }
    }
  }
  const why = faultInPart('asked', asked);
  return why === undefined ? undefined : ['asked', why];
}

/** Stills, charges and sheets by name, as a notebook has them. */
function partsOf({ stills, charges, sheets, asked }: FileV3): Parts & Pick<Notebook, 'asked'> {
  return {
    stills: stills.map(({ name, still }) => ({ name, what: still as StillDescription })),
    charges: charges.map(({ name, ...what }) => ({ name, what: what as ChargeSet })),
    sheets: sheets.map(({ name, ...what }) => ({ name, what: what as SheetSet })),
    asked,
  };
}

async function toNotebook(
  { file, page, notes }: Migrated,
  ready: readonly string[],
  readyEntries: ReadyEntries,
): Promise<Reading> {
  const wrong = faultInParts(file);
  if (wrong !== undefined) return damaged(...wrong);
  const names = file.pages.map(({ name }) => name);
  const called = [...names, ...file.pages.flatMap(({ entries }) => entries.map(({ id }) => id))].find(isReserved);
  if (called !== undefined) return damaged('pages', `nothing can be called ‘${called}’`);
  if (new Set(names).size < names.length) return damaged('pages', 'two pages have the same name');
  const taken = names.find((name) => ready.includes(name));
  if (taken !== undefined) return damaged('pages', `a page is called ‘${taken}’ as one that is always there`);
  const pages: PageRecord[] = [];
  for (const [p, one] of file.pages.entries()) {
    const entries: EntryRecord[] = [];
    for (const [e, { id, kind, data, heading, close }] of one.entries.entries()) {
      const why = await faultInEntry(kind, data);
      if (why !== undefined) return damaged(`pages.${String(p)}.entries.${String(e)}`, why);
      const optional = { ...(heading === undefined ? {} : { heading }), ...(close === undefined ? {} : { close }) };
      entries.push({ id, kind, data: asJson(data), ...optional });
    }
    if (new Set(entries.map(({ id }) => id)).size < entries.length) {
      return damaged(`pages.${String(p)}.entries`, 'two entries have the same id');
    }
    pages.push({ ...one, entries });
  }
  const work: Record<string, PageWork> = {};
  const said = [...notes];
  for (const [name, done] of Object.entries(file.work)) {
    const own = pages.find((one) => one.name === name)?.entries;
    const read = await readWork(name, done, own, ready.includes(name) ? readyEntries : undefined);
    if ('where' in read) return damaged(read.where, read.why);
    work[name] = read.work;
    said.push(...read.notes);
  }
  const notebook: Notebook = { version: 1, name: file.name, ...partsOf(file), pages, work };
  const over = beyondLimits(notebook);
  if (over !== undefined) return over.where === '' ? beyond(over.why) : damaged(over.where, over.why);
  return { kind: 'read', notebook, notes: said, ...(page === undefined ? {} : { page }) };
}

/** An entry of a kind this explorer does not have is kept as it is. */
async function faultInEntry(name: string, data: unknown): Promise<string | undefined> {
  const kind = await kindNamed(name);
  if (kind === undefined) return undefined;
  try {
    const checked = kind.check(asJson(data));
    return checked.good ? undefined : checked.why;
  } catch {
    return 'its data are not what such an entry is made of';
  }
}
