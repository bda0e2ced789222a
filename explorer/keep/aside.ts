// Files that were refused, kept byte for byte so that they can be had again unchanged, whatever happened to
// the place they came from.

import { newId } from './new-id.js';
import { get, keysUnder, put, remove, type Shelves } from './storage.js';

const prefix = 'kettle-and-plate.aside.';
/** Files kept aside; the oldest goes first. */
const mostFiles = 5;
/** Largest file that is kept aside, bytes: more would push the notebooks out. */
export const largestAside = 1_000_000;

export interface AsideFile {
  readonly id: string;
  readonly name: string;
  /** When it was refused, ISO. */
  readonly at: string;
  /** Why, a sentence. */
  readonly why: string;
}

/** Keeps a refused file; false where it is too large or the storage says no. */
export function keepAside(shelves: Shelves | undefined, file: Omit<AsideFile, 'id'>, bytes: Uint8Array): boolean {
  if (bytes.length > largestAside) return false;
  const id = `${file.at}.${newId()}`;
  const record = JSON.stringify({ ...file, bytes: toBase64(bytes) });
  if (put(shelves, prefix + id, record) !== undefined) return false;
  for (const old of keysUnder(shelves, prefix).slice(0, -mostFiles)) remove(shelves, prefix + old);
  return true;
}

/** Files kept aside, the latest first. */
export function asideFiles(shelves: Shelves | undefined): readonly AsideFile[] {
  return keysUnder(shelves, prefix)
    .reverse()
    .flatMap((id) => {
      const record = recordOf(shelves, id);
      return record === undefined ? [] : [{ id, name: record.name, at: record.at, why: record.why }];
    });
}

/** A file kept aside, as it was. */
export function asideBytes(shelves: Shelves | undefined, id: string): Uint8Array<ArrayBuffer> | undefined {
  const record = recordOf(shelves, id);
  return record === undefined ? undefined : Uint8Array.from(atob(record.bytes), (letter) => letter.charCodeAt(0));
}

export function dropAside(shelves: Shelves | undefined, id: string): void {
  remove(shelves, prefix + id);
}

function recordOf(shelves: Shelves | undefined, id: string): (AsideFile & { readonly bytes: string }) | undefined {
  const text = get(shelves, prefix + id);
  return text === null ? undefined : (JSON.parse(text) as AsideFile & { readonly bytes: string });
}

function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}
