// Records in memory, gone with the window: so that everything works where the browser lets no page keep anything, and
// the reader can still save files. Values are copied in and out, as the browser's database does.

import type { Changing, Key, Looking, Records, StoreName } from './records.js';

type Entry = readonly [key: Key, record: unknown];
type Stores = ReadonlyMap<StoreName, ReadonlyMap<string, Entry>>;

export function recordsInMemory(lasting = false): Records {
  let stores: Stores = new Map();
  /** Transactions that write come one after the other. */
  let last: Promise<unknown> = Promise.resolve();

  const change: Records['change'] = (_, work) => {
    const turn = last.then(async () => {
      const draft = new Map([...stores].map(([name, store]) => [name, new Map(store)] as const));
      const result = await work(changing(draft));
      stores = draft;
      return result;
    });
    last = turn.catch(() => undefined);
    return turn;
  };

  return {
    lasting,
    look: (_, work) => last.then(() => work(looking(stores))),
    change,
    putAtOnce: (store, key, record) => {
      void change([store], (records) => {
        records.put(store, key, record);
      });
    },
  };
}

function looking(stores: Stores): Looking {
  return {
    get: (store, key) => Promise.resolve(structuredClone(stores.get(store)?.get(nameOf(key))?.[1])),
    all: (store, id) =>
      Promise.resolve(
        [...(stores.get(store)?.values() ?? [])]
          .filter(([key]) => id === undefined || isUnder(key, id))
          .sort(inOrder)
          .map(([key, record]) => [key, structuredClone(record)] as const),
      ),
  };
}

function changing(stores: Map<StoreName, Map<string, Entry>>): Changing {
  const at = (name: StoreName): Map<string, Entry> => {
    const store = stores.get(name) ?? new Map<string, Entry>();
    stores.set(name, store);
    return store;
  };
  return {
    ...looking(stores),
    put: (store, key, record) => void at(store).set(nameOf(key), [key, structuredClone(record)]),
    remove: (store, key) => void at(store).delete(nameOf(key)),
    removeUnder: (store, id) => {
      for (const [name, [key]] of at(store)) if (isUnder(key, id)) at(store).delete(name);
    },
  };
}

const nameOf = (key: Key): string => JSON.stringify(key);

const isUnder = (key: Key, id: string): boolean => typeof key !== 'string' && key[0] === id;

function inOrder([one]: Entry, [other]: Entry): number {
  const [a, i] = typeof one === 'string' ? [one, 0] : one;
  const [b, j] = typeof other === 'string' ? [other, 0] : other;
  return a < b ? -1 : a > b ? 1 : i - j;
}
