// Keeping and handing on, as what can be done with it: keep the open notebook as it changes, open another, begin
// one, bring a file in, save one. Knows the records and the file format; draws nothing.

import type { Act } from '../pages/act-event.js';
import { newNotebook, type Json, type Notebook } from '../state/notebook-record.js';
import type { NotebookState } from '../state/notebook.js';
import { scenarioOn, withScenario } from '../state/page-scenario.js';
import { sameNumbers } from '../state/scenario.js';
import type { Store } from '../state/store.js';
import { Autosave, type KeptState } from './autosave.js';
import { bytesOf } from './file-bytes.js';
import type { FirstWords } from './first-words.js';
import { limits } from './format.js';
import { copyName } from './last-words.js';
import { asksForNumbers, latestNotebook, rememberAtOnce, rememberLatest } from './latest.js';
import { newId } from './new-id.js';
import { NotebookWriter } from './notebook-writer.js';
import { OnShelf } from './on-shelf.js';
import { OpenBook } from './open-book.js';
import { openNotebook, type Opening } from './open-notebook.js';
import { readNotebookFile, type ReadyEntries } from './read-file.js';
import { unreadable, type Reading, type Refusal } from './reading.js';
import type { Records } from './records.js';
import { insteadWords, leftOnShelf, notOpenedNow, refusedWords, titleOf } from './words.js';
import { notebookFile, notebookRecord } from './write-file.js';

/** What keeping needs of the wiring. */
export interface Book {
  readonly store: Store<NotebookState>;
  readonly act: (act: Act) => void;
  readonly goTo: (page: string) => void;
  readonly readyPages: readonly string[];
  /** What stands on a ready page. */
  readonly readyEntries: ReadyEntries;
  /** What looks after the notebook until keeping does. */
  readonly firstWords: Pick<FirstWords, 'key' | 'handOver'>;
}

/** A file that was refused just now. */
export interface Refused {
  readonly name: string;
  readonly refusal: Refusal;
  /** The file itself; null where it was not read at all. */
  readonly bytes: Uint8Array<ArrayBuffer> | null;
  /** Whether it is kept aside for later, too. */
  readonly aside: boolean;
}

export class Keeping extends EventTarget {
  /** What lies on the shelf and aside. */
  readonly shelf: OnShelf;
  readonly #records: Records;
  readonly #book: Book;
  readonly #open: OpenBook;
  readonly #writer: NotebookWriter;
  readonly #autosave: Autosave;
  refused: Refused | undefined;
  /** What is to be said of how the notebook was opened; empty where all is well. */
  said = '';

