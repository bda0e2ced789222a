// Why an act is not done: it would make the notebook what could not be opened again. The same limits and checks as
// for a file that is read, on what the act changed.

import { kindAtHand } from '../entries/registry.js';
import { workOn, type EntryRecord, type Named, type Notebook, type PageRecord } from '../state/notebook-record.js';
import { faultInNamed } from '../state/parts-check.js';
import { faultInShared } from '../state/shared-values.js';
import { beyondLimits } from '../state/within-limits.js';
import { readyPageAtHand } from './registry.js';

/** A sentence; undefined for an act that can be done. */
export function whyNot(next: Notebook, before: Notebook): string | undefined {
  if (next === before) return undefined;
  const why = beyondLimits(next, before)?.why ?? ofParts(next, before) ?? ofPages(next, before);
  return why === undefined ? undefined : `${why.charAt(0).toUpperCase()}${why.slice(1)}. Nothing was changed.`;
}

/** Stills, charges and sheets that are another than before. */
function ofParts(next: Notebook, before: Notebook): string | undefined {
  return firstOf(['stills', 'charges', 'sheets'] as const, (list) => {
    const known = new Set<unknown>(before[list]);
    return firstOf<Named<unknown>>(next[list], (part) => (known.has(part) ? undefined : faultInNamed(list, part.what)));
  });
}

function ofPages(next: Notebook, before: Notebook): string | undefined {
  const known = new Set(before.pages);
  for (const page of next.pages) {
    const why = known.has(page) ? undefined : ofEntries(page, before);
    if (why !== undefined) return why;
  }
  for (const page of Object.keys(next.work)) {
    const why = ofWork(page, next, before);
    if (why !== undefined) return why;
  }
  return undefined;
}

function ofEntries({ name, entries }: PageRecord, before: Notebook): string | undefined {
  const known = new Set(before.pages.find((page) => page.name === name)?.entries);
  return firstOf(entries, (entry) => (known.has(entry) ? undefined : ofEntry(entry)));
}

/** A kind that is not at hand is one that nobody here can have changed an entry of. */
function ofEntry({ kind, data }: EntryRecord): string | undefined {
  const checked = kindAtHand(kind)?.check(data);
  return checked?.good === false ? checked.why : undefined;
}

function ofWork(page: string, next: Notebook, before: Notebook): string | undefined {
  const [work, old] = [workOn(next, page), workOn(before, page)];
  if (work === old) return undefined;
  const record = next.pages.find(({ name }) => name === page) ?? readyPageAtHand(page);
  const entries = new Map(record?.entries.map((entry) => [entry.id, entry]));
  return (
    firstOf(Object.entries(work.common), ([name, value]) =>
      value === old.common[name] ? undefined : faultInShared(name, value),
    ) ??
    firstOf(Object.entries(work.entries), ([id, value]) => {
      const entry = value === old.entries[id] ? undefined : entries.get(id);
      return entry && kindAtHand(entry.kind)?.checkWork?.(value);
    })
  );
}

function firstOf<One>(all: readonly One[], look: (one: One) => string | undefined): string | undefined {
  for (const one of all) {
    const why = look(one);
    if (why !== undefined) return why;
  }
  return undefined;
}
