// What can be done with any page of a notebook: set a value, keep and rub out pencil lines, set what the
// entries of a page share, keep what the reader did. Pure; an act that changes nothing gives the same notebook.

import { counts } from './limits.js';
import { workOn, type Json, type Notebook, type PageWork } from './notebook-record.js';
import { scenarioOn, withScenario } from './page-scenario.js';
import { withValue } from './paths.js';
import type { Scenario } from './scenario.js';
import { without } from './without.js';

/** Sets what stands at a path of what a page runs on: a number, a step, a whole sheet. Pages that use the same part follow. */
export function setValue(notebook: Notebook, page: string, path: string, value: unknown): Notebook {
  return withScenario(notebook, page, withValue(scenarioOn(notebook, page), path, value));
}

/** Keeps a run, by its numbers, as a pencil line of a page; the oldest goes first. */
export function keepPencil(notebook: Notebook, page: string, scenario: Scenario): Notebook {
  return withWork(notebook, page, (work) => ({ ...work, pencils: [...work.pencils, scenario].slice(-counts.pencils) }));
}

/** Rubs out the latest pencil line of a page. */
export function rubOutPencil(notebook: Notebook, page: string): Notebook {
  return withWork(notebook, page, (work) =>
    work.pencils.length === 0 ? work : { ...work, pencils: work.pencils.slice(0, -1) },
  );
}

/** Sets what entries of a page share under a name; undefined forgets it. */
export function setCommon(notebook: Notebook, page: string, name: string, value: Json | undefined): Notebook {
  return withWork(notebook, page, (work) => {
    if (work.common[name] === value) return work;
    const common = value === undefined ? without(work.common, name) : { ...work.common, [name]: value };
    return { ...work, common };
  });
}

/** Keeps what the reader did with an entry; undefined forgets it. */
export function keepWork(
  notebook: Notebook,
  page: string,
  entry: string,
  next: (work: Json | undefined) => Json | undefined,
): Notebook {
  return withWork(notebook, page, (work) => {
    const before = work.entries[entry];
    const after = next(before);
    if (after === before) return work;
    const entries = after === undefined ? without(work.entries, entry) : { ...work.entries, [entry]: after };
    return { ...work, entries };
  });
}

/** A notebook with other work on a page; the same where the work is. */
export function withWork(notebook: Notebook, page: string, next: (work: PageWork) => PageWork): Notebook {
  const before = workOn(notebook, page);
  const after = next(before);
  return after === before ? notebook : { ...notebook, work: { ...notebook.work, [page]: after } };
}
