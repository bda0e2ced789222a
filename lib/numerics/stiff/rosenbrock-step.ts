// One step of a Rosenbrock method on M u' = f(s, u) (formula in rosenbrock-tableau.ts), its error and
// its dense output. Holds all storage, so that a step allocates nothing.

import type { RosenbrockTableau } from './rosenbrock-tableau.js';
import { StepControl } from './step-control.js';
import type { StepMethod } from './step-method.js';
import type { StiffSystem } from './stiff-system.js';

/** The storage and the arithmetic of single steps for one system and one method. */
export class RosenbrockStep implements StepMethod {
  readonly size: number;
  /** State at the end of the last attempted step. */
  readonly end: Float64Array;
  readonly work = { rightHandSides: 0, jacobians: 0, factorisations: 0 };
  readonly denseVectors: number;
  readonly order = 0;
  readonly before = undefined;
  readonly system: StiffSystem;
  readonly tableau: RosenbrockTableau;
  /** Length of the last attempted step, whose matrix is M/(γh) − J at its start. */
  length = 0;
  readonly #control: StepControl;
  readonly #count: number;
  /** The stages U_i of the last attempted step. */
  readonly stages: readonly Float64Array[];
  // The tableau's rows as typed arrays: the same kind for every method, so that both run equally fast in one program.
  readonly a: readonly Float64Array[];
  readonly c: readonly Float64Array[];
  readonly dense: readonly Float64Array[];
  /** f at the start, which every attempt from there begins with. */
  readonly #first: Float64Array;
  readonly #coupling: Float64Array;
  readonly #slope: Float64Array;
  readonly #argument: Float64Array;
  readonly #weights: Float64Array;

  constructor(system: StiffSystem, tableau: RosenbrockTableau) {
    const n = system.size;
    const zeros = (): Float64Array => new Float64Array(n);
    this.system = system;
    this.tableau = tableau;
    this.#control = new StepControl(tableau.order);
    this.size = n;
    this.#count = tableau.alpha.length;
    this.stages = tableau.alpha.map(zeros);
    const typed = (row: readonly number[]): Float64Array => Float64Array.from(row);
    this.a = tableau.a.map(typed);
    this.c = tableau.c.map(typed);
    this.dense = tableau.dense.map(typed);
    this.denseVectors = tableau.dense.length;
    this.end = zeros();
    this.#first = zeros();
    this.#coupling = zeros();
    this.#slope = zeros();
    this.#argument = zeros();
    this.#weights = zeros();
  }

  begin(): void {
    this.#control.restart();
  }

  shift(): void {
    // A one-step method knows no earlier moments.
  }

