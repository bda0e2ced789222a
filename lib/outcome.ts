// What an outcome found, for whoever takes it for granted.

import { recordFault, refuse } from './arguments.js';
import { InputError, type Outcome } from './errors.js';

/**
 * What an outcome found, where it is taken for granted that there is something.
 *
 * @param outcome An outcome, such as azeotrope gives.
 * @returns The value it found.
 * @throws Error with the outcome's message when it found nothing; InputError when it is no outcome.
 * @example foundIn(azeotrope(101325)).moleFraction // → 0.8946
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function foundIn<Value>(outcome: Outcome<Value, string>): { readonly found: true } & Value {
  refuse(recordFault('outcome', outcome));
  const { found }: { readonly found: unknown } = outcome;
  if (typeof found !== 'boolean') {
    throw new InputError({ argument: 'outcome.found', value: found, expected: 'true or false' });
  }
  if (outcome.found) return outcome;
  throw new Error(outcome.message);
}
