// Laws of the liquid's non-ideality, for every model at every state of the matrix.

import { describe, expect, it } from 'vitest';
import { excessEnthalpy, excessHeatCapacity } from '#lib/index.js';
import { nrtlModel } from '#lib/mixture/activity/nrtl.js';
import { EXPANSION, redlichKisterModel } from '#lib/mixture/activity/redlich-kister.js';
import { wilsonModel } from '#lib/mixture/activity/wilson.js';
import { NRTL_ETHANOL_WATER } from '#lib/data/nrtl-ethanol-water.js';
import { WILSON_ETHANOL_WATER } from '#lib/data/wilson-ethanol-water.js';
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
    const stepT = 5e-3;
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

  it('is one stable liquid everywhere: 1/(x (1 − x)) + d²(gE/RT)/dx² > 0', () => {
    for (let temperature_K = 273.15; temperature_K <= 453.15; temperature_K += 5) {
      for (let i = 1; i < 400; i++) {
        const x = i / 400;
        const curvature = at(x, temperature_K).slopeEthanol / (1 - x);
        expect(1 + x * (1 - x) * curvature, `x ${x}, ${temperature_K} K`).toBeGreaterThan(0);
      }
    }
  });

  it('has a heat of mixing that is −R T² ∂(gE/RT)/∂T, and a heat capacity that is its slope', () => {
    const gas = 8.314462618;
    const step = 0.01;
    for (const { x, temperature_K } of states) {
      const slope =
        (model.excessGibbs(x, temperature_K + step) - model.excessGibbs(x, temperature_K - step)) / (2 * step);
      const heat = excessEnthalpy(x, temperature_K, model);
      expect(Math.abs(heat + gas * temperature_K ** 2 * slope), `x ${x}`).toBeLessThan(1e-3); // J/mol, difference quotient
      const byDifference =
        (excessEnthalpy(x, temperature_K + 0.2, model) - excessEnthalpy(x, temperature_K - 0.2, model)) / 0.4;
      expect(Math.abs(excessHeatCapacity(x, temperature_K, model) - byDifference), `x ${x}`).toBeLessThan(1e-3);
    }
  });
});

describe('relabelling: a model with its substances exchanged', () => {
  const about = { name: 'exchanged', range_K: [298, 423] as const, source: 'test' };
  const swap = <T extends Record<'a12' | 'b12' | 'c12' | 'a21' | 'b21' | 'c21', number>>(set: T): T => ({
    ...set,
    a12: set.a21,
    b12: set.b21,
    c12: set.c21,
    a21: set.a12,
    b21: set.b12,
    c21: set.c12,
  });
  // In the expansion: ρ becomes 1/ρ, w becomes −w, and the common factor ρ goes into the coefficients.
  const { stretch, middle_K, series, cross } = EXPANSION;
  const exchangedSeries = series.map((terms) => terms.map((term, k) => ((-1) ** k * term) / stretch));
  const exchanged = {
    nrtl: nrtlModel(swap(NRTL_ETHANOL_WATER.coefficients), about),
    wilson: wilsonModel(swap(WILSON_ETHANOL_WATER.coefficients), about),
    'redlich-kister': redlichKisterModel({ stretch: 1 / stretch, middle_K, series: exchangedSeries, cross }, about),
  };

  it.each(models.filter(({ name }) => name !== 'raoult'))('$name gives the same liquid', ({ name, model }) => {
    const other = exchanged[name as keyof typeof exchanged];
    for (const x of moleFractions) {
      for (const temperature_K of temperatures_K) {
        const one = model.activity(x, temperature_K, blankState());
        const two = other.activity(1 - x, temperature_K, blankState());
        expect(Math.abs(one.lnGammaEthanol - two.lnGammaWater), `x ${x}`).toBeLessThan(1e-12);
        expect(Math.abs(one.lnGammaWater - two.lnGammaEthanol), `x ${x}`).toBeLessThan(1e-12);
        expect(Math.abs(one.slopeEthanol + two.slopeWater), `x ${x}`).toBeLessThan(1e-10);
        expect(Math.abs(one.thermalEthanol - two.thermalWater), `x ${x}`).toBeLessThan(1e-13);
      }
    }
  });
});
