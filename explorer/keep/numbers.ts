// The numbers of a run as a file of version 2 holds them: SI, with the unit in the name. What a file leaves out is as it
// starts; what nobody knows is refused, not dropped.

import { inputInOldFile } from '../state/flat-numbers.js';
import type { Path } from '../state/inputs.js';

/** What reading and writing may add to a limit, relative. */
const roundOff = 1e-9;

/** The numbers of a file of version 2 by their paths; a sentence where one cannot be used. */
export function fromFileNumbers(numbers: Readonly<Record<string, number>>): ReadonlyMap<Path, number> | string {
  const read = new Map<Path, number>();
  for (const [name, value] of Object.entries(numbers)) {
    const row = inputInOldFile(name);
    if (row === undefined) return `‘${name}’ is no number that these pages know`;
    const inRange = value >= row.low * (1 - roundOff) && value <= row.high * (1 + roundOff);
    if (!inRange) return `‘${name}’ is ${String(value)} and would have to be ${String(row.low)} to ${String(row.high)}`;
    if (row.quantity === 'plates' && !Number.isInteger(value))
      return `‘${name}’ is ${String(value)} and no whole number`;
    read.set(row.key, value);
  }
  return read;
}
