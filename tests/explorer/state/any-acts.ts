// Any acts on a notebook, for laws: numbers set, pencil lines kept and rubbed out, what entries share, pages and
// entries begun, named, moved, copied, changed and dropped.

import fc from 'fast-check';
import { keepPencil, keepWork, rubOutPencil, setCommon, setValue } from '../../../explorer/state/acts.js';
import { whyNot } from '../../../explorer/pages/refused-act.js';
import type { Notebook } from '../../../explorer/state/notebook-record.js';
import * as acts from '../../../explorer/state/page-acts.js';
import { inputs } from '../../../explorer/state/inputs.js';
import { scenarioOn } from '../../../explorer/state/page-scenario.js';
import { numberAt } from '../../../explorer/state/paths.js';

export type Act = (notebook: Notebook) => Notebook;

const kinds = ['text', 'setup', 'figure', 'from-another-explorer'] as const;

/** A place among a list that may be empty. */
function one<Member>(list: readonly Member[], pick: number): Member | undefined {
  return list[pick % Math.max(1, list.length)];
}

const pick = fc.nat({ max: 30 });

/** Something done to one of the reader's pages, where there is one. */
function onPage(act: (notebook: Notebook, page: string, entry: string, pick: number) => Notebook): fc.Arbitrary<Act> {
  return fc.tuple(pick, pick, pick).map(([page, entry, more]) => (notebook: Notebook) => {
    const record = one(notebook.pages, page);
    if (record === undefined) return notebook;
    return act(notebook, record.name, one(record.entries, entry)?.id ?? 'e1', more);
  });
}

export const anyAct: fc.Arbitrary<Act> = fc.oneof(
  fc
    .tuple(fc.constantFrom(...inputs), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([row, share]) => (notebook: Notebook) => {
      if (numberAt(scenarioOn(notebook, 'the-ceiling'), row.key) === undefined) return notebook;
      const next = setValue(notebook, 'the-ceiling', row.key, row.low + share * (row.high - row.low));
      // What no still can be is refused where acts are done.
      return whyNot(next, notebook) === undefined ? next : notebook;
    }),
  fc
    .constantFrom('the-ceiling', 'page-1')
    .map((page) => (notebook: Notebook) => keepPencil(notebook, page, scenarioOn(notebook, page))),
  fc.constant((notebook: Notebook) => rubOutPencil(notebook, 'the-ceiling')),
  fc
    .option(fc.boolean(), { nil: undefined })
    .map((value) => (notebook: Notebook) => setCommon(notebook, 'the-ceiling', 'measured', value)),
  fc.constant((notebook: Notebook) => acts.addPage(notebook, { name: acts.freePageName(notebook), ...acts.blankPage })),
  onPage((notebook, page) =>
    acts.copyPage(notebook, acts.ownPage(notebook, page)!, acts.freePageName(notebook), 'A copy'),
  ),
  onPage((notebook, page) => acts.dropPage(notebook, page)),
  onPage((notebook, page, _, more) => acts.namePage(notebook, page, { title: `Page ${String(more)}` })),
  onPage((notebook, page, entry, more) => {
    const record = acts.ownPage(notebook, page)!;
    const id = acts.freeEntryId(record, notebook.work[page] ?? { pencils: [], common: {}, entries: {} });
    const added = { id, kind: one(kinds, more)!, data: { text: String(more) } };
    return acts.addEntry(notebook, page, added, more % 3 === 0 ? null : entry);
  }),
  onPage((notebook, page, entry, more) => acts.moveEntry(notebook, page, entry, more % 2 === 0 ? 1 : -1)),
  onPage((notebook, page, entry) => {
    const record = acts.ownPage(notebook, page)!;
    const id = acts.freeEntryId(record, notebook.work[page] ?? { pencils: [], common: {}, entries: {} });
    return acts.copyEntry(notebook, page, entry, id);
  }),
  onPage((notebook, page, entry) => acts.dropEntry(notebook, page, entry)),
  onPage((notebook, page, entry, more) =>
    acts.changeEntry(notebook, page, entry, () => ({ text: `new ${String(more)}` })),
  ),
  onPage((notebook, page, entry, more) => acts.headEntry(notebook, page, entry, more % 2 === 0 ? '' : 'A heading')),
  onPage((notebook, page, entry, more) =>
    keepWork(notebook, page, entry, (work) => [...((work ?? []) as string[]), String(more)]),
  ),
);
