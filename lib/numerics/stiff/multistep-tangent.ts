// The sensitivity S = ∂u/∂p along multistep steps, by the formula of the steps themselves (multistep-formula.ts), staggered and direct:
//
//   (α M/h − J) S = M (α P_S/h − P_S') + ∂f/∂p − ∂M/∂p u',      P_S, P_S' from the past of S as p and P' from that of u
//
// with the matrix the step was solved with: its J was taken at the predicted state, which is as near the new one as the local error.
// Source: M. Caracotsios, W. E. Stewart, Comput. Chem. Eng. 9 (1985) 359-365 (staggered direct method).

import type { MultistepStep } from './multistep-step.js';
import { MultistepPast } from './multistep-past.js';
import type { ParameterSlopes } from './parameters.js';

/** One sensitivity along the steps of one multistep method. */
export class MultistepTangent {
  /** At the end of the last step. */
  readonly end: Float64Array;
  readonly before: { moment: number; readonly state: Float64Array };
  readonly denseVectors = 0;
  order = 1;
  readonly #method: MultistepStep;
  readonly #slopes: ParameterSlopes;
  readonly #k: number;
  readonly #past: MultistepPast;
  readonly #predicted: Float64Array;
  readonly #slope: Float64Array;
  readonly #rate: Float64Array;

  constructor(method: MultistepStep, slopes: ParameterSlopes, k: number) {
    const { size } = method.system;
    this.#method = method;
    this.#slopes = slopes;
    this.#k = k;
    this.#past = new MultistepPast(size);
    this.end = new Float64Array(size);
    this.before = { moment: 0, state: new Float64Array(size) };
    this.#predicted = new Float64Array(size);
    this.#slope = new Float64Array(size);
    this.#rate = new Float64Array(size);
  }

  writeDense(): void {
    // The past serves.
  }

  /** Begins at a sensitivity, where the Jacobian stands; the slope there comes of the same very short step that gave the method its own. */
  begin(s: number, start: Float64Array, sensitivity: Float64Array): void {
    const before = this.before.state;
    const { before: past, short, system } = this.#method;
    this.#slopes.system.matrix.multiply(sensitivity, before);
    this.#slopes.byParameter(this.#k, this.#slope);
    const massSlope = this.#slopes.massSlope(this.#k);
    for (let i = 0; i < before.length; i++) {
      before[i]! += this.#slope[i]!;
      if (massSlope !== null) before[i]! -= (massSlope[i]! * (start[i]! - past.state[i]!)) / short;
    }
    system.matrix.solve(before);
    for (let i = 0; i < before.length; i++) before[i] = sensitivity[i]! - before[i]!;
    this.before.moment = s - short;
    this.#past.clear();
    this.#past.push(0, before);
    this.#past.push(0, sensitivity);
    this.end.set(sensitivity);
  }

  /** Goes along with the step, at whose end the slopes stand. */
  step(): void {
    const { formula, length, order, system } = this.#method;
    const { mass, matrix } = system;
    const predicted = this.#predicted;
    const slope = this.#slope;
    const next = this.end;
    this.order = order;
    this.#past.combine(predicted, formula.predict, slope, formula.slope);
    this.#slopes.byParameter(this.#k, next);
    const massSlope = this.#slopes.massSlope(this.#k);
    if (massSlope !== null) {
      this.#method.rate(this.#rate);
      for (let i = 0; i < next.length; i++) next[i]! -= massSlope[i]! * this.#rate[i]!;
    }
    const shift = formula.leading / length;
    for (let i = 0; i < next.length; i++) next[i]! += mass[i]! * (shift * predicted[i]! - slope[i]!);
    matrix.solve(next);
    this.#past.push(0, next);
  }
}
