// The notebook that is open, as keeping sees it: what the reader changes is told, what keeping itself does to it (another
// one in its place, a copy's name) is not.

import { done, startHistory } from '../state/history.js';
import type { Notebook } from '../state/notebook-record.js';
import type { NotebookState } from '../state/notebook.js';
import type { Store } from '../state/store.js';

export class OpenBook {
  readonly #store: Store<NotebookState>;
  #quiet = false;

  constructor(store: Store<NotebookState>, changed: () => void, named: () => void) {
    this.#store = store;
    store.subscribe(({ history: { now } }, { history: { now: before } }) => {
      if (now !== before && !this.#quiet) changed();
      if (now.name !== before.name) named();
    });
  }

  get notebook(): Notebook {
    return this.#store.get().history.now;
  }
  /** Whether anything was done in it since it was opened. */
  get touched(): boolean {
    return this.#store.get().history.past.length > 0;
  }

  /** Another takes its place; the change can be undone where the reader would lose the one there is. */
  replace(notebook: Notebook, undoable: boolean): void {
    const { history } = this.#store.get();
    const deed = { says: 'notebook opened', page: null, at: performance.now() };
    const next = undoable ? done(history, notebook, deed) : startHistory(notebook);
    this.#set({ history: next, complaints: [] });
  }

  /** Gives it a name that is no step to be undone. */
  rename(name: string): void {
    const { history } = this.#store.get();
    this.#set({ history: { ...history, now: { ...history.now, name } } });
  }

  #set(change: Partial<NotebookState>): void {
    this.#quiet = true;
    this.#store.set(change);
    this.#quiet = false;
  }
}
