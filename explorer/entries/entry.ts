// The contract of an entry: what a block of a page is, whatever it shows. A kind of entry is one folder with a
// `kind.ts` that exports such a record, and one line in registry.ts. A page gives each entry a `Here`: its data,
// the numbers, the answers to what it asked, and ways to act; an entry never reaches for anything else.

import type { NumberSpecs } from '../state/number-specs.js';
import type { Common, Json } from '../state/notebook-record.js';
import type { RunCursor } from '../state/run-cursor.js';
import type { Path } from '../state/inputs.js';
import type { Scenario } from '../state/scenario.js';
import type { UnitSystem } from '../text/unit-systems.js';
import type { Answer, Answers, Asks } from '../worker/questions.js';

/** Answers to what an entry asked, with the numbers they belong to; the same object until one of these changes. */
export interface Answered<Asked extends Asks = Asks> {
  readonly scenario: Scenario;
  readonly answers: Answers<Asked>;
  /** What the entries of the page shared when it was asked. */
  readonly common?: Common;
}

/** What an entry's numbers are made of. */
export interface Given<Asked extends Asks = Asks> {
  readonly scenario: Scenario;
  readonly answers: Answers<Asked>;
  readonly units: UnitSystem;
}

/** What a check of data from outside comes to. */
export type Checked<Data> =
  { readonly good: true; readonly data: Data } | { readonly good: false; readonly why: string };

/** A caution that stands once on a page, beside the first entry that needs it. */
export type CautionName = 'spout' | 'kettle' | 'heating' | 'cooling' | 'vacuum' | 'pouring';

/** A quantity that is shown in the reader's units. */
export type QuantityName = Exclude<keyof UnitSystem, 'name' | 'label'>;

/** A result that an entry offers by name to others on its page, for formulas and tables. */
export interface Provided {
  /** As a formula would write it: letters, digits and _ only, for instance `collected`. */
  readonly name: string;
  /** In words: 'collected in all'. */
  readonly label: string;
  /** What is measured; null for a bare number. */
  readonly quantity: QuantityName | null;
  /** SI; null while it is not known. */
  readonly value: number | null;
}

/** A result with the entry it comes from. */
export interface PageResult extends Provided {
  readonly entry: string;
}

/** An entry of the same page as others see it. */
export interface Neighbour {
  readonly id: string;
  readonly kind: string;
  readonly data: Json;
  readonly heading: string;
}

/** How a change of data or work is told and undone. */
export interface ChangeWords {
  /** Past tense, for the reader: 'figure chosen'. */
  readonly says?: string;
  /** Changes in a row with the same word are undone as one: a line being typed, a stroke being drawn. */
  readonly together?: string;
}

/** What is asked after the page's figures stand, and what has come of it so far. */
export interface Later<Asked extends Asks = Asks> {
  readonly scenario: Scenario;
  /** By name, those that have come. */
  readonly answers: Readonly<Record<string, Answer>>;
  /** All of them; those to the numbers before until the last has come. */
  readonly whole: Answered<Asked> | undefined;
  readonly done: number;
  readonly of: number;
  /** How many of those done cannot be answered. */
  readonly refused: number;
  readonly state: 'waiting' | 'running' | 'stopped' | 'finished';
  /** What has come stays. */
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** What an entry is given to draw itself with. Plain values change only by identity. */
export interface Here<Data = Json, Asked extends Asks = Asks> {
  readonly id: string;
  readonly data: Data;
  /** What the reader did with it: a guess, a written answer, rows of a log. Undefined until there is something. */
  readonly work: Json | undefined;
  /** The numbers as they are set now. */
  readonly scenario: Scenario;
  /** The last good answers to `asks`; undefined until the first come. Their scenario may be older than the one set. */
  readonly now: Answered<Asked> | undefined;
  /** The same for each pencil line, the oldest first. */
  readonly kept: readonly Answered<Asked>[];
  /** The answers to `asksLater`, as they come. */
  readonly later: Later | undefined;
  /** Entries of the page in order, this one included. */
  readonly entries: readonly Neighbour[];
  /** Results that entries of the page offer, in order of the page. */
  readonly results: readonly PageResult[];
  readonly units: UnitSystem;
  readonly specs: NumberSpecs;
  /** Where it is read: at a desk, on a phone beside the still, or on paper. */
  readonly place: 'desk' | 'hand' | 'paper';
  /** Whether the page is the reader's own, so that `change` may be called. */
  readonly own: boolean;
  /** The cursor all figures of the page share. */
  readonly cursor: RunCursor;
  readonly moveCursor: (cursor: RunCursor) => void;
  /** What entries of the page share, by name: what is laid over figures, what is set beside the others. */
  readonly common: Common;
  /** Sets one of them; undefined forgets it. Undone like everything else. */
  readonly setCommon: (name: string, value: Json | undefined, words?: ChangeWords) => void;

