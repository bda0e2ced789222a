// Reading a notebook back: the base with the changes after it, one by one as far as they go. Gives texts of a file; what
// is good in them the reading check knows.

import type { Json } from '../state/notebook-record.js';
import { asHead, fieldsOf, type Head } from './head.js';
import { withChanges, type Step } from './patch.js';
import type { Records } from './records.js';

/** All that is kept of one notebook. */
export interface Stored {
  readonly head: Head;
  /** Text of the base, as it stands there; undefined where there is none. */
  readonly base: string | undefined;
  /** Whether the base was opened and found good. */
  readonly good: boolean;
  /** Text of each change after the base; one that is missing ends the list. */
  readonly changes: readonly string[];
  /** Whether these are all that were written. */
  readonly whole: boolean;
  /** Text of the good base before. */
  readonly earlier: string | undefined;
}

/** What is kept of a notebook on the shelf or among the deleted ones; undefined where there is nothing. */
export function storedOf(records: Records, id: string): Promise<Stored | undefined> {
  return records.look(['heads', 'bases', 'earlier', 'journal'], async (all) => {
    const [record, base, earlier, journal] = await Promise.all([
      all.get('heads', id),
      all.get('bases', id),
      all.get('earlier', id),
      all.all('journal', id),
    ]);
    const head = asHead(record);
    if (head === undefined) return undefined;
    const { count, text, good } = fieldsOf(base);
    const changes: string[] = [];
    for (const [[, number], change] of journal as readonly (readonly [readonly [string, number], unknown])[]) {
      if (typeof count !== 'number' || number <= count) continue;
      if (number !== count + changes.length + 1 || typeof change !== 'string') break;
      changes.push(change);
    }
    return {
      head,
      base: typeof text === 'string' ? text : undefined,
      good: good === true,
      changes,
      whole: count === head.count - changes.length,
      earlier: textIn(earlier),
    };
  });
}

/** A notebook after so many of its changes; `applied` is smaller where one of them does not fit. */
export function after(
  stored: Stored,
  changes: number,
): { readonly record: Json; readonly applied: number } | undefined {
  if (stored.base === undefined) return undefined;
  let record: Json;
  try {
    record = JSON.parse(stored.base) as Json;
  } catch {
    return undefined;
  }
  let applied = 0;
  for (const change of stored.changes.slice(0, changes)) {
    try {
      record = withChanges(record, JSON.parse(change) as readonly Step[]);
    } catch {
      // What was changed by half of it is made anew.
      return applied === 0
        ? after(stored, 0)
        : after({ ...stored, changes: stored.changes.slice(0, applied) }, applied);
    }
    applied += 1;
  }
  return { record, applied };
}

/** The text of a file with this record, written when the head says. */
export function textOf(record: Json, { written }: Head): string {
  const fields = fieldsOf(record);
  const dated = 'written' in fields && written !== '' ? { ...fields, written } : record;
  return `${JSON.stringify(dated, null, 2)}\n`;
}

/** All that is there, as it stands there: for what cannot be put together. */
export function rawText({ base, changes }: Stored): string {
  return [base ?? '', ...changes].join('\n');
}

function textIn(record: unknown): string | undefined {
  const { text } = fieldsOf(record);
  return typeof text === 'string' ? text : undefined;
}
