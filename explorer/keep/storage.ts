// Where notebooks are kept: this browser's own storage, one record a notebook, each the very text its file
// would have. What the browser refuses is a value here, never an exception.

/** The part of the browser's storage that is used. */
export type Shelves = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** Why something could not be kept. */
export type NotKept = 'full' | 'blocked';

/** The browser's storage; undefined where it is blocked. */
export function browserShelves(): Shelves | undefined {
  try {
    const { localStorage } = globalThis;
    // Some browsers hand out a storage and refuse each use of it.
    localStorage.getItem('kettle-and-plate');
    return localStorage;
  } catch {
    return undefined;
  }
}

/** Writes a record; what stood there stays where that does not work. */
export function put(shelves: Shelves | undefined, key: string, text: string): NotKept | undefined {
  if (shelves === undefined) return 'blocked';
  try {
    shelves.setItem(key, text);
    return undefined;
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked';
  }
}

/** The record under a key; null where there is none or it cannot be had. */
export function get(shelves: Shelves | undefined, key: string): string | null {
  try {
    return shelves?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

export function remove(shelves: Shelves | undefined, key: string): void {
  try {
    shelves?.removeItem(key);
  } catch {
    // what cannot be written cannot be removed either
  }
}

/** The keys that begin with `prefix`, without it. */
export function keysUnder(shelves: Shelves | undefined, prefix: string): string[] {
  const keys: string[] = [];
  try {
    for (let i = 0; i < (shelves?.length ?? 0); i++) {
      const key = shelves?.key(i);
      if (key?.startsWith(prefix) === true) keys.push(key.slice(prefix.length));
    }
  } catch {
    return [];
  }
  return keys.sort();
}
