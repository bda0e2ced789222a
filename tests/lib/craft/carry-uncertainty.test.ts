import { describe, expect, it } from 'vitest';
import { carryUncertainty, dilute, InputError } from '#lib/index.js';

describe('uncertainty carried to an answer', () => {
  it('adds independent inputs in quadrature: a product by its relative parts', () => {
    // JCGM 100:2008, 5.1.6: (u/y)² = Σ (u_i/x_i)² for a product, to first order.
    const { '': y } = carryUncertainty(
      ({ a, b }: { a: number; b: number }) => a * b,
      { a: 3, b: 7 },
      { a: 0.03, b: 0.14 },
    );
    expect(y!.uncertainty / 21).toBeCloseTo(Math.hypot(0.01, 0.02), 12);
    expect(y!.from).toEqual({ a: expect.closeTo(0.21, 12) as number, b: expect.closeTo(0.42, 12) as number });
  });

  it('agrees with a thousand random trials of a dilution', () => {
    // Monte Carlo as in JCGM 101:2008, seeded; 1000 trials know the spread to some 2.2 %.
    const input = { spirit: { volume_m3: 0.05, strength: 0.68 }, strength: 0.42 };
    const u = { 'spirit.volume_m3': 0.0003, 'spirit.strength': 0.003, strength: 0.002 };
    const { water_kg } = carryUncertainty(dilute, input, u);
    const trials = trialsOf(
      1000,
      20261128,
      ([volume, strong, wanted]) =>
        dilute({
          spirit: { volume_m3: 0.05 + 0.0003 * volume!, strength: 0.68 + 0.003 * strong! },
          strength: 0.42 + 0.002 * wanted!,
        }).water_kg,
    );
    expect(Math.abs(trials.mean - water_kg!.value)).toBeLessThan(0.15 * water_kg!.uncertainty);
    expect(Math.abs(trials.spread / water_kg!.uncertainty - 1)).toBeLessThan(0.08);
  });

  it('takes one side where the other cannot be asked', () => {
    const root = ({ x }: { x: number }): number => {
      if (x < 0) throw new InputError({ argument: 'x', value: x, expected: '0 or more' });
      return 2 * x;
    };
    expect(carryUncertainty(root, { x: 0 }, { x: 0.5 })['']!.uncertainty).toBeCloseTo(1, 12);
  });

  it('takes one side where the other has no answer', () => {
    const answer = ({ x }: { x: number }) =>
      x > 1 ? { found: false, reason: 'too-much' } : { found: true, twice: 2 * x };
    expect(carryUncertainty(answer, { x: 1 }, { x: 0.25 }).twice!.uncertainty).toBeCloseTo(0.5, 12);
  });

  it('counts an input of no uncertainty for nothing, and no input for none', () => {
    expect(carryUncertainty(({ a }: { a: number }) => a, { a: 1 }, { a: 0 })['']!.uncertainty).toBe(0);
    expect(carryUncertainty(({ a }: { a: number }) => a, { a: 1 }, {})['']!.uncertainty).toBe(0);
  });

  it.each(['b', 'a.b', 'list[3]', '__proto__', ''])('refuses the path ‘%s’ that leads to no number', (path) => {
    const input = { a: 1, list: [1, 2] };
    expect(() => carryUncertainty(({ a }: typeof input) => a, input, { [path]: 1 })).toThrow(InputError);
  });

  it('leaves a fault of the function itself as it is', () => {
    const broken = ({ a }: { a: number }): number => {
      if (a !== 1) throw new TypeError('broken');
      return a;
    };
    expect(() => carryUncertainty(broken, { a: 1 }, { a: 0.1 })).toThrow(TypeError);
  });
});

/** Mean and spread of a number over random standard normal inputs, from a fixed seed. */
function trialsOf(
  count: number,
  seed: number,
  one: (normals: readonly number[]) => number,
): { mean: number; spread: number } {
  let state = seed;
  const uniform = (): number => {
    // Lehmer's generator, modulus 2^31 − 1, multiplier 48271.
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const normal = (): number => Array.from({ length: 12 }, uniform).reduce((sum, part) => sum + part, -6);
  const values = Array.from({ length: count }, () => one([normal(), normal(), normal()]));
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  return { mean, spread };
}
