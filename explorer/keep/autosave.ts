// Keeps the open notebook in this browser as it changes: after a short rest, and at once when the page is left.
// One window never writes over what another wrote: where both have the same notebook open, the second to write
// goes on in a copy of its own and says so.

import { newId } from './new-id.js';
import { keyOf } from './shelf.js';
import { get, put, type NotKept, type Shelves } from './storage.js';

/** Rest after the last change, ms. */
export const rest_ms = 400;

/** How it went, for whoever shows it. */
export type KeptState =
  /** Nothing has been changed yet. */
  | { readonly kind: 'untouched' }
  | { readonly kind: 'kept' }
  | { readonly kind: 'not-kept'; readonly why: NotKept }
  /** Another window changed the same notebook; this one is kept as a copy from now on. */
  | { readonly kind: 'parted' };

export interface Keeper {
  /** Of the notebook that is open. */
  readonly id: () => string;
  readonly state: () => KeptState;
  /** Another notebook is open now: the text of its record, or none where it is not on the shelf yet. */
  readonly open: (id: string, text: string | null) => void;
  /** The notebook changed. */
  readonly changed: () => void;
  /** Writes what waits. */
  readonly flush: () => void;
}

export interface Kept {
  readonly shelves: Shelves | undefined;
  /** The open notebook as the text of its file; `copy` where it must be told from the one it parted from. */
  readonly text: (copy: boolean) => string;
  readonly told: (state: KeptState) => void;
  readonly timer?: (run: () => void) => () => void;
}

const afterRest = (run: () => void): (() => void) => {
  const timer = setTimeout(run, rest_ms);
  return () => clearTimeout(timer);
};

export function keeper({ shelves, text, told, timer = afterRest }: Kept): Keeper {
  let id = newId();
  /** The record as this window last read or wrote it; null before there is one. */
  let last: string | null = null;
  let state: KeptState = { kind: 'untouched' };
  let stop: (() => void) | undefined;

  /** After every write, as it went the time before or not: what lists the notebooks shows what was written. */
  const tell = (next: KeptState): void => {
    state = next;
    told(next);
  };

  const write = (): void => {
    stop = undefined;
    const there = get(shelves, keyOf(id));
    const parted = there !== null && there !== last;
    if (parted) id = newId();
    const record = text(parted);
    const why = put(shelves, keyOf(id), record);
    if (why === undefined) last = record;
    tell(
      why !== undefined
        ? { kind: 'not-kept', why }
        : parted || state.kind === 'parted'
          ? { kind: 'parted' }
          : { kind: 'kept' },
    );
  };

  return {
    id: () => id,
    state: () => state,
    open: (next, record) => {
      stop?.();
      stop = undefined;
      id = next;
      last = record;
      state = { kind: record === null ? 'untouched' : 'kept' };
      told(state);
    },
    changed: () => {
      stop?.();
      stop = timer(write);
    },
    flush: () => {
      if (stop === undefined) return;
      stop();
      write();
    },
  };
}
