// Dense output of a multistep step: the polynomial through its end and as many past states as its order, at any moment of the step.

import { PAST } from './multistep-formula.js';

/** Weights of past states (newest first) in the dense output at a share of the step; that of the end is what is left to 1. */
export class DenseWeights {
  readonly past = new Float64Array(PAST);
  /** [weight of the end]. */
  readonly end = new Float64Array(1);

  /** `ages` are those of the past states, in steps before the end. */
  set(order: number, share: number, ages: Float64Array): void {
    const { past } = this;
    const age = 1 - share;
    let rest = 1;
    for (let i = 0; i < order; i++) {
      const own = ages[i]!;
      let above = age;
      let below = own;
      for (let m = 0; m < order; m++) {
        if (m === i) continue;
        above *= ages[m]! - age;
        below *= ages[m]! - own;
      }
      past[i] = above / below;
      rest -= past[i]!;
    }
    past.fill(0, order);
    this.end[0] = rest;
  }
}
