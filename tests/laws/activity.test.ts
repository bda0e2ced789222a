// Laws of the liquid's non-ideality, for every model at every state of the matrix.

import { describe, expect, it } from 'vitest';
import { blankState, models, moleFractions, temperatures_K } from './states.js';

const rounding = 1e-13;
const differenceQuotient = 2e-7; // error of a central difference with the steps used here

describe.each(models)('$name', ({ model }) => {
  const at = (x: number, temperature_K: number) => model.activity(x, temperature_K, blankState());
  const inside = moleFractions.filter((x) => x >= 1e-6 && x <= 0.999);
  const states = inside.flatMap((x) => temperatures_K.map((temperature_K) => ({ x, temperature_K })));

  it('has gE/RT = x ln γ1 + (1 − x) ln γ2', () => {
    for (const { x, temperature_K } of states) {
      const { lnGammaEthanol, lnGammaWater } = at(x, temperature_K);
      const sum = x * lnGammaEthanol + (1 - x) * lnGammaWater;
      expect(Math.abs(model.excessGibbs(x, temperature_K) - sum), `x ${x}`).toBeLessThan(rounding);
    }
  });

  it('has ln γ that follow from gE by its derivative (the second route)', () => {
    const step = 1e-7;
    for (const { x, temperature_K } of states) {
      if (x < 1e-4) continue;
      const g = model.excessGibbs(x, temperature_K);
      const slope =
        (model.excessGibbs(x + step, temperature_K) - model.excessGibbs(x - step, temperature_K)) / (2 * step);
      const { lnGammaEthanol, lnGammaWater } = at(x, temperature_K);
      expect(Math.abs(g + (1 - x) * slope - lnGammaEthanol), `x ${x}`).toBeLessThan(1e-8);
      expect(Math.abs(g - x * slope - lnGammaWater), `x ${x}`).toBeLessThan(1e-8);
    }
  });

  it('obeys Gibbs-Duhem: x dlnγ1/dx + (1 − x) dlnγ2/dx = 0', () => {
    for (const { x, temperature_K } of states) {
      const { slopeEthanol, slopeWater } = at(x, temperature_K);
      expect(Math.abs(x * slopeEthanol + (1 - x) * slopeWater), `x ${x}`).toBeLessThan(rounding);
    }
  });

  it('is ideal where pure: ln γ1 and its slope vanish at x = 1, those of water at x = 0', () => {
    for (const temperature_K of temperatures_K) {
      const pureEthanol = at(1, temperature_K);
      const pureWater = at(0, temperature_K);
      expect(Math.abs(pureEthanol.lnGammaEthanol)).toBeLessThan(rounding);
      expect(Math.abs(pureEthanol.slopeEthanol)).toBeLessThan(rounding);
      expect(Math.abs(pureWater.lnGammaWater)).toBeLessThan(rounding);
      expect(Math.abs(pureWater.slopeWater)).toBeLessThan(rounding);
      expect(
        Math.abs(model.excessGibbs(0, temperature_K)) + Math.abs(model.excessGibbs(1, temperature_K)),
      ).toBeLessThan(rounding);
    }
  });

  it('comes to its values at the ends without a jump', () => {
    for (const temperature_K of temperatures_K) {
      for (const [end, near] of [
        [0, 1e-9],
        [1, 1 - 1e-9],
      ] as const) {
        // prettier-ignore
        const [limit, close] = [at(end, temperature_K), at(near, temperature_K)];
        expect(Math.abs(limit.lnGammaEthanol - close.lnGammaEthanol)).toBeLessThan(1e-7);
        expect(Math.abs(limit.lnGammaWater - close.lnGammaWater)).toBeLessThan(1e-7);
      }
    }
  });

  it('has slopes in x and T that are the derivatives of its ln γ', () => {
    const step = 1e-5;
    const stepT = 1e-2;
    for (const { x, temperature_K } of states) {
      const state = at(x, temperature_K);
      const lower = Math.max(0, x - step);
      const [left, right] = [at(lower, temperature_K), at(x + step, temperature_K)];
      const width = x + step - lower;
      if (x > 1e-4) {
        const scale = 1 + Math.abs(state.slopeEthanol) + Math.abs(state.slopeWater);
        for (const [slope, ln] of [
          ['slopeEthanol', 'lnGammaEthanol'],
          ['slopeWater', 'lnGammaWater'],
        ] as const) {
          // prettier-ignore
          expect(Math.abs(state[slope] - (right[ln] - left[ln]) / width) / scale, `x ${x}`).toBeLessThan(
            differenceQuotient,
          );
        }
      }
      const [cold, hot] = [at(x, temperature_K - stepT), at(x, temperature_K + stepT)];
      for (const [slope, ln] of [
        ['thermalEthanol', 'lnGammaEthanol'],
        ['thermalWater', 'lnGammaWater'],
      ] as const) {
        // prettier-ignore
        expect(Math.abs(state[slope] - (hot[ln] - cold[ln]) / (2 * stepT)), `x ${x}`).toBeLessThan(1e-10);
      }
    }
  });
});
