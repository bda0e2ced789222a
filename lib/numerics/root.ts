// Roots of one equation in one unknown that are known to lie in a bracket.
//
// bracketedRoot: Chandrupatla's method (T. R. Chandrupatla, Adv. Eng. Softw. 28 (1997) 145-149), inverse
// quadratic steps where they are safe, halving elsewhere. bracketedNewton: Newton steps with a given slope,
// halving where a step would leave the bracket or stop shrinking it.

import { InputError } from '../errors.js';

/** Value and slope of a function at one point. */
export interface ValueAndSlope {
  value: number;
  slope: number;
}

const MAX_ITERATIONS = 200;

/**
 * The point in [low, high] where a continuous function is zero.
 *
 * Equation: f(x) = 0 by inverse quadratic interpolation safeguarded by halving (Chandrupatla 1997).
 * @param evaluate The function f; its values at the two ends must not have the same sign.
 * @param low One end of the bracket.
 * @param high The other end of the bracket.
 * @param tolerance Width of the final bracket, same unit as x; default is rounding error.
 * @returns The root x.
 * @throws InputError when both ends have the same sign or a value is not a number.
 * @example bracketedRoot((x) => x * x - 2, 0, 2) // → 1.41421356
 * Source: T. R. Chandrupatla, Adv. Eng. Softw. 28 (1997) 145-149.
 */
export function bracketedRoot(evaluate: (x: number) => number, low: number, high: number, tolerance = 0): number {
  let a = high;
  let b = low;
  let fa = evaluate(a);
  let fb = evaluate(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  requireSignChange(low, high, fb, fa);
  let t = 0.5;
  for (let i = 0; i < MAX_ITERATIONS; i++) {
    const x = a + t * (b - a);
    const fx = evaluate(x);
    let c: number;
    let fc: number;
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    if (fa === 0 || fb === 0) return best;
    const width = Math.abs(b - a);
    const limit = tolerance + 2 * Number.EPSILON * Math.abs(best);
    if (width <= limit) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
      t = (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
    } else {
      t = 0.5;
    }
    const least = (0.5 * limit) / width;
    t = Math.min(1 - least, Math.max(least, t));
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}

/**
 * The point in [low, high] where a function with a known slope is zero.
 *
 * Equation: x ← x − f(x)/f′(x), halving the bracket where that step leaves it or shrinks too little.
 * @param evaluate Fills `out` with f(x) and f′(x); f at the two ends must not have the same sign.
 * @param low One end of the bracket.
 * @param high The other end of the bracket.
 * @param start First guess; outside the bracket its middle is taken.
 * @param tolerance Step at which the search ends, same unit as x.
 * @returns The root x.
 * @throws InputError when both ends have the same sign or a value is not a number.
 * @example bracketedNewton((x, out) => { out.value = x * x - 2; out.slope = 2 * x; }, 0, 2, 1) // → 1.41421356
 * Source: Newton's method with bisection as safeguard; W. H. Press et al., Numerical Recipes, 3rd ed. 2007, section 9.4.
 */
export function bracketedNewton(
  evaluate: (x: number, out: ValueAndSlope) => void,
  low: number,
  high: number,
  start: number,
  tolerance = 1e-14,
): number {
  const out: ValueAndSlope = { value: 0, slope: 0 };
  evaluate(low, out);
  const atLow = out.value;
  if (atLow === 0) return low;
  evaluate(high, out);
  const atHigh = out.value;
  if (atHigh === 0) return high;
  requireSignChange(low, high, atLow, atHigh);
  let negative = atLow < 0 ? low : high;
  let positive = atLow < 0 ? high : low;
  let x = start > low && start < high ? start : 0.5 * (low + high);
  let previous = Math.abs(high - low);
  for (let i = 0; i < MAX_ITERATIONS; i++) {
    evaluate(x, out);
    if (out.value === 0) return x;
    if (Number.isNaN(out.value))
      throw new InputError({ argument: 'evaluate', value: out.value, expected: 'numbers inside the bracket' });
    if (out.value < 0) negative = x;
    else positive = x;
    const newton = x - out.value / out.slope;
    const inside = (newton - negative) * (newton - positive) < 0 && Math.abs(newton - x) < 0.5 * previous;
    const next = inside ? newton : 0.5 * (negative + positive);
    previous = Math.abs(next - x);
    x = next;
    if (previous <= tolerance + 2 * Number.EPSILON * Math.abs(x)) return x;
  }
  return x;
}

function requireSignChange(low: number, high: number, atLow: number, atHigh: number): void {
  if (atLow < 0 && atHigh > 0) return;
  if (atLow > 0 && atHigh < 0) return;
  throw new InputError({
    argument: 'bracket',
    value: [low, high],
    expected: `values of unlike sign at its ends (they are ${atLow} and ${atHigh})`,
  });
}
