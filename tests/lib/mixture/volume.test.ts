import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountsFromVolume,
  contraction,
  InputError,
  massFractionFromStrength,
  pureAlcoholVolume,
  strengthFromMoleFraction,
  volumeAt20C,
} from '#lib/index.js';

const litre = 1e-3;
const rounding = 1e-12;
/** Numbers below 1e-308 have fewer digits than the others. */
const least = 1e-300;

/** Two volumes poured together: masses add, the volume is the mixture's. */
function pouredTogether(...parts: readonly (readonly [volume: number, strength: number])[]) {
  const amounts = parts.map(([volume, strength]) => amountsFromVolume(volume * litre, strength));
  const ethanol_mol = amounts.reduce((sum, { ethanol_mol }) => sum + ethanol_mol, 0);
  const water_mol = amounts.reduce((sum, { water_mol }) => sum + water_mol, 0);
  return {
    litres: volumeAt20C(ethanol_mol, water_mol) / litre,
    percentVol: 100 * strengthFromMoleFraction(ethanol_mol / (ethanol_mol + water_mol)),
  };
}

describe('contraction', () => {
  it('is largest at 46.6 % mass, where 3.55 % of the volume is lost at 20 °C', () => {
    // Computed from R 22 apart from this library; textbooks say about 3.6 % near equal volumes.
    const losses = Array.from({ length: 1001 }, (_, i) => contraction(i / 1000, 293.15));
    const largest = Math.max(...losses);
    expect(Math.abs(largest - 0.03546)).toBeLessThan(5e-6);
    expect(losses.indexOf(largest)).toBe(466);
  });

  it('is nothing for the pure substances and positive between', () => {
    expect([contraction(0, 293.15), contraction(1, 293.15)]).toEqual([0, 0]);
    for (let p = 0.01; p < 1; p += 0.01) expect(contraction(p, 293.15)).toBeGreaterThan(0);
  });

  it('refuses a temperature outside R 22 even for a pure substance', () => {
    expect(() => contraction(0, 353)).toThrow(InputError);
    expect(() => contraction(1.2, 293.15)).toThrow('massFraction is 1.2');
  });
});

describe('mixing by volume at 20 °C', () => {
  it('makes 96.4 mL out of 50 mL of ethanol and 50 mL of water', () => {
    // A textbook figure from memory, 'about 96.4'; R 22 has 96.46.
    const textbook = 0.1; // mL: 'about'
    expect(Math.abs(pouredTogether([0.05, 1], [0.05, 0]).litres * 1000 - 96.4)).toBeLessThan(textbook);
  });

  it.each([
    // R 22 at 20 °C, computed apart from this library.
    [[50, 1], [50, 0], 96.46, 51.83],
    [[100, 0.7], [77.5, 0], 175.01, 40.0],
    [[100, 0.96], [140, 0], 233.05, 41.19],
    [[100, 0.6], [100, 0.2], 198.67, 40.27],
    [[100, 0.8], [100, 0.1], 196.56, 45.79],
  ] as const)('%j with %j gives %d L at %d %% vol', (first, second, litres, percentVol) => {
    const printedDigit = 5.01e-3;
    const mixed = pouredTogether(first, second);
    expect(Math.abs(mixed.litres - litres)).toBeLessThan(printedDigit);
    expect(Math.abs(mixed.percentVol - percentVol)).toBeLessThan(printedDigit);
  });
});

describe('amounts and volumes', () => {
  const strength = fc.double({ min: 0, max: 1, noNaN: true });
  const volume = fc.double({ min: 0, max: 10, noNaN: true, minExcluded: true });

  it('come back from each other', () => {
    fc.assert(
      fc.property(volume, strength, (volume_m3, q) => {
        const { ethanol_mol, water_mol } = amountsFromVolume(volume_m3, q);
        expect(Math.abs(volumeAt20C(ethanol_mol, water_mol) - volume_m3)).toBeLessThanOrEqual(
          rounding * volume_m3 + least,
        );
      }),
    );
  });

  it('conserve pure alcohol: as ethanol alone it fills the strength times the volume', () => {
    fc.assert(
      fc.property(volume, strength, (volume_m3, q) => {
        const alone = volumeAt20C(amountsFromVolume(volume_m3, q).ethanol_mol, 0);
        const alcohol = pureAlcoholVolume(volume_m3, q);
        expect(Math.abs(alone - alcohol)).toBeLessThanOrEqual(rounding * alcohol + least);
      }),
    );
  });

  it('are zero for nothing', () => {
    expect(volumeAt20C(0, 0)).toBe(0);
    expect(amountsFromVolume(0, 0.5)).toEqual({ ethanol_mol: 0, water_mol: 0 });
    expect(massFractionFromStrength(0)).toBe(0);
  });

  it('let rounding below zero pass', () => {
    expect(volumeAt20C(-1e-14, 100)).toBeCloseTo(volumeAt20C(0, 100), 12);
    expect(volumeAt20C(100, -1e-14)).toBeCloseTo(volumeAt20C(100, 0), 12);
  });

  it.each([
    [() => volumeAt20C(-1, 100), 'ethanol_mol is -1'],
    [() => volumeAt20C(1, -100), 'water_mol is -100'],
    [() => volumeAt20C(100, -1), 'water_mol is -1'],
    [() => volumeAt20C(NaN, 100), 'ethanol_mol is NaN'],
    [() => volumeAt20C(1, Infinity), 'water_mol is Infinity'],
    [() => amountsFromVolume(-0.1, 0.5), 'volume_m3 is -0.1'],
    [() => amountsFromVolume(0.1, 1.01), 'strength is 1.01'],
    [() => pureAlcoholVolume(NaN, 0.5), 'volume_m3 is NaN'],
    [() => pureAlcoholVolume(0.1, -0.5), 'strength is -0.5'],
  ])('refuse bad input by name: %s', (call, message) => {
    expect(call).toThrow(InputError);
    expect(call).toThrow(message);
  });
});
