// The elements of pages that have been opened, ready ones and the reader's own: each is made once, when it is first
// shown, and keeps its place until the explorer is left.

import type { PageRecord } from '../state/notebook-record.js';
import type { Solver } from '../worker/solver-client.js';
import type { PageElement } from './page-element.js';
import { pages } from './registry.js';

export class OpenPages {
  readonly #solver: Solver;
  readonly #loaded: () => void;
  readonly #open = new Map<string, PageElement>();
  readonly #loading = new Set<string>();

  constructor(solver: Solver, loaded: () => void) {
    this.#solver = solver;
    this.#loaded = loaded;
  }

  /** The page's element where it is loaded; else it is on its way, and `loaded` is called. */
  get(name: string, own: PageRecord | undefined): PageElement | undefined {
    const known = this.#open.get(name);
    if (known === undefined && !this.#loading.has(name)) {
      this.#loading.add(name);
      void this.#load(name, own).then((element) => {
        element.solver = this.#solver;
        this.#open.set(name, element);
        this.#loaded();
      });
    }
    return known;
  }

  async #load(name: string, own: PageRecord | undefined): Promise<PageElement> {
    if (own === undefined) return pages.find((page) => page.name === name)!.load();
    const { EntriesPage } = await import('./entries-page.js');
    return Object.assign(new EntriesPage(own), { own: true });
  }
}