  /** Takes right-hand side and Jacobian at (s, start). */
  prepare(s: number, start: Float64Array): number {
    const system = this.system;
    this.work.jacobians++;
    this.work.rightHandSides++;
    if (system.autonomous && system.evaluate) {
      system.evaluate(s, start, this.#first);
    } else {
      system.rightHandSide(s, start, this.#first);
      system.linearise(s, start, this.#slope);
    }
    return system.corner ? system.corner(start, this.#first) : Infinity;
  }

  attempt(s: number, start: Float64Array, h: number): number {
    const { alpha, gammaSums } = this.tableau;
    const { matrix } = this.system;
    const count = this.#count;
    const argument = this.#argument;
    this.work.factorisations++;
    this.length = h;
    if (!this.#firstStage(h)) return Infinity;
    for (let i = 1; i < count; i++) {
      const stage = this.stages[i]!;
      this.#combine(i, start);
      this.system.rightHandSide(s + alpha[i]! * h, argument, stage);
      this.work.rightHandSides++;
      this.#force(stage, h, h * gammaSums[i]!);
      matrix.solve(stage);
    }
    // The last argument is u + Σ a_sj U_j; adding the last stage gives the new state, and is the error.
    const last = this.stages[count - 1]!;
    const end = this.end;
    for (let k = 0; k < last.length; k++) end[k] = argument[k]! + last[k]!;
    return this.#scaledError(last);
  }

  afterAccepted(h: number, error: number): number {
    return this.#control.accepted(h, error);
  }

  afterRejected(h: number, error: number): number {
    return this.#control.rejected(h, error);
  }

  advance(): void {
    // A one-step method keeps nothing.
  }

  denseComponent(start: Float64Array, share: number, k: number): number {
    const dense = this.dense;
    let inner = 0;
    for (let row = dense.length - 1; row >= 0; row--) {
      const coefficients = dense[row]!;
      let sum = 0;
      for (let j = 0; j < coefficients.length; j++) sum += coefficients[j]! * this.stages[j]![k]!;
      inner = inner * share + sum;
    }
    return blend(start[k]!, this.end[k]!, share, inner);
  }

  denseState(start: Float64Array, share: number, out: Float64Array): void {
    const dense = this.dense;
    out.fill(0);
    for (let j = 0; j < dense[0]!.length; j++) {
      let weight = 0;
      for (let row = dense.length - 1; row >= 0; row--) weight = weight * share + dense[row]![j]!;
      addScaled(out, weight, this.stages[j]!);
    }
    for (let k = 0; k < out.length; k++) out[k] = blend(start[k]!, this.end[k]!, share, out[k]!);
  }

  writeDense(m: number, out: Float64Array, at: number): void {
    const coefficients = this.dense[m]!;
    for (let k = 0; k < this.size; k++) {
      let sum = 0;
      for (let j = 0; j < coefficients.length; j++) sum += coefficients[j]! * this.stages[j]![k]!;
      out[at + k] = sum;
    }
  }

  /** Factors the matrix and solves for the first stage, whose right-hand side is f at the start; false when that fails. */
  #firstStage(h: number): boolean {
    const { gamma, gammaSums } = this.tableau;
    const { mass, matrix } = this.system;
    const stage = this.stages[0]!;
    const slope = this.#slope;
    const forced = h * gammaSums[0]!;
    for (let k = 0; k < stage.length; k++) stage[k] = this.#first[k]! + forced * slope[k]!;
    const shift = 1 / (gamma * h);
    if (matrix.factorAndSolve) return matrix.factorAndSolve(mass, shift, stage);
    if (!matrix.factor(mass, shift)) return false;
    matrix.solve(stage);
    return true;
  }

  /** argument = u + Σ a_ij U_j and coupling = Σ c_ij U_j of stage i > 0, two stages a pass. */
  #combine(i: number, start: Float64Array): void {
    const a = this.a[i]!;
    const c = this.c[i]!;
    const argument = this.#argument;
    const coupling = this.#coupling;
    setScaled(argument, start, a[0]!, coupling, c[0]!, this.stages[0]!);
    let j = 1;
    for (; j + 1 < i; j += 2) {
      addPair(argument, a[j]!, a[j + 1]!, coupling, c[j]!, c[j + 1]!, this.stages[j]!, this.stages[j + 1]!);
    }
    if (j < i) addBoth(argument, a[j]!, coupling, c[j]!, this.stages[j]!);
  }

  /** Completes the right-hand side of a stage with M / h times the coupling and with h γ_i ∂f/∂s. */
  #force(stage: Float64Array, h: number, forced: number): void {
    const coupling = this.#coupling;
    const mass = this.system.mass;
    const slope = this.#slope;
    const perStep = 1 / h;
    for (let k = 0; k < stage.length; k++) stage[k]! += mass[k]! * coupling[k]! * perStep + forced * slope[k]!;
  }

  #scaledError(error: Float64Array): number {
    this.system.weights(this.end, this.#weights);
    let sum = 0;
    for (let k = 0; k < error.length; k++) {
      const scaled = error[k]! / this.#weights[k]!;
      sum += scaled * scaled;
    }
    const norm = Math.sqrt(sum / this.size);
    return Number.isFinite(norm) ? norm : Infinity;
  }
}

function addScaled(target: Float64Array, factor: number, source: Float64Array): void {
  for (let k = 0; k < target.length; k++) target[k]! += factor * source[k]!;
}

/** (1 − σ) u + σ (u_new + (1 − σ) inner), the frame of the dense output. */
function blend(start: number, end: number, share: number, inner: number): number {
  const rest = 1 - share;
  return start * rest + share * (end + rest * inner);
}

/** first = start + a u, second = c u. */
function setScaled(
  first: Float64Array,
  start: Float64Array,
  a: number,
  second: Float64Array,
  c: number,
  source: Float64Array,
): void {
  for (let k = 0; k < first.length; k++) {
    const u = source[k]!;
    first[k] = start[k]! + a * u;
    second[k] = c * u;
  }
}

function addBoth(first: Float64Array, a: number, second: Float64Array, c: number, source: Float64Array): void {
  for (let k = 0; k < first.length; k++) {
    const u = source[k]!;
    first[k]! += a * u;
    second[k]! += c * u;
  }
}

function addPair(
  first: Float64Array,
  a: number,
  b: number,
  second: Float64Array,
  c: number,
  d: number,
  one: Float64Array,
  other: Float64Array,
): void {
  for (let k = 0; k < first.length; k++) {
    const u = one[k]!;
    const v = other[k]!;
    first[k]! += a * u + b * v;
    second[k]! += c * u + d * v;
  }
}
