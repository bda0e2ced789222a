// Reading the tables of a curve slice in inner loops: one spline piece, no calls, no objects.
// A mole fraction a hair outside 0..1 (a stage of the integrator) is read off the outermost piece.

import type { CurveSlice } from './equilibrium-curve.js';

/** y* from a table of relative volatility: y = α x / (1 + (α − 1) x). */
export function readVapour(alphas: Float64Array, intervals: number, x: number): number {
  return readVapourFrom(alphas, 0, intervals, x);
}

/** y* where the table of relative volatility begins at `offset` of a longer array. */
export function readVapourFrom(alphas: Float64Array, offset: number, intervals: number, x: number): number {
  const position = x * intervals;
  const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
  const s = position - k;
  const i = offset + 4 * k;
  const alpha = alphas[i]! + s * (alphas[i + 1]! + s * (alphas[i + 2]! + s * alphas[i + 3]!));
  return (alpha * x) / (1 + (alpha - 1) * x);
}

/** Value of any table of a slice at x. */
export function readValue(table: Float64Array, intervals: number, x: number): number {
  const position = x * intervals;
  const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
  const s = position - k;
  const i = 4 * k;
  return table[i]! + s * (table[i + 1]! + s * (table[i + 2]! + s * table[i + 3]!));
}

/** Derivative by x of any table of a slice. */
export function readSlope(table: Float64Array, intervals: number, x: number): number {
  const position = x * intervals;
  const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
  const s = position - k;
  const i = 4 * k;
  return (table[i + 1]! + s * (2 * table[i + 2]! + s * 3 * table[i + 3]!)) * intervals;
}

/** dy*⁄dx on a slice: (α + α′ x (1 − x)) / (1 + (α − 1) x)². */
export function vapourSlope(slice: CurveSlice, x: number): number {
  const alpha = readValue(slice.alpha, slice.intervals, x);
  const alpha_x = readSlope(slice.alpha, slice.intervals, x);
  const denominator = 1 + (alpha - 1) * x;
  return (alpha + alpha_x * x * (1 - x)) / (denominator * denominator);
}