  constructor(book: Book, records: Records) {
    super();
    this.#book = book;
    this.#records = records;
    this.shelf = new OnShelf(records, () => this.#tell());
    this.#writer = new NotebookWriter({
      records: () => records,
      record: (written, copy) => this.#record(written, copy),
      name: () => this.notebook.name,
      now: () => new Date(),
      check: (text) =>
        this.#check(text).then(
          ({ kind }) => kind === 'read',
          () => false,
        ),
      wrote: () => void this.#afterWriting(),
    });
    this.#autosave = new Autosave(this.#writer, () => this.#tell());
    this.#open = new OpenBook(
      book.store,
      () => this.#autosave.changed(),
      () => this.#tell(),
    );
    if (this.#open.touched) this.#autosave.changed();
  }

  get notebook(): Notebook {
    return this.#open.notebook;
  }
  get id(): string {
    return this.#writer.id;
  }
  get state(): KeptState {
    return this.#autosave.state;
  }

  /** Opens what was open last in this window, or, where the address sets no numbers, in any. */
  async restore(address: string): Promise<void> {
    const id = await latestNotebook(this.#records, address);
    if (id === null || id === this.id) return;
    const opening = await this.#opened(id);
    // What the reader has done meanwhile is not to be lost.
    if (this.#open.touched) {
      if (opening.kind !== 'none') this.#say(leftOnShelf);
      return;
    }
    const { page } = this.#book.store.get();
    const asked = scenarioOn(this.notebook, page);
    if (!this.#take(opening) || opening.kind !== 'opened' || !asksForNumbers(address)) return;
    if (sameNumbers(scenarioOn(opening.reading.notebook, page), asked)) return;
    const deed = { says: 'numbers taken from the address', page: null };
    this.#book.act({ next: (notebook) => withScenario(notebook, page, asked), deed });
  }

  /** Opens a notebook of the shelf; false where nothing of it can be read. */
  async open(id: string): Promise<boolean> {
    await this.flush();
    const opening = await this.#opened(id);
    await this.flush();
    return this.#take(opening);
  }

  /** Begins a notebook in which nothing has been done. */
  async begin(): Promise<void> {
    await this.flush();
    this.#replace(newNotebook, newId(), null, 0);
  }

  /** Takes a notebook off the shelf; another is begun where it is the open one. */
  async remove(id: string): Promise<void> {
    if (id === this.id) await this.begin();
    await this.shelf.takeOff(id);
  }

  /** Brings a file in; false where it was refused, see `refused`. */
  async bringIn(name: string, file: Blob): Promise<boolean> {
    const bytes = await bytesOf(file);
    if ('kind' in bytes) return this.#refuse(name, bytes.refusal, null);
    const reading = await this.#check(new TextDecoder().decode(bytes)).catch(() => unreadable());
    if (reading.kind === 'refused') return this.#refuse(name, reading.refusal, bytes);
    await this.flush();
    this.refused = undefined;
    this.#replace(reading.notebook, newId(), null, 0);
    this.#autosave.changed();
    void this.flush();
    this.#book.store.set({ complaints: reading.notes });
    const page = reading.page ?? reading.notebook.pages[0]?.name ?? this.#book.readyPages[0]!;
    this.#book.goTo(page);
    return true;
  }

  /** Tells of a file that the system handed over and did not open. */
  unreadable(name: string): void {
    void this.#refuse(name, unreadable().refusal, null);
  }

  /** Names the open notebook. */
  name(name: string): void {
    const short = name.slice(0, limits.name);
    if (short === this.notebook.name) return;
    this.#book.act({
      next: (notebook) => ({ ...notebook, name: short }),
      deed: { says: 'notebook named', page: null, together: 'notebook-name' },
    });
  }

  /** The open notebook as the text of a file. */
  file(): string {
    return notebookFile(this.notebook, new Date());
  }

  /** Writes what waits. */
  flush(): Promise<void> {
    return this.#autosave.flush();
  }
  /** The window is being left, or was not left after all. */
  leave(): void {
    if (this.#autosave.leave()) rememberAtOnce(this.id);
  }
  back(): void {
    this.#autosave.back();
  }

  #record(written: string, copy: boolean): Json {
    if (copy) this.#open.rename(copyName(this.notebook.name));
    return notebookRecord(this.notebook, written);
  }

  async #opened(id: string): Promise<Opening> {
    const window = { writer: this.#writer.window, now: () => new Date() };
    try {
      return await openNotebook(this.#records, id, (text) => this.#check(text), window);
    } catch (error) {
      console.warn(error);
      this.#say(notOpenedNow);
      return { kind: 'none' };
    }
  }

  /** Takes what was opened in the place of the open notebook; false where there is nothing to take. */
  #take(opening: Opening): boolean {
    if (opening.kind === 'none') return false;
    this.said = '';
    if (opening.kind === 'opened') {
      const { reading, id, record, count, instead } = opening;
      this.#replace(reading.notebook, id, record, count);
      this.#book.store.set({ complaints: reading.notes });
      if (instead !== undefined) this.said = insteadWords(instead);
    } else this.said = refusedWords(titleOf(opening.name), opening);
    void this.shelf.changed();
    return opening.kind === 'opened';
  }

  /** Another notebook takes the place of the open one; where that one is not kept anywhere it can be undone. */
  #replace(notebook: Notebook, id: string, record: Json | null, count: number): void {
    this.#open.replace(notebook, this.#open.touched && this.state.kind === 'not-kept');
    this.#writer.open(id, record, count);
    this.#autosave.opened(record !== null);
    if (record !== null) void rememberLatest(this.#records, id);
  }

  /** Another id or name than the shelf shows is to be shown. */
  async #afterWriting(): Promise<void> {
    const { id, notebook, shelf } = this;
    const listed = shelf.lists.kept.find((one) => one.id === id);
    if (listed?.name === notebook.name) return;
    if (listed === undefined) await rememberLatest(this.#records, id);
    await this.shelf.changed();
  }

  #check(text: string): Promise<Reading> {
    return readNotebookFile(text, this.#book.readyPages, new Date(), this.#book.readyEntries);
  }

  async #refuse(name: string, refusal: Refusal, bytes: Uint8Array<ArrayBuffer> | null): Promise<false> {
    const file = { name, at: new Date().toISOString(), why: refusal.says };
    const aside = bytes !== null && (await this.shelf.keepAside(file, bytes));
    this.refused = { name, refusal, bytes, aside };
    this.#tell();
    return false;
  }

  #say(words: string): void {
    this.said = words;
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event('change'));
  }
}
