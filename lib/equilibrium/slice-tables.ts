// Reading the tables of a curve slice in inner loops: one spline piece, no objects. Beyond 0..1, where a stage of the integrator may
// stray, y* goes on as a straight line and the other tables are read off their outermost piece.

import type { CurveSlice } from './equilibrium-curve.js';

/** y* from a table of relative volatility: y = α x / (1 + (α − 1) x). */
export function readVapour(alphas: Float64Array, intervals: number, x: number): number {
  return readVapourFrom(alphas, 0, intervals, x);
}

/** y* where the table of relative volatility begins at `offset` of a longer array. */
export function readVapourFrom(alphas: Float64Array, offset: number, intervals: number, x: number): number {
  if (!(x >= 0 && x < 1)) return vapourBeyond(alphas, offset, intervals, x);
  const position = x * intervals;
  const k = position | 0;
  const s = position - k;
  const i = offset + 4 * k;
  const alpha = alphas[i]! + s * (alphas[i + 1]! + s * (alphas[i + 2]! + s * alphas[i + 3]!));
  return (alpha * x) / (1 + (alpha - 1) * x);
}

/** dy*⁄dx from a table that begins at `offset`: (α + α′ x (1 − x)) / (1 + (α − 1) x)². */
export function vapourSlopeFrom(alphas: Float64Array, offset: number, intervals: number, x: number): number {
  if (x < 0) return alphas[offset]!;
  if (x >= 1) return 1 / lastAlpha(alphas, offset, intervals);
  const position = x * intervals;
  const k = position | 0;
  const s = position - k;
  const i = offset + 4 * k;
  const c1 = alphas[i + 1]!;
  const c2 = alphas[i + 2]!;
  const c3 = alphas[i + 3]!;
  const alpha = alphas[i]! + s * (c1 + s * (c2 + s * c3));
  const alpha_x = (c1 + s * (2 * c2 + s * 3 * c3)) * intervals;
  const denominator = 1 + (alpha - 1) * x;
  return (alpha + alpha_x * x * (1 - x)) / (denominator * denominator);
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

/** dy*⁄dx on a slice. */
export function vapourSlope(slice: CurveSlice, x: number): number {
  return vapourSlopeFrom(slice.alpha, 0, slice.intervals, x);
}

/** y* beyond 0..1, along the tangents at (0, 0) and (1, 1); NaN stays NaN. */
function vapourBeyond(alphas: Float64Array, offset: number, intervals: number, x: number): number {
  return x < 0 ? alphas[offset]! * x : 1 + (x - 1) / lastAlpha(alphas, offset, intervals);
}

/** α at x = 1. */
function lastAlpha(alphas: Float64Array, offset: number, intervals: number): number {
  const i = offset + 4 * (intervals - 1);
  return alphas[i]! + alphas[i + 1]! + alphas[i + 2]! + alphas[i + 3]!;
}
