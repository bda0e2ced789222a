// What is said of a kept notebook beside its text: enough to list it, and to see whether another window wrote it.

import type { Looking } from './records.js';

export interface Head {
  readonly name: string;
  /** When it was last written, ISO; empty where the record does not say. */
  readonly written: string;
  /** How often it was written; the number of the latest change. */
  readonly count: number;
  /** The window that wrote it last. */
  readonly writer: string;
  /** Letters of the changes written since the base. */
  readonly journal: number;
  /** The number of its deletion, which counts up whatever the clock does; null where it stands on the shelf. */
  readonly deleted: number | null;
}

/** A head as it stands in the records: what is damaged in it is as good as not said. */
export function asHead(record: unknown): Head | undefined {
  if (record === undefined) return undefined;
  const { name, written, count, writer, journal, deleted } = fieldsOf(record);
  return {
    name: typeof name === 'string' ? name : '',
    written: typeof written === 'string' ? written : '',
    count: typeof count === 'number' && Number.isSafeInteger(count) ? count : 0,
    writer: typeof writer === 'string' ? writer : '',
    journal: typeof journal === 'number' ? journal : Infinity,
    deleted: typeof deleted === 'number' ? deleted : null,
  };
}

export async function headOf(records: Looking, id: string): Promise<Head | undefined> {
  return asHead(await records.get('heads', id));
}

/** All heads with their ids. */
export async function allHeads(records: Looking): Promise<readonly (Head & { readonly id: string })[]> {
  const found = await records.all('heads');
  return found.flatMap(([key, record]) => {
    const head = asHead(record);
    return typeof key === 'string' && head !== undefined ? [{ id: key, ...head }] : [];
  });
}

/** The fields of what should be a record; none where it is something else. */
export function fieldsOf(record: unknown): Readonly<Record<string, unknown>> {
  return typeof record === 'object' && record !== null && !Array.isArray(record) ? { ...record } : {};
}
