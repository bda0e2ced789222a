// What a page sets and runs on: the still, the charge and the sheet it uses, and the notebook's own few numbers, as one
// record; and the notebook after such a record has changed. The same parts give the very same record.

import type { StillDescription } from '#lib/index.js';
import {
  chargeSetOf,
  sheetSetOf,
  workOn,
  type Named,
  type Notebook,
  type Parts,
  type Uses,
} from './notebook-record.js';
import type { Asked, ChargeSet, Scenario, SheetSet } from './scenario.js';
import { startingPot } from './starting-stills.js';

/** What ready pages use unless the reader chose: the first of each list, but for these. */
const readyUses: Readonly<Record<string, Uses>> = { 'the-doubler': { still: startingPot.name } };

/** What a page uses, as it stands in the notebook's lists. */
export interface Used {
  readonly still: Named<StillDescription>;
  readonly charge: Named<ChargeSet>;
  readonly sheet: Named<SheetSet>;
}

/** A part of a name that is gone gives way to the first. */
export function usedOn(notebook: Notebook, page: string): Used {
  const chosen = workOn(notebook, page).uses ?? {};
  const ready = Object.hasOwn(readyUses, page) ? readyUses[page]! : {};
  const { still, charge, sheet } = { ...ready, ...chosen };
  return {
    still: named(notebook.stills, still),
    charge: named(notebook.charges, charge),
    sheet: named(notebook.sheets, sheet),
  };
}

function named<What>(list: readonly Named<What>[], name: string | undefined): Named<What> {
  return list.find((one) => one.name === name) ?? list[0]!;
}

type Made = WeakMap<StillDescription, WeakMap<ChargeSet, WeakMap<SheetSet, WeakMap<Asked, Scenario>>>>;
const made: Made = new WeakMap();

/** What a page sets and runs on. */
export function scenarioOn(notebook: Notebook, page: string): Scenario {
  const { still, charge, sheet } = usedOn(notebook, page);
  const { asked } = notebook;
  const known = below(below(below(made, still.what), charge.what), sheet.what);
  const before = known.get(asked);
  if (before !== undefined) return before;
  const scenario: Scenario = { still: still.what, ...charge.what, ...sheet.what, asked };
  known.set(asked, scenario);
  return scenario;
}

function below<Key extends object, Below extends object, Value>(
  map: WeakMap<Key, WeakMap<Below, Value>>,
  key: Key,
): WeakMap<Below, Value> {
  const known = map.get(key) ?? new WeakMap<Below, Value>();
  map.set(key, known);
  return known;
}

/** The notebook with what a page sets and runs on written where it belongs; the same notebook where nothing changed. */
export function withScenario(notebook: Notebook, page: string, next: Scenario): Notebook {
  const before = scenarioOn(notebook, page);
  if (next === before) return notebook;
  const used = usedOn(notebook, page);
  const same = <Part extends object>(part: Part, old: Part): boolean =>
    (Object.keys(part) as (keyof Part)[]).every((key) => part[key] === old[key]);
  const charge = chargeSetOf(next);
  const sheet = sheetSetOf(next);
  return {
    ...notebook,
    ...(next.still === before.still ? {} : { stills: put(notebook.stills, used.still, next.still) }),
    ...(same(charge, chargeSetOf(before)) ? {} : { charges: put(notebook.charges, used.charge, charge) }),
    ...(same(sheet, sheetSetOf(before)) ? {} : { sheets: put(notebook.sheets, used.sheet, sheet) }),
    ...(next.asked === before.asked ? {} : { asked: next.asked }),
  };
}

function put<What>(list: readonly Named<What>[], old: Named<What>, what: What): readonly Named<What>[] {
  return list.map((one) => (one === old ? { ...old, what } : one));
}

/** Names of the lists. */
export type ListName = keyof Parts;
