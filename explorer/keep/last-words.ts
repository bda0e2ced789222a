// What a window hands over while it is being left: nothing can be waited for then, so it is one record, written in one
// call, and the next window that starts puts it where it belongs.

import { limits } from './format.js';
import type { Json } from '../state/notebook-record.js';
import { fieldsOf, headOf } from './head.js';
import { newId } from './new-id.js';
import type { Changing, Records } from './records.js';
import { latestMark, notebookStores, putChanges, putWhole, type Writing } from './write-notebook.js';

/** A notebook as it was when its window was left. */
export interface LastWords extends Writing {
  /** As `count`, or one more where a write was under way. */
  readonly upTo: number;
  /** The whole text of its file. */
  readonly text: string;
}

export function leaveLastWords(records: Records, words: LastWords): void {
  records.putAtOnce('left', words.writer, words);
}

/** The window was not closed after all. */
export function takeBackLastWords(records: Records, writer: string): Promise<void> {
  return records.change(['left'], (all) => {
    all.remove('left', writer);
  });
}

/** Puts the last words of all windows where they belong. */
export async function gatherLastWords(records: Records): Promise<void> {
  const left = await records.look(['left'], (all) => all.all('left'));
  for (const [key] of left) {
    try {
      await records.change([...notebookStores, 'left'], async (all) => {
        const words = asLastWords(await all.get('left', key));
        all.remove('left', key);
        if (words !== undefined) await gather(all, words);
      });
    } catch (error) {
      console.warn(error); // these stay where they are; the others go on
    }
  }
}

async function gather(all: Changing, words: LastWords): Promise<void> {
  const head = await headOf(all, words.id);
  if (head === undefined) {
    all.put('marks', latestMark, words.id);
    return putWhole(all, words, { count: words.count + 1, text: words.text, good: false });
  }
  const mine = head.writer === words.writer;
  // Written by the same window later on: nothing is missing.
  if (mine && head.deleted === null && head.count > words.upTo) return;
  if (head.deleted === null && (mine || head.count === words.count)) {
    putChanges(all, { ...words, count: head.count }, [{ at: [], set: asJson(words.text) }], head.journal);
    return;
  }
  const name = copyName(words.name);
  const text = withName(words.text, name);
  return putWhole(all, { ...words, id: newId(), name }, { count: 1, text, good: false });
}

/** What a copy of a notebook is called that another window has changed meanwhile. */
export function copyName(name: string): string {
  return `${name.trim() === '' ? 'Untitled' : name}, from another window`.slice(0, limits.name);
}

function withName(text: string, name: string): string {
  return `${JSON.stringify({ ...fieldsOf(asJson(text)), name }, null, 2)}\n`;
}

const asJson = (text: string): Json => JSON.parse(text) as Json;

function asLastWords(record: unknown): LastWords | undefined {
  const { id, count, upTo, writer, name, written, text } = fieldsOf(record);
  const strings = [id, writer, name, written, text].every((one) => typeof one === 'string');
  const numbers = [count, upTo].every((one) => typeof one === 'number');
  return strings && numbers ? (record as LastWords) : undefined;
}
