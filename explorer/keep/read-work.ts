// What a file says the reader did on a page, checked by the kinds of the entries it was done with. A page of the reader's
// own stands in the same file, so what does not fit it is damage. A ready page may be another one by now: there what
// cannot be used any more is set aside under a name of its own, in the notebook, and said.

import { kindNamed } from '../entries/registry.js';
import type { EntryRecord, Json, PageWork, Uses } from '../state/notebook-record.js';
import { faultInScenario } from '../state/parts-check.js';
import { faultInShared } from '../state/shared-values.js';
import type { FileWork } from './schema.js';

export type ReadWork =
  | { readonly work: PageWork; readonly notes: readonly string[] }
  /** Where in the file, and what is wrong. */
  | { readonly where: string; readonly why: string };

/** `own` are the entries of a page of the reader's own, `ready` tells those of a ready page. */
export async function readWork(
  page: string,
  done: FileWork,
  own: readonly EntryRecord[] | undefined,
  ready: ((page: string) => Promise<readonly EntryRecord[] | undefined>) | undefined,
): Promise<ReadWork> {
  const where = `work.${page}`;
  const fault = done.pencils.map(faultInScenario).find((why) => why !== undefined);
  if (fault !== undefined) return { where: `${where}.pencils`, why: fault };
  for (const [name, value] of Object.entries(done.common)) {
    const why = faultInShared(name, value as Json);
    if (why !== undefined) return { where: `${where}.common.${name}`, why };
  }
  const entries: Record<string, Json> = {};
  const notes: string[] = [];
  const given = Object.entries(done.entries as Record<string, Json>);
  const records = own ?? (given.length > 0 ? await ready?.(page) : undefined) ?? [];
  for (const [id, value] of given) {
    const why = await faultIn(value, records.find((entry) => entry.id === id)?.kind);
    if (why !== undefined && own !== undefined) return { where: `${where}.entries.${id}`, why };
    const name = why === undefined ? id : asideName(id, done.entries);
    entries[name] = value;
    if (why !== undefined) notes.push(setAside(page, id, why, name));
  }
  return {
    work: {
      pencils: done.pencils as PageWork['pencils'],
      common: done.common as PageWork['common'],
      entries,
      ...(done.uses === undefined ? {} : { uses: done.uses as Uses }),
    },
    notes,
  };
}

/** What belongs to no entry that is known here, or to one that keeps nothing, is kept as it is: nothing reads it. */
async function faultIn(value: Json, kindName: string | undefined): Promise<string | undefined> {
  const kind = kindName === undefined ? undefined : await kindNamed(kindName);
  try {
    return kind?.checkWork?.(value);
  } catch {
    return 'it is not what such an entry keeps';
  }
}

/** A name no entry has; another one where something was set aside under it before. */
function asideName(id: string, taken: object): string {
  for (let at = 1; ; at++) {
    const name = `${id}, set aside${at === 1 ? '' : ` ${String(at)}`}`;
    if (!Object.hasOwn(taken, name)) return name;
  }
}

function setAside(page: string, id: string, why: string, name: string): string {
  const words = why.length > 200 ? `${why.slice(0, 200)}…` : why;
  return `What was done at ‘${id}’ on the page ‘${page}’ cannot be used: ${words}. It stays in the notebook as ‘${name}’.`;
}
