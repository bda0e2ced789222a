// The liquid that a vapour is in equilibrium with: the inverse of y* on a slice, for dew temperatures.

import type { MoleFraction } from '../units/quantities.js';
import type { CurveSlice } from './equilibrium-curve.js';
import { readVapour, vapourSlope } from './slice-tables.js';

const CLOSE = 1e-13;

/** x with y*(x) = y on a slice, by Newton kept inside a shrinking bracket; y* rises with x. */
export function liquidOnSlice(slice: CurveSlice, vapour: MoleFraction): MoleFraction {
  if (vapour <= 0) return 0;
  if (vapour >= 1) return 1;
  let low = 0;
  let high = 1;
  let x = vapour * vapour; // below the diagonal over most of the range
  for (let i = 0; i < 100; i++) {
    const miss = readVapour(slice.alpha, slice.intervals, x) - vapour;
    if (Math.abs(miss) < CLOSE) return x;
    if (miss > 0) high = x;
    else low = x;
    const next = x - miss / vapourSlope(slice, x);
    x = next > low && next < high ? next : (low + high) / 2;
    if (high - low < CLOSE) return x;
  }
  return x;
}
