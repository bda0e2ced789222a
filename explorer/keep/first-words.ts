// What the reader does before keeping has loaded. A page that is left then can wait for nothing: the notebook is put
// into the browser's simple storage in one call, as earlier versions kept theirs, and the next start takes it over.

import type { Notebook } from '../state/notebook-record.js';
import { keptPrefix, latestKey, windowKey } from './keys.js';
import { newId } from './new-id.js';
import { notebookFile } from './write-file.js';

/** Looks after the notebook until keeping does; `touched` is the notebook once the reader has done something in it. */
export class FirstWords {
  readonly #touched: () => Notebook | undefined;
  readonly #id = newId();
  /** What stood in the simple storage before the page was left: which notebook was open last, and in this window. */
  #before: readonly [latest: string | null, ofWindow: string | null] | undefined;

  constructor(touched: () => Notebook | undefined) {
    this.#touched = touched;
    addEventListener('pagehide', this.#leave);
    addEventListener('pageshow', this.#back);
    document.addEventListener('visibilitychange', this.#hidden);
  }

  /** Keeping looks after it from now on. */
  readonly handOver = (): void => {
    removeEventListener('pagehide', this.#leave);
    removeEventListener('pageshow', this.#back);
    document.removeEventListener('visibilitychange', this.#hidden);
    this.#back();
  };

  /** Where it stands in the simple storage while the page is left: not to be taken over by this very page. */
  get key(): string {
    return `${keptPrefix}${this.#id}`;
  }

  readonly #hidden = (): void => (document.hidden ? this.#leave() : this.#back());

  readonly #leave = (): void => {
    const notebook = this.#touched();
    if (notebook === undefined || this.#before !== undefined) return;
    inStorage(() => {
      this.#before = [localStorage.getItem(latestKey), sessionStorage.getItem(windowKey)];
      localStorage.setItem(this.key, notebookFile(notebook, new Date()));
      localStorage.setItem(latestKey, this.#id);
      sessionStorage.setItem(windowKey, this.#id);
    });
  };

  /** The page was not left after all. */
  readonly #back = (): void => {
    if (this.#before === undefined) return;
    const [latest, ofWindow] = this.#before;
    this.#before = undefined;
    inStorage(() => {
      localStorage.removeItem(this.key);
      put(localStorage, latestKey, latest);
      put(sessionStorage, windowKey, ofWindow);
    });
  };
}

function put(storage: Storage, key: string, before: string | null): void {
  if (before === null) storage.removeItem(key);
  else storage.setItem(key, before);
}

/** Where a browser lets no page keep anything, keeping will say so. */
function inStorage(use: () => void): void {
  try {
    use();
  } catch {
    return;
  }
}
