// The tableaus themselves: algebraic order conditions of Rosenbrock methods (E. Hairer, G. Wanner, Solving Ordinary
// Differential Equations II, 2nd ed. 1996, IV.7, Table 7.1, and VI.4 for index 1), computed from the transformed
// coefficients by undoing the transformation: Γ = (I/γ − C)^-1, A = a Γ, b = m Γ, β = A + Γ.

import { describe, expect, it } from 'vitest';
import { RODAS4 } from '#lib/numerics/stiff/rodas4.js';
import { RODAS5P } from '#lib/numerics/stiff/rodas5p.js';
import type { RosenbrockTableau } from '#lib/numerics/stiff/rosenbrock-tableau.js';

type Matrix = readonly (readonly number[])[];

const dot = (u: readonly number[], v: readonly number[]): number => u.reduce((sum, x, i) => sum + x * v[i]!, 0);
const times = (m: Matrix, v: readonly number[]): number[] => m.map((row) => dot(row, v));
const product = (m: Matrix, n: Matrix): number[][] =>
  m.map((row) => n[0]!.map((_x, j) => row.reduce((sum, x, k) => sum + x * n[k]![j]!, 0)));
const power = (v: readonly number[], p: number): number[] => v.map((x) => x ** p);
const sums = (m: Matrix): number[] => m.map((row) => row.reduce((sum, x) => sum + x, 0));
const each = (u: readonly number[], v: readonly number[]): number[] => u.map((x, i) => x * v[i]!);

/** Inverse of a lower triangular matrix. */
function inverse(m: Matrix): number[][] {
  const n = m.length;
  const out = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let sum = i === j ? 1 : 0;
      for (let k = j; k < i; k++) sum -= m[i]![k]! * out[k]![j]!;
      out[i]![j] = sum / m[i]![i]!;
    }
  }
  return out;
}

function conditions(tableau: RosenbrockTableau): [string, number, number][] {
  const n = tableau.alpha.length;
  const square = (entry: (i: number, j: number) => number): number[][] =>
    Array.from({ length: n }, (_r, i) => Array.from({ length: n }, (_c, j) => entry(i, j)));
  const gamma = inverse(square((i, j) => (i === j ? 1 / tableau.gamma : j < i ? -tableau.c[i]![j]! : 0)));
  const a = product(
    square((i, j) => (j < i ? tableau.a[i]![j]! : 0)),
    gamma,
  );
  const m = Array.from({ length: n }, (_x, j) => (j === n - 1 ? 1 : tableau.a[n - 1]![j]!));
  const b = product([m], gamma)[0]!;
  const beta = a.map((row, i) => row.map((x, j) => x + gamma[i]![j]!));
  const w = inverse(beta);
  const alphas = sums(a);
  const betas = sums(beta);
  return [
    ['abscissae', Math.max(...alphas.map((x, i) => Math.abs(x - tableau.alpha[i]!))), 0],
    ['row sums of Γ', Math.max(...sums(gamma).map((x, i) => Math.abs(x - tableau.gammaSums[i]!))), 0],
    [
      'order 1',
      dot(
        b,
        alphas.map(() => 1),
      ),
      1,
    ],
    ['order 2', dot(b, betas), 1 / 2],
    ['order 3, α²', dot(b, power(alphas, 2)), 1 / 3],
    ['order 3, ββ', dot(b, times(beta, betas)), 1 / 6],
    ['order 4, α³', dot(b, power(alphas, 3)), 1 / 4],
    ['order 4, α·Aβ', dot(b, each(alphas, times(a, betas))), 1 / 8],
    ['order 4, βα²', dot(b, times(beta, power(alphas, 2))), 1 / 12],
    ['order 4, βββ', dot(b, times(beta, times(beta, betas))), 1 / 24],
    ['index 1, order 3', dot(b, times(w, power(alphas, 2))), 1],
    ['index 1, order 4, α³', dot(b, times(w, power(alphas, 3))), 1],
    ['index 1, order 4, α·Aβ', dot(b, times(w, each(alphas, times(a, betas)))), 1 / 2],
    ['index 1, order 4, α·A w α²', dot(b, each(alphas, times(a, times(w, power(alphas, 2))))), 1 / 4],
  ];
}

describe.each([RODAS4, RODAS5P])('$name', (tableau) => {
  const roundOff = 2e-13; // sums of some sixty products of numbers up to 150
  it.each(conditions(tableau))('meets the condition %s', (_name, value, expected) => {
    expect(Math.abs(value - expected)).toBeLessThan(roundOff);
  });
});
