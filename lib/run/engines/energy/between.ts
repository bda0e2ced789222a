// A state inside a step, for rows. A step's polynomial is as exact as its ends where a run is smooth; across a corner, as where vapour
// reaches a cold plate, it swings beyond them: a plate would hold less than nothing, or be colder than the air, for a moment. There a straight
// line between the ends is nearer the truth, and keeps what is kept: all amounts and energies of it move together.

import type { StepView } from '../../../numerics/stiff/path.js';
import { READINGS, TEMPERATURE_K } from './readings.js';
import { ENERGY, ETHANOL, type Streams, UNKNOWNS, WATER } from './streams.js';

/** Less than this share of the smaller of both ends is a swing, if it is less by so much of all the holder has. */
const LEAST_SHARE = 0.5;
const OF_ALL = 3e-4;
/** Less heat or liquid than at both ends, by this share of the step's change, this share of what the part holds and no more than so much, mol, may be a swing; */
const DIP_SHARE = 0.02;
const DIP_OF_ALL = 5e-4;
const DIP_mol = 1e-6;
/** it is one if it is colder by this. */
const COLDER_K = 0.3;

/** States inside the steps of one train. */
export class Between {
  readonly #streams: Streams;
  readonly #coldest_K: Float64Array;

  constructor(streams: Streams) {
    this.#streams = streams;
    this.#coldest_K = new Float64Array(streams.count);
  }

  /** The state at a moment of a step. */
  state(step: StepView, s: number, out: Float64Array): void {
    step.state(s, out);
    if (!this.#holdsTooLittle(step, out) && !this.#isTooCold(step, out)) return;
    const share = (s - step.from) / (step.to - step.from);
    for (let k = 0; k < out.length; k++) out[k] = step.start[k]! + share * (step.end[k]! - step.start[k]!);
  }

  #holdsTooLittle({ start, end }: StepView, state: Float64Array): boolean {
    // The drum's block comes last.
    for (let o = 0; o <= UNKNOWNS * this.#streams.count; o += UNKNOWNS) {
      const [n1, n2] = [o + ETHANOL, o + WATER];
      const slack = OF_ALL * Math.min(start[n1]! + start[n2]!, end[n1]! + end[n2]!);
      if (state[n1]! < LEAST_SHARE * Math.min(start[n1]!, end[n1]!) - slack) return true;
      if (state[n2]! < LEAST_SHARE * Math.min(start[n2]!, end[n2]!) - slack) return true;
    }
    return false;
  }

  #isTooCold({ start, end }: StepView, state: Float64Array): boolean {
    const { count, readings } = this.#streams;
    let dips = false;
    for (let k = ENERGY; k < UNKNOWNS * count && !dips; k += UNKNOWNS) {
      const n1 = k + ETHANOL;
      const n2 = k + WATER;
      const from = start[n1]! + start[n2]!;
      const to = end[n1]! + end[n2]!;
      const slack = Math.min(DIP_mol, DIP_OF_ALL * Math.min(from, to));
      dips =
        state[k]! < Math.min(start[k]!, end[k]!) - DIP_SHARE * Math.abs(end[k]! - start[k]!) - slack ||
        state[n1]! + state[n2]! < Math.min(from, to) - DIP_SHARE * Math.abs(to - from) - slack;
    }
    if (!dips) return false;
    const coldest = this.#coldest_K.fill(Infinity);
    for (const one of [start, end]) {
      this.#streams.evaluate(one);
      for (let j = 0; j < count; j++) coldest[j] = Math.min(coldest[j]!, readings[READINGS * j + TEMPERATURE_K]!);
    }
    this.#streams.evaluate(state);
    return coldest.some((least, j) => readings[READINGS * j + TEMPERATURE_K]! < least - COLDER_K);
  }
}
