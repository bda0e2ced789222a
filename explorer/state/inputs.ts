// Every number that can be set, one row an input: its path in what the reader has set, what it is called, its limits in SI,
// how far a step goes in each system of units, and the end of the sentence that corrects it. A new input is a row.

import type { Input, Path } from './input.js';
import { inputsOfColumn } from './inputs-of-column.js';
import { inputsOfRun } from './inputs-of-run.js';
import { inputsOfStill } from './inputs-of-still.js';

export type { Grain, Input, Measured, Path } from './input.js';

export const inputs: readonly Input[] = [...inputsOfRun, ...inputsOfStill, ...inputsOfColumn];

const byPath = new Map<string, Input>(inputs.map((row) => [row.key, row]));
const byName = new Map<string, Input>(inputs.map((row) => [row.name, row]));

/** The row of a path; undefined where nothing that can be set stands there. */
export function inputAt(path: string): Input | undefined {
  return byPath.get(path);
}

/** The row of a name in an address or a sentence. */
export function inputNamed(name: string): Input | undefined {
  return byName.get(name);
}

export function isPath(path: unknown): path is Path {
  return typeof path === 'string' && byPath.has(path);
}
