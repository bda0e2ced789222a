// Sensitivities S_k = ∂u/∂p_k carried along an integration, step by step, and recorded like its states: staggered, each step of them after the step
// of the states, with the matrix that step has factorised where it serves. The steps are chosen by u alone: a run is the same with them and without.

import type { StepCompanion } from './companion.js';
import { MultistepStep } from './multistep-step.js';
import { MultistepTangent } from './multistep-tangent.js';
import type { ParameterSlopes } from './parameters.js';
import { Recording } from './recording.js';
import { RosenbrockStep } from './rosenbrock-step.js';
import { RosenbrockTangents } from './rosenbrock-tangent.js';
import type { StepMethod } from './step-method.js';

/** Carries the sensitivities of one system by all of its parameters. */
export class Tangents implements StepCompanion {
  /** Sensitivities now. Whoever jumps at an event writes them before the integration begins anew. */
  readonly now: readonly Float64Array[];
  /** Course of each, step by step as that of the states. */
  readonly recordings: readonly Recording[];
  readonly #slopes: ParameterSlopes;
  readonly #multistep = new Map<MultistepStep, readonly MultistepTangent[]>();
  readonly #oneStep = new Map<StepMethod, RosenbrockTangents>();

  constructor(slopes: ParameterSlopes) {
    const { size } = slopes.system;
    this.#slopes = slopes;
    this.now = Array.from({ length: slopes.count }, () => new Float64Array(size));
    this.recordings = this.now.map(() => new Recording(size));
  }

  begin(method: StepMethod, s: number, start: Float64Array): void {
    if (method instanceof MultistepStep) {
      this.#slopes.look(s, start, true);
      for (const [k, one] of this.#tangentsOf(method).entries()) one.begin(s, start, this.now[k]!);
    } else {
      this.#oneStepOf(method).begin(this.now);
    }
    for (const [k, one] of this.#of(method).entries()) this.recordings[k]!.begin(one, s, this.now[k]!);
  }

  step(method: StepMethod, from: number, to: number, start: Float64Array, mark: number): void {
    if (method instanceof MultistepStep) {
      this.#slopes.look(to, method.end, false);
      for (const one of this.#tangentsOf(method)) one.step();
    } else {
      this.#oneStepOf(method).step(from, start);
    }
    const all = this.#of(method);
    for (let k = 0; k < all.length; k++) {
      this.recordings[k]!.add(all[k]!, from, to, mark);
      this.now[k]!.set(all[k]!.end);
    }
  }

  #of(method: StepMethod): readonly (MultistepTangent | RosenbrockTangents['all'][number])[] {
    return method instanceof MultistepStep ? this.#tangentsOf(method) : this.#oneStepOf(method).all;
  }

  #oneStepOf(method: StepMethod): RosenbrockTangents {
    let all = this.#oneStep.get(method);
    if (all === undefined) {
      if (!(method instanceof RosenbrockStep)) throw new Error('no sensitivities are known for this method');
      all = new RosenbrockTangents(method, this.#slopes);
      this.#oneStep.set(method, all);
    }
    return all;
  }

  #tangentsOf(method: MultistepStep): readonly MultistepTangent[] {
    let all = this.#multistep.get(method);
    if (all === undefined) {
      all = this.now.map((_one, k) => new MultistepTangent(method, this.#slopes, k));
      this.#multistep.set(method, all);
    }
    return all;
  }
}
