// Checks an argument that must lie in 0..1.

import { InputError } from '../errors.js';

/** The value, with rounding beyond the ends taken off; an InputError when it is not in 0..1. */
export function share(argument: string, value: number, expected: string): number {
  if (typeof value === 'number') {
    if (value >= 0 && value <= 1) return value;
    if (value >= -ROUNDING && value < 0) return 0;
    if (value > 1 && value <= 1 + ROUNDING) return 1;
  }
  throw new InputError({ argument, value, expected });
}

const ROUNDING = 1e-9;
