// What a notebook is: one plain record that can stand in a file, in the address or in this browser as it is.
// It holds stills, charges and run sheets by name, the reader's own pages, and what the reader did on every page. Nothing in it is ever
// changed in place; see acts.ts for what can be done with it and history.ts for undoing that.

import type { StillDescription } from '#lib/index.js';
import { startingScenario, type Asked, type ChargeSet, type Scenario, type SheetSet } from './scenario.js';
import { startingPot } from './starting-stills.js';

/** Anything that survives being written to a file and read again. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** One entry of a page. */
export interface EntryRecord {
  /** Of this page; never used twice in it, kept when the entry moves. */
  readonly id: string;
  /** Name of its kind; one that is not known here is kept as it is. */
  readonly kind: string;
  /** What the kind says it is made of. */
  readonly data: Json;
  /** A heading above it. */
  readonly heading?: string;
  /** Stands close under the entry before it, in one section with it. */
  readonly close?: boolean;
}

/** A page: a ready one that ships with the explorer, or one of the reader's own. */
export interface PageRecord {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  /** One sentence, one line. */
  readonly promise: string;
  readonly entries: readonly EntryRecord[];
}

/** Values that entries of one page share, by name. */
export type Common = Readonly<Record<string, Json>>;

/** What the reader did on a page without changing what the page is. */
export interface PageWork {
  /** The numbers of the runs kept as pencil lines, the oldest first. */
  readonly pencils: readonly Scenario[];
  /** What entries of the page share, by name: points laid over the figures, stills set beside the others. */
  readonly common: Common;
  /** By the id of an entry: a guess drawn, an answer written, a row added. The entry's kind knows its shape. */
  readonly entries: Readonly<Record<string, Json>>;
  /** Which of the notebook's stills, charges and sheets the page uses, where the reader chose. */
  readonly uses?: Uses;
}

/** Names of a still, a charge and a sheet. */
export interface Uses {
  readonly still?: string;
  readonly charge?: string;
  readonly sheet?: string;
}

/** What the notebook holds by name: a name stands once in its list, and no list is empty. */
export interface Named<What> {
  readonly name: string;
  readonly what: What;
}

/** Lists of a notebook's named parts, and what stands in each. */
export interface Parts {
  readonly stills: readonly Named<StillDescription>[];
  readonly charges: readonly Named<ChargeSet>[];
  readonly sheets: readonly Named<SheetSet>[];
}

export interface Notebook extends Parts {
  readonly version: 1;
  readonly name: string;
  readonly asked: Asked;
  /** The reader's own pages, in the order of the contents list. */
  readonly pages: readonly PageRecord[];
  /** By the name of a page, ready or own. */
  readonly work: Readonly<Record<string, PageWork>>;
}

export const noPageWork: PageWork = Object.freeze({ pencils: [], common: {}, entries: {} });

export function chargeSetOf({ charge, doublerCharges }: ChargeSet): ChargeSet {
  return { charge, doublerCharges };
}

export function sheetSetOf({ sheet, jars }: SheetSet): SheetSet {
  return { sheet, jars };
}

/** A notebook in which nothing has been done yet. */
export const newNotebook: Notebook = Object.freeze<Notebook>({
  version: 1,
  name: '',
  stills: [{ name: 'Your still', what: startingScenario.still }, startingPot],
  charges: [{ name: 'Your charge', what: chargeSetOf(startingScenario) }],
  sheets: [{ name: 'Your run sheet', what: sheetSetOf(startingScenario) }],
  asked: startingScenario.asked,
  pages: [],
  work: {},
});

/** What was done on a page. */
export function workOn(notebook: Notebook, page: string): PageWork {
  return (Object.hasOwn(notebook.work, page) ? notebook.work[page] : undefined) ?? noPageWork;
}
