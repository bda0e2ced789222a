// Nonlinear least squares by the Levenberg-Marquardt method: minimise S(p) = Σ r_i(p)².
//
// Each step d solves the linear problem min |J d + r|² + λ |D d|² by Householder reflections of the stacked matrix
// [J; √λ D], so that J′J is never formed; D holds the largest column norms of J seen, which makes the method blind to
// the units of the parameters. A step that makes S larger is refused and λ grows; one that succeeds shrinks λ by
// how well the linear model foretold the gain. The end says whether a minimum was reached.
// Source: D. W. Marquardt, J. Soc. Ind. Appl. Math. 11 (1963) 431-441; damping after H. B. Nielsen, report
// IMM-REP-1999-05, Technical University of Denmark (1999); scaling after J. J. Moré, Lect. Notes Math. 630 (1978) 105.

import { fieldFaults, listFault, refuse, shapeFault } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';
import { inverseOfNormalMatrix, solveLeastSquares } from './linear/householder.js';

/** What is to be minimised. */
export interface LeastSquaresProblem {
  /** Number of residuals; not below the number of parameters. */
  readonly residualCount: number;
  /** First guess. */
  readonly start: readonly number[];
  /** Fills `out` with the residuals r(p), already divided by their standard errors. */
  residuals(parameters: Float64Array, out: Float64Array): void;
  /** Fills `out`, row by row, with ∂r_i/∂p_j; by central differences when left out. */
  jacobian?(parameters: Float64Array, out: Float64Array): void;
}

/** When to stop. */
export interface LeastSquaresOptions {
  /** Steps tried at most; default 400. */
  readonly maxSteps?: number;
  /** Fall of S foretold by the linear model, relative to S, below which a minimum is reached; default 1e-13. */
  readonly tolerance?: number;
}

/** Where the search ended, and how sure its parameters are. */
export interface LeastSquaresFit {
  readonly parameters: Float64Array;
  /** S at the end. */
  readonly sumOfSquares: number;
  /** Residuals less parameters. */
  readonly degreesOfFreedom: number;
  /** (JᵀJ)⁻¹, row by row; times S/degreesOfFreedom where the standard errors were not known beforehand. */
  readonly inverseNormal: Float64Array;
  readonly steps: number;
  /** converged: no step could lower S by more than the tolerance; stuck: steps failed before that; out of steps. */
  readonly ending: 'converged' | 'stuck' | 'out of steps';
}

/** Refused steps in a row before giving up. */
const REFUSALS = 60;
/** Damping at the start: long steps into flat country are the usual way to a false end (NIST's BoxBOD). */
const FIRST_DAMPING = 100;
/** Damping at which a step counts as free. */
const FREE = 1e-12;
const LEAST_DAMPING = 1e-18;
/** Parameters smaller than this share of their first guess are stepped as if they were that large: rounding of the
 * residuals then costs the Jacobian at most ε^⅔/share, 4e-9, beside residuals of the size of the first guess. */
const SMALL_SHARE = 1e-2;
/** Share of the first S below which a fit is exact but for rounding. */
const EXACT = 1e-26;

/**
 * The parameters that make a sum of squared residuals smallest, from a first guess on.
 *
 * Equation: (JᵀJ + λ D²) d = −Jᵀr by orthogonal reflections, worse steps refused (Levenberg-Marquardt).
 * @param problem Number of residuals, first guess, residuals and, if it is known, their Jacobian.
 * @param options Steps at most and tolerance.
 * @returns Parameters, S, (JᵀJ)⁻¹ and how the search ended; a local minimum, not always the lowest.
 * @throws InputError when there are fewer residuals than parameters or the first guess gives no finite S.
 * @example leastSquares({ residualCount: 2, start: [0], residuals(p, out) { out[0] = p[0] - 1; out[1] = p[0] - 2; } }).sumOfSquares // → 0.5
 * Source: D. W. Marquardt, J. Soc. Ind. Appl. Math. 11 (1963) 431-441.
 */
