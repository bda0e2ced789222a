// For the tests of keeping: notebooks put into records, whole or change by change, and damaged there.

import { Autosave } from '../../../explorer/keep/autosave.js';
import { readNotebookFile } from '../../../explorer/keep/read-file.js';
import { NotebookWriter } from '../../../explorer/keep/notebook-writer.js';
import type { Records } from '../../../explorer/keep/records.js';
import { notebookRecord } from '../../../explorer/keep/write-file.js';
import type { Notebook } from '../../../explorer/state/notebook-record.js';

/** Writes a notebook in each of its states, as the window does in which it is changed; its id. */
export async function keep(records: Records, states: readonly Notebook[], at = new Date(0)): Promise<string> {
  let [notebook] = states as readonly [Notebook];
  const writer = new NotebookWriter({
    records: () => records,
    record: (written) => notebookRecord(notebook, written),
    name: () => notebook.name,
    now: () => at,
    check: async (text) => (await readNotebookFile(text, [], at)).kind === 'read',
  });
  const autosave = new Autosave(
    writer,
    () => undefined,
    () => () => undefined,
  );
  for (notebook of states) {
    autosave.changed();
    await autosave.flush();
  }
  return writer.id;
}

/** The notebook with so many letters in its first page's title. */
export function titled(notebook: Notebook, letters: number): Notebook {
  return { ...notebook, pages: notebook.pages.map((page) => ({ ...page, title: 'x'.repeat(letters) })) };
}
