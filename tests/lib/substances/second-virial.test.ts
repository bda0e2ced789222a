import { describe, expect, it } from 'vitest';
import { ethanol, water, InputError } from '#lib/index.js';
import { ethanolVirial, waterVirial } from '#lib/substances/second-virial.js';

/** CRC Handbook of Chemistry and Physics, second virial coefficients: Σ a_i (298.15/T − 1)^(i−1), cm³/mol. */
const crc = (a: readonly number[], T: number): number =>
  a.reduce((sum, each, i) => sum + each * (298.15 / T - 1) ** i, 0);
const WATER = [-1158, -5157, -10301, -10597, -4415];
const ETHANOL = [-4475, -29719, -56716];

describe('second virial coefficients', () => {
  it.each([
    [303.15, 0.06],
    [323.15, 0.03],
    [351.4, 0.01],
    [373.15, 0.01],
    [423.15, 0.01],
  ])('of water at %d K is within %d of the CRC polynomial', (T, relative) => {
    expect(Math.abs((1e6 * water.secondVirial(T)) / crc(WATER, T) - 1)).toBeLessThan(relative);
  });

  it('of ethanol is up to 25 % weaker than the CRC polynomial where that holds, 330 to 390 K', () => {
    for (const T of [330, 345, 360, 375, 390]) {
      const ratio = (1e6 * ethanol.secondVirial(T)) / crc(ETHANOL, T);
      expect(ratio, `${T} K`).toBeGreaterThan(0.65);
      expect(ratio, `${T} K`).toBeLessThan(1.1);
    }
  });

  it('rise with temperature throughout, which the CRC polynomial of ethanol does not', () => {
    for (let T = 280; T < 500; T += 10) {
      expect(ethanol.secondVirial(T + 10)).toBeGreaterThan(ethanol.secondVirial(T));
      expect(water.secondVirial(T + 10)).toBeGreaterThan(water.secondVirial(T));
    }
    expect(crc(ETHANOL, 440)).toBeLessThan(crc(ETHANOL, 404));
  });

  it('have the slopes they say', () => {
    const [low, high, at] = [
      { value: 0, slope: 0 },
      { value: 0, slope: 0 },
      { value: 0, slope: 0 },
    ];
    for (const virial of [ethanolVirial, waterVirial]) {
      for (const T of [300, 350, 420]) {
        virial(T - 0.01, low);
        virial(T + 0.01, high);
        virial(T, at);
        expect(Math.abs((high.value - low.value) / 0.02 / at.slope - 1)).toBeLessThan(1e-6);
      }
    }
  });

  it('are refused outside their range', () => {
    expect(() => ethanol.secondVirial(100)).toThrow(/temperature_K is 100/);
    expect(() => water.secondVirial(600)).toThrow(InputError);
  });
});
