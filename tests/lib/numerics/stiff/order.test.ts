// Order of accuracy of the Rosenbrock methods, measured. A slip in one digit of a tableau shows here.

import { describe, expect, it } from 'vitest';
import { RODAS4 } from '#lib/numerics/stiff/rodas4.js';
import { observedOrder } from '../../../support/convergence.js';
import { constrained, coupled, denseError, driven, endError } from '../../../support/stiff-problems.js';

// Measured between 64 and 256 steps, where errors are still above round-off; the asymptotic slope is reached to this much.
const slopeScatter = 0.25;

describe('RODAS4', () => {
  it.each([driven(), coupled(), constrained()])('gains four powers of the step on $name', (problem) => {
    const order = observedOrder((count) => endError(problem, RODAS4, count), 64, 2);
    expect(order).toBeGreaterThan(4 - slopeScatter);
  });

  it.each([
    { problem: driven(), expected: 4 },
    { problem: coupled(), expected: 4 },
    { problem: constrained(), expected: 3 }, // algebraic components lose one power between the ends of a step
  ])('has a dense output of local order $expected on $problem.name', ({ problem, expected }) => {
    const order = observedOrder((count) => denseError(problem, RODAS4, count), 16, 3);
    expect(order).toBeGreaterThan(expected - slopeScatter);
  });

  it('ends its last two stages at the end of the step, so that the new state meets algebraic equations', () => {
    expect(RODAS4.alpha.slice(-2)).toEqual([1, 1]);
    expect(RODAS4.gammaSums.slice(-2)).toEqual([0, 0]);
  });
});
