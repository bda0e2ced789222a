// Writing a notebook: whole, or what changed since it was written last. One transaction each, which also looks whether
// another window wrote the same notebook meanwhile; then nothing is written.

import { headOf, type Head } from './head.js';
import { fieldsOf } from './head.js';
import type { Step } from './patch.js';
import type { Changing, Records, StoreName } from './records.js';

/** The notebook that was open last in any window. */
export const latestMark = 'latest';

/** Whose writing it is. */
export interface Writing {
  readonly id: string;
  /** The number of the latest change as this window knows it; 0 for a notebook that was never written. */
  readonly count: number;
  /** The window. */
  readonly writer: string;
  readonly name: string;
  /** Now, ISO. */
  readonly written: string;
}

export type Wrote =
  | { readonly kind: 'written'; readonly count: number; readonly journal: number }
  /** What is there is not what the changes are changes of: write the whole. */
  | { readonly kind: 'whole-wanted' }
  /** Another window wrote it, or deleted it. */
  | { readonly kind: 'parted'; readonly deleted: boolean };

export interface Base {
  /** The number of the latest change in it. */
  readonly count: number;
  readonly text: string;
  /** Whether it was opened and found good. */
  readonly good: boolean;
}

export const notebookStores: readonly StoreName[] = ['heads', 'bases', 'earlier', 'journal', 'marks'];

/** Writes what changed. */
export function writeChanges(records: Records, ours: Writing, steps: readonly Step[]): Promise<Wrote> {
  return records.change(['heads', 'journal'], async (all) => {
    const head = await headOf(all, ours.id);
    const parted = partedFrom(head, ours);
    if (parted !== undefined) return parted;
    if (head?.count !== ours.count) return { kind: 'whole-wanted' };
    return putChanges(all, ours, steps, head.journal);
  });
}

/** Puts changes behind those that are there, which make so many letters. */
export function putChanges(all: Changing, ours: Writing, steps: readonly Step[], before: number): Wrote {
  const count = ours.count + 1;
  const text = JSON.stringify(steps);
  const journal = before + text.length;
  all.put('journal', [ours.id, count], text);
  putHead(all, ours, count, journal);
  return { kind: 'written', count, journal };
}

/** Writes a notebook whole, in place of all that was written before; `good` where the reading check let it pass. */
export function writeWhole(records: Records, ours: Writing, text: string, good: boolean): Promise<Wrote> {
  return records.change(notebookStores, async (all) => {
    const head = await headOf(all, ours.id);
    const parted = partedFrom(head, ours);
    if (parted !== undefined) return parted;
    const count = Math.max(head?.count ?? 0, ours.count) + 1;
    await putWhole(all, ours, { count, text, good });
    all.put('marks', latestMark, ours.id);
    return { kind: 'written', count, journal: 0 };
  });
}

/** Puts a base in the place of the base and changes that are there; the last good base is held back, or the first. */
export async function putWhole(all: Changing, ours: Omit<Writing, 'count'>, base: Base): Promise<void> {
  const before = fieldsOf(await all.get('bases', ours.id));
  const held = before.good === true || (await all.get('earlier', ours.id)) === undefined;
  if (held && before.text !== undefined) all.put('earlier', ours.id, before);
  all.put('bases', ours.id, base);
  all.removeUnder('journal', ours.id);
  putHead(all, ours, base.count, 0);
}

function putHead(
  all: Changing,
  { id, writer, name, written }: Omit<Writing, 'count'>,
  count: number,
  journal: number,
): void {
  const head: Head = { name, written, count, writer, journal, deleted: null };
  all.put('heads', id, head);
}

function partedFrom(head: Head | undefined, { count, writer }: Writing): Wrote | undefined {
  if (head === undefined) return undefined;
  if (head.deleted !== null) return { kind: 'parted', deleted: true };
  // What this very window handed over when it was left may have been added since: see last-words.ts.
  return head.count === count || head.writer === writer ? undefined : { kind: 'parted', deleted: false };
}
