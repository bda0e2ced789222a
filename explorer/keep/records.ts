// What keeping asks of a place that holds records: named stores, and transactions that happen wholly or not at all, one
// after the other where they write. Two places keep this contract: the browser's database, and memory, for a browser
// that lets no page keep anything and for the tests.

/** Stores and what is in them; the key is the notebook's id where nothing else is said. */
export const storeNames = [
  /** What is said of a notebook: see `Head` in head.ts. */
  'heads',
  /** The text of its file as it was last written whole. */
  'bases',
  /** The whole text before that, where it was opened and found good. */
  'earlier',
  /** Changes since the base, by [id, number]. */
  'journal',
  /** What a window that was closed could only hand over at the last moment, by the window. */
  'left',
  /** What is said of a file or notebook that could not be read, by an id of its own. */
  'asides',
  /** Its bytes. */
  'aside-bytes',
  /** Single values by name, for instance which notebook was open last. */
  'marks',
] as const;
export type StoreName = (typeof storeNames)[number];
export type Key = string | readonly [id: string, number: number];

export interface Looking {
  /** The record under a key; undefined where there is none. */
  get(store: StoreName, key: Key): Promise<unknown>;
  /** Records with their keys, in order; only those whose key begins with `id` where it is given. */
  all(store: StoreName, id?: string): Promise<readonly (readonly [key: Key, record: unknown])[]>;
}

export interface Changing extends Looking {
  put(store: StoreName, key: Key, record: unknown): void;
  remove(store: StoreName, key: Key): void;
  /** Removes all whose key begins with `id`. */
  removeUnder(store: StoreName, id: string): void;
}

export interface Records {
  /** Whether what is written is there again after the window was closed. */
  readonly lasting: boolean;
  /** Reads; `work` waits for nothing but the records. */
  look<T>(stores: readonly StoreName[], work: (records: Looking) => Promise<T>): Promise<T>;
  /** Reads and writes all or nothing; done when it would outlast a crash. Ends in a `RecordsFault` where it could not. */
  change<T>(stores: readonly StoreName[], work: (records: Changing) => T | Promise<T>): Promise<T>;
  /** Hands one record over within this very call, for a window that is being left: nothing can be waited for there. */
  putAtOnce(store: StoreName, key: Key, record: unknown): void;
}

/** Why something could not be kept. */
export type NotKept =
  /** No room. */
  | 'full'
  /** The browser allows nothing to be kept. */
  | 'blocked'
  /** It went wrong this time. */
  | 'failed'
  /** No answer yet. */
  | 'silent'
  /** Another window runs a version that keeps things in another way. */
  | 'newer';

export class RecordsFault extends Error {
  readonly why: NotKept;
  constructor(why: NotKept, cause?: unknown) {
    super(`Records could not be read or written (${why}).`, { cause });
    this.name = 'RecordsFault';
    this.why = why;
  }
}

/** Why, of anything that was thrown. */
export function whyNotKept(error: unknown): NotKept {
  if (error instanceof RecordsFault) return error.why;
  if (!(error instanceof DOMException)) return 'failed';
  if (error.name === 'QuotaExceededError') return 'full';
  if (error.name === 'VersionError') return 'newer';
  return error.name === 'SecurityError' || error.name === 'InvalidAccessError' ? 'blocked' : 'failed';
}
