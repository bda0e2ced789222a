// From an older version of the format to the next. A step takes a file that its own schema has checked and never throws;
// it gives a sentence where what it finds cannot be.

import { readAddress } from '../state/address.js';
import { fromOldNumbers, pathOfOldKey } from '../state/flat-numbers.js';
import { newNotebook, type Json, type Notebook, type PageRecord, type Uses } from '../state/notebook-record.js';
import { scenarioOn, withScenario } from '../state/page-scenario.js';
import { faultInRunSheet } from '../state/run-sheet-check.js';
import type { Scenario, SheetSet } from '../state/scenario.js';
import { without } from '../state/without.js';
import { fromFileNumbers } from './numbers.js';
import { asJson, type FileV1, type FileV2, type FileV3, type FileWork } from './schema.js';
import { notebookRecord } from './write-file.js';

export interface Migrated {
  readonly file: FileV3;
  readonly page: string | undefined;
  readonly notes: readonly string[];
}

export interface Unusable {
  readonly where: string;
  readonly why: string;
}

/** Version 1 is an address: one page and its numbers, in litres, per cent, kilowatts and kilopascals. */
export function fromVersion1({ address }: FileV1, pages: readonly string[], now: Date): Migrated {
  const { page, scenario, complaints } = readAddress(address, pages);
  const notebook = withScenario(newNotebook, page ?? '', scenario);
  return { file: asFile(notebook, now.toISOString()), page, notes: complaints };
}

/**
 * Version 2 held thirteen numbers for the whole notebook and a run sheet a page. The numbers become 'Your still' and
 * 'Pot with a doubler', 'Your charge' and 'Your run sheet'; a page's own sheet becomes one by the page's name, which it uses.
 */
export function fromVersion2({ written, name, numbers, pages, work }: FileV2): Migrated | Unusable {
  const set = fromFileNumbers(numbers);
  if (typeof set === 'string') return { where: 'numbers', why: set };
  const doublerPage = 'the-doubler';
  let notebook: Notebook = { ...newNotebook, name };
  for (const page of [doublerPage, '']) {
    notebook = withScenario(notebook, page, fromOldNumbers(set, scenarioOn(newNotebook, page)));
  }
  const sheets = [...notebook.sheets];
  const works: Record<string, FileWork> = {};
  for (const [page, done] of Object.entries(work)) {
    const read = oldSheet(done.common[runSheetName]);
    if (typeof read === 'string') return { where: `work.${page}.common.${runSheetName}`, why: read };
    const own =
      read === undefined ? undefined : { name: sheetName(page, pages as readonly PageRecord[], sheets), what: read };
    if (own !== undefined) sheets.push(own);
    const pencils: Scenario[] = [];
    for (const pencil of done.pencils) {
      const kept = fromFileNumbers(pencil);
      if (typeof kept === 'string') return { where: `work.${page}.pencils`, why: kept };
      pencils.push({ ...fromOldNumbers(kept, scenarioOn(newNotebook, page)), ...own?.what });
    }
    const uses: Uses | undefined = own === undefined ? undefined : { sheet: own.name };
    works[page] = {
      pencils: pencils,
      common: without(done.common, runSheetName),
      entries: done.entries,
      ...(uses === undefined ? {} : { uses }),
    };
  }
  const file = asFile({ ...notebook, sheets }, written);
  return { file: { ...file, pages: pages.map(withPaths), work: works }, page: undefined, notes: [] };
}

/** Where version 2 kept a page's sheet. */
const runSheetName = 'runSheet';

/** Its sheet as it is now; steps once had a `power_W` for their heat. */
function oldSheet(value: unknown): SheetSet | string | undefined {
  if (value === undefined) return undefined;
  const { steps, jar_m3 } = (value ?? {}) as { steps?: unknown; jar_m3?: unknown };
  if (!Array.isArray(steps)) return 'a run sheet needs `steps`, a list';
  const sheet = {
    sheet: (steps as readonly unknown[]).map(withHeat),
    jars: jar_m3 === null ? { kind: 'perStep' } : { kind: 'size', volume_m3: jar_m3 },
  };
  return faultInRunSheet(sheet) ?? (sheet as SheetSet);
}

function withHeat(step: unknown): unknown {
  if (typeof step !== 'object' || step === null || !('power_W' in step)) return step;
  const { power_W, ...rest } = step;
  return power_W === null || power_W === undefined ? rest : { ...rest, heat: { kind: 'power', power_W } };
}

/** A name that no sheet has. */
function sheetName(page: string, pages: readonly PageRecord[], sheets: readonly { readonly name: string }[]): string {
  const title = pages.find((one) => one.name === page)?.title ?? '';
  const stem = `Sheet of ${title === '' ? page.replaceAll('-', ' ') : title}`.slice(0, 70);
  let name = stem;
  for (let i = 2; sheets.some((one) => one.name === name); i += 1) name = `${stem} ${String(i)}`;
  return name;
}

/** A page whose sentences name numbers by their paths. */
function withPaths(page: FileV2['pages'][number]): FileV2['pages'][number] {
  return {
    ...page,
    entries: page.entries.map((entry) =>
      entry.kind === 'setup' ? { ...entry, data: sentenceOf(asJson(entry.data)) } : entry,
    ),
  };
}

function sentenceOf(data: Json): Json {
  const { sentence } = (data ?? {}) as { sentence?: Json };
  if (!Array.isArray(sentence)) return data;
  const parts = (sentence as readonly Json[]).map((part) => {
    const path = typeof part === 'object' && part !== null && 'blank' in part ? pathOfOldKey(part.blank) : undefined;
    return path === undefined ? part : { blank: path };
  });
  return { ...(data as object), sentence: parts };
}

function asFile(notebook: Notebook, written: string): FileV3 {
  return notebookRecord(notebook, written) as unknown as FileV3;
}
