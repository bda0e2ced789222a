// Editing a page of the reader's own.

import { nothing } from 'lit';
import type { PageRecord } from '../../state/notebook-record.js';
import type { EntriesPage } from '../entries-page.js';
import type { Drawable } from '../here.js';

export class PageEditing {
  readonly #page: EntriesPage;

  constructor(page: EntriesPage) {
    this.#page = page;
  }

  show(entry: string): void {
    this.#page.querySelector(`[data-entry='${entry}']`)?.scrollIntoView({ block: 'nearest' });
  }

  head(_record: PageRecord): unknown {
    return nothing;
  }

  controls(_one: Drawable): unknown {
    return nothing;
  }

  foot(_record: PageRecord): unknown {
    return nothing;
  }
}
