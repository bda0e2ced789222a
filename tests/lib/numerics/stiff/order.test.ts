// Order of accuracy of the Rosenbrock methods, measured. The tableaus' own conditions stand in order-conditions.test.ts.

import { describe, expect, it } from 'vitest';
import { RODAS4 } from '#lib/numerics/stiff/rodas4.js';
import { RODAS5P } from '#lib/numerics/stiff/rodas5p.js';
import { observedOrder } from '../../../support/convergence.js';
import { constrained, coupled, denseError, driven, endError } from '../../../support/stiff-problems.js';

// Measured between 64 and 256 steps, where errors are still above round-off; the asymptotic slope is reached to this much.
const slopeScatter = 0.25;

const problems = [driven(), coupled(), constrained()];

describe('RODAS4', () => {
  it.each(problems)('gains four powers of the step on $name', (problem) => {
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
});

describe('RODAS5P', () => {
  it.each(problems)('gains five powers of the step on $name', (problem) => {
    const order = observedOrder((count) => endError(problem, RODAS5P, count), 16, 2);
    expect(order).toBeGreaterThan(5 - slopeScatter);
  });

  it.each([
    { problem: driven(), expected: 5, firstCount: 16 },
    { problem: coupled(), expected: 5, firstCount: 16 },
    { problem: constrained(), expected: 4, firstCount: 64 }, // algebraic components lose one power between the ends of a step
  ])('has a dense output of local order $expected on $problem.name', ({ problem, expected, firstCount }) => {
    const order = observedOrder((count) => denseError(problem, RODAS5P, count), firstCount, 2);
    expect(order).toBeGreaterThan(expected - slopeScatter);
  });
});

describe.each([RODAS4, RODAS5P])('$name', ({ alpha, gammaSums }) => {
  it('ends its last stages at the end of the step, so that the new state meets algebraic equations', () => {
    expect(alpha.slice(-2)).toEqual([1, 1]);
    expect(gammaSums.slice(-2)).toEqual([0, 0]);
  });
});
