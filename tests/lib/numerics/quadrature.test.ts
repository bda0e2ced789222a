import { describe, expect, it } from 'vitest';
import { InputError } from '#lib/index.js';
import { logistic, logit } from '#lib/numerics/logit.js';
import { GAUSS_INNER, GAUSS_NODES, GAUSS_WEIGHTS, integral } from '#lib/numerics/quadrature.js';

const rounding = 1e-14;

describe('integral', () => {
  it.each([
    // Closed forms.
    ['1/x', (x: number) => 1 / x, 1, 2, Math.LN2],
    ['exp', Math.exp, 0, 1, Math.E - 1],
    ['a narrow peak', (x: number) => 1 / (1e-6 + x * x), -1, 1, 2e3 * Math.atan(1e3)],
    ['√x, singular in its slope', Math.sqrt, 0, 1, 2 / 3],
  ])('of %s meets the closed form', (_name, f, from, to, exact) => {
    expect(Math.abs(integral(f, from, to, 1e-12) - exact)).toBeLessThan(1e-10 * Math.max(1, Math.abs(exact)));
  });

  it('changes its sign with its limits', () => {
    expect(integral((x) => x, 1, 0)).toBeCloseTo(-0.5, 12);
  });

  it('refuses an integrand that is not finite', () => {
    expect(() => integral((x) => 1 / (x - 0.5), 0, 1)).toThrow(InputError);
  });
});

describe('the five-point rule', () => {
  it('has the published nodes and weights', () => {
    // M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, table 25.4, n = 5, moved to [0, 1].
    const nodes = [-0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664];
    const weights = [0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189];
    const printedDigits = 1e-15;
    nodes.forEach((node, i) => {
      expect(Math.abs(GAUSS_NODES[i]! - 0.5 * (1 + node))).toBeLessThan(printedDigits);
      expect(Math.abs(GAUSS_WEIGHTS[i]! - 0.5 * weights[i]!)).toBeLessThan(printedDigits);
    });
  });

  it('integrates powers up to four from 0 to each node', () => {
    for (let power = 0; power <= 4; power++) {
      GAUSS_INNER.forEach((row, i) => {
        const sum = row.reduce((total, weight, j) => total + weight * GAUSS_NODES[j]! ** power, 0);
        expect(Math.abs(sum - GAUSS_NODES[i]! ** (power + 1) / (power + 1))).toBeLessThan(rounding);
      });
    }
  });
});

describe('logit and logistic', () => {
  it('undo each other and reach both ends', () => {
    for (const x of [1e-12, 0.04, 0.5, 0.97]) expect(Math.abs(logistic(logit(x)) / x - 1)).toBeLessThan(1e-12);
    expect(logistic(logit(0))).toBe(0);
    expect(logistic(logit(1))).toBe(1);
  });
});
