// How long the next step may be: the predictive controller of Gustafsson for linearly implicit methods
// (K. Gustafsson, ACM Trans. Math. Softw. 20 (1994) 496; Hairer & Wanner II, IV.8, eq. 8.21-8.22).

const SAFETY = 0.9;
const LARGEST_GROWTH = 6;
const STRONGEST_CUT = 1 / 5;

/** Proposes step lengths from the scaled error of each attempt (1 = as large as allowed). */
export class StepControl {
  readonly #exponent: number;
  #lastStep = 0;
  #lastError = 1e-2;
  #justRejected = false;

  /** `order` is that of the method; its error estimate is one lower. */
  constructor(order: number) {
    this.#exponent = 1 / order;
  }

  /** Forgets the history: at the start and where the equations change. */
  restart(): void {
    this.#lastStep = 0;
    this.#lastError = 1e-2;
    this.#justRejected = false;
  }

  /** Next step after an accepted one of length `step` with scaled error `error`. */
  accepted(step: number, error: number): number {
    let factor = SAFETY * Math.max(error, 1e-10) ** -this.#exponent;
    if (this.#lastStep > 0) {
      const predicted =
        (SAFETY * step * (this.#lastError / (error * error + 1e-20)) ** this.#exponent) / this.#lastStep;
      factor = Math.min(factor, predicted);
    }
    factor = Math.min(LARGEST_GROWTH, Math.max(STRONGEST_CUT, factor));
    if (this.#justRejected) factor = Math.min(1, factor);
    this.#lastStep = step;
    this.#lastError = Math.max(1e-2, error);
    this.#justRejected = false;
    return step * factor;
  }

  /** Next attempt after a rejected step. */
  rejected(step: number, error: number): number {
    this.#justRejected = true;
    const factor = Number.isFinite(error) ? SAFETY * error ** -this.#exponent : STRONGEST_CUT;
    return step * Math.min(SAFETY, Math.max(STRONGEST_CUT, factor));
  }
}
