// What a page hands to one of its entries: see the contract in entries/entry.ts.

import type { EntryKind, Here, Neighbour } from '../entries/entry.js';
import { keepWork, setCommon, setValue } from '../state/acts.js';
import type { EntryRecord, Json } from '../state/notebook-record.js';
import { changeEntry } from '../state/page-acts.js';
import { remembered } from '../state/memo.js';
import type { EntriesPage } from './entries-page.js';
import type { Trouble } from './kind-loading.js';

/** An entry of a page: with its kind and what it is drawn with, on its way, or in trouble. */
export interface Drawable {
  readonly record: EntryRecord;
  readonly kind?: EntryKind;
  readonly here?: Here;
  readonly trouble?: Trouble;
}

type Computed = Pick<Here, 'now' | 'kept' | 'results'>;

const neighbours = remembered((entries: readonly EntryRecord[]): readonly Neighbour[] =>
  entries.map(({ id, kind, data, heading = '' }) => ({ id, kind, data, heading })),
);
const inHand = matchMedia('(pointer: coarse) and (max-width: 999.98px)');

export function hereOf(page: EntriesPage, record: EntryRecord, kind: EntryKind, data: Json, computed: Computed): Here {
  const { id } = record;
  const { name } = page.record;
  return {
    ...computed,
    id,
    data,
    work: page.work.entries[id],
    scenario: page.scenario,
    later: page.later.of(id),
    entries: neighbours(page.record.entries),
    units: page.units,
    specs: page.desk.specs,
    place: page.near.printing ? 'paper' : inHand.matches ? 'hand' : 'desk',
    own: page.own,
    cursor: page.cursor,
    moveCursor: (cursor) => (page.cursor = cursor),
    common: page.work.common,
    setCommon: (key, value, words) =>
      page.act((notebook) => setCommon(notebook, name, key, value), { says: 'page changed', entry: id, ...words }),
    change: (next, words) =>
      page.act((notebook) => changeEntry(notebook, name, id, next), {
        says: `${kind.title.toLowerCase()} changed`,
        entry: id,
        ...words,
      }),
    keep: (next, words) =>
      page.act((notebook) => keepWork(notebook, name, id, next), {
        says: `${kind.title.toLowerCase()} changed`,
        entry: id,
        ...words,
      }),
    offer: (results) => page.offer(id, results),
    blank: (key) => page.desk.blank(key),
    setup: (sentence) => page.desk.setup(sentence),
    set: (path, value, words) =>
      page.act((notebook) => setValue(notebook, name, path, value), { says: 'page changed', entry: id, ...words }),
    rows: (figure, fresh) => page.near.rows(`${id}/${figure}`, fresh),
    once: (thing, from, make) => page.once(`${id}/${thing}`, from, make),
    mark: (figure) => `${id}/${figure}`,
    shared: (make) => page.sharedBy(kind.name, make),
    redraw: () => page.requestUpdate(),
  };
}
