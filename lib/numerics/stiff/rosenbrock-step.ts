// One step of a Rosenbrock method on M u' = f(s, u) (formula in rosenbrock-tableau.ts), its error and
// its dense output. Holds all storage, so that a step allocates nothing.

import type { RosenbrockTableau } from './rosenbrock-tableau.js';
import type { StiffSystem } from './stiff-system.js';

/** The storage and the arithmetic of single steps for one system and one method. */
export class RosenbrockStep {
  readonly size: number;
  /** State at the end of the last attempted step. */
  readonly end: Float64Array;
  /** Counts of work. */
  rightHandSides = 0;
  jacobians = 0;
  factorisations = 0;
  readonly #system: StiffSystem;
  readonly #tableau: RosenbrockTableau;
  readonly #stages: readonly Float64Array[];
  readonly #slope: Float64Array;
  readonly #argument: Float64Array;
  readonly #weights: Float64Array;
  readonly #dense: readonly [Float64Array, Float64Array];

  constructor(system: StiffSystem, tableau: RosenbrockTableau) {
    const n = system.size;
    this.#system = system;
    this.#tableau = tableau;
    this.size = n;
    this.end = new Float64Array(n);
    this.#stages = tableau.alpha.map(() => new Float64Array(n));
    this.#slope = new Float64Array(n);
    this.#argument = new Float64Array(n);
    this.#weights = new Float64Array(n);
    this.#dense = [new Float64Array(n), new Float64Array(n)];
  }

  /** Takes the Jacobian at (s, start); call once a step, before its attempts. */
  linearise(s: number, start: Float64Array): void {
    this.#system.linearise(s, start, this.#slope);
    this.jacobians++;
  }

  /** Attempts a step of length h from (s, start) into `end`; returns the scaled error, Infinity when it failed. */
  attempt(s: number, start: Float64Array, h: number): number {
    const { a, c, alpha, gamma, gammaSums } = this.#tableau;
    const { mass, matrix } = this.#system;
    const n = this.size;
    const argument = this.#argument;
    const slope = this.#slope;
    const last = alpha.length - 1;
    this.factorisations++;
    if (!matrix.factor(mass, 1 / (gamma * h))) return Infinity;
    for (let i = 0; i <= last; i++) {
      const stage = this.#stages[i]!;
      argument.set(start);
      const ai = a[i]!;
      for (let j = 0; j < i; j++) addScaled(argument, ai[j]!, this.#stages[j]!, n);
      this.#system.rightHandSide(s + alpha[i]! * h, argument, stage);
      this.rightHandSides++;
      const ci = c[i]!;
      if (i > 0) {
        for (let k = 0; k < n; k++) {
          let sum = 0;
          for (let j = 0; j < i; j++) sum += ci[j]! * this.#stages[j]![k]!;
          stage[k]! += (mass[k]! * sum) / h;
        }
      }
      const forced = h * gammaSums[i]!;
      if (forced !== 0) addScaled(stage, forced, slope, n);
      matrix.solve(stage);
    }
    // The last argument is u + Σ a_sj U_j; adding the last stage gives the new state.
    const error = this.#stages[last]!;
    for (let k = 0; k < n; k++) this.end[k] = argument[k]! + error[k]!;
    return this.#scaledError(error);
  }

  /** Prepares dense output for the step just accepted. */
  prepareDense(): void {
    for (let row = 0; row < 2; row++) {
      const out = this.#dense[row]!;
      const coefficients = this.#tableau.dense[row]!;
      out.fill(0);
      for (let j = 0; j < coefficients.length; j++) addScaled(out, coefficients[j]!, this.#stages[j]!, this.size);
    }
  }

  /** Component k of the dense output at share σ of the step that began at `start`. */
  denseComponent(start: Float64Array, share: number, k: number): number {
    const rest = 1 - share;
    const [first, second] = this.#dense;
    return start[k]! * rest + share * (this.end[k]! + rest * (first[k]! + share * second[k]!));
  }

  /** Whole state of the dense output at share σ of the step that began at `start`. */
  denseState(start: Float64Array, share: number, out: Float64Array): void {
    for (let k = 0; k < this.size; k++) out[k] = this.denseComponent(start, share, k);
  }

  #scaledError(error: Float64Array): number {
    this.#system.weights(this.end, this.#weights);
    let sum = 0;
    for (let k = 0; k < this.size; k++) {
      const scaled = error[k]! / this.#weights[k]!;
      sum += scaled * scaled;
    }
    const norm = Math.sqrt(sum / this.size);
    return Number.isFinite(norm) ? norm : Infinity;
  }
}

function addScaled(target: Float64Array, factor: number, source: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) target[k]! += factor * source[k]!;
}
