// What a run keeps: no part holds less than nothing, and ethanol and water are what they were. Both are linear invariants of the balances;
// what round-off of many long steps takes from them or adds, 1e-12 of the charge at a step, the kettle gets back. More than that is an error, and no step stands that
// makes it.

import { ETHANOL, UNKNOWNS, WATER } from './streams.js';

/** Less than nothing by this share of what a part holds is a trace. */
const TRACE = 1e-3;
/** More than this share of everything lost in one step is no round-off. */
const ROUND_OFF = 1e-10;

/** Ethanol and water of a run. */
export class Kept {
  #ethanol = 0;
  #water = 0;

  /** A run begins at a state. */
  begin(u: Float64Array): void {
    this.#ethanol = sum(u, ETHANOL);
    this.#water = sum(u, WATER);
  }

  /** Whether a state can be; `parts` are the blocks that hold something, the receiver's not among them. */
  admit(u: Float64Array, parts: number): boolean {
    for (let o = 0; o < UNKNOWNS * parts; o += UNKNOWNS) {
      const ethanol = u[o + ETHANOL]!;
      const water = u[o + WATER]!;
      const trace = -TRACE * (ethanol + water);
      if (!(trace < 0 && ethanol >= trace && water >= trace)) return false;
    }
    const ethanol = this.#ethanol - sum(u, ETHANOL);
    const water = this.#water - sum(u, WATER);
    if (Math.abs(ethanol) + Math.abs(water) > ROUND_OFF * (this.#ethanol + this.#water)) return false;
    u[ETHANOL]! += ethanol;
    u[WATER]! += water;
    return true;
  }
}

function sum(u: Float64Array, kind: number): number {
  let all = 0;
  for (let k = kind; k < u.length; k += UNKNOWNS) all += u[k]!;
  return all;
}
