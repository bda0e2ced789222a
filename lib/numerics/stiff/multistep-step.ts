// Steps of the backward differentiation formulas of orders 1 to 5 on M u' = f(s, u), at steps that may change every time.
//
// f and its Jacobian are taken where the past predicts the new state, and one solve ends the step as a rule (multistep-formula.ts),
//   (α M/h − J) d = f(p) − M P',   u = p + d.
// What another Newton iteration adds goes with d². How large it is, is measured now and then; where it counts, iterations follow.

import { MultistepControl } from './multistep-control.js';
import { DenseWeights } from './multistep-dense.js';
import { MultistepFormula } from './multistep-formula.js';
import { MultistepPast } from './multistep-past.js';
import type { StepMethod } from './step-method.js';
import type { StiffSystem } from './stiff-system.js';

/** Backward differentiation formulas of variable order. */
export interface MultistepMethod {
  readonly name: string;
  readonly highestOrder: 1 | 2 | 3 | 4 | 5;
}

/** Orders 1 to 5: for systems whose fast modes die away without oscillating (A(52°)-stable), such as chains of holders. */
export const BDF5: MultistepMethod = { name: 'bdf5', highestOrder: 5 };
/** Orders 1 to 4: where fast modes may oscillate a little (A(73°)-stable), such as liquid that runs over weirs. */
export const BDF4: MultistepMethod = { name: 'bdf4', highestOrder: 4 };

/** Local errors of many short steps add up; each is allowed this share of what a step of a one-step method is. */
const LOCAL_SHARE = 0.2;
/** Error weights change slowly: they are read again after so many steps. */
const WEIGHTS_LAST = 8;
/** Error of the iteration that is left standing, in units of the local error allowed. */
const ITERATION_ERROR = 0.1;
const MOST_ITERATIONS = 5;
/** A second iteration that is not needed is made after so many steps, to measure what it would add. */
const MEASURE_AFTER = 32;
/** The slope at the start is taken over this share of the first step. */
const START_SHARE = 0.01;

/** The storage and the arithmetic of multistep steps for one system. */
export class MultistepStep implements StepMethod {
  readonly end: Float64Array;
  readonly work = { rightHandSides: 0, jacobians: 0, factorisations: 0 };
  readonly denseVectors = 0;
  /** The state a little before the start, from the slope there. */
  readonly before: { moment: number; readonly state: Float64Array };
  readonly system: StiffSystem;
  /** The formula of the last attempted step, whose matrix is (α M/h − J) at the predicted state. */
  readonly formula = new MultistepFormula();
  /** Length of the last attempted step, and of the very short one at the beginning. */
  length = 0;
  short = 0;
  /** The formula of another order, when its error is asked for. */
  readonly #other = new MultistepFormula();
  readonly #control: MultistepControl;
  readonly #past: MultistepPast;
  readonly #dense = new DenseWeights();
  readonly #predicted: Float64Array;
  readonly #slope: Float64Array;
  readonly #difference: Float64Array;
  readonly #correction: Float64Array;
  readonly #weights: Float64Array;
  readonly #perWeight: Float64Array;
  #moment = 0;
  #weightsAge = 0;
  /** What an iteration adds, over the square of what the one before added. */
  #nonlinearity = 0;
  #unmeasured = 0;

  constructor(system: StiffSystem, method: MultistepMethod) {
    const zeros = (): Float64Array => new Float64Array(system.size);
    this.system = system;
    this.#control = new MultistepControl(method.highestOrder);
    this.#past = new MultistepPast(system.size);
    this.end = zeros();
    this.before = { moment: 0, state: zeros() };
    this.#predicted = zeros();
    this.#slope = zeros();
    this.#difference = zeros();
    this.#correction = zeros();
    this.#weights = zeros();
    this.#perWeight = zeros();
  }

