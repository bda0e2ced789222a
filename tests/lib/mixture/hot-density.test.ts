import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ethanol,
  water,
  densityOfLiquid,
  densityOfMixture,
  excessVolume,
  InputError,
  massFractionFromMoleFraction,
} from '#lib/index.js';

const celsius = (t: number): number => t + 273.15;

describe('density of hot liquid', () => {
  it('is that of OIML R 22 up to 40 °C and goes on from there without a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => {
        expect(densityOfLiquid(p, celsius(30))).toBe(densityOfMixture(p, celsius(30)));
        const step = densityOfLiquid(p, celsius(40.0001)) - densityOfMixture(p, celsius(40));
        expect(Math.abs(step)).toBeLessThan(2e-4); // 0.1 mK times the slope of 1 kg/(m³ K)
      }),
    );
  });

  it('falls on heating at every composition', () => {
    for (let p = 0; p <= 1; p += 0.05) {
      let before = Infinity;
      for (let t = 41; t <= 129; t += 2) {
        const density = densityOfLiquid(p, celsius(t));
        expect(density).toBeLessThan(before);
        before = density;
      }
    }
  });

  it.each([
    // Water: IAPWS-95, 958.37 at 99.974 °C and 971.79 at 80 °C. Ethanol: VDI Heat Atlas 736.32 at 78.3 °C, a second
    // equation, 0.2 % above Perry's.
    [0, 99.974, 958.37, 5e-5],
    [0, 80, 971.79, 5e-5],
    [1, 78.3, 736.32, 2.5e-3],
    [1, 60, 754.52, 2.5e-3],
  ])('of the pure liquid (mass fraction %d) at %d °C is %d kg/m³', (p, t, published, relative) => {
    expect(Math.abs(densityOfLiquid(p, celsius(t)) / published - 1)).toBeLessThan(relative);
  });

  it('carries an excess volume that hardly moves: what its stated error rests on', () => {
    // Marsh & Richards, Aust. J. Chem. 33 (1980) 2121: −0.420 cm³/mol at x = 0.082, independent of temperature.
    const p = massFractionFromMoleFraction(0.082);
    for (const t of [10, 20, 30, 40]) expect(Math.abs(excessVolume(p, celsius(t)) * 1e6 + 0.42)).toBeLessThan(0.002);
    // From 30 to 40 °C it moves by at most 0.032 cm³/mol, 0.12 % of a molar volume.
    let move = 0;
    for (let q = 0; q <= 1; q += 0.01) {
      move = Math.max(move, Math.abs(excessVolume(q, celsius(40)) - excessVolume(q, celsius(30))));
    }
    expect(move * 1e6).toBeLessThan(0.033);
  });

  it('would have foretold 40 °C from 30 °C within 0.12 %', () => {
    for (let p = 0; p <= 1; p += 0.01) {
      const measured = densityOfMixture(p, celsius(40));
      const parts = 1 / measured - excess(p, 40);
      expect(Math.abs(1 / (parts + excess(p, 30)) / measured - 1)).toBeLessThan(1.2e-3);
    }
  });

  it('refuses what is no liquid here', () => {
    expect(() => densityOfLiquid(0.5, 500)).toThrow(/temperature_K is 500/);
    expect(() => densityOfLiquid(1.5, 350)).toThrow(InputError);
    expect(() => excessVolume(0.5, 350)).toThrow(InputError);
  });
});

/** Excess volume per kilogram at t °C. */
function excess(p: number, t: number): number {
  const molarMass = 1 / (p / 46.06844e-3 + (1 - p) / 18.015268e-3);
  return excessVolume(p, celsius(t)) / molarMass;
}

describe('saturated liquids', () => {
  it.each([
    // Evaluated from the published equations by separate code.
    [20, 790.32],
    [40, 772.26],
    [60, 753.22],
    [90, 722.41],
  ])('ethanol at %d °C has %d kg/m³', (t, printed) => {
    expect(Math.abs(ethanol.saturatedDensity(celsius(t)) - printed)).toBeLessThan(0.4); // molar mass of the source differs
  });

  it('water reaches its critical density', () => {
    expect(Math.abs(water.saturatedDensity(647) / 322 - 1)).toBeLessThan(0.12);
  });
});
