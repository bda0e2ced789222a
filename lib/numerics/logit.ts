// The scale on which both ends of a fraction are equally far away: u = ln(x/(1 − x)), −∞ at 0 and +∞ at 1.

/** u = ln(x/(1 − x)) for x in [0, 1]. */
export function logit(fractionOfOne: number): number {
  return Math.log(fractionOfOne / (1 - fractionOfOne));
}

/** x = 1/(1 + e^(−u)). */
export function logistic(u: number): number {
  return 1 / (1 + Math.exp(-u));
}
