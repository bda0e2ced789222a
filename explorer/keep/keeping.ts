// Keeping and handing on, as what can be done with it: keep the open notebook as it changes, open another, begin
// one, bring a file in, save one. Knows the shelf and the file format; draws nothing.

import type { Act } from '../pages/act-event.js';
import { done, startHistory } from '../state/history.js';
import { newNotebook, type Notebook } from '../state/notebook-record.js';
import type { NotebookState } from '../state/notebook.js';
import { sameNumbers } from '../state/scenario.js';
import type { Store } from '../state/store.js';
import { asideFiles, keepAside, type AsideFile } from './aside.js';
import { keeper, type Keeper, type KeptState } from './autosave.js';
import { bytesOf } from './file-bytes.js';
import { limits } from './format.js';
import { latestKey, windowKey } from './keys.js';
import { newId } from './new-id.js';
import { readNotebookFile } from './read-file.js';
import { unreadable, type Reading, type Refusal } from './reading.js';
import { keyOf, rename, textOf } from './shelf.js';
import { put, type Shelves } from './storage.js';
import { notebookFile } from './write-file.js';

/** What keeping needs of the wiring. */
export interface Book {
  readonly store: Store<NotebookState>;
  readonly act: (act: Act) => void;
  readonly goTo: (page: string) => void;
  readonly readyPages: readonly string[];
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
  readonly shelves: Shelves | undefined;
  readonly #book: Book;
  readonly #keeper: Keeper;
  refused: Refused | undefined;

