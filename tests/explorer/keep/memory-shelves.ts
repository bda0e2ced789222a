// A browser's storage for tests: with a limit, or blocked altogether.

import type { Shelves } from '../../../explorer/keep/storage.js';

export interface MemoryShelves extends Shelves {
  readonly records: Map<string, string>;
}

/** Storage that holds so many characters, keys included. */
export function memoryShelves(most = Infinity): MemoryShelves {
  const records = new Map<string, string>();
  return {
    records,
    get length() {
      return records.size;
    },
    key: (index) => [...records.keys()][index] ?? null,
    getItem: (key) => records.get(key) ?? null,
    removeItem: (key) => void records.delete(key),
    setItem: (key, text) => {
      const others = [...records].filter(([name]) => name !== key);
      const size = [...others, [key, text]].reduce((sum, [name, value]) => sum + name!.length + value!.length, 0);
      if (size > most) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      records.set(key, text);
    },
  };
}

/** Storage that refuses each use, as some browsers' does. */
export function blockedShelves(): Shelves {
  const refuse = (): never => {
    throw new DOMException('The operation is insecure.', 'SecurityError');
  };
  return { getItem: refuse, setItem: refuse, removeItem: refuse, key: refuse, length: 0 };
}
