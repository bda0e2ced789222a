// How a page tells the wiring that the reader did something that is kept and can be undone: what becomes of the
// notebook, as a pure function, and the words for it.

import type { Notebook, PageRecord } from '../state/notebook-record.js';
import type { Deed } from '../state/history.js';

export interface Act {
  readonly next: (notebook: Notebook) => Notebook;
  readonly deed: Omit<Deed, 'at'>;
}

export class ActEvent extends CustomEvent<Act> {
  constructor(act: Act) {
    super('kp-act', { detail: act, bubbles: true });
  }
}

/** The reader makes a page of their own from a page, ready or own. */
export class CopyPageEvent extends CustomEvent<PageRecord> {
  constructor(from: PageRecord) {
    super('kp-copy-page', { detail: from, bubbles: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'kp-copy-page': CopyPageEvent;
    'kp-act': ActEvent;
  }
}
