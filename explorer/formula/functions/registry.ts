// Every function and constant a formula may name. A function is one entry in one of the lists; the page's list, the
// guide and the tests follow.

import { kinds } from '../kinds.js';
import { boilingFunctions } from './boiling.js';
import { mathsFunctions, type MathsFunction } from './maths.js';
import type { Example, OwnFunction } from './own-function.js';
import { strengthFunctions } from './strength.js';

export const ownFunctions: readonly OwnFunction[] = [...strengthFunctions, ...boilingFunctions];

export const constants: readonly { readonly name: string; readonly value: number; readonly says: string }[] = [
  { name: 'pi', value: Math.PI, says: 'circumference of a circle over its diameter, 3.1416' },
  { name: 'e', value: Math.E, says: 'base of the natural logarithm, 2.7183' },
];

const own = new Map(ownFunctions.map((one) => [one.name, one]));
const maths = new Map(mathsFunctions.map((one) => [one.name, one]));
const fixed = new Map(constants.map(({ name, value }) => [name, value]));

export function ownFunctionNamed(name: string): OwnFunction | undefined {
  return own.get(name);
}

export function mathsFunctionNamed(name: string): MathsFunction | undefined {
  return maths.get(name);
}

export function constantNamed(name: string): number | undefined {
  return fixed.get(name);
}

export function isFunctionName(name: string): boolean {
  return own.has(name) || maths.has(name);
}

/** Names of all functions and constants. */
export const builtNames: readonly string[] = [...own.keys(), ...maths.keys(), ...fixed.keys()];

/** A function as the list of the page shows it. */
export interface ListedFunction {
  readonly name: string;
  readonly signature: string;
  readonly says: string;
  /** What it takes and gives, with ranges; '' where the signature says it all. */
  readonly takes: string;
  readonly example: Example;
}

export const listedFunctions: readonly ListedFunction[] = [
  ...ownFunctions.map((one) => ({
    name: one.name,
    signature: signatureOf(one),
    says: one.says,
    takes: one.takes.map(({ name, range }) => `${name}: ${range}`).join('; '),
    example: one.example,
  })),
  ...mathsFunctions.map(({ name, signature, says, example }) => ({ name, signature, says, takes: '', example })),
];

/** 'boilingPoint(strength, pressure)'. */
export function signatureOf({ name, takes }: OwnFunction): string {
  return `${name}(${takes.map((argument) => argument.name).join(', ')})`;
}

/** 'gives a temperature'. */
export function givesWords({ gives }: OwnFunction): string {
  return `gives ${kinds[gives].words}`;
}
