// The sensitivity S = ∂u/∂p along Rosenbrock steps: the step itself differentiated, stage by stage, with a dot for ∂/∂p (rosenbrock-tableau.ts has the step),
//
//   (M/(γh) − J) U̇_i = J_i ȧ_i + ∂f/∂p|_i + M/h Σ c_ij U̇_j + J̇ U_i + Ṁ/h (Σ c_ij U_j − U_i/γ),      ȧ_i = S + Σ a_ij U̇_j
//
// where J_i and ∂f/∂p stand at the stage's argument and J̇ is the derivative of J at the start, along S and with p. The matrix is the step's own. What is
// found is the derivative of what the method computes, corners and all. Only for systems that do not depend on s.

import type { ParameterSlopes } from './parameters.js';
import type { RosenbrockStep } from './rosenbrock-step.js';

/** All sensitivities of a system along the steps of one Rosenbrock method. */
export class RosenbrockTangents {
  readonly all: readonly RosenbrockTangent[];
  readonly #method: RosenbrockStep;
  readonly #slopes: ParameterSlopes;
  readonly #argument: Float64Array;

  constructor(method: RosenbrockStep, slopes: ParameterSlopes) {
    this.#method = method;
    this.#slopes = slopes;
    this.#argument = new Float64Array(method.size);
    this.all = Array.from({ length: slopes.count }, (_none, k) => new RosenbrockTangent(method, slopes, k));
  }

  begin(now: readonly Float64Array[]): void {
    this.all.forEach((tangent, k) => {
      tangent.end.set(now[k]!);
    });
  }

  /** Goes along with the step the method has just taken from (from, start). */
  step(from: number, start: Float64Array): void {
    const { a, stages } = this.#method;
    const argument = this.#argument;
    for (const tangent of this.all) tangent.leave(from, start);
    for (let i = 0; i < stages.length; i++) {
      argument.set(start);
      for (let j = 0; j < i; j++) addTo(argument, a[i]![j]!, stages[j]!);
      this.#slopes.look(from, argument, true);
      for (const tangent of this.all) tangent.stage(i);
    }
  }
}

/** One of them. */
class RosenbrockTangent {
  readonly end: Float64Array;
  readonly before = undefined;
  readonly denseVectors: number;
  readonly order = 0;
  readonly #method: RosenbrockStep;
  readonly #slopes: ParameterSlopes;
  readonly #k: number;
  readonly #start: Float64Array;
  readonly #stages: readonly Float64Array[];
  readonly #argument: Float64Array;
  readonly #coupling: Float64Array;
  readonly #part: Float64Array;

  constructor(method: RosenbrockStep, slopes: ParameterSlopes, k: number) {
    const zeros = (): Float64Array => new Float64Array(method.size);
    this.#method = method;
    this.#slopes = slopes;
    this.#k = k;
    this.end = zeros();
    this.denseVectors = method.denseVectors;
    this.#start = zeros();
    this.#stages = method.stages.map(zeros);
    this.#argument = zeros();
    this.#coupling = zeros();
    this.#part = zeros();
  }

  leave(s: number, u: Float64Array): void {
    this.#start.set(this.end);
    this.#slopes.turn(this.#k, s, u, this.end);
  }

  /** Stage i, at whose argument the Jacobian and the slopes stand. */
  stage(i: number): void {
    const { a, c, length, stages, system, tableau } = this.#method;
    const { mass, matrix } = system;
    const slopes = this.#slopes;
    const argument = this.#argument;
    const coupling = this.#coupling;
    const own = this.#stages[i]!;
    const part = this.#part;
    argument.set(this.#start);
    coupling.fill(0);
    for (let j = 0; j < i; j++) {
      addTo(argument, a[i]![j]!, this.#stages[j]!);
      addTo(coupling, c[i]![j]! / length, this.#stages[j]!);
    }
    slopes.byParameter(this.#k, own);
    slopes.system.matrix.multiply(argument, part);
    addTo(own, 1, part);
    slopes.turned(this.#k, stages[i]!, part);
    addTo(own, 1, part);
    for (let m = 0; m < own.length; m++) own[m]! += mass[m]! * coupling[m]!;
    const massSlope = slopes.massSlope(this.#k);
    if (massSlope !== null) {
      part.fill(0);
      for (let j = 0; j < i; j++) addTo(part, c[i]![j]! / length, stages[j]!);
      addTo(part, -1 / (tableau.gamma * length), stages[i]!);
      for (let m = 0; m < own.length; m++) own[m]! += massSlope[m]! * part[m]!;
    }
    matrix.solve(own);
    if (i < stages.length - 1) return;
    for (let m = 0; m < own.length; m++) this.end[m] = argument[m]! + own[m]!;
  }

  writeDense(m: number, out: Float64Array, at: number): void {
    const coefficients = this.#method.dense[m]!;
    const part = this.#part.fill(0);
    for (let j = 0; j < coefficients.length; j++) addTo(part, coefficients[j]!, this.#stages[j]!);
    out.set(part, at);
  }
}

function addTo(target: Float64Array, by: number, vector: Float64Array): void {
  if (by === 0) return;
  for (let m = 0; m < target.length; m++) target[m]! += by * vector[m]!;
}