export function leastSquares(problem: LeastSquaresProblem, options: LeastSquaresOptions = {}): LeastSquaresFit {
  checkShape(problem, options);
  const { residualCount: rows, start } = problem;
  const columns = start.length;
  const tolerance = options.tolerance ?? 1e-13;
  const maxSteps = options.maxSteps ?? 400;
  if (columns === 0 || !(rows >= columns)) {
    throw new InputError({
      argument: 'problem.residualCount',
      value: rows,
      expected: `at least ${String(columns)} residuals`,
    });
  }
  let parameters = Float64Array.from(start);
  let residuals = new Float64Array(rows);
  let trial = new Float64Array(columns);
  let trialResiduals = new Float64Array(rows);
  const jacobian = new Float64Array(rows * columns);
  const scale = new Float64Array(columns);
  problem.residuals(parameters, residuals);
  let sum = sumOfSquares(residuals);
  if (!Number.isFinite(sum))
    throw new InputError({ argument: 'problem.start', value: start, expected: 'finite residuals' });

  const firstSum = sum;
  let damping = FIRST_DAMPING;
  let growth = 2;
  let steps = 0;
  let ending: LeastSquaresFit['ending'] = 'out of steps';
  let refused = 0;
  let fresh = false;
  for (; steps < maxSteps; steps++) {
    if (!fresh) {
      fillJacobian(problem, parameters, jacobian, rows);
      growScale(scale, jacobian, columns);
      fresh = true;
    }
    const step = solveLeastSquares(jacobian, residuals, scale, Math.sqrt(damping), rows, columns);
    for (let j = 0; j < columns; j++) trial[j] = parameters[j]! - step[j]!;
    problem.residuals(trial, trialResiduals);
    const trialSum = sumOfSquares(trialResiduals);
    const foretold = foretoldGain(jacobian, residuals, step, rows, columns);
    // Strong damping makes every step small: only a nearly free one that gains nothing tells a minimum.
    const flat = foretold <= tolerance * sum || sum <= EXACT * firstSum;
    const done = flat && damping <= FREE;
    // The last step is taken even when rounding hides its gain.
    if (trialSum < sum || (done && trialSum <= sum * (1 + 1e-12))) {
      const gain = (sum - trialSum) / foretold;
      damping = Math.max(LEAST_DAMPING, damping * (flat ? 0.1 : Math.max(1 / 3, 1 - (2 * gain - 1) ** 3)));
      growth = 2;
      refused = 0;
      [parameters, trial] = [trial, parameters];
      [residuals, trialResiduals] = [trialResiduals, residuals];
      sum = trialSum;
      fresh = false;
    } else if (flat && !done) {
      damping = Math.max(LEAST_DAMPING, 0.1 * damping);
    } else if (!done) {
      damping *= growth;
      growth *= 2;
      if (++refused > REFUSALS) {
        ending = 'stuck';
        break;
      }
    }
    if (done) {
      ending = 'converged';
      break;
    }
  }
  if (!fresh) fillJacobian(problem, parameters, jacobian, rows);
  return {
    parameters,
    sumOfSquares: sum,
    degreesOfFreedom: rows - columns,
    inverseNormal: inverseOfNormalMatrix(jacobian, rows, columns),
    steps,
    ending,
  };
}

function sumOfSquares(residuals: Float64Array): number {
  let sum = 0;
  for (const residual of residuals) sum += residual * residual;
  return sum;
}

/** |r|² − |r − J d|², what the linear model expects of the step −d. */
function foretoldGain(
  jacobian: Float64Array,
  residuals: Float64Array,
  step: Float64Array,
  rows: number,
  n: number,
): number {
  let gain = 0;
  for (let i = 0; i < rows; i++) {
    let change = 0;
    for (let j = 0; j < n; j++) change += jacobian[i * n + j]! * step[j]!;
    gain += change * (2 * residuals[i]! - change);
  }
  return gain;
}

function growScale(scale: Float64Array, jacobian: Float64Array, columns: number): void {
  const norms = new Float64Array(columns);
  for (let k = 0; k < jacobian.length; k++) norms[k % columns]! += jacobian[k]! * jacobian[k]!;
  for (let j = 0; j < columns; j++) scale[j] = Math.max(scale[j]!, Math.sqrt(norms[j]!)) || 1;
}

function fillJacobian(problem: LeastSquaresProblem, at: Float64Array, out: Float64Array, rows: number): void {
  if (problem.jacobian !== undefined) {
    problem.jacobian(at, out);
    return;
  }
  const columns = at.length;
  const p = Float64Array.from(at);
  const above = new Float64Array(rows);
  const below = new Float64Array(rows);
  for (let j = 0; j < columns; j++) {
    // A parameter that has come to nothing beside its first guess is stepped by a share of that guess.
    const size = Math.max(Math.abs(at[j]!), SMALL_SHARE * Math.abs(problem.start[j]!)) || 1;
    const step = Math.cbrt(Number.EPSILON) * size;
    p[j] = at[j]! + step;
    problem.residuals(p, above);
    p[j] = at[j]! - step;
    problem.residuals(p, below);
    p[j] = at[j]!;
    for (let i = 0; i < rows; i++) out[i * columns + j] = (above[i]! - below[i]!) / (2 * step);
  }
}

/** Faults of the question's shape, before anything is made of it. */
function checkShape(problem: LeastSquaresProblem, options: LeastSquaresOptions): void {
  refuse(fieldFaults('problem', problem, ['residualCount', 'start', 'residuals', 'jacobian']));
  refuse(shapeFault('problem.residuals', problem, { residuals: 'function' }, 'a function that fills the residuals'));
  const { residualCount, start } = problem;
  if (!ArrayBuffer.isView(start)) refuse(listFault('problem.start', start, 'parameters', 1, MOST));
  start.forEach((value, i) => checkRange(`problem.start[${String(i)}]`, value, -1e150, 1e150, 'a finite number'));
  checkRange('problem.residualCount', Number.isInteger(residualCount) ? residualCount : NaN, 1, MOST, 'a whole number');
  refuse(fieldFaults('options', options, ['maxSteps', 'tolerance']));
  if (options.maxSteps !== undefined) checkRange('options.maxSteps', options.maxSteps, 1, 1e9, 'steps from 1 up');
  if (options.tolerance !== undefined)
    checkRange('options.tolerance', options.tolerance, 0, 1, 'a tolerance from 0 to 1');
}

/** More would not fit into memory. */
const MOST = 1e7;
