// Reading a slice where a solver may stray: beyond 0..1 the vapour goes on along its tangents, without a pole.

import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { readVapour, vapourSlope } from '#lib/equilibrium/slice-tables.js';

const slice = createEthanolWater().curve('redlich-kister').at(101325);
const vapour = (x: number): number => readVapour(slice.alpha, slice.intervals, x);

describe('the vapour read off a slice', () => {
  it.each([
    { end: 0, beyond: -0.3 },
    { end: 1, beyond: 1.4 },
  ])('goes on as a straight line beyond $end', ({ end, beyond }) => {
    const slope = vapourSlope(slice, end);
    expect(vapour(end)).toBeCloseTo(end, 14);
    expect(vapour(beyond)).toBeCloseTo(end + slope * (beyond - end), 12);
    expect(vapourSlope(slice, beyond)).toBeCloseTo(slope, 12);
  });

  it('has no corner at the ends', () => {
    const small = 1e-7;
    const curvature = 300; // |y″| ≤ 2 α² near 0, α about 11
    for (const end of [0, 1]) {
      const inside = (vapour(end === 0 ? small : 1 - small) - end) / (end === 0 ? small : -small);
      expect(Math.abs(inside - vapourSlope(slice, end === 0 ? -1 : 2))).toBeLessThan(curvature * small);
    }
  });

  it('has the slope of its own values', () => {
    const step = 1e-6;
    for (let x = 0.0113; x < 1; x += 0.0371) {
      const difference = (vapour(x + step) - vapour(x - step)) / (2 * step);
      expect(Math.abs(difference - vapourSlope(slice, x))).toBeLessThan(1e-7);
    }
  });

  it('passes on what is not a number', () => {
    expect(vapour(NaN)).toBeNaN();
  });
});
