// The argument in 0..1 at which an increasing smooth function takes a given value: Newton's step
// where it stays inside the bracket, halving where not, so that it always ends.

/** Value and slope of a function at one argument. */
export interface Sloped {
  value: number;
  slope: number;
}

/**
 * Root of value(u) = target for an increasing function with value(0) < target < value(1).
 * Ends after at most 200 evaluations (in practice 3 to 5): each either halves the bracket or halves
 * Newton's step.
 */
export function invertOnUnitInterval(
  evaluate: (u: number, out: Sloped) => void,
  target: number,
  start: number,
): number {
  const at: Sloped = { value: 0, slope: 0 };
  let low = 0;
  let high = 1;
  let u = start;
  let previousStep = 1;
  for (let round = 0; round < 200; round++) {
    evaluate(u, at);
    const miss = at.value - target;
    if (miss > 0) high = u;
    else low = u;
    let step = -miss / at.slope;
    // Newton's error is about the square of its last step, so after this one only rounding is left.
    if (Math.abs(step) <= LAST_STEP * u) return Math.min(1, Math.max(0, u + step));
    const usable = u + step > low && u + step < high && Math.abs(step) <= 0.5 * previousStep;
    if (!usable) step = low + 0.5 * (high - low) - u;
    previousStep = Math.abs(step);
    u += step;
  }
  return u;
}

const LAST_STEP = 1e-9;