  constructor(book: Book, shelves: Shelves | undefined) {
    super();
    this.#book = book;
    this.shelves = shelves;
    this.#keeper = keeper({ shelves, text: (copy) => this.#text(copy), told: () => this.#tell() });
    book.store.subscribe((state, before) => {
      if (state.history.now !== before.history.now && !this.#opening) this.#keeper.changed();
      if (state.history.now.name !== before.history.now.name) this.#tell();
    });
    if (book.store.get().history.past.length > 0) this.#keeper.changed();
  }

  /** Set while another notebook takes the place of the open one, which is no change of either. */
  #opening = false;

  get notebook(): Notebook {
    return this.#book.store.get().history.now;
  }
  get id(): string {
    return this.#keeper.id();
  }
  get state(): KeptState {
    return this.#keeper.state();
  }
  get asideFiles(): readonly AsideFile[] {
    return asideFiles(this.shelves);
  }

  /** Opens what was open last in this window, or, where the address sets no numbers, in any. */
  async restore(address: string): Promise<void> {
    const mine = session()?.getItem(windowKey) ?? null;
    const setsNumbers = address.includes('?');
    const id = mine ?? (setsNumbers ? null : (this.shelves?.getItem(latestKey) ?? null));
    const text = id === null ? null : textOf(this.shelves, id);
    if (id === null || text === null) return;
    const reading = await this.#read(text);
    if (reading.kind === 'refused') {
      this.#refuse('the notebook that was open last', reading.refusal, new TextEncoder().encode(text));
      return;
    }
    const asked = this.notebook.scenario;
    this.#open(reading.notebook, id, text);
    if (!setsNumbers || sameNumbers(reading.notebook.scenario, asked)) return;
    const deed = { says: 'numbers taken from the address', page: null };
    this.#book.act({ next: (notebook) => ({ ...notebook, scenario: asked }), deed });
  }

  /** Opens a notebook of the shelf; false where its record cannot be read. */
  async open(id: string): Promise<boolean> {
    const text = textOf(this.shelves, id);
    if (text === null) return false;
    this.flush();
    const reading = await this.#read(text);
    if (reading.kind === 'refused') {
      this.#refuse(`notebook-${id}.json`, reading.refusal, new TextEncoder().encode(text));
      return false;
    }
    this.#open(reading.notebook, id, text);
    return true;
  }

  /** Begins a notebook in which nothing has been done. */
  begin(): void {
    this.flush();
    this.#open(newNotebook, newId(), null);
  }

  /** Brings a file in; false where it was refused, see `refused`. */
  async bringIn(name: string, file: Blob): Promise<boolean> {
    this.flush();
    const bytes = await bytesOf(file);
    if ('kind' in bytes) {
      this.#refuse(name, bytes.refusal, null);
      return false;
    }
    const reading = await this.#read(new TextDecoder().decode(bytes));
    if (reading.kind === 'refused') {
      this.#refuse(name, reading.refusal, bytes);
      return false;
    }
    this.refused = undefined;
    const id = newId();
    const text = notebookFile(reading.notebook, new Date());
    const kept = put(this.shelves, keyOf(id), text) === undefined;
    this.#open(reading.notebook, id, kept ? text : null);
    this.#book.store.set({ complaints: reading.notes });
    const page = reading.page ?? reading.notebook.pages[0]?.name ?? this.#book.readyPages[0]!;
    this.#book.goTo(page);
    return true;
  }

  /** Tells of a file that the system handed over and did not open. */
  unreadable(name: string): void {
    this.#refuse(name, unreadable().refusal, null);
  }

  /** Names the open notebook, or another on the shelf. */
  name(id: string, name: string): void {
    const short = name.slice(0, limits.name);
    if (id !== this.id) rename(this.shelves, id, short);
    else if (short !== this.notebook.name) {
      this.#book.act({
        next: (notebook) => ({ ...notebook, name: short }),
        deed: { says: 'notebook named', page: null, together: 'notebook-name' },
      });
    }
    this.#tell();
  }

  /** The open notebook as the text of a file. */
  file(): string {
    return this.#text(false);
  }

  flush(): void {
    this.#keeper.flush();
  }

  /** Something outside this window may have changed the shelf. */
  shelfChanged(): void {
    this.#tell();
  }

  #text(copy: boolean): string {
    if (copy) {
      const name = `${this.notebook.name === '' ? 'Untitled' : this.notebook.name}, from another window`.slice(
        0,
        limits.name,
      );
      this.#renameQuietly(name);
    }
    return notebookFile(this.notebook, new Date());
  }

  #renameQuietly(name: string): void {
    const { history } = this.#book.store.get();
    this.#opening = true;
    this.#book.store.set({ history: { ...history, now: { ...history.now, name } } });
    this.#opening = false;
    this.#remember();
  }

  /** Another notebook takes the place of the open one; where that one is not kept anywhere it can be undone. */
  #open(notebook: Notebook, id: string, text: string | null): void {
    const { history } = this.#book.store.get();
    const lost = history.past.length > 0 && this.state.kind === 'not-kept';
    const deed = { says: 'notebook opened', page: null, at: performance.now() };
    this.#opening = true;
    this.#book.store.set({ history: lost ? done(history, notebook, deed) : startHistory(notebook), complaints: [] });
    this.#opening = false;
    this.#keeper.open(id, text);
    this.#remember();
  }

  #remember(): void {
    try {
      session()?.setItem(windowKey, this.id);
    } catch {
      // then it is only found by way of the shelf
    }
    put(this.shelves, latestKey, this.id);
  }

  #read(text: string): Promise<Reading> {
    return readNotebookFile(text, this.#book.readyPages, new Date());
  }

  #refuse(name: string, refusal: Refusal, bytes: Uint8Array<ArrayBuffer> | null): void {
    const file = { name, at: new Date().toISOString(), why: refusal.says };
    const aside = bytes !== null && keepAside(this.shelves, file, bytes);
    this.refused = { name, refusal, bytes, aside };
    this.#tell();
  }

  #tell(): void {
    if (this.state.kind === 'kept' || this.state.kind === 'parted') this.#remember();
    this.dispatchEvent(new Event('change'));
  }
}

function session(): Storage | undefined {
  try {
    return globalThis.sessionStorage;
  } catch {
    return undefined;
  }
}
