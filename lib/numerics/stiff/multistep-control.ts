// How long the next multistep step may be, and of which order. A formula of order k needs the last k + 1 states; after a start
// the order rises by one whenever there are enough of them, and falls when steps keep failing.

const SAFETY = 0.8;
const GROWTH = 1.5;
/** At orders 1 and 2, where steps start tiny. */
const START_GROWTH = 2.5;
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

  accepted(h: number, error: number): number {
    this.#failures = 0;
    this.#nextOrder = this.order < this.#highest && this.#steps >= this.order ? this.order + 1 : this.order;
    const growth = this.order < 3 ? START_GROWTH : GROWTH;
    return h * Math.min(growth, SAFETY * Math.max(error, SMALLEST_ERROR) ** (-1 / (this.order + 1)));
  }

  rejected(h: number, error: number): number {
    if (++this.#failures >= PATIENCE && this.order > 1) {
      this.order--;
      this.#steps = 0;
    }
    const factor = Number.isFinite(error) ? SAFETY * error ** (-1 / (this.order + 1)) : STRONGEST_CUT;
    return h * Math.min(MILDEST_CUT, Math.max(STRONGEST_CUT, factor));
  }

  /** A step is past: a change of order takes effect. */
  advance(): void {
    this.#steps = this.#nextOrder === this.order ? this.#steps + 1 : 0;
    this.order = this.#nextOrder;
  }
}
