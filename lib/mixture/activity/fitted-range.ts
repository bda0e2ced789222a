// The temperatures a parameter set was fitted to, read from the set.

import type { ParameterSet } from '../../data/parameter-set.js';
import { InputError } from '../../errors.js';

/** The set's range of temperature, K. */
export function fittedRange(set: ParameterSet): readonly [number, number] {
  const [low, high] = set.range['temperature'] ?? [];
  if (low === undefined || high === undefined) {
    throw new InputError({ argument: 'set.range', value: set.range, expected: 'a range of temperature' });
  }
  return [low, high];
}