  /** Changes what the entry is; from the data of that moment, so that two changes never lose each other. */
  readonly change: (next: (data: Data) => Data, words?: ChangeWords) => void;
  /** Keeps what the reader did with it; undone like everything else. */
  readonly keep: (next: (work: Json | undefined) => Json | undefined, words?: ChangeWords) => void;
  /** Offers results that are computed away from `provides`, for instance in a worker of the entry's own. */
  readonly offer: (results: readonly Provided[]) => void;

  /** A number of the page in a sentence, set like those of the setup sentence. */
  readonly blank: (key: Path) => unknown;
  /** The setup sentence with the page's ruler. */
  readonly setup: (sentence: readonly (string | { readonly blank: Path })[]) => unknown;
  /** Sets what stands at a path of what the page runs on: a sheet, for instance. Undone like everything else. */
  readonly set: (path: string, value: unknown, words?: ChangeWords) => void;
  /** Rows of a figure: fresh ones where it is near the window, else those it had. Mark the figure with `data-figure`. */
  readonly rows: <Rows>(figure: string, fresh: () => Rows) => Rows;
  /** What `make` gives, under a name of the entry's own; made anew only when one of `from` changes. */
  readonly once: <Made>(name: string, from: readonly unknown[], make: () => Made) => Made;
  /** The value for `data-figure` of a figure of this entry. */
  readonly mark: (figure: string) => string;
  /** One object for all entries of this kind on this page, made when first wanted, for instance a scheduler. */
  readonly shared: <Thing>(make: () => Thing) => Thing;
  /** Draws the page again when something the entry keeps outside of its data has changed. */
  readonly redraw: () => void;
}

/** How an entry is edited; loaded when the reader first wants to. */
export interface EntryEditor<Data = Json> {
  /** Stands under the entry while it is edited. */
  readonly edit: (here: Here<Data>) => unknown;
}

/** A kind of entry. */
export interface EntryKind<Data = Json, Asked extends Asks = Asks> {
  /** In a notebook's file; never changed once published. */
  readonly name: string;
  /** In the list of what can be added: 'Figure'. */
  readonly title: string;
  /** One line beside it: 'a curve, drawn from the numbers of the page'. */
  readonly about: string;
  /** What a new one starts with. */
  readonly start: Data;
  /** Reads data that come from a file; says what is wrong and what would be right. */
  readonly check: (data: Json) => Checked<Data>;
  /** What it is called on this page, for its controls and for who hears it: 'figure: strength at the spout'. */
  readonly label: (data: Data) => string;
  /** Loads what `asks` and `view` need for these data; the page waits for it. Undefined where all is at hand. */
  readonly prepare?: (data: Data) => Promise<void> | undefined;
  /** Once drawn, it is drawn with new data before `prepare` is done with them: for an entry that is written in where it
   * stands, which would lose letters to the text from before. */
  readonly meanwhile?: true;
  /** Asked together with the rest of the page. Pure. */
  readonly asks?: (data: Data, scenario: Scenario, common: Common) => Asked;
  /** The page does not wait for what it asks, nor it for the page. */
  readonly apart?: true;
  /** Asked when the figures stand and the numbers rest. Pure. */
  readonly asksLater?: (data: Data, scenario: Scenario, common: Common) => Asks;
  /** Draws its own sections with their notes; the page puts nothing around it. For an entry made of several. */
  readonly whole?: true;
  /** The entry on the page, in its column. Light DOM. */
  readonly view: (here: Here<Data, Asked>) => unknown;
  /** Beside it in the margin; under it on a phone. */
  readonly notes?: (here: Here<Data, Asked>) => unknown;
  readonly cautions?: (data: Data) => readonly CautionName[];
  /** Results by name for other entries. Pure. */
  readonly provides?: (here: Here<Data, Asked>) => readonly Provided[];
  /** Absent where there is nothing to edit. */
  readonly edit?: () => Promise<EntryEditor<Data>>;
  /** What is wrong with what a file says the reader did with such an entry; for a kind that keeps anything. */
  readonly checkWork?: (work: Json) => string | undefined;
  /** The entry as plain text, with its numbers, for a summary, a file of text, or paper. */
  readonly words: (here: Here<Data, Asked>) => string;
}

/** A kind in a list of kinds, which are made of different data and ask different things. */
export function anyKind<Data, Asked extends Asks>(kind: EntryKind<Data, Asked>): EntryKind {
  return kind as unknown as EntryKind;
}

/** Data from outside as they stand in a message: never long. */
export function shown(data: Json | undefined): string {
  const text = data === undefined ? 'nothing' : JSON.stringify(data);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

export const good = <Data>(data: Data): Checked<Data> => ({ good: true, data });
export const wrong = (why: string): { readonly good: false; readonly why: string } => ({ good: false, why });
