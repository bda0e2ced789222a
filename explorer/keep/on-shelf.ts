// What lies on the shelf, what was deleted and what is kept aside, as lists for the page 'Notebooks', and what can be
// done with them. A list that cannot be read is empty and says why; it never takes the others with it.

import { asideBytes, asideFiles, dropAside, keepAside, type AsideFile } from './aside.js';
import { whyNotKept, type NotKept, type Records } from './records.js';
import { notebookText, putBack, shelfOf, takeOff, type Shelf } from './shelf.js';

export interface Lists extends Shelf {
  readonly aside: readonly AsideFile[];
}

const none: Lists = { kept: [], deleted: [], aside: [] };

export class OnShelf {
  readonly #records: Records;
  readonly #told: () => void;
  readonly #others = channel();
  lists: Lists = none;
  /** Why something could not be read or done. */
  trouble: NotKept | undefined;

  constructor(records: Records, told: () => void) {
    this.#records = records;
    this.#told = told;
    this.#others?.addEventListener('message', () => void this.refresh());
  }

  async takeOff(id: string): Promise<void> {
    await this.#do(() => takeOff(this.#records, id));
  }
  async putBack(id: string): Promise<void> {
    await this.#do(() => putBack(this.#records, id));
  }
  async dropAside(id: string): Promise<void> {
    await this.#do(() => dropAside(this.#records, id));
  }
  /** False where it could not be. */
  async keepAside(file: Omit<AsideFile, 'id' | 'kind'>, bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
    return (await this.#do(() => keepAside(this.#records, file, bytes))) ?? false;
  }
  /** Text of a notebook's file. */
  textOf(id: string): Promise<string | undefined> {
    return this.#do(() => notebookText(this.#records, id));
  }
  asideBytes(id: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    return this.#do(() => asideBytes(this.#records, id));
  }

  /** Something on the shelf changed: this window looks again, and so do the others. */
  async changed(): Promise<void> {
    this.#others?.postMessage('shelf');
    await this.refresh();
  }

  /** Looks again what lies there. */
  async refresh(): Promise<void> {
    this.trouble = undefined;
    const { kept, deleted } = await this.#read(() => shelfOf(this.#records), none);
    const aside = await this.#read(() => asideFiles(this.#records), none.aside);
    this.lists = { kept, deleted, aside };
    this.#told();
  }

  /** Something could not be done. */
  failed(error: unknown): void {
    this.trouble = whyNotKept(error);
    this.#told();
  }

  async #read<T>(read: () => Promise<T>, otherwise: T): Promise<T> {
    try {
      return await read();
    } catch (error) {
      this.trouble = whyNotKept(error);
      return otherwise;
    }
  }

  async #do<T>(act: () => Promise<T>): Promise<T | undefined> {
    try {
      const result = await act();
      await this.changed();
      return result;
    } catch (error) {
      this.failed(error);
      return undefined;
    }
  }
}

/** Tells other windows that the shelf changed; without it they look again when they come to the fore. */
function channel(): BroadcastChannel | undefined {
  return 'BroadcastChannel' in globalThis ? new BroadcastChannel('kettle-and-plate') : undefined;
}
