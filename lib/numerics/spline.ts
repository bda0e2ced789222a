// Cubic splines on a uniform grid: twice continuously differentiable, with given slopes at both ends.
//
// With f the values and m the slopes per interval at the knots, continuity of the second derivative asks
//   m[k−1] + 4 m[k] + m[k+1] = 3 (f[k+1] − f[k−1]),  m[0] and m[n] given (a clamped spline).
// In interval k, with s in [0, 1], the polynomial has the coefficients
//   c0 = f0, c1 = m0, c2 = 3 (f1 − f0) − 2 m0 − m1, c3 = 2 (f0 − f1) + m0 + m1.

import { InputError } from '../errors.js';

/**
 * Slopes at the knots of the cubic spline through values on a uniform grid, clamped at both ends.
 *
 * Equation: m[k−1] + 4 m[k] + m[k+1] = 3 (f[k+1] − f[k−1]) with m[0], m[n] given.
 * @param values Function values f at the n + 1 knots, at least two.
 * @param startSlope Slope at the first knot, per interval.
 * @param endSlope Slope at the last knot, per interval.
 * @returns Slopes m at the knots, per interval.
 * @throws InputError when there are fewer than two knots.
 * @example splineSlopes(Float64Array.of(0, 1, 4, 9), 0, 6)[1] // → 2
 * Source: C. de Boor, A Practical Guide to Splines, Springer 1978, chapter 4.
 */
export function splineSlopes(values: Float64Array, startSlope: number, endSlope: number): Float64Array {
  const last = values.length - 1;
  if (last < 1) throw new InputError({ argument: 'values', value: values.length, expected: 'at least two knots' });
  const slopes = new Float64Array(last + 1);
  const factor = new Float64Array(last + 1);
  slopes[0] = startSlope;
  slopes[last] = endSlope;
  for (let k = 1; k < last; k++) {
    const pivot = 4 - factor[k - 1]!;
    factor[k] = 1 / pivot;
    slopes[k] = (3 * (values[k + 1]! - values[k - 1]!) - slopes[k - 1]!) / pivot;
  }
  for (let k = last - 1; k > 0; k--) slopes[k] = slopes[k]! - factor[k]! * slopes[k + 1]!;
  return slopes;
}

/**
 * Writes the four coefficients of the cubic between two knots, lowest power first.
 *
 * Equation: c0 = f0, c1 = m0, c2 = 3 (f1 − f0) − 2 m0 − m1, c3 = 2 (f0 − f1) + m0 + m1.
 * @param table Where to write, four entries from `offset` on.
 * @param offset Index of c0 in the table.
 * @param f0 Value at the left knot.
 * @param m0 Slope at the left knot, per interval.
 * @param f1 Value at the right knot.
 * @param m1 Slope at the right knot, per interval.
 * @example writeCubic(new Float64Array(4), 0, 0, 0, 1, 2) // → undefined
 * Source: definition (cubic Hermite interpolation).
 */
export function writeCubic(table: Float64Array, offset: number, f0: number, m0: number, f1: number, m1: number): void {
  const rise = f1 - f0;
  table[offset] = f0;
  table[offset + 1] = m0;
  table[offset + 2] = 3 * rise - 2 * m0 - m1;
  table[offset + 3] = m0 + m1 - 2 * rise;
}
