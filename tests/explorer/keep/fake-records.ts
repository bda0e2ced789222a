// Records for tests: in memory, said to last, with everything that may go wrong with a browser's database, and an
// account of what is written.

import { recordsInMemory } from '../../../explorer/keep/records-in-memory.js';
import { RecordsFault, type NotKept, type Records } from '../../../explorer/keep/records.js';

export interface FakeRecords extends Records {
  /** Records put or removed so far, and the letters in them. */
  readonly account: { records: number; letters: number };
  /** Set: every transaction ends in this. */
  fault: NotKept | undefined;
  /** Set: no transaction begins before this one is over. */
  gate: Promise<unknown> | undefined;
}

export function fakeRecords(): FakeRecords {
  const records = recordsInMemory(true);
  const account = { records: 0, letters: 0 };
  const begin = async (): Promise<void> => {
    await fake.gate;
    if (fake.fault !== undefined) throw new RecordsFault(fake.fault);
  };
  const count = (record: unknown): void => {
    account.records += 1;
    account.letters += record instanceof Uint8Array ? record.length : JSON.stringify(record).length;
  };
  const fake: FakeRecords = {
    lasting: true,
    account,
    fault: undefined,
    gate: undefined,
    look: async (stores, work) => {
      await begin();
      return records.look(stores, work);
    },
    change: async (stores, work) => {
      await begin();
      return records.change(stores, (all) =>
        work({
          ...all,
          put: (store, key, record) => {
            count(record);
            all.put(store, key, record);
          },
        }),
      );
    },
    putAtOnce: (store, key, record) => {
      count(record);
      records.putAtOnce(store, key, record);
    },
  };
  return fake;
}

/** Lets everything that is under way come to its end. */
export async function settled(): Promise<void> {
  for (let i = 0; i < 200; i++) await Promise.resolve();
}

/** A clock that goes only when it is told to. */
export class Clock {
  time_ms = 0;
  #due: { at: number; run: () => void }[] = [];

  readonly timer = (run: () => void, ms: number): (() => void) => {
    const one = { at: this.time_ms + ms, run };
    this.#due.push(one);
    return () => (this.#due = this.#due.filter((other) => other !== one));
  };

  async pass(ms: number): Promise<void> {
    const end = this.time_ms + ms;
    await settled();
    for (;;) {
      const next = this.#due.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
      if (next === undefined) break;
      this.time_ms = next.at;
      this.#due = this.#due.filter((other) => other !== next);
      next.run();
      await settled();
    }
    this.time_ms = end;
  }
}
