// Records in the browser's own database (IndexedDB). A transaction is told to be done when the browser has it on disk
// ('strict'), not when it means to write it some time. A connection that the browser closed is opened again.

import {
  RecordsFault,
  storeNames,
  whyNotKept,
  type Changing,
  type Key,
  type Looking,
  type Records,
  type StoreName,
} from './records.js';

const name = 'kettle-and-plate';
/** Which stores there are. */
const version = 1;
/** How long the database may take to open, ms: some browsers never answer. */
const patience_ms = 8000;

/** The browser's database, open; ends in a `RecordsFault` where it cannot be had. */
export async function recordsInBrowser(factory: IDBFactory | undefined = ownFactory()): Promise<Records> {
  if (factory === undefined) throw new RecordsFault('blocked');
  let connection: Promise<IDBDatabase> | undefined;
  let open: IDBDatabase | undefined;

  const connect = (): Promise<IDBDatabase> => {
    const forget = (): void => void (connection = open = undefined);
    connection ??= opened(factory, forget).then(
      (database) => (open = database),
      (error: unknown) => {
        forget();
        throw faultOf(error);
      },
    );
    return connection;
  };

  /** A transaction; once more on a new connection where the browser has closed the one there was. */
  const begin = async (stores: readonly StoreName[], mode: IDBTransactionMode): Promise<IDBTransaction> => {
    try {
      return transaction(await connect(), stores, mode);
    } catch (error) {
      if (error instanceof RecordsFault) throw error;
      connection = open = undefined;
      return transaction(await connect(), stores, mode);
    }
  };

  const run = async <T>(begun: Promise<IDBTransaction>, work: (records: Changing) => T | Promise<T>): Promise<T> => {
    try {
      const going = await begun;
      const end = endOf(going);
      try {
        const result = await work(changing(going));
        await end;
        return result;
      } catch (error) {
        end.catch(() => undefined);
        abort(going);
        throw error;
      }
    } catch (error) {
      throw faultOf(error);
    }
  };

  await connect();
  return {
    lasting: true,
    look: (stores, work) => run(begin(stores, 'readonly'), work),
    change: (stores, work) => run(begin(stores, 'readwrite'), work),
    putAtOnce: (store, key, record) => {
      if (open === undefined) return;
      try {
        const going = transaction(open, [store], 'readwrite');
        going.objectStore(store).put(record, key as IDBValidKey);
        going.commit();
      } catch {
        // the window is closing: nobody is left to be told
      }
    },
  };
}

function ownFactory(): IDBFactory | undefined {
  try {
    return (globalThis as { indexedDB?: IDBFactory }).indexedDB;
  } catch {
    return undefined; // some browsers throw where it is not allowed
  }
}

function opened(factory: IDBFactory, forget: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = factory.open(name, version);
    let tooLate = false;
    const late = setTimeout(() => {
      tooLate = true;
      reject(new RecordsFault('silent'));
    }, patience_ms);
    request.onupgradeneeded = () => {
      for (const store of storeNames) request.result.createObjectStore(store);
    };
    request.onerror = () => {
      clearTimeout(late);
      reject(faultOf(request.error));
    };
    request.onsuccess = () => {
      clearTimeout(late);
      const database = request.result;
      if (tooLate) database.close();
      // Closed by the browser, or to make way for a newer version or for the deleting of everything.
      database.onclose = forget;
      database.onversionchange = () => {
        database.close();
        forget();
      };
      resolve(database);
    };
  });
}

function transaction(database: IDBDatabase, stores: readonly StoreName[], mode: IDBTransactionMode): IDBTransaction {
  return database.transaction([...stores], mode, { durability: 'strict' });
}

function endOf(going: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    going.oncomplete = () => resolve();
    going.onabort = () => reject(faultOf(going.error));
  });
}

function abort(going: IDBTransaction): void {
  try {
    going.abort();
  } catch {
    // it has ended already
  }
}

function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(faultOf(request.error));
  });
}

function looking(going: IDBTransaction): Looking {
  return {
    get: (store, key) => answerOf<unknown>(going.objectStore(store).get(key as IDBValidKey)),
    all: async (store, id) => {
      const range = id === undefined ? undefined : under(id);
      const [keys, found] = await Promise.all([
        answerOf(going.objectStore(store).getAllKeys(range)),
        answerOf<unknown[]>(going.objectStore(store).getAll(range)),
      ]);
      return keys.map((key, i) => [key as Key, found[i]] as const);
    },
  };
}

function changing(going: IDBTransaction): Changing {
  return {
    ...looking(going),
    put: (store, key, record) => void going.objectStore(store).put(record, key as IDBValidKey),
    remove: (store, key) => void going.objectStore(store).delete(key as IDBValidKey),
    removeUnder: (store, id) => void going.objectStore(store).delete(under(id)),
  };
}

/** Keys [id, number]. */
function under(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

function faultOf(error: unknown): RecordsFault {
  return error instanceof RecordsFault ? error : new RecordsFault(whyNotKept(error), error);
}
