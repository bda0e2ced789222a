import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityOfMixture,
  InputError,
  massFractionFromProof,
  trueStrengthFromReading,
  type HydrometerReading,
} from '#lib/index.js';

const fahrenheit = (t: number): number => (t - 32) / 1.8 + 273.15;

function found(reading: HydrometerReading) {
  const answer = trueStrengthFromReading(reading);
  if (!answer.found) throw new Error(answer.message);
  return answer;
}

describe('trueStrengthFromReading', () => {
  it('gives 189.5 proof for a reading of 193 at 75 °F, with the expansion of the glass', () => {
    // 27 CFR 30.61, Table 1.
    const printedDigit = 0.05;
    const reading = { scale: 'proof', proof: 193, temperature_K: fahrenheit(75) } as const;
    expect(Math.abs(found(reading).proof - 189.5)).toBeLessThan(printedDigit);
    // Without it the answer would not round to the printed one.
    expect(Math.abs(found({ ...reading, glassExpansion_per_K: 0 }).proof - 189.5)).toBeGreaterThan(printedDigit);
  });

  it('is the reading itself at the temperature of the scale, whatever the glass', () => {
    const expansion = fc.double({ min: 0, max: 1e-4, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), expansion, (strength, glassExpansion_per_K) => {
        const truth = found({ scale: 'volume', strength, temperature_K: 293.15, glassExpansion_per_K });
        // The density of weak mixtures falls by only 150 kg/m³ per unit of mass fraction (1000 at most): rounding × 1000/150.
        expect(Math.abs(truth.strength - strength)).toBeLessThan(1e-11);
      }),
    );
  });

  it('finds the mixture that floats the hydrometer so: same mass of liquid displaced as at the mark', () => {
    const mark = fc.double({ min: 40, max: 190, noNaN: true });
    const temperature = fc.double({ min: fahrenheit(32), max: fahrenheit(100), noNaN: true });
    const relative = 1e-12; // rounding of two densities
    fc.assert(
      fc.property(mark, temperature, (proof, temperature_K) => {
        const { massFraction } = found({ scale: 'proof', proof, temperature_K });
        const glass = 1 + 25e-6 * (temperature_K - fahrenheit(60));
        const atTheMark = densityOfMixture(massFractionFromProof(proof), fahrenheit(60));
        const displaced = densityOfMixture(massFraction, temperature_K) * glass;
        expect(Math.abs(displaced / atTheMark - 1)).toBeLessThan(relative);
      }),
    );
  });

  it('finds less than the mark in warm liquid, which reads too strong, and more in cold', () => {
    for (let proof = 40; proof <= 190; proof += 10) {
      expect(found({ scale: 'proof', proof, temperature_K: fahrenheit(75) }).proof).toBeLessThan(proof);
      expect(found({ scale: 'proof', proof, temperature_K: fahrenheit(45) }).proof).toBeGreaterThan(proof);
    }
  });

  it('rises with the reading at every temperature', () => {
    for (let t = 0; t <= 40; t += 5) {
      let last = -1;
      for (let percent = 15; percent <= 90; percent += 1) {
        const { strength } = found({ scale: 'volume', strength: percent / 100, temperature_K: 273.15 + t });
        expect(strength).toBeGreaterThan(last);
        last = strength;
      }
    }
  });

  it('says why when no mixture of ethanol and water reads so', () => {
    expect(trueStrengthFromReading({ scale: 'volume', strength: 0, temperature_K: 303.15 })).toMatchObject({
      found: false,
      reason: 'denser-than-water',
    });
    expect(trueStrengthFromReading({ scale: 'volume', strength: 1, temperature_K: 283.15 })).toMatchObject({
      found: false,
      reason: 'lighter-than-ethanol',
    });
  });

  it('says so for a liquid a millionth denser than water or lighter than ethanol, and not at the temperature of the scale', () => {
    // A hundredth of a degree changes water by 2 millionths, ethanol by 11.
    expect(trueStrengthFromReading({ scale: 'volume', strength: 0, temperature_K: 293.16 }).found).toBe(false);
    expect(trueStrengthFromReading({ scale: 'volume', strength: 1, temperature_K: 293.14 }).found).toBe(false);
    expect(trueStrengthFromReading({ scale: 'volume', strength: 0, temperature_K: 293.15 }).found).toBe(true);
    expect(trueStrengthFromReading({ scale: 'volume', strength: 1, temperature_K: 293.15 }).found).toBe(true);
  });

  it.each([
    [{ scale: 'volume', strength: 1.4, temperature_K: 293.15 }, 'strength is 1.4'],
    [{ scale: 'proof', proof: 201, temperature_K: 293.15 }, 'proof is 201'],
    [{ scale: 'volume', strength: 0.4, temperature_K: 20 }, 'temperature_K is 20'],
    [{ scale: 'volume', strength: NaN, temperature_K: 293.15 }, 'strength is NaN'],
    [
      { scale: 'volume', strength: 0.4, temperature_K: 293.15, glassExpansion_per_K: 0.01 },
      'glassExpansion_per_K is 0.01',
    ],
  ] as const)('refuses %j', (reading, message) => {
    expect(() => trueStrengthFromReading(reading)).toThrow(InputError);
    expect(() => trueStrengthFromReading(reading)).toThrow(message);
  });
});
