// What comes of reading a file: a notebook, or a refusal that says what is wrong and what to do. A refused file
// is never changed.

import type { Notebook } from '../state/notebook-record.js';
import { formatVersion, limits } from './format.js';

export type RefusalKind = 'not-a-notebook' | 'damaged' | 'newer' | 'too-large' | 'unreadable';

export interface Refusal {
  readonly kind: RefusalKind;
  /** What is wrong and where, a sentence. */
  readonly says: string;
}

export type Reading =
  | {
      readonly kind: 'read';
      readonly notebook: Notebook;
      /** The page it was left on, where the file says so. */
      readonly page?: string;
      /** What in it could not be used as it stands, a sentence each. */
      readonly notes: readonly string[];
    }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** A reading that came to nothing. */
export type Refused = Extract<Reading, { kind: 'refused' }>;

const refused = (kind: RefusalKind, says: string): Refused => ({
  kind: 'refused',
  refusal: { kind, says },
});

export const notANotebook = (): Reading =>
  refused('not-a-notebook', 'It is not a notebook of Kettle & Plate, nor an address of one of its pages.');

export const damaged = (where: string, why: string): Reading =>
  refused('damaged', `It is damaged${where === '' ? '' : ` at ${short(where)}`}: ${short(why)}.`);

/** Words of a file in a message never fill the page. */
function short(words: string): string {
  return words.length > 300 ? `${words.slice(0, 300)}…` : words;
}

export const newer = (version: number): Reading =>
  refused(
    'newer',
    `A newer Kettle & Plate wrote it, in version ${String(version)} of the format; this one reads up to ` +
      `${String(formatVersion)}. Take the new version of the explorer and open it again.`,
  );

export const tooLarge = (bytes: number): Refused =>
  refused('too-large', `It is ${megabytes(bytes)} MB large; a notebook is at most ${megabytes(limits.bytes)} MB.`);

export const beyond = (why: string): Reading => refused('too-large', `It holds more than a notebook may: ${why}.`);

/** What was dropped or chosen cannot be read as a file at all. */
export const unreadable = (): Refused =>
  refused(
    'unreadable',
    'It cannot be read: it is a folder, or a file that is no longer there or may not be opened. Choose a single file.',
  );

function megabytes(bytes: number): string {
  const MB = bytes / 1e6;
  return MB < 10 ? MB.toFixed(1) : MB.toFixed(0);
}
