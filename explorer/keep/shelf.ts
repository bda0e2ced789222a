// The notebooks kept in this browser: list, rename, delete and put back. A deleted notebook is put aside until
// others push it out, so that deleting can be undone after the page was left, too.

import { get, keysUnder, put, remove, type NotKept, type Shelves } from './storage.js';

const kept = 'kettle-and-plate.notebook.';
const deleted = 'kettle-and-plate.deleted.';
/** Deleted notebooks that can still be put back. */
const mostDeleted = 5;

export interface Shelved {
  readonly id: string;
  readonly name: string;
  /** When it was last written, ISO; empty where the record does not say. */
  readonly written: string;
}

export function keyOf(id: string): string {
  return kept + id;
}

/** Notebooks kept, the latest first. */
export function shelved(shelves: Shelves | undefined): readonly Shelved[] {
  return listed(shelves, kept);
}

/** Notebooks deleted that can be put back, the latest first. */
export function deletedOnes(shelves: Shelves | undefined): readonly Shelved[] {
  return listed(shelves, deleted);
}

export function textOf(shelves: Shelves | undefined, id: string): string | null {
  return get(shelves, keyOf(id));
}

/** Gives a notebook on the shelf another name. */
export function rename(shelves: Shelves | undefined, id: string, name: string): NotKept | undefined {
  const text = textOf(shelves, id);
  if (text === null) return undefined;
  const record = asRecord(text);
  // A record that cannot be read is not written over.
  return record === undefined
    ? undefined
    : put(shelves, keyOf(id), `${JSON.stringify({ ...record, name }, null, 2)}\n`);
}

/** Takes a notebook off the shelf; it can be put back. */
export function takeOff(shelves: Shelves | undefined, id: string): NotKept | undefined {
  const text = textOf(shelves, id);
  if (text === null) return undefined;
  // Room for it first: the storage may be full.
  remove(shelves, keyOf(id));
  const trouble = put(shelves, deleted + id, text);
  if (trouble !== undefined) {
    put(shelves, keyOf(id), text);
    return trouble;
  }
  for (const old of deletedOnes(shelves).slice(mostDeleted)) remove(shelves, deleted + old.id);
  return undefined;
}

/** Puts a deleted notebook back on the shelf. */
export function putBack(shelves: Shelves | undefined, id: string): NotKept | undefined {
  const text = get(shelves, deleted + id);
  if (text === null) return undefined;
  remove(shelves, deleted + id);
  const trouble = put(shelves, keyOf(id), text);
  if (trouble !== undefined) put(shelves, deleted + id, text);
  return trouble;
}

function listed(shelves: Shelves | undefined, prefix: string): readonly Shelved[] {
  return keysUnder(shelves, prefix)
    .map((id) => {
      const { name, written } = asRecord(get(shelves, prefix + id) ?? '') ?? {};
      return { id, name: typeof name === 'string' ? name : '', written: typeof written === 'string' ? written : '' };
    })
    .sort((a, b) => (a.written < b.written ? 1 : a.written > b.written ? -1 : 0));
}

function asRecord(text: string): Record<string, unknown> | undefined {
  try {
    const record: unknown = JSON.parse(text);
    return typeof record === 'object' && record !== null && !Array.isArray(record) ? { ...record } : undefined;
  } catch {
    return undefined;
  }
}
