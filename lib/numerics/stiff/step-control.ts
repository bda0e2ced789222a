// How long the next step may be: the predictive controller of Gustafsson for linearly implicit methods
// (K. Gustafsson, ACM Trans. Math. Softw. 20 (1994) 496; Hairer & Wanner II, IV.8, eq. 8.21-8.22).

const SAFETY = 0.9;
const LARGEST_GROWTH = 6;
const STRONGEST_CUT = 1 / 5;
/** Errors below these count as these: no step grows without bound, none is predicted from luck. */
const SMALLEST_ERROR = 1e-10;
const REMEMBERED_ERROR = 1e-2;

/** Proposes step lengths from the scaled error of each attempt (1 = as large as allowed). */
export class StepControl {
  readonly #exponent: number;
  readonly #startGain: number;
  #lastStep = 0;
  #lastGain: number;
  #justRejected = false;

  /** `order` is that of the method; its error estimate is one lower. */
  constructor(order: number) {
    this.#exponent = 1 / order;
    this.#startGain = REMEMBERED_ERROR ** -this.#exponent;
    this.#lastGain = this.#startGain;
  }

  /** Forgets the history: at the start and where the equations change. */
  restart(): void {
    this.#lastStep = 0;
    this.#lastGain = this.#startGain;
    this.#justRejected = false;
  }

  /** Next step after an accepted one of length `step` with scaled error `error`. */
  accepted(step: number, error: number): number {
    const gain = Math.max(error, SMALLEST_ERROR) ** -this.#exponent;
    let factor = SAFETY * gain;
    // Gustafsson's prediction: SAFETY (h/h_last) (err_last/err²)^(1/order).
    if (this.#lastStep > 0) factor = Math.min(factor, ((factor * step) / this.#lastStep) * (gain / this.#lastGain));
    factor = Math.min(LARGEST_GROWTH, Math.max(STRONGEST_CUT, factor));
    if (this.#justRejected) factor = Math.min(1, factor);
    this.#lastStep = step;
    this.#lastGain = Math.min(gain, this.#startGain);
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
