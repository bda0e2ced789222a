// What is said about keeping: the state of the open notebook, dates, and how a link could be shared.

import type { KeptState } from './autosave.js';
import type { Instead } from './open-notebook.js';
import type { Refusal } from './reading.js';
import type { NotKept } from './records.js';

/** Why nothing is kept, and what is to be done. */
export const notKept: Readonly<Record<NotKept, string>> = {
  full: 'This browser has no room left: what you do now is not kept. Save the notebook as a file, or delete something.',
  blocked: 'This browser lets no page keep anything: what you do is gone when you leave. Save the notebook as a file.',
  failed: 'The browser could not write what you did. It is tried again; save the notebook as a file to be sure.',
  silent: 'The browser does not answer: what you do now may not be kept. Save the notebook as a file.',
  newer:
    'Another window runs a newer Kettle & Plate, so this one can keep nothing more. Save the notebook as a file, then load this window anew.',
};

/** Why the shelf could not be read or changed. */
export function shelfTrouble(why: NotKept): string {
  return why === 'full'
    ? 'This browser has no room left for that.'
    : 'What is kept in this browser cannot be read or changed just now. It is not lost by that: load this window anew to try again.';
}

/** Said when a notebook was changed before the one that was open last could be opened. */
export const leftOnShelf =
  'You began before the notebook that was open last could be opened. What you did is in a notebook of its own; the other is on the shelf.';

/** Said when a notebook could not be opened for a reason that is not its own. */
export const notOpenedNow =
  'Your notebook could not be opened just now. It is on the shelf as you left it: load this window anew to try again. What you do here is kept in another notebook.';

/** The newest state of a notebook was not opened. */
export function insteadWords({ refusal, aside }: Instead): string {
  const where = aside
    ? 'The newest is kept aside, unchanged.'
    : 'It stays on the shelf as it is, and what you do now is kept beside it.';
  return `The newest state of this notebook could not be read, so the last good one is open. ${refusal.says} ${where}`;
}

/** Nothing of a notebook was opened. */
export function refusedWords(
  name: string,
  { refusal, stays }: { readonly refusal: Refusal; readonly stays: boolean },
): string {
  const where = stays ? 'It stays on the shelf as it is.' : 'It is kept aside, unchanged.';
  return `The notebook ‘${name}’ could not be opened. ${refusal.says} ${where}`;
}

export function stateWords(state: KeptState): string {
  switch (state.kind) {
    case 'untouched':
      return 'A notebook is kept in this browser from its first change on.';
    case 'kept':
      return 'Kept in this browser as it changes.';
    case 'parted':
      return state.deleted
        ? 'Another window deleted this notebook. What you do here is kept in a copy under a name of its own.'
        : 'Another window changed the same notebook. Both are kept; this one is a copy under a name of its own.';
    case 'not-kept':
      return notKept[state.why];
  }
}

/** 'Untitled' for a notebook without a name. */
export function titleOf(name: string): string {
  return name.trim() === '' ? 'Untitled' : name;
}

/** '25 Nov 2026, 16:20', in the reader's own way of writing it; empty where the record does not say. */
export function dateWords(written: string, locale?: string): string {
  const date = new Date(written);
  if (Number.isNaN(date.getTime())) return '';
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(date);
}
