// A file's text -> a notebook. Everything is checked before anything is used: size, JSON, layout, numbers, and
// the data of each entry by its own kind. A text that is only an address is read as what it is, version 1.

import * as v from 'valibot';
import { kindNamed } from '../entries/registry.js';
import type { EntryRecord, Notebook, PageRecord, PageWork } from '../state/notebook-record.js';
import { faultInShared } from '../state/shared-values.js';
import { beyondLimits } from '../state/within-limits.js';
import { formatName, formatVersion, limits } from './format.js';
import { fromVersion1, type Migrated } from './migrate.js';
import { fromFileNumbers } from './numbers.js';
import { addressIn } from './address-text.js';
import { faultOfLayout } from './layout-fault.js';
import { faultInJson, isReserved } from './plain-json.js';
import { beyond, damaged, newer, notANotebook, tooLarge, type Reading } from './reading.js';
import { asJson, version1, version2, type FileWork } from './schema.js';

/** `pages` are the names of the ready pages, which an address may mean. */
export async function readNotebookFile(text: string, pages: readonly string[], now: Date): Promise<Reading> {
  if (text.length > limits.letters) return tooLarge(text.length);
  const plain = text.replace(/^\ufeff/u, '').trim();
  const address = addressIn(plain);
  if (address !== undefined) return fromParsed({ format: formatName, version: 1, address }, pages, now);
  let parsed: unknown;
  try {
    parsed = JSON.parse(plain);
  } catch {
    // A file that begins as ours does and ends early is damaged; anything else never was one.
    return plain.includes(formatName) ? damaged('', 'it is not complete, or was changed by hand') : notANotebook();
  }
  return fromParsed(parsed, pages, now);
}

async function fromParsed(parsed: unknown, pages: readonly string[], now: Date): Promise<Reading> {
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
  const read = version === 1 ? readVersion1(parsed, pages, now) : readVersion2(parsed);
  return 'kind' in read ? read : toNotebook(read, pages);
}

function readVersion1(parsed: object, pages: readonly string[], now: Date): Migrated | Reading {
  const result = v.safeParse(version1, parsed);
  return result.success ? fromVersion1(result.output, pages, now) : damaged(...faultOfLayout(result.issues[0]));
}

function readVersion2(parsed: object): Migrated | Reading {
  const result = v.safeParse(version2, parsed);
  if (!result.success) return damaged(...faultOfLayout(result.issues[0]));
  return { file: result.output, page: undefined, notes: [] };
}

async function toNotebook({ file, page, notes }: Migrated, ready: readonly string[]): Promise<Reading> {
  const scenario = fromFileNumbers(file.numbers);
  if (typeof scenario === 'string') return damaged('numbers', scenario);
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
  for (const [name, done] of Object.entries(file.work)) {
    const read = toWork(done);
    if (typeof read === 'string') return damaged(`work.${name}.pencils`, read);
    const fault = await faultInWork(read, pages.find((page) => page.name === name)?.entries);
    if (fault !== undefined) return damaged(`work.${name}.${fault.where}`, fault.why);
    work[name] = read;
  }
  const notebook: Notebook = { version: 1, name: file.name, scenario, pages, work };
  const over = beyondLimits(notebook);
  if (over !== undefined) return over.where === '' ? beyond(over.why) : damaged(over.where, over.why);
  return { kind: 'read', notebook, notes, ...(page === undefined ? {} : { page }) };
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

/** What is wrong with what was done on a page; what belongs to no entry that is known here is kept as it is. */
async function faultInWork(
  { common, entries }: PageWork,
  records: readonly EntryRecord[] = [],
): Promise<{ readonly where: string; readonly why: string } | undefined> {
  for (const [name, value] of Object.entries(common)) {
    const why = faultInShared(name, value);
    if (why !== undefined) return { where: `common.${name}`, why };
  }
  for (const [id, value] of Object.entries(entries)) {
    const record = records.find((entry) => entry.id === id);
    const kind = record === undefined ? undefined : await kindNamed(record.kind);
    const why = kind?.checkWork?.(value);
    if (why !== undefined) return { where: `entries.${id}`, why };
  }
  return undefined;
}

function toWork({ pencils, common, entries }: FileWork): PageWork | string {
  const read = pencils.map(fromFileNumbers);
  const fault = read.find((one) => typeof one === 'string');
  if (typeof fault === 'string') return fault;
  return {
    pencils: read as PageWork['pencils'],
    common: common as PageWork['common'],
    entries: entries as PageWork['entries'],
  };
}
