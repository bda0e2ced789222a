import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '#lib/index.js';
import { bracketedNewton, bracketedRoot } from '#lib/numerics/root.js';

const rounding = 1e-14; // a few units in the last place of numbers near 1

describe('bracketedRoot', () => {
  it('finds √2, π and a root at an end', () => {
    expect(Math.abs(bracketedRoot((x) => x * x - 2, 0, 2) - Math.SQRT2)).toBeLessThan(rounding);
    expect(Math.abs(bracketedRoot(Math.sin, 2, 4) - Math.PI)).toBeLessThan(rounding);
    expect(bracketedRoot((x) => x, 0, 1)).toBe(0);
  });

  it('finds the root of steep, flat and stepped functions in any bracket that holds it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.constantFrom(
          (d: number) => d,
          (d: number) => d ** 9,
          (d: number) => Math.tanh(1e6 * d),
          (d: number) => Math.sign(d),
        ),
        (root, shape) => {
          expect(Math.abs(bracketedRoot((x) => shape(x - root), 0, 1) - root)).toBeLessThan(1e-7);
        },
      ),
    );
  });

  it('refuses a bracket without change of sign and values that are not numbers', () => {
    expect(() => bracketedRoot((x) => x + 5, 0, 1)).toThrow(InputError);
    expect(() => bracketedRoot(() => NaN, 0, 1)).toThrow(InputError);
  });
});

describe('bracketedNewton', () => {
  it('finds the root from any start, even where plain Newton runs away', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (start) => {
        const root = bracketedNewton(
          (x, out) => {
            out.value = Math.atan(x - 0.3);
            out.slope = 1 / (1 + (x - 0.3) ** 2);
          },
          -30,
          30,
          start,
        );
        expect(Math.abs(root - 0.3)).toBeLessThan(rounding);
      }),
    );
  });

  it('refuses a bracket without change of sign', () => {
    const positive = (_x: number, out: { value: number; slope: number }): void => {
      out.value = 1;
      out.slope = 0;
    };
    expect(() => bracketedNewton(positive, 0, 1, 0.5)).toThrow(InputError);
  });
});
