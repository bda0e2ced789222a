// How a page of the reader's own begins: blank, or as a copy of another.

import { letters, withTail } from '../../state/limits.js';
import type { NotebookState } from '../../state/notebook.js';
import type { PageRecord } from '../../state/notebook-record.js';
import { addPage, blankPage, copyPage, freePageName } from '../../state/page-acts.js';
import type { Act } from '../act-event.js';

/** Begins a blank page and shows it. */
export function blankPageAct({ page, history: { now } }: NotebookState): Act {
  const name = freePageName(now);
  const deed = { says: 'page begun', page, leads: name };
  return { next: (notebook) => addPage(notebook, { name, ...blankPage }), deed };
}

/** Makes a page of the reader's own from another, ready or own, and shows it. */
export function copyPageAct({ history: { now } }: NotebookState, record: PageRecord): Act {
  const name = freePageName(now);
  const own = now.pages.some((page) => page.name === record.name);
  const title = withTail(record.title, own ? ', again' : ', my own', letters.title);
  const deed = { says: 'page copied', page: record.name, leads: name };
  return { next: (notebook) => copyPage(notebook, record, name, title), deed };
}
