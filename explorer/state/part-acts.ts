// What can be done with the stills, charges and run sheets of a notebook: choose which one a page uses, begin one, name,
// copy and drop one. Pure; an act that changes nothing gives the same notebook.

import { withWork } from './acts.js';
import type { Named, Notebook, Parts, Uses } from './notebook-record.js';
import { chargeSetOf, sheetSetOf } from './notebook-record.js';
import { scenarioOn, usedOn } from './page-scenario.js';

/** One of the lists, and what a page calls the member it uses. */
export type UseName = keyof Required<Uses>;
export type ListName = keyof Parts;
export const listOf: Readonly<Record<UseName, ListName>> = { still: 'stills', charge: 'charges', sheet: 'sheets' };

/** Has a page use another of the notebook's stills, charges or sheets. */
export function usePart(notebook: Notebook, page: string, use: UseName, name: string): Notebook {
  if (usedOn(notebook, page)[use].name === name) return notebook;
  return withWork(notebook, page, (work) => ({ ...work, uses: { ...work.uses, [use]: name } }));
}

/** A name that no member of the list has. */
export function freeName(list: readonly Named<unknown>[], stem: string): string {
  let name = stem;
  for (let i = 2; list.some((one) => one.name === name); i += 1) name = `${stem} ${String(i)}`;
  return name;
}

/** Puts a member at the end of a list, under a name that is free. */
export function addPart<List extends ListName>(
  notebook: Notebook,
  list: List,
  stem: string,
  what: Parts[List][number]['what'],
): Notebook {
  const added = { name: freeName(notebook[list], stem), what };
  return { ...notebook, [list]: [...notebook[list], added] };
}

/** A copy of what a page uses, which the page uses from now on. */
export function copyPart(notebook: Notebook, page: string, use: UseName): Notebook {
  const { name } = usedOn(notebook, page)[use];
  const scenario = scenarioOn(notebook, page);
  const stem = name.endsWith(', again') ? name : `${name}, again`;
  const what = { still: scenario.still, charge: chargeSetOf(scenario), sheet: sheetSetOf(scenario) }[use];
  const added = addPart(notebook, listOf[use], stem, what as never);
  return usePart(added, page, use, added[listOf[use]].at(-1)!.name);
}

/** Gives a member another name; pages that use it go on using it. An empty or taken name changes nothing. */
export function renamePart(notebook: Notebook, use: UseName, before: string, after: string): Notebook {
  const list = listOf[use];
  const name = after.trim();
  if (name === '' || name === before || notebook[list].some((one) => one.name === name)) return notebook;
  const named = (notebook[list] as readonly Named<unknown>[]).map((one) =>
    one.name === before ? { ...one, name } : one,
  );
  return { ...withUses(notebook, use, before, name), [list]: named };
}

/** Drops a member that is not the last; pages that used it use the first. */
export function dropPart(notebook: Notebook, use: UseName, name: string): Notebook {
  const list = listOf[use];
  const left = (notebook[list] as readonly Named<unknown>[]).filter((one) => one.name !== name);
  if (left.length === 0 || left.length === notebook[list].length) return notebook;
  return { ...withUses(notebook, use, name, left[0]!.name), [list]: left };
}

/** Every page that uses a member under one name uses it under another; ready pages say so in their work from now on. */
function withUses(notebook: Notebook, use: UseName, before: string, after: string): Notebook {
  let next = notebook;
  for (const page of [...Object.keys(notebook.work), ...readyPages]) {
    if (usedOn(notebook, page)[use].name !== before || notebook[listOf[use]][0]?.name === before) continue;
    next = withWork(next, page, (work) => ({ ...work, uses: { ...work.uses, [use]: after } }));
  }
  return next;
}

/** Ready pages that use something by name without the reader's choice. */
const readyPages = ['the-doubler'] as const;
