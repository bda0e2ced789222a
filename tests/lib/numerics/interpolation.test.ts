// Splines and Chebyshev sums: exactness on polynomials they must reproduce, and measured orders of accuracy.

import { describe, expect, it } from 'vitest';
import { InputError } from '#lib/index.js';
import { chebyshevBasis, chebyshevNodes, chebyshevTransform } from '#lib/numerics/chebyshev.js';
import { splineSlopes, writeCubic } from '#lib/numerics/spline.js';

const rounding = 1e-12;

/** Largest error of the clamped spline of sin(3x) on [0, 1] with n intervals. */
function splineError(n: number): number {
  const f = (x: number): number => Math.sin(3 * x);
  const values = Float64Array.from({ length: n + 1 }, (_, k) => f(k / n));
  const slopes = splineSlopes(values, 3 / n, (3 * Math.cos(3)) / n);
  const cubic = new Float64Array(4);
  let largest = 0;
  for (let i = 0; i < 50 * n; i++) {
    const k = Math.floor(i / 50);
    const s = (i % 50) / 50;
    writeCubic(cubic, 0, values[k]!, slopes[k]!, values[k + 1]!, slopes[k + 1]!);
    const value = cubic[0]! + s * (cubic[1]! + s * (cubic[2]! + s * cubic[3]!));
    largest = Math.max(largest, Math.abs(value - f((k + s) / n)));
  }
  return largest;
}

describe('clamped cubic splines', () => {
  it('reproduce a cubic exactly', () => {
    const f = (t: number): number => 2 - t + 3 * t ** 2 - 0.5 * t ** 3;
    const slope = (t: number): number => -1 + 6 * t - 1.5 * t ** 2;
    const slopes = splineSlopes(Float64Array.from([0, 1, 2, 3, 4], f), slope(0), slope(4));
    slopes.forEach((m, k) => {
      expect(Math.abs(m - slope(k))).toBeLessThan(rounding);
    });
  });

  it('gain four orders: halving the interval divides the error by sixteen', () => {
    const order = Math.log2(splineError(16) / splineError(32));
    expect(Math.abs(order - 4)).toBeLessThan(0.15);
  });

  it('have a continuous second derivative at the knots', () => {
    const values = Float64Array.of(1, 3, 2, 5, 4);
    const slopes = splineSlopes(values, 0.5, -1);
    const left = new Float64Array(4);
    const right = new Float64Array(4);
    for (let k = 1; k < 4; k++) {
      writeCubic(left, 0, values[k - 1]!, slopes[k - 1]!, values[k]!, slopes[k]!);
      writeCubic(right, 0, values[k]!, slopes[k]!, values[k + 1]!, slopes[k + 1]!);
      expect(Math.abs(2 * left[2]! + 6 * left[3]! - 2 * right[2]!)).toBeLessThan(rounding);
    }
  });

  it('need two knots', () => {
    expect(() => splineSlopes(Float64Array.of(1), 0, 0)).toThrow(InputError);
  });
});

describe('Chebyshev sums', () => {
  it('reproduce a polynomial and its derivative exactly', () => {
    const n = 6;
    const f = (u: number): number => 1 - u + 2 * u ** 3 + u ** 5;
    const slope = (u: number): number => -1 + 6 * u ** 2 + 5 * u ** 4;
    const values = Float64Array.from(chebyshevNodes(n), f);
    const transform = chebyshevTransform(n);
    const basis = new Float64Array(n);
    const slopes = new Float64Array(n);
    for (const u of [-1, -0.37, 0, 0.8, 1]) {
      chebyshevBasis(u, basis, slopes);
      let value = 0;
      let derivative = 0;
      for (let j = 0; j < n; j++) {
        let coefficient = 0;
        for (let i = 0; i < n; i++) coefficient += transform[j * n + i]! * values[i]!;
        value += coefficient * basis[j]!;
        derivative += coefficient * slopes[j]!;
      }
      expect(Math.abs(value - f(u))).toBeLessThan(rounding);
      expect(Math.abs(derivative - slope(u))).toBeLessThan(rounding);
    }
  });
});
