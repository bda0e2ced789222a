// Writes the open notebook to the records: what changed since it was written last, now and then the whole. One window
// never writes over what another wrote: where both have the same notebook open, the second to write goes on in a copy.

import type { Json } from '../state/notebook-record.js';
import { fieldsOf } from './head.js';
import { leaveLastWords, takeBackLastWords } from './last-words.js';
import { newId } from './new-id.js';
import { changesBetween } from './patch.js';
import type { Records } from './records.js';
import { writeChanges, writeWhole, type Writing, type Wrote } from './write-notebook.js';

/** Changes that make as many letters are written as a whole, so that opening stays quick; where the whole could not be
 * opened again, twice as many, since the changes lead back to what could. */
export const mostJournal = 256_000;

/** The open notebook, as whoever holds it gives it. */
export interface OpenNotebook {
  readonly records: () => Records;
  /** The record of its file, written at a time; `copy` where it must be told from the one it parted from. */
  readonly record: (written: string, copy: boolean) => Json;
  readonly name: () => string;
  readonly now: () => Date;
  /** Whether a text could be opened again. */
  readonly check: (text: string) => Promise<boolean>;
  /** Called when something was written. */
  readonly wrote?: () => void;
}

export class NotebookWriter {
  /** The window. */
  readonly window = newId();
  readonly #notebook: OpenNotebook;
  #id = newId();
  /** The number of its latest change; 0 before there is one. */
  #count = 0;
  /** The record as this window last read or wrote it, and when that says it was written; null before there is one. */
  #last: Json | null = null;
  #written = '';
  /** Letters of the changes since the whole was written. */
  #journal = 0;
  #mostJournal = mostJournal;
  #parted: { readonly deleted: boolean } | undefined;
  #left = false;
  /** Another object whenever another notebook is opened. */
  #turn = {};

  constructor(notebook: OpenNotebook) {
    this.#notebook = notebook;
  }

  get id(): string {
    return this.#id;
  }
  /** Set where another window wrote or deleted the notebook and this one went on in a copy. */
  get parted(): { readonly deleted: boolean } | undefined {
    return this.#parted;
  }
  /** Whether what is written outlasts the window. */
  get lasting(): boolean {
    return this.#notebook.records().lasting;
  }
  /** Whether last words were handed over that are not taken back yet. */
  get left(): boolean {
    return this.#left;
  }

  /** Another notebook is open now: the record that stands there and the number of its latest change, if any. */
  open(id: string, record: Json | null, count: number): void {
    this.#turn = {};
    this.#parted = undefined;
    this.#as(id, count);
    this.#last = record;
    const { written } = fieldsOf(record);
    this.#written = typeof written === 'string' ? written : '';
  }

  /** Writes what changed; ends in a `RecordsFault` where that does not work, and can be called again then. */
  async write(): Promise<void> {
    const turn = this.#turn;
    const { records, record } = this.#notebook;
    if (this.#left) {
      await takeBackLastWords(records(), this.window);
      this.#left = false;
    }
    // Where another notebook is opened meanwhile, what becomes of this one is no longer noted.
    const isOpen = (): boolean => turn === this.#turn;
    let copy = false;
    if (this.#last !== null && isOpen() && !(await this.#wholeIsDue())) {
      if (!isOpen()) return;
      const next = record(this.#written, false);
      const steps = changesBetween(this.#last, next);
      if (steps.length === 0) return;
      const wrote = await writeChanges(records(), this.#ours(), steps);
      if (!isOpen()) return;
      if (wrote.kind === 'written') {
        this.#took(wrote, next);
        return;
      }
      copy = this.#partIf(wrote);
    }
    while (isOpen()) {
      const ours = this.#ours();
      const next = record(ours.written, copy);
      const text = textOf(next);
      const good = await this.#notebook.check(text);
      if (!isOpen()) return;
      const wrote = await writeWhole(records(), { ...ours, name: this.#notebook.name() }, text, good);
      if (!isOpen()) return;
      if (wrote.kind === 'written') {
        this.#written = ours.written;
        this.#took(wrote, next);
        return;
      }
      copy = this.#partIf(wrote);
    }
  }

  /** The window is being left: hands over the notebook as it is. */
  leave(writing: boolean): void {
    const ours = this.#ours();
    const text = textOf(this.#notebook.record(ours.written, false));
    this.#left = true;
    leaveLastWords(this.#notebook.records(), { ...ours, upTo: ours.count + (writing ? 1 : 0), text });
  }

  async #wholeIsDue(): Promise<boolean> {
    if (this.#journal < this.#mostJournal) return false;
    const good = await this.#notebook.check(textOf(this.#notebook.record(this.#written, false)));
    this.#mostJournal = good ? mostJournal : 2 * this.#journal;
    return good;
  }

  /** From now on this is another notebook, where another window has changed it. */
  #partIf(wrote: Wrote): boolean {
    if (wrote.kind !== 'parted') return false;
    this.#as(newId(), 0);
    this.#last = null;
    this.#parted = { deleted: wrote.deleted };
    return true;
  }

  #as(id: string, count: number): void {
    this.#id = id;
    this.#count = count;
    this.#journal = 0;
    this.#mostJournal = mostJournal;
  }

  #took({ count, journal }: Wrote & { readonly kind: 'written' }, record: Json): void {
    this.#count = count;
    this.#journal = journal;
    this.#last = record;
    this.#notebook.wrote?.();
  }

  #ours(): Writing {
    const { name, now } = this.#notebook;
    return { id: this.#id, count: this.#count, writer: this.window, name: name(), written: now().toISOString() };
  }
}

function textOf(record: Json): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}
