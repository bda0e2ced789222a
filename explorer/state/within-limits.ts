// Whether a notebook keeps within the limits, as a file that is read and as what an act would make of it. What an act
// did not change is not looked at again.

import { counts, letters, tooLong } from './limits.js';
import { workOn, type EntryRecord, type Json, type Notebook, type PageRecord } from './notebook-record.js';
import { sizeOf } from './record-size.js';

export interface Beyond {
  /** 'pages.3.title' */
  readonly where: string;
  /** 'a title has at most 200 letters, and this has 201' */
  readonly why: string;
}

/** What first goes beyond a limit; undefined where nothing does. With `before`, only what became larger since. */
export function beyondLimits(notebook: Notebook, before?: Notebook): Beyond | undefined {
  return first([
    () => text('name', notebook.name, letters.notebookName),
    () => tooMany('pages', notebook.pages.length, counts.pages, 'a notebook', 'pages', before?.pages.length),
    () =>
      firstOf(['stills', 'charges', 'sheets'] as const, (list) =>
        tooMany(list, notebook[list].length, counts.parts, 'a notebook', list, before?.[list].length),
      ),
    () => ofPages(notebook, before),
    () => firstOf(Object.keys(notebook.work), (page) => ofWork(notebook, page, before)),
    () => ofRecord(notebook, before),
  ]);
}

type Look = () => Beyond | undefined;

function first(looks: readonly Look[]): Beyond | undefined {
  return firstOf(looks, (look) => look());
}

function firstOf<One>(all: readonly One[], look: (one: One, at: number) => Beyond | undefined): Beyond | undefined {
  for (const [at, one] of all.entries()) {
    const found = look(one, at);
    if (found !== undefined) return found;
  }
  return undefined;
}

function text(where: string, written: string, limit: (typeof letters)[keyof typeof letters]): Beyond | undefined {
  const why = tooLong(written, limit);
  return why === undefined ? undefined : { where, why };
}

function tooMany(
  where: string,
  count: number,
  most: number,
  whose: string,
  what: string,
  before = 0,
): Beyond | undefined {
  if (count <= most || count <= before) return undefined;
  return { where, why: `${whose} has at most ${String(most)} ${what}, and this has ${String(count)}` };
}

function ofPages({ pages }: Notebook, before: Notebook | undefined): Beyond | undefined {
  const known = new Set(before?.pages);
  return firstOf(pages, (page, at) => {
    if (known.has(page)) return undefined;
    return ofPage(
      page,
      `pages.${String(at)}`,
      before?.pages.find(({ name }) => name === page.name),
    );
  });
}

function ofPage(page: PageRecord, where: string, old: PageRecord | undefined): Beyond | undefined {
  const known = new Set(old?.entries);
  return first([
    () => text(`${where}.title`, page.title, letters.title),
    () => text(`${where}.promise`, page.promise, letters.promise),
    () => tooMany(`${where}.entries`, page.entries.length, counts.entries, 'a page', 'entries', old?.entries.length),
    () =>
      firstOf(page.entries, (entry, at) =>
        known.has(entry) ? undefined : ofEntry(entry, `${where}.entries.${String(at)}`),
      ),
  ]);
}

function ofEntry({ heading = '', data }: EntryRecord, where: string): Beyond | undefined {
  return text(`${where}.heading`, heading, letters.heading) ?? ofData(data, `${where}.data`);
}

function ofWork(notebook: Notebook, page: string, before: Notebook | undefined): Beyond | undefined {
  const work = workOn(notebook, page);
  const old = before === undefined ? undefined : workOn(before, page);
  if (old === work) return undefined;
  const where = `work.${page}`;
  const inside = (part: 'common' | 'entries'): Beyond | undefined =>
    firstOf(Object.entries(work[part]), ([name, value]) =>
      old?.[part][name] === value ? undefined : ofData(value, `${where}.${part}.${name}`),
    );
  return first([
    () => tooMany(`${where}.pencils`, work.pencils.length, counts.pencils, 'a page', 'pencil lines'),
    () => inside('common'),
    () => inside('entries'),
  ]);
}

function ofData(data: Json, where: string): Beyond | undefined {
  const { depth, longest } = sizeOf(data);
  if (depth > counts.depth) {
    return { where, why: `lists may go ${String(counts.depth)} levels deep, and this goes ${String(depth)}` };
  }
  const { most, what } = letters.any;
  return longest > most
    ? { where, why: `${what} has at most ${String(most)} letters, and this has ${String(longest)}` }
    : undefined;
}

function ofRecord(notebook: Notebook, before: Notebook | undefined): Beyond | undefined {
  const { letters: found } = sizeOf(notebook);
  if (found <= counts.record || (before !== undefined && found <= sizeOf(before).letters)) return undefined;
  const why = `a notebook has at most ${String(counts.record)} letters in all, and this has ${String(found)}`;
  return { where: '', why };
}
