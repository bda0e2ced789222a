// The argument in 0..1 at which a smooth monotone function is zero, to rounding error.

import { bracketedNewton, type ValueAndSlope } from '../numerics/root.js';

/**
 * Root between 0 and 1, from a start near it. The safeguarded search ends within 1e-9 of the argument; Newton's error is
 * about the square of its step, so one plain step more leaves rounding only, also right beside an end of the bracket.
 */
export function rootBetweenZeroAndOne(evaluate: (u: number, out: ValueAndSlope) => void, start: number): number {
  const near = bracketedNewton(evaluate, 0, 1, start, 1e-9 * start);
  const at: ValueAndSlope = { value: 0, slope: 0 };
  evaluate(near, at);
  return Math.min(1, Math.max(0, near - at.value / at.slope));
}
