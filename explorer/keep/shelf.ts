// The notebooks kept in this browser: list, delete and put back. A deleted notebook is put aside until others that were
// deleted after it push it out, so that deleting can be undone after the page was left, too.

import { allHeads, headOf, type Head } from './head.js';
import { storedOf, after, textOf, rawText } from './read-back.js';
import type { Records } from './records.js';
import { notebookStores } from './write-notebook.js';

/** Deleted notebooks that can still be put back. */
export const mostDeleted = 10;

export interface Shelved {
  readonly id: string;
  readonly name: string;
  /** When it was last written, ISO; empty where the record does not say. */
  readonly written: string;
}

export interface Shelf {
  /** Notebooks kept, the latest first. */
  readonly kept: readonly Shelved[];
  /** Notebooks deleted that can be put back, the one deleted last first. */
  readonly deleted: readonly Shelved[];
}

export async function shelfOf(records: Records): Promise<Shelf> {
  const heads = await records.look(['heads'], allHeads);
  const shelved = ({ id, name, written }: (typeof heads)[number]): Shelved => ({ id, name, written });
  return {
    kept: heads
      .filter((head) => head.deleted === null)
      .sort(latestFirst)
      .map(shelved),
    deleted: heads
      .filter((head) => head.deleted !== null)
      .sort(lastDeletedFirst)
      .map(shelved),
  };
}

/** The text of a notebook's file as it was last written; undefined where there is none. */
export async function notebookText(records: Records, id: string): Promise<string | undefined> {
  const stored = await storedOf(records, id);
  if (stored === undefined) return undefined;
  const newest = after(stored, stored.changes.length);
  return newest === undefined ? rawText(stored) : textOf(newest.record, stored.head);
}

/** Takes a notebook off the shelf; it can be put back. */
export function takeOff(records: Records, id: string): Promise<void> {
  return records.change(notebookStores, async (all) => {
    const head = await headOf(all, id);
    if (head === undefined || head.deleted !== null) return;
    const gone = (await allHeads(all)).filter((one) => one.deleted !== null).sort(lastDeletedFirst);
    all.put('heads', id, { ...head, deleted: (gone[0]?.deleted ?? 0) + 1 } satisfies Head);
    for (const { id: old } of gone.slice(mostDeleted - 1)) {
      all.remove('heads', old);
      all.remove('bases', old);
      all.remove('earlier', old);
      all.removeUnder('journal', old);
    }
  });
}

/** Puts a deleted notebook back on the shelf. */
export function putBack(records: Records, id: string): Promise<void> {
  return records.change(['heads'], async (all) => {
    const head = await headOf(all, id);
    if (head !== undefined) all.put('heads', id, { ...head, deleted: null } satisfies Head);
  });
}

function latestFirst(one: Head, other: Head): number {
  return one.written < other.written ? 1 : one.written > other.written ? -1 : 0;
}

function lastDeletedFirst(one: Head, other: Head): number {
  return (other.deleted ?? 0) - (one.deleted ?? 0);
}
