// Values that the entries of a page share, by name, as they come from a file: what is wrong with one that is known
// here. One that nobody here reads is kept as it is.

import type { Json } from './notebook-record.js';
import { faultInOwnStills, ownStillsName } from './own-stills-check.js';
import { faultInWorkings, workingsName } from './workings.js';

const faults: Readonly<Record<string, (value: Json) => string | undefined>> = {
  [ownStillsName]: faultInOwnStills,
  [workingsName]: faultInWorkings,
};

/** What is wrong with a shared value, and what would be right. */
export function faultInShared(name: string, value: Json): string | undefined {
  return Object.hasOwn(faults, name) ? faults[name]!(value) : undefined;
}
