// Files and notebooks that could not be read, kept byte for byte so that they can be had again unchanged, whatever
// happened to the place they came from. They have a budget of their own, and files never push out notebooks.

import { fieldsOf } from './head.js';
import { newId } from './new-id.js';
import type { Changing, Looking, Records, StoreName } from './records.js';

/** Where it came from: a file that was brought in, or a notebook that was kept here. */
export type AsideKind = 'file' | 'notebook';

/** Of each kind so many, and so many bytes of all of them; the oldest goes first. */
export const asideBudget = { count: 10, bytes: 32_000_000 } as const;
/** Largest file that is kept aside, bytes: it has a place of its own where it came from. A notebook has none but here. */
export const largestAside = 8_000_000;

export interface AsideFile {
  readonly id: string;
  readonly kind: AsideKind;
  readonly name: string;
  /** When it was refused, ISO. */
  readonly at: string;
  /** Why, a sentence. */
  readonly why: string;
}

interface AsideRecord extends Omit<AsideFile, 'id'> {
  /** Counts up, whatever the clock does. */
  readonly order: number;
  readonly size: number;
}

export const asideStores: readonly StoreName[] = ['asides', 'aside-bytes'];

/** Keeps something aside; false where it is too large. The very same bytes are kept once. */
export async function putAside(
  all: Changing,
  aside: Omit<AsideFile, 'id'>,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  if (bytes.length > (aside.kind === 'notebook' ? asideBudget.bytes : largestAside)) return false;
  const there = await asideRecords(all);
  const order = Math.max(0, ...there.map((one) => one.order)) + 1;
  const alike = there.filter(({ kind, size }) => kind === aside.kind && size === bytes.length);
  let id = newId();
  for (const one of alike) if (sameBytes(await all.get('aside-bytes', one.id), bytes)) id = one.id;
  all.put('asides', id, { ...aside, order, size: bytes.length } satisfies AsideRecord);
  all.put('aside-bytes', id, bytes);
  let left = asideBudget.bytes - bytes.length;
  const others = there.filter((one) => one.kind === aside.kind && one.id !== id).sort((a, b) => b.order - a.order);
  for (const [place, one] of others.entries()) {
    left -= one.size;
    if (place + 1 < asideBudget.count && left >= 0) continue;
    all.remove('asides', one.id);
    all.remove('aside-bytes', one.id);
  }
  return true;
}

/** Keeps a refused file aside; false where it is too large or cannot be written. */
export async function keepAside(
  records: Records,
  file: Omit<AsideFile, 'id' | 'kind'>,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  try {
    return await records.change(asideStores, (all) => putAside(all, { ...file, kind: 'file' }, bytes));
  } catch {
    return false;
  }
}

/** What is kept aside, the latest first. A damaged record is there too, by what can be said of it. */
export async function asideFiles(records: Records): Promise<readonly AsideFile[]> {
  const all = await records.look(asideStores, asideRecords);
  return all.sort((a, b) => b.order - a.order).map(({ id, kind, name, at, why }) => ({ id, kind, name, at, why }));
}

/** Bytes of what is kept aside, as they were; undefined where they cannot be had. */
export async function asideBytes(records: Records, id: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const bytes = await records.look(asideStores, (all) => all.get('aside-bytes', id));
  return bytes instanceof Uint8Array ? new Uint8Array(bytes) : undefined;
}

export function dropAside(records: Records, id: string): Promise<void> {
  return records.change(asideStores, (all) => {
    all.remove('asides', id);
    all.remove('aside-bytes', id);
  });
}

async function asideRecords(all: Looking): Promise<(AsideRecord & { readonly id: string })[]> {
  const found = await all.all('asides');
  return found.map(([key, record]) => {
    const { kind, name, at, why, order, size } = fieldsOf(record);
    return {
      id: String(key),
      kind: kind === 'notebook' ? kind : 'file',
      name: typeof name === 'string' ? name : 'without a name',
      at: typeof at === 'string' ? at : '',
      why: typeof why === 'string' ? why : 'What was said of it is damaged.',
      order: typeof order === 'number' ? order : 0,
      size: typeof size === 'number' ? size : 0,
    };
  });
}

function sameBytes(one: unknown, other: Uint8Array): boolean {
  return one instanceof Uint8Array && one.length === other.length && one.every((byte, i) => byte === other[i]);
}
