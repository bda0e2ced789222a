// The past of a multistep method: the last six states, component by component side by side, so that one pass over the components
// reads them all. A new state takes the place of the oldest; nothing is moved.

import { PAST } from './multistep-formula.js';

/** The state at place i is number (i − newest) mod PAST of the past, newest first: NUMBERS[i − newest + PAST]. */
const NUMBERS = Uint8Array.of(0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5);

/** The last PAST states and their moments. */
export class MultistepPast {
  /** Moments of the states, newest first. */
  readonly moments = new Float64Array(PAST);
  /** State j of component k stands at PAST k + (place of j). */
  readonly #states: Float64Array;
  readonly #size: number;
  /** Place of the newest state. */
  #newest = 0;

  constructor(size: number) {
    this.#size = size;
    this.#states = new Float64Array(PAST * size);
  }

  /** Forgets every state. */
  clear(): void {
    this.moments.fill(0);
    this.#states.fill(0);
    this.#newest = 0;
  }

  /** Adds the newest state. */
  push(moment: number, state: Float64Array): void {
    const { moments } = this;
    for (let i = PAST - 1; i > 0; i--) moments[i] = moments[i - 1]!;
    moments[0] = moment;
    this.#newest = NUMBERS[this.#newest + PAST - 1]!;
    const states = this.#states;
    for (let k = 0, at = this.#newest; k < state.length; k++, at += PAST) states[at] = state[k]!;
  }

  /** first = Σ a_j u_j and second = Σ b_j u_j, states newest first. */
  combine(first: Float64Array, a: Float64Array, second: Float64Array, b: Float64Array): void {
    const states = this.#states;
    const n = PAST - this.#newest;
    const p0 = a[NUMBERS[n]!]!;
    const p1 = a[NUMBERS[n + 1]!]!;
    const p2 = a[NUMBERS[n + 2]!]!;
    const p3 = a[NUMBERS[n + 3]!]!;
    const p4 = a[NUMBERS[n + 4]!]!;
    const p5 = a[NUMBERS[n + 5]!]!;
    const q0 = b[NUMBERS[n]!]!;
    const q1 = b[NUMBERS[n + 1]!]!;
    const q2 = b[NUMBERS[n + 2]!]!;
    const q3 = b[NUMBERS[n + 3]!]!;
    const q4 = b[NUMBERS[n + 4]!]!;
    const q5 = b[NUMBERS[n + 5]!]!;
    const size = this.#size;
    for (let k = 0, at = 0; k < size; k++, at += PAST) {
      const u0 = states[at]!;
      const u1 = states[at + 1]!;
      const u2 = states[at + 2]!;
      const u3 = states[at + 3]!;
      const u4 = states[at + 4]!;
      const u5 = states[at + 5]!;
      first[k] = p0 * u0 + p1 * u1 + (p2 * u2 + p3 * u3) + (p4 * u4 + p5 * u5);
      second[k] = q0 * u0 + q1 * u1 + (q2 * u2 + q3 * u3) + (q4 * u4 + q5 * u5);
    }
  }

  /** out = Σ a_j u_j + own · state, states newest first. */
  blend(out: Float64Array, a: Float64Array, own: number, state: Float64Array): void {
    const states = this.#states;
    const n = PAST - this.#newest;
    const p0 = a[NUMBERS[n]!]!;
    const p1 = a[NUMBERS[n + 1]!]!;
    const p2 = a[NUMBERS[n + 2]!]!;
    const p3 = a[NUMBERS[n + 3]!]!;
    const p4 = a[NUMBERS[n + 4]!]!;
    const p5 = a[NUMBERS[n + 5]!]!;
    for (let k = 0, at = 0; k < out.length; k++, at += PAST) {
      const older = p0 * states[at]! + p1 * states[at + 1]! + (p2 * states[at + 2]! + p3 * states[at + 3]!);
      out[k] = older + (p4 * states[at + 4]! + p5 * states[at + 5]!) + own * state[k]!;
    }
  }

  /** Σ a_j u_j of one component, states newest first. */
  component(a: Float64Array, k: number): number {
    const n = PAST - this.#newest;
    let sum = 0;
    for (let place = 0; place < PAST; place++) sum += a[NUMBERS[n + place]!]! * this.#states[PAST * k + place]!;
    return sum;
  }
}
