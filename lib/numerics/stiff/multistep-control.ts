// How long the next multistep step may be, and of which order. A formula of order k needs the last k + 1 states. Now and then the errors
// that the orders above and below would have made are asked for, and the order goes where the next step is longest: up when error holds
// the steps back, down when growth does (formulas of higher order bear less of it) or when an order is near the edge of its
// stability: on a smooth solution its error is many times smaller than that of the order below, on the disturbances it leaves it is not.

const SAFETY = 0.8;
/**
 * Steps of order k grow by no more than GROWTH[k]. Evenly growing steps are stable up to 2.41, 1.61, 1.28 and 1.12 for orders 2 to 5;
 * source: computed from the formulas' characteristic polynomials, tests/lib/numerics/stiff/multistep.test.ts.
 */
export const GROWTH: readonly number[] = [0, 2.5, 2, 1.5, 1.2, 1.1];
const STRONGEST_CUT = 1 / 5;
const MILDEST_CUT = 0.9;
/** So many failures of one step in a row lower the order. */
const PATIENCE = 3;
const SMALLEST_ERROR = 1e-10;
/** At the highest order the one below is looked at after so many steps. */
const LOOK_AFTER = 8;
/** So many steps in a row that fail at first do not grow. */
const RELAPSES = 3;
/** An order is in doubt when the error of the one below is less than so many times its own, */
const DOUBTFUL = 2;
/** it is left when so many looks in a row find it so, or so many together, where errors go up and down from step to step, */
const DOUBTS = 5;
const LOOKS_TOGETHER = 32;
/** and it is not taken again for so many steps, or so many where it was left for looks together: what goes up and down there does so one order lower, too. */
const SHUNNED_FOR = 20;
const SHUNNED_FOR_LONG = 400;

/** Proposes step length and order from the scaled error of each attempt (1 = as large as allowed). */
export class MultistepControl {
  order = 1;
  readonly #highest: number;
  #nextOrder = 1;
  /** Accepted steps since the order last changed or its neighbours were last looked at. */
  #steps = 0;
  #failures = 0;
  #doubts = 0;
  /** Errors at the present order, and what those of the order below would have been, of so many looks together. */
  #looks = 0;
  #owns = 0;
  #belows = 0;
  /** Accepted steps in a row each of which had failed at first. */
  #relapses = 0;
  /** Steps for which the order must not rise. */
  #shunned = 0;

  constructor(highestOrder: number) {
    this.#highest = highestOrder;
  }

  restart(): void {
    this.order = 1;
    this.#nextOrder = 1;
    this.#steps = 0;
    this.#failures = 0;
    this.#forget();
    this.#relapses = 0;
    this.#shunned = 0;
  }

  /** Of another order nothing is known yet. */
  #forget(): void {
    this.#doubts = 0;
    this.#looks = 0;
    this.#owns = 0;
    this.#belows = 0;
  }

  /** By how much the step could grow at an error. */
  gain(error: number): number {
    return gain(error, this.order);
  }

  /** Whether it is time to ask for the error of the order below the present one, whose gain is `own`. */
  looksDown(own: number): boolean {
    if (this.order < 2 || this.#steps <= this.order) return false;
    return this.#steps > LOOK_AFTER || own > GROWTH[this.order - 1]!;
  }

  /** Whether it is time to ask for the error of the order above. */
  looksUp(own: number): boolean {
    if (this.order >= this.#highest || this.#shunned > 0 || this.#steps < this.order) return false;
    return own < GROWTH[this.order]! || this.#relapsing;
  }

  /** Whether steps keep failing at the length the last one had grown to. */
  get #relapsing(): boolean {
    return this.#failures > 0 && this.#relapses + 1 >= RELAPSES;
  }

  /** Next step after an accepted one; `below` and `above` are the errors of the orders beside, Infinity where not asked for. */
  accepted(h: number, error: number, own: number, below: number, above: number): number {
    const { order } = this;
    const relapsing = this.#relapsing;
    this.#relapses = this.#failures > 0 ? this.#relapses + 1 : 0;
    this.#failures = 0;
    this.#nextOrder = order;
    if (this.#shunned > 0) this.#shunned--;
    // A step that failed, was cut, and would grow as before fails as before: it stays until the past is even again.
    let longest = relapsing ? Math.min(1, own) : Math.min(GROWTH[order]!, own);
    if (below < Infinity) {
      const growth = Math.min(GROWTH[order - 1]!, gain(below, order - 1));
      const heldByGrowth = own > GROWTH[order - 1]!;
      if (heldByGrowth) this.#doubts = 0;
      const doubtful = !heldByGrowth && this.#isDoubtful(error, below);
      if ((heldByGrowth && growth > longest) || doubtful) {
        if (!heldByGrowth) this.#shunned = this.#doubts >= DOUBTS ? SHUNNED_FOR : SHUNNED_FOR_LONG;
        this.#nextOrder = order - 1;
        longest = growth;
      }
      if (this.#doubts === 0) this.#steps = order; // looked at, and well
    }
    if (above < Infinity && this.#nextOrder === order) {
      const growth = Math.min(GROWTH[order + 1]!, gain(above, order + 1));
      if (growth > longest) {
        this.#nextOrder = order + 1;
        longest = growth;
      }
    }
    return h * longest;
  }

  /** Whether the order is to be left for what its errors are beside those of the order below. */
  #isDoubtful(error: number, below: number): boolean {
    this.#doubts = below < DOUBTFUL * error ? this.#doubts + 1 : 0;
    this.#owns += error;
    this.#belows += below;
    if (this.#doubts >= DOUBTS) return true;
    if (++this.#looks < LOOKS_TOGETHER) return false;
    const together = this.#belows < DOUBTFUL * this.#owns;
    this.#looks = this.#owns = this.#belows = 0;
    return together;
  }

  rejected(h: number, error: number): number {
    if (++this.#failures >= PATIENCE && this.order > 1) {
      this.order--;
      this.#steps = 0;
      this.#forget();
    }
    const factor = Number.isFinite(error) ? gain(error, this.order) : STRONGEST_CUT;
    return h * Math.min(MILDEST_CUT, Math.max(STRONGEST_CUT, factor));
  }

  /** A step is past: a change of order takes effect. */
  advance(): void {
    if (this.#nextOrder !== this.order) this.#forget();
    this.#steps = this.#nextOrder === this.order ? this.#steps + 1 : 0;
    this.order = this.#nextOrder;
  }
}

/** By how much the step could grow at an error. */
function gain(error: number, order: number): number {
  return SAFETY / root(Math.max(error, SMALLEST_ERROR), order + 1);
}

/** The root of degree 2 … 6, by the cheap ones where it can be had of them. */
function root(value: number, degree: number): number {
  if (degree === 6) return Math.sqrt(Math.cbrt(value));
  if (degree === 2) return Math.sqrt(value);
  return value ** (1 / degree);
}
