// What comes of reading a file: a notebook, or a refusal that says what is wrong and what to do. A refused file
// is never changed.

import type { Notebook } from '../state/notebook-record.js';
import { formatVersion, limits } from './format.js';

export type RefusalKind = 'not-a-notebook' | 'damaged' | 'newer' | 'too-large';

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

const refused = (kind: RefusalKind, says: string): Reading & { kind: 'refused' } => ({
  kind: 'refused',
  refusal: { kind, says },
});

export const notANotebook = (): Reading =>
  refused('not-a-notebook', 'It is not a notebook of Kettle & Plate, nor an address of one of its pages.');

export const damaged = (where: string, why: string): Reading =>
  refused('damaged', `It is damaged${where === '' ? '' : ` at ${where}`}: ${why}.`);

export const newer = (version: number): Reading =>
  refused(
    'newer',
    `A newer Kettle & Plate wrote it, in version ${String(version)} of the format; this one reads up to ` +
      `${String(formatVersion)}. Take the new version of the explorer and open it again.`,
  );

export const tooLarge = (characters: number): Reading =>
  refused(
    'too-large',
    `It is ${megabytes(characters)} MB large; a notebook is at most ${megabytes(limits.characters)} MB.`,
  );

function megabytes(characters: number): string {
  return (characters / 1e6).toFixed(1);
}
