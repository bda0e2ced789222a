// Opening a kept notebook. Where its newest state cannot be read, the last good one opens and the newest is set aside,
// once: what is on the shelf afterwards is good. Where nothing of it can be read, all of it is set aside.

import type { Json } from '../state/notebook-record.js';
import { asideStores, putAside } from './aside.js';
import { headOf } from './head.js';
import { newId } from './new-id.js';
import { after, rawText, storedOf, textOf, type Stored } from './read-back.js';
import { damaged, type Reading, type Refusal } from './reading.js';
import type { Records } from './records.js';
import { notebookStores, putWhole } from './write-notebook.js';

type Read = Reading & { readonly kind: 'read' };

/** The reading check. */
export type Check = (text: string) => Promise<Reading>;

export interface Opened {
  readonly kind: 'opened';
  readonly reading: Read;
  /** Another than was asked for where what cannot be read had to stay in its place. */
  readonly id: string;
  /** The record as it stands there now; null where nothing stands there under this id. */
  readonly record: Json | null;
  /** The number of its latest change. */
  readonly count: number;
  /** Why the newest state is not the one that was opened. */
  readonly instead?: Instead;
}

export interface Instead {
  readonly refusal: Refusal;
  /** Whether the newest state is kept aside. */
  readonly aside: boolean;
}

export type Opening =
  | Opened
  | { readonly kind: 'none' }
  /** `stays` where it is left on the shelf as it is; else it is kept aside from now on. */
  | {
      readonly kind: 'refused';
      readonly name: string;
      readonly refusal: Refusal;
      readonly bytes: Bytes;
      readonly stays: boolean;
    };

type Bytes = Uint8Array<ArrayBuffer>;

interface Window {
  readonly writer: string;
  readonly now: () => Date;
}

/** Opens a notebook of the shelf. */
export async function openNotebook(records: Records, id: string, check: Check, window: Window): Promise<Opening> {
  const stored = await storedOf(records, id);
  if (stored === undefined || stored.head.deleted !== null) return { kind: 'none' };
  const { head, changes, whole } = stored;
  const newest = after(stored, changes.length);
  const complete = newest !== undefined && newest.applied === changes.length && whole;
  const text = newest === undefined ? rawText(stored) : textOf(newest.record, head);
  const reading = complete ? await check(text) : damaged('', 'it is not complete');
  if (complete && reading.kind === 'read') {
    await settle(records, id, stored, text);
    return { kind: 'opened', id, reading, record: newest.record, count: head.count };
  }
  const refusal = (reading as Reading & { kind: 'refused' }).refusal;
  const bytes = new TextEncoder().encode(complete ? text : rawText(stored));
  const refused = { kind: 'refused', name: head.name, refusal, bytes } as const;
  // What a newer explorer wrote is no damage: that one will read it.
  if (refusal.kind === 'newer') return { ...refused, stays: true };
  const good = await lastGood(stored, newest?.applied ?? 0, check);
  const aside = await exchange(records, id, stored, { why: refusal.says, bytes, good: good?.text }, window);
  if (good === undefined) return { ...refused, stays: !aside };
  const there = aside ? { id, record: good.record, count: head.count + 1 } : { id: newId(), record: null, count: 0 };
  return { kind: 'opened', reading: good.reading, ...there, instead: { refusal, aside } };
}

interface Good {
  readonly reading: Read;
  readonly record: Json;
  readonly text: string;
}

/** The latest state that can be read: after as many changes as can be, or the base before. */
async function lastGood(stored: Stored, changes: number, check: Check): Promise<Good | undefined> {
  const tried = async (record: Json): Promise<Good | undefined> => {
    const text = textOf(record, stored.head);
    const reading = await check(text);
    return reading.kind === 'read' ? { reading, record, text } : undefined;
  };
  const upTo = async (count: number): Promise<Good | undefined> => {
    const state = after(stored, count);
    return state === undefined ? undefined : tried(state.record);
  };
  let good = await upTo(changes);
  if (good !== undefined) return good;
  // One change spoiled it, and those after it did not mend it: found by halves.
  let [low, high] = [0, changes];
  good = await upTo(0);
  while (good !== undefined && high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const state = await upTo(middle);
    if (state === undefined) high = middle;
    else [low, good] = [middle, state];
  }
  return good ?? earlierBase(stored, tried);
}

async function earlierBase(
  { earlier }: Stored,
  tried: (record: Json) => Promise<Good | undefined>,
): Promise<Good | undefined> {
  if (earlier === undefined) return undefined;
  try {
    return await tried(JSON.parse(earlier) as Json);
  } catch {
    return undefined;
  }
}

/** After opening: the base is all there is, and is marked good. */
async function settle(records: Records, id: string, { head, good, changes }: Stored, text: string): Promise<void> {
  if (good && changes.length === 0) return;
  const { name, written, writer, count } = head;
  try {
    await records.change(notebookStores, async (all) => {
      const now = await headOf(all, id);
      // Written by another window meanwhile: then it is that window's to settle.
      if (now?.count !== count || now.deleted !== null) return;
      await putWhole(all, { id, writer, name, written }, { count, text, good: true });
    });
  } catch {
    // It opened: it can be settled next time.
  }
}

interface Exchange {
  readonly why: string;
  readonly bytes: Bytes;
  /** What stands on the shelf instead; nothing where nothing can be read. */
  readonly good: string | undefined;
}

/** Sets aside what cannot be read and puts the good state in its place; false where that does not work. */
async function exchange(
  records: Records,
  id: string,
  { head }: Stored,
  { why, bytes, good }: Exchange,
  { writer, now }: Window,
): Promise<boolean> {
  const { name, written } = head;
  const at = now().toISOString();
  try {
    return await records.change([...notebookStores, ...asideStores], async (all) => {
      if ((await headOf(all, id))?.count !== head.count) return false;
      if (!(await putAside(all, { kind: 'notebook', name: asideName(name), at, why }, bytes))) return false;
      all.remove('heads', id);
      all.remove('bases', id);
      all.removeUnder('journal', id);
      if (good === undefined) all.remove('earlier', id);
      else await putWhole(all, { id, writer, name, written }, { count: head.count + 1, text: good, good: true });
      return true;
    });
  } catch {
    return false;
  }
}

function asideName(name: string): string {
  return `${name.trim() === '' ? 'Untitled' : name}.json`;
}
