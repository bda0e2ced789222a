// Undo and redo: every notebook there was before, with what was done to it. Pure; a notebook is never changed,
// so a step costs no more than what is new in it.

import type { Notebook } from './notebook-record.js';

/** What was done, for whoever reads or hears it, and where. */
export interface Deed {
  /** Past tense: 'plates changed', 'figure moved up'. */
  readonly says: string;
  /** Name of the page it was done on; null where it concerns all pages. */
  readonly page: string | null;
  /** The entry it was done to. */
  readonly entry?: string;
  /** The page it led to, where that is another. */
  readonly leads?: string;
  /** Deeds in a row with the same word, none long after the other, are undone as one. */
  readonly together?: string;
  /** When, ms on any clock that goes forward. */
  readonly at: number;
}

/** A deed with the notebook on its other side: before it in the past, after it in the future. */
export interface Step extends Deed {
  readonly notebook: Notebook;
}

export interface History {
  /** The oldest first. */
  readonly past: readonly Step[];
  readonly now: Notebook;
  /** The next to be redone first. */
  readonly future: readonly Step[];
  /** Whether the next deed must begin a step of its own. */
  readonly sealed: boolean;
}

/** Steps kept; the oldest are forgotten. */
const mostSteps = 400;
/** Deeds further apart than this are steps of their own, ms. */
const together_ms = 1500;

export function startHistory(now: Notebook): History {
  return { past: [], now, future: [], sealed: true };
}

/** The history after a deed that led to `next`; the same history where nothing changed. */
export function done(history: History, next: Notebook, deed: Deed): History {
  if (next === history.now) return history;
  const last = history.past.at(-1);
  const joins =
    !history.sealed &&
    last !== undefined &&
    deed.together !== undefined &&
    last.together === deed.together &&
    last.page === deed.page &&
    deed.at - last.at <= together_ms;
  const step: Step = joins ? { ...deed, notebook: last.notebook } : { ...deed, notebook: history.now };
  const past = joins ? history.past.slice(0, -1) : history.past;
  return { past: [...past, step].slice(-mostSteps), now: next, future: [], sealed: false };
}

/** The history one step back; the same where there is none. */
export function undone(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  const step: Step = { ...last, notebook: history.now };
  return { past: history.past.slice(0, -1), now: last.notebook, future: [step, ...history.future], sealed: true };
}

/** The history one step forward again; the same where there is none. */
export function redone(history: History): History {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  const step: Step = { ...next, notebook: history.now };
  return { past: [...history.past, step], now: next.notebook, future, sealed: true };
}
