// Coefficients of the backward differentiation formula of order k on points that need not be evenly spaced.
//
// Past states u_1 … u_{k+1} (newest first) stand at ages τ_i h before the new moment. P is the polynomial of degree k through them:
//   predictor   p = P(new) = Σ ℓ_i u_i,                ℓ_i = Π_{m≠i} τ_m/(τ_m − τ_i)
//   its slope   h P'(new) = Σ ℓ'_i u_i,                ℓ'_i = ℓ_i Σ_{m≠i} 1/τ_m
// The formula asks that the polynomial through the new state u and u_1 … u_k has the slope f. With d = u − p,
//   M (α d/h + P'(new)) = f(new, p + d),               α = Σ_{m≤k} 1/τ_m
// and its local error is d/(1 + α τ_{k+1}), by comparison of the two remainders.
// Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, III.5 (variable steps).

/** Past states of the longest formula: highest order + 1. */
export const PAST = 6;

/** The coefficients for the step now attempted; weights of past states that a lower order does not use are 0. */
export class MultistepFormula {
  readonly predict = new Float64Array(PAST);
  /** ℓ'_i / h. */
  readonly slope = new Float64Array(PAST);
  /** Ages of the past states in steps, newest first. */
  readonly ages = new Float64Array(PAST);
  /** α. */
  leading = 1;
  /** Share of d that is local error. */
  errorShare = 1;
  readonly #products = new Float64Array(PAST);

  /** Sets the coefficients of order k for a step of length h to `moment`; `moments` are those of the past states, newest first. */
  set(order: number, moment: number, h: number, moments: Float64Array): void {
    const { predict, slope, ages } = this;
    const products = this.#products;
    const perStep = 1 / h;
    let product = 1;
    let inverses = 0;
    for (let i = 0; i <= order; i++) {
      // The newest state is one step old, whatever rounding says.
      const age = i === 0 ? 1 : (moment - moments[i]!) * perStep;
      const inverse = 1 / age;
      let own = age;
      for (let m = 0; m < i; m++) {
        const gap = age - ages[m]!;
        products[m]! *= gap;
        own *= -gap;
      }
      ages[i] = age;
      products[i] = own;
      product *= age;
      slope[i] = inverse;
      inverses += inverse;
    }
    this.leading = inverses - slope[order]!;
    this.errorShare = 1 / (1 + this.leading * ages[order]!);
    // The newest weights close the sums, so that what all past states share is kept to the last digit.
    let rest = 1;
    let slopes = 0;
    for (let i = order; i > 0; i--) {
      const weight = product / products[i]!;
      const weightSlope = weight * (inverses - slope[i]!) * perStep;
      predict[i] = weight;
      slope[i] = weightSlope;
      rest -= weight;
      slopes += weightSlope;
    }
    predict[0] = rest;
    slope[0] = -slopes;
    for (let i = order + 1; i < PAST; i++) predict[i] = slope[i] = 0;
  }
}
