// Small stiff problems with closed solutions, for the tests of the integrator.

import { bandedMatrix } from '#lib/numerics/linear/banded.js';
import { RosenbrockStep } from '#lib/numerics/stiff/rosenbrock-step.js';
import type { RosenbrockTableau } from '#lib/numerics/stiff/rosenbrock-tableau.js';
import type { StiffSystem } from '#lib/numerics/stiff/stiff-system.js';

export interface TestProblem {
  readonly name: string;
  readonly system: StiffSystem;
  readonly start: readonly number[];
  readonly from: number;
  readonly to: number;
  exact(s: number): readonly number[];
}

const evenWeights = (_u: Float64Array, out: Float64Array): void => void out.fill(1e-8);

/** u' = −s u²; u = 2/(s² + 2) from u(0) = 1: nonlinear and not autonomous. */
export function driven(): TestProblem {
  const matrix = bandedMatrix(1, 0, 0);
  const exact = (s: number): number[] => [2 / (s * s + 2)];
  return {
    name: "u' = -s u^2",
    from: 0,
    to: 2,
    start: [1],
    exact,
    system: {
      size: 1,
      mass: new Float64Array([1]),
      matrix,
      rightHandSide: (s, u, out) => void (out[0] = -s * u[0]! * u[0]!),
      linearise: (s, u, slope) => {
        matrix.entries[0] = -2 * s * u[0]!;
        slope[0] = -u[0]! * u[0]!;
      },
      weights: evenWeights,
    },
  };
}

/** Kaps problem, kappa = 1, with the solution u1 = e^-2s, u2 = e^-s. */
export function coupled(): TestProblem {
  const matrix = bandedMatrix(2, 1, 1);
  const set = (i: number, j: number, value: number): void => void (matrix.entries[i * 3 + (j - i + 1)] = value);
  return {
    name: 'Kaps',
    from: 0,
    to: 1,
    start: [1, 1],
    exact: (s) => [Math.exp(-2 * s), Math.exp(-s)],
    system: {
      // Kaps' problem (P. Kaps, dissertation, Innsbruck 1977): u1' = −(κ+2) u1 + κ u2², u2' = u1 − u2 − u2².
      size: 2,
      mass: new Float64Array([1, 1]),
      matrix,
      rightHandSide: (_s, u, out) => {
        out[0] = -3 * u[0]! + u[1]! * u[1]!;
        out[1] = u[0]! - u[1]! - u[1]! * u[1]!;
      },
      linearise: (_s, u, slope) => {
        set(0, 0, -3);
        set(0, 1, 2 * u[1]!);
        set(1, 0, 1);
        set(1, 1, -1 - 2 * u[1]!);
        slope.fill(0);
      },
      weights: evenWeights,
    },
  };
}

/** An index-1 problem: v' = −v w, 0 = w − cos s − v + e^(−sin s): v = e^(−sin s), w = cos s. */
export function constrained(): TestProblem {
  const matrix = bandedMatrix(2, 1, 1);
  const set = (i: number, j: number, value: number): void => void (matrix.entries[i * 3 + (j - i + 1)] = value);
  const decay = (s: number): number => Math.exp(-Math.sin(s));
  return {
    name: 'index 1',
    from: 0,
    to: 1,
    start: [1, 1],
    exact: (s) => [decay(s), Math.cos(s)],
    system: {
      size: 2,
      mass: new Float64Array([1, 0]),
      matrix,
      rightHandSide: (s, u, out) => {
        out[0] = -u[0]! * u[1]!;
        out[1] = u[1]! - Math.cos(s) - u[0]! + decay(s);
      },
      linearise: (s, u, slope) => {
        set(0, 0, -u[1]!);
        set(0, 1, -u[0]!);
        set(1, 0, -1);
        set(1, 1, 1);
        slope[0] = 0;
        slope[1] = Math.sin(s) - Math.cos(s) * decay(s);
      },
      weights: evenWeights,
    },
  };
}

/** Largest error at the end after `count` equal steps of a method. */
export function endError(problem: TestProblem, tableau: RosenbrockTableau, count: number): number {
  const step = new RosenbrockStep(problem.system, tableau);
  const u = Float64Array.from(problem.start);
  const h = (problem.to - problem.from) / count;
  for (let i = 0; i < count; i++) {
    const s = problem.from + i * h;
    step.prepare(s, u);
    step.attempt(s, u, h);
    u.set(step.end);
  }
  return Math.max(...problem.exact(problem.to).map((value, k) => Math.abs(value - u[k]!)));
}

/** Largest error of the dense output in the middle of each of `count` equal steps, each started exactly. */
export function denseError(problem: TestProblem, tableau: RosenbrockTableau, count: number): number {
  const step = new RosenbrockStep(problem.system, tableau);
  const h = (problem.to - problem.from) / count;
  let worst = 0;
  for (let i = 0; i < count; i++) {
    const s = problem.from + i * h;
    const u = Float64Array.from(problem.exact(s));
    step.prepare(s, u);
    step.attempt(s, u, h);
    problem.exact(s + 0.4 * h).forEach((value, k) => {
      worst = Math.max(worst, Math.abs(value - step.denseComponent(u, 0.4, k)));
    });
  }
  return worst;
}