  begin(s: number, start: Float64Array, h: number): void {
    this.#control.restart();
    this.#weightsAge = 0;
    this.#nonlinearity = 0;
    this.#unmeasured = MEASURE_AFTER;
    const { mass, matrix } = this.system;
    const before = this.#difference;
    // A very short step of the linearly implicit Euler method gives the slope at the start, of algebraic unknowns too.
    const short = START_SHARE * h;
    this.short = short;
    this.system.linearise(s, start, this.#slope);
    this.system.rightHandSide(s, start, before);
    this.work.jacobians++;
    this.work.rightHandSides++;
    this.work.factorisations++;
    for (let k = 0; k < before.length; k++) before[k]! += short * this.#slope[k]!;
    if (matrix.factor(mass, 1 / short)) matrix.solve(before);
    else before.fill(0);
    for (let k = 0; k < before.length; k++) before[k] = start[k]! - before[k]!;
    this.#past.clear();
    this.#past.push(s - short, before);
    this.#past.push(s, start);
    this.before.moment = s - short;
    this.before.state.set(before);
  }

  /** u' at the end of the last attempted step, by the formula. */
  rate(out: Float64Array): void {
    const shift = this.formula.leading / this.length;
    for (let k = 0; k < out.length; k++) out[k] = this.#slope[k]! + shift * this.#difference[k]!;
  }

  get order(): number {
    return this.#control.order;
  }

  writeDense(): void {
    // The past serves.
  }

  shift(by: number): void {
    const { moments } = this.#past;
    for (let i = 0; i < moments.length; i++) moments[i]! -= by;
  }

  prepare(_s: number, start: Float64Array): number {
    if (this.#weightsAge++ % WEIGHTS_LAST !== 0) return Infinity;
    const weights = this.#weights;
    const perWeight = this.#perWeight;
    this.system.weights(start, weights);
    for (let k = 0; k < weights.length; k++) perWeight[k] = 1 / (LOCAL_SHARE * weights[k]!);
    return Infinity;
  }

  attempt(s: number, _start: Float64Array, h: number): number {
    const system = this.system;
    const { mass, matrix } = system;
    const formula = this.formula;
    const predicted = this.#predicted;
    const slope = this.#slope;
    const difference = this.#difference;
    const moment = s + h;
    this.#moment = moment;
    this.length = h;
    formula.set(this.#control.order, moment, h, this.#past.moments);
    this.#past.combine(predicted, formula.predict, slope, formula.slope);
    if (system.evaluate) {
      system.evaluate(moment, predicted, difference);
    } else {
      system.rightHandSide(moment, predicted, difference);
      system.linearise(moment, predicted, this.end);
    }
    this.work.rightHandSides++;
    this.work.jacobians++;
    this.work.factorisations++;
    for (let k = 0; k < difference.length; k++) difference[k]! -= mass[k]! * slope[k]!;
    const shift = formula.leading / h;
    if (matrix.factorAndSolve) {
      if (!matrix.factorAndSolve(mass, shift, difference)) return Infinity;
    } else {
      if (!matrix.factor(mass, shift)) return Infinity;
      matrix.solve(difference);
    }
    const size = this.#finish();
    const added = this.#nonlinearity * size * size;
    if (added <= ITERATION_ERROR && this.#unmeasured++ < MEASURE_AFTER) return formula.errorShare * size;
    return this.#iterate(moment, shift, size);
  }

  afterAccepted(h: number, error: number): number {
    const control = this.#control;
    const own = control.gain(error);
    const below = control.looksDown(own) ? this.#errorOf(control.order - 1, h) : Infinity;
    const above = control.looksUp(own) ? this.#errorOf(control.order + 1, h) : Infinity;
    return control.accepted(h, error, own, below, above);
  }

  afterRejected(h: number, error: number): number {
    return this.#control.rejected(h, error);
  }

  advance(): void {
    this.#past.push(this.#moment, this.end);
    this.#control.advance();
  }

  denseComponent(start: Float64Array, share: number, k: number): number {
    if (share <= 0) return start[k]!;
    const dense = this.#dense;
    dense.set(this.#control.order, share, this.formula.ages);
    return this.#past.component(dense.past, k) + dense.end[0]! * this.end[k]!;
  }

  denseState(start: Float64Array, share: number, out: Float64Array): void {
    if (share <= 0) {
      out.set(start);
      return;
    }
    const dense = this.#dense;
    dense.set(this.#control.order, share, this.formula.ages);
    this.#past.blend(out, dense.past, dense.end[0]!, this.end);
  }

  /** Scaled error another order would have made in the step just taken. */
  #errorOf(order: number, h: number): number {
    const other = this.#other;
    const missed = this.#correction;
    other.set(order, this.#moment, h, this.#past.moments);
    this.#past.blend(missed, other.predict, -1, this.end);
    return other.errorShare * this.#norm(missed);
  }

  /** Newton iterations on the Jacobian of the predicted state, until what is left counts no more; returns the scaled local error. */
  #iterate(moment: number, shift: number, first: number): number {
    const { mass, matrix } = this.system;
    const end = this.end;
    const slope = this.#slope;
    const difference = this.#difference;
    const correction = this.#correction;
    let last = first;
    for (let i = 1; i < MOST_ITERATIONS; i++) {
      this.system.rightHandSide(moment, end, correction);
      this.work.rightHandSides++;
      for (let k = 0; k < end.length; k++) correction[k]! -= mass[k]! * (slope[k]! + shift * difference[k]!);
      matrix.solve(correction);
      for (let k = 0; k < end.length; k++) difference[k]! += correction[k]!;
      const added = this.#norm(correction);
      const rate = added / last;
      if (i === 1) {
        this.#nonlinearity = first > 0 ? rate / first : 0;
        this.#unmeasured = 0;
      }
      const size = this.#finish();
      if (!Number.isFinite(size)) return Infinity;
      if (rate * added <= ITERATION_ERROR) return this.formula.errorShare * size;
      last = added;
    }
    return Infinity;
  }

  /** end = predicted + difference; returns the scaled size of the difference. */
  #finish(): number {
    const predicted = this.#predicted;
    const difference = this.#difference;
    const perWeight = this.#perWeight;
    const end = this.end;
    let sum = 0;
    for (let k = 0; k < end.length; k++) {
      const d = difference[k]!;
      const scaled = d * perWeight[k]!;
      end[k] = predicted[k]! + d;
      sum += scaled * scaled;
    }
    return Math.sqrt(sum / end.length);
  }

  /** Root mean square of a vector in units of the error weights. */
  #norm(vector: Float64Array): number {
    const perWeight = this.#perWeight;
    let sum = 0;
    for (let k = 0; k < vector.length; k++) {
      const scaled = vector[k]! * perWeight[k]!;
      sum += scaled * scaled;
    }
    return Math.sqrt(sum / vector.length);
  }
}
