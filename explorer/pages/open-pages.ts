// The elements of pages that have been opened, ready ones and the reader's own: each is made once, when it is first
// shown, and keeps its place until the explorer is left. One that
// cannot be loaded is tried again when the reader says so.

import type { PageRecord } from '../state/notebook-record.js';
import type { Solver } from '../worker/solver-client.js';
import type { PageElement } from './page-element.js';
import { pages } from './registry.js';

export class OpenPages {
  readonly #solver: Solver;
  readonly #loaded: () => void;
  readonly #open = new Map<string, PageElement>();
  readonly #loading = new Set<string>();
  readonly #failed = new Set<string>();

  constructor(solver: Solver, loaded: () => void) {
    this.#solver = solver;
    this.#loaded = loaded;
    addEventListener('online', () => this.#forgetFailures());
  }

  /** The page's element where it is loaded; else it is on its way or cannot be loaded, and `loaded` is called once that
   * is known. */
  get(name: string, own: PageRecord | undefined): PageElement | undefined {
    const known = this.#open.get(name);
    if (known === undefined && !this.#failed.has(name)) void this.#begin(name, own);
    return known;
  }

  /** Tries a page again that could not be loaded; undefined where none failed. */
  again(name: string): (() => void) | undefined {
    if (!this.#failed.has(name)) return undefined;
    return () => this.#forgetFailures();
  }

  #forgetFailures(): void {
    if (this.#failed.size === 0) return;
    this.#failed.clear();
    this.#loaded();
  }

  async #begin(name: string, own: PageRecord | undefined): Promise<void> {
    if (this.#loading.has(name)) return;
    this.#loading.add(name);
    try {
      const element = await this.#load(name, own);
      element.solver = this.#solver;
      this.#open.set(name, element);
    } catch (error) {
      console.warn(error);
      this.#failed.add(name);
    }
    this.#loading.delete(name);
    this.#loaded();
  }

  async #load(name: string, own: PageRecord | undefined): Promise<PageElement> {
    if (own === undefined) return pages.find((page) => page.name === name)!.load();
    const { EntriesPage } = await import('./entries-page.js');
    return Object.assign(new EntriesPage(own), { own: true });
  }
}
