// How long the next multistep step may be, and of which order. A formula of order k needs the last k + 1 states. After a start the
// order rises when error, not growth, holds the steps back; it falls when steps keep failing, or when it is growth that holds them
// back and the order below would do: formulas of higher order bear less growth.

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

/** Proposes step length and order from the scaled error of each attempt (1 = as large as allowed). */
export class MultistepControl {
  order = 1;
  readonly #highest: number;
  #nextOrder = 1;
  /** Accepted steps since the order last changed. */
  #steps = 0;
  #failures = 0;

  constructor(highestOrder: number) {
    this.#highest = highestOrder;
  }

  restart(): void {
    this.order = 1;
    this.#nextOrder = 1;
    this.#steps = 0;
    this.#failures = 0;
  }

  /** Whether growth holds the steps back for so long that the order below is worth a look. */
  heldByGrowth(error: number): boolean {
    return this.order > 2 && this.#steps > this.order && gain(error, this.order) > GROWTH[this.order - 1]!;
  }

  /** Next step after an accepted one; `below` is the error the order below would have made, Infinity if not known. */
  accepted(h: number, error: number, below: number): number {
    const { order } = this;
    this.#failures = 0;
    this.#nextOrder = order;
    const own = gain(error, order);
    const growth = GROWTH[order]!;
    if (own < growth) {
      if (order < this.#highest && this.#steps >= order) this.#nextOrder = order + 1;
      return h * own;
    }
    if (below < Infinity) {
      const lower = Math.min(GROWTH[order - 1]!, gain(below, order - 1));
      if (lower > growth) {
        this.#nextOrder = order - 1;
        return h * lower;
      }
    }
    return h * growth;
  }

  rejected(h: number, error: number): number {
    if (++this.#failures >= PATIENCE && this.order > 1) {
      this.order--;
      this.#steps = 0;
    }
    const factor = Number.isFinite(error) ? gain(error, this.order) : STRONGEST_CUT;
    return h * Math.min(MILDEST_CUT, Math.max(STRONGEST_CUT, factor));
  }

  /** A step is past: a change of order takes effect. */
  advance(): void {
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
