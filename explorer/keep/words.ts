// What is said about keeping: the state of the open notebook, dates, and how a link could be shared.

import type { KeptState } from './autosave.js';
import type { NotKept } from './storage.js';

const notKept: Readonly<Record<NotKept, string>> = {
  full: 'This browser’s storage is full: what you do now is not kept. Save the notebook as a file, or delete one.',
  blocked: 'This browser lets no page keep anything: what you do is gone when you leave. Save the notebook as a file.',
};

export function stateWords(state: KeptState): string {
  switch (state.kind) {
    case 'untouched':
      return 'A notebook is kept in this browser from its first change on.';
    case 'kept':
      return 'Kept in this browser as it changes.';
    case 'parted':
      return 'Another window changed the same notebook. Both are kept; this one is a copy under a name of its own.';
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
