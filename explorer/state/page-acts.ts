// What can be done with the reader's own pages: begin, name, copy and drop a page; add, move, copy, change and
// drop an entry. Pure; an act that changes nothing gives the same notebook.

import { withWork } from './acts.js';
import type { EntryRecord, Json, Notebook, PageRecord, PageWork } from './notebook-record.js';
import { without } from './without.js';

/** What a page of one's own begins as. */
export const blankPage = { title: 'A page of my own', promise: '', entries: [] } as const;

/** The reader's page of this name. */
export function ownPage(notebook: Notebook, name: string): PageRecord | undefined {
  return notebook.pages.find((page) => page.name === name);
}

/** A name for a new page that no page of the notebook has, nor any work left of one. */
export function freePageName({ pages, work }: Notebook): string {
  return free('page-', [...pages.map(({ name }) => name), ...Object.keys(work)]);
}

/** A page at the end of the reader's own. */
export function addPage(notebook: Notebook, page: PageRecord): Notebook {
  return { ...notebook, pages: [...notebook.pages, page] };
}

/** A copy of a page, ready or own, with what was done on it, as a page of the reader's own. */
export function copyPage(notebook: Notebook, page: PageRecord, name: string, title: string): Notebook {
  const work = notebook.work[page.name];
  const copied = addPage(notebook, { ...page, name, title });
  return work === undefined ? copied : { ...copied, work: { ...copied.work, [name]: work } };
}

/** Drops a page and what was done on it. */
export function dropPage(notebook: Notebook, name: string): Notebook {
  if (ownPage(notebook, name) === undefined) return notebook;
  const pages = notebook.pages.filter((page) => page.name !== name);
  return { ...notebook, pages, work: without(notebook.work, name) };
}

/** Gives a page another title or promise. */
export function namePage(
  notebook: Notebook,
  name: string,
  words: Partial<Pick<PageRecord, 'title' | 'promise'>>,
): Notebook {
  return withPage(notebook, name, (page) => {
    const next = { ...page, ...words };
    return next.title === page.title && next.promise === page.promise ? page : next;
  });
}

/** An id for a new entry that no entry of the page has, nor any work left of one. */
export function freeEntryId({ entries }: PageRecord, work: PageWork): string {
  return free('e', [...entries.map(({ id }) => id), ...Object.keys(work.entries)]);
}

/** Puts an entry behind the one of id `after`, or at the top of the page where that is null. */
export function addEntry(notebook: Notebook, page: string, entry: EntryRecord, after: string | null): Notebook {
  return withEntries(notebook, page, (entries) => entries.toSpliced(placeOf(entries, after) + 1, 0, entry));
}

/** Moves an entry up (-1) or down (1) by one place. */
export function moveEntry(notebook: Notebook, page: string, id: string, by: -1 | 1): Notebook {
  return withEntries(notebook, page, (entries) => {
    const from = placeOf(entries, id);
    const entry = entries[from];
    const to = from + by;
    if (entry === undefined || to < 0 || to >= entries.length) return entries;
    return entries.toSpliced(from, 1).toSpliced(to, 0, entry);
  });
}

/** A copy of an entry right behind it, with what was done with it. */
export function copyEntry(notebook: Notebook, page: string, id: string, copyId: string): Notebook {
  const entry = ownPage(notebook, page)?.entries.find((one) => one.id === id);
  if (entry === undefined) return notebook;
  const copied = addEntry(notebook, page, { ...entry, id: copyId }, id);
  return withWork(copied, page, (work) => {
    const done = work.entries[id];
    return done === undefined ? work : { ...work, entries: { ...work.entries, [copyId]: done } };
  });
}

/** Drops an entry and what was done with it. */
export function dropEntry(notebook: Notebook, page: string, id: string): Notebook {
  const dropped = withEntries(notebook, page, (entries) =>
    entries.some((entry) => entry.id === id) ? entries.filter((entry) => entry.id !== id) : entries,
  );
  return withWork(dropped, page, (work) => {
    if (!(id in work.entries)) return work;
    return { ...work, entries: without(work.entries, id) };
  });
}

/** Changes what an entry is. */
export function changeEntry(notebook: Notebook, page: string, id: string, next: (data: Json) => Json): Notebook {
  return withEntry(notebook, page, id, (entry) => {
    const data = next(entry.data);
    return data === entry.data ? entry : { ...entry, data };
  });
}

/** Gives an entry a heading; an empty one takes it away. */
export function headEntry(notebook: Notebook, page: string, id: string, heading: string): Notebook {
  return withEntry(notebook, page, id, (entry) => {
    if ((entry.heading ?? '') === heading) return entry;
    if (heading !== '') return { ...entry, heading };
    const { id: same, kind, data, close } = entry;
    return { id: same, kind, data, ...(close === undefined ? {} : { close }) };
  });
}

function withEntry(notebook: Notebook, page: string, id: string, next: (entry: EntryRecord) => EntryRecord): Notebook {
  return withEntries(notebook, page, (entries) => {
    const place = placeOf(entries, id);
    const entry = entries[place];
    if (entry === undefined) return entries;
    const changed = next(entry);
    return changed === entry ? entries : entries.with(place, changed);
  });
}

function withEntries(
  notebook: Notebook,
  name: string,
  next: (entries: readonly EntryRecord[]) => readonly EntryRecord[],
): Notebook {
  return withPage(notebook, name, (page) => {
    const entries = next(page.entries);
    return entries === page.entries ? page : { ...page, entries };
  });
}

function withPage(notebook: Notebook, name: string, next: (page: PageRecord) => PageRecord): Notebook {
  const page = ownPage(notebook, name);
  if (page === undefined) return notebook;
  const changed = next(page);
  return changed === page
    ? notebook
    : { ...notebook, pages: notebook.pages.map((one) => (one === page ? changed : one)) };
}

function placeOf(entries: readonly EntryRecord[], id: string | null): number {
  return entries.findIndex((entry) => entry.id === id);
}

function free(stem: string, taken: readonly string[]): string {
  let number = 1;
  while (taken.includes(`${stem}${String(number)}`)) number += 1;
  return `${stem}${String(number)}`;
}
