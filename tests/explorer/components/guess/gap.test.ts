// The gap between a guess and the answer, by cases that can be reckoned by hand and by laws.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapBetween, heightAt, type Line } from '../../../../explorer/components/guess/gap.js';

/** Rounding in sums of a few dozen numbers of order one. */
const rounding = 9;

const line = (...points: readonly (readonly [number, number])[]): Line => ({
  x: points.map(([x]) => x),
  y: points.map(([, y]) => y),
});
const lines = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.double({ min: -2, max: 2, noNaN: true })), {
    minLength: 2,
    maxLength: 20,
  })
  .map((steps) => {
    let x = 0;
    return line(...steps.map(([step, y]) => [(x += step / 10), y] as const));
  });

describe('the gap', () => {
  it('of two lines that cross is their two triangles, and signed they may cancel', () => {
    const gap = gapBetween(line([0, 0], [2, 2]), line([0, 1], [2, 1]))!;
    expect(gap.area).toBeCloseTo(1, rounding);
    expect(gap.mean).toBeCloseTo(0, rounding);
    expect(gap.meanSize).toBeCloseTo(0.5, rounding);
    expect(Math.abs(gap.largest)).toBeCloseTo(1, rounding);
  });

  it('is measured only where both lines are', () => {
    const gap = gapBetween(line([12, 5], [30, 5]), line([0, 4], [60, 4]))!;
    expect([gap.from, gap.to]).toEqual([12, 30]);
    expect(gap.area).toBeCloseTo(18, rounding);
  });

  it('is not there where the lines share no part of the way, or one of them is a point', () => {
    expect(gapBetween(line([0, 0], [1, 0]), line([2, 0], [3, 0]))).toBeNull();
    expect(gapBetween(line([1, 0]), line([0, 0], [3, 0]))).toBeNull();
    expect(gapBetween(line(), line([0, 0], [3, 0]))).toBeNull();
  });

  it('finds the largest gap at a bend of the answer, where the guess has no point', () => {
    const gap = gapBetween(line([0, 0], [10, 0]), line([0, 0], [4, 3], [10, 0]))!;
    expect([gap.largest, gap.at]).toEqual([-3, 4]);
  });

  it('of a line with itself is nothing', () => {
    fc.assert(
      fc.property(lines, (one) => {
        const gap = gapBetween(one, one)!;
        expect([gap.largest, gap.area, gap.mean]).toEqual([0, 0, 0]);
      }),
    );
  });

  it('of a line moved up is that height everywhere', () => {
    fc.assert(
      fc.property(lines, fc.double({ min: 0.01, max: 5, noNaN: true }), (one, by) => {
        const gap = gapBetween({ x: one.x, y: Array.from(one.y, (y) => y + by) }, one)!;
        for (const value of [gap.largest, gap.mean, gap.meanSize]) expect(value).toBeCloseTo(by, rounding);
        expect(gap.area).toBeCloseTo(by * (gap.to - gap.from), rounding);
      }),
    );
  });

  it('only changes its sign when guess and answer change places', () => {
    fc.assert(
      fc.property(lines, lines, (one, other) => {
        const [there, back] = [gapBetween(one, other), gapBetween(other, one)];
        expect(there === null).toBe(back === null);
        if (there === null || back === null) return;
        expect(there.area).toBeCloseTo(back.area, rounding);
        expect(there.mean).toBeCloseTo(-back.mean, rounding);
        expect(Math.abs(there.largest)).toBeCloseTo(Math.abs(back.largest), rounding);
      }),
    );
  });

  it('has a mean no larger than its mean size, and that no larger than the largest', () => {
    fc.assert(
      fc.property(lines, lines, (one, other) => {
        const gap = gapBetween(one, other);
        if (gap === null) return;
        expect(Math.abs(gap.mean)).toBeLessThanOrEqual(gap.meanSize + 1e-12);
        expect(gap.meanSize).toBeLessThanOrEqual(Math.abs(gap.largest) + 1e-12);
      }),
    );
  });
});

describe('the height of a line', () => {
  it('is that of its points, straight between them, and holds beyond its ends', () => {
    const one = line([1, 10], [3, 20], [4, 0]);
    expect([0, 1, 2, 3, 3.5, 9].map((x) => heightAt(one, x))).toEqual([10, 10, 15, 20, 10, 0]);
  });
});
