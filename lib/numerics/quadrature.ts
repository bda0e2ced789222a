// Integrals: an adaptive rule for one integral to a given error, and a five-point Gauss rule with inner integrals
// for quantities accumulated along a path.

import { InputError } from '../errors.js';

/**
 * The integral of a smooth function over an interval, to a given error.
 *
 * Equation: Gauss-Legendre rules of 5 and 2 × 5 points compared; halves refined until they agree.
 * @param evaluate The integrand f.
 * @param from Lower limit a.
 * @param to Upper limit b; below a the integral changes its sign.
 * @param tolerance Absolute error aimed at; default 1e-10.
 * @returns ∫ f dx from a to b.
 * @throws InputError when the integrand is not finite or cannot be resolved (a singular point inside).
 * @example integral((x) => 1 / x, 1, 2) // → 0.69314718
 * Source: P. J. Davis, P. Rabinowitz, Methods of Numerical Integration, 2nd ed., Academic Press 1984, chapter 6.
 */
export function integral(evaluate: (x: number) => number, from: number, to: number, tolerance = 1e-10): number {
  return refine(evaluate, from, to, gauss(evaluate, from, to), tolerance, DEEPEST);
}

const DEEPEST = 60;

function refine(
  f: (x: number) => number,
  a: number,
  b: number,
  whole: number,
  tolerance: number,
  depth: number,
): number {
  const middle = 0.5 * (a + b);
  const left = gauss(f, a, middle);
  const right = gauss(f, middle, b);
  const halves = left + right;
  if (!Number.isFinite(halves)) {
    throw new InputError({ argument: 'evaluate', value: halves, expected: `finite values between ${a} and ${b}` });
  }
  if (Math.abs(halves - whole) <= tolerance || Math.abs(halves - whole) <= 4 * Number.EPSILON * Math.abs(halves)) {
    return halves;
  }
  if (depth === 0) {
    throw new InputError({ argument: 'evaluate', value: halves, expected: `a smooth function near ${middle}` });
  }
  return (
    refine(f, a, middle, left, Math.SQRT1_2 * tolerance, depth - 1) +
    refine(f, middle, b, right, Math.SQRT1_2 * tolerance, depth - 1)
  );
}

function gauss(f: (x: number) => number, a: number, b: number): number {
  const width = b - a;
  let sum = 0;
  for (let i = 0; i < GAUSS_NODES.length; i++) sum += GAUSS_WEIGHTS[i]! * f(a + width * GAUSS_NODES[i]!);
  return width * sum;
}

const OUTER = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const OF_70 = 13 * Math.sqrt(70);
const INNER = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;

/** Nodes of the five-point Gauss-Legendre rule on [0, 1]. */
export const GAUSS_NODES: readonly number[] = Object.freeze(
  [-OUTER, -INNER, 0, INNER, OUTER].map((node) => 0.5 * (1 + node)),
);

/** Its weights. */
export const GAUSS_WEIGHTS: readonly number[] = Object.freeze(
  [322 - OF_70, 322 + OF_70, 512, 322 + OF_70, 322 - OF_70].map((weight) => weight / 1800),
);

/** Row i: weights of the integral from 0 to node i of the polynomial through the values at the five nodes. */
export const GAUSS_INNER: readonly (readonly number[])[] = Object.freeze(
  GAUSS_NODES.map((node) => Object.freeze(lagrangeIntegrals(node))),
);

/** Integrals from 0 to `end` of the five Lagrange polynomials of the nodes. */
function lagrangeIntegrals(end: number): number[] {
  return GAUSS_NODES.map((node, j) => {
    // Coefficients of the polynomial, lowest power first, built factor by factor.
    let coefficients = [1];
    GAUSS_NODES.forEach((other, k) => {
      if (k === j) return;
      const next = new Array<number>(coefficients.length + 1).fill(0);
      coefficients.forEach((c, power) => {
        next[power] = next[power]! - (c * other) / (node - other);
        next[power + 1] = next[power + 1]! + c / (node - other);
      });
      coefficients = next;
    });
    return coefficients.reduce((sum, c, power) => sum + (c * end ** (power + 1)) / (power + 1), 0);
  });
}
