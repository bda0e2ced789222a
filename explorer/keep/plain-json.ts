// What other programs may have put into a file: checked before anything else looks at it. A file is data only;
// nothing in it is ever run.

import { limits } from './format.js';

/** Names that mean something to every object, or that whoever checks a file's layout leaves out; either could be taken for data. */
const reserved = new Set([...Object.getOwnPropertyNames(Object.prototype), 'prototype']);

/** Whether a name means something to every object: none of a page or an entry may. */
export function isReserved(name: string): boolean {
  return reserved.has(name);
}

/** What is wrong with JSON from outside, as the end of 'it ...'; undefined where nothing is. */
export function faultInJson(value: unknown): string | undefined {
  const open: { readonly value: unknown; readonly depth: number }[] = [{ value, depth: 0 }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    // JSON has no word for it, but 1e999 is read as that.
    if (typeof next.value === 'number' && !Number.isFinite(next.value)) return 'holds a number that is too large';
    if (typeof next.value !== 'object' || next.value === null) continue;
    if (next.depth >= limits.depth) return `goes more than ${String(limits.depth)} levels deep`;
    for (const [name, inside] of Object.entries(next.value)) {
      if (reserved.has(name)) return `uses the name ‘${name}’, which no notebook does`;
      open.push({ value: inside, depth: next.depth + 1 });
    }
  }
  return undefined;
}
