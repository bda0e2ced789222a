// The regression is repeated by independent code, the published models give published numbers, the weights are whole.

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import scipy from '../../reference/derived/regression-scipy.json' with { type: 'json' };
import weights from '../../reference/measurements/weights.json' with { type: 'json' };
import { activityModel, azeotrope, bubblePoint } from '#lib/index.js';
import { REDLICH_KISTER_COVARIANCE } from '#lib/data/redlich-kister-covariance.js';
import { EXPANSION } from '#lib/mixture/activity/redlich-kister.js';
import type { ActivityModel } from '#lib/index.js';
// @ts-expect-error plain JavaScript
import { publishedModels } from '../../reference/regression/published-models.mjs';

const published = publishedModels() as { key: string; model: ActivityModel }[];
const modelOf = (key: string): ActivityModel => published.find((each) => each.key === key)!.model;
const gammas = (model: ActivityModel, x: number, T: number): [number, number] => {
  const state = model.activity(x, T, {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  });
  return [Math.exp(state.lnGammaEthanol), Math.exp(state.lnGammaWater)];
};

describe('the regression of the reference model', () => {
  const [reference] = scipy.fits;

  it('ends at the same minimum as scipy (MINPACK) on equations written independently', () => {
    const { reducedChiSquare, degreesOfFreedom } = REDLICH_KISTER_COVARIANCE.constants;
    expect(Math.abs((reducedChiSquare * degreesOfFreedom) / reference!.sumOfSquares - 1)).toBeLessThan(1e-4);
    expect(scipy.stretch).toBe(EXPANSION.stretch);
    // scipy lists the functions of temperature term by term.
    let i = 0;
    for (const [k, functions] of [4, 4, 4, 3, 3, 3].entries()) {
      for (let j = 0; j < functions; j++) {
        const ours = EXPANSION.series[j]![k]!;
        expect(Math.abs(reference!.parameters[i++]! - ours), `${'abcd'[j]}${k + 1}`).toBeLessThan(
          5e-3 * (1 + Math.abs(ours)),
        );
      }
    }
  });

  it('gives the same azeotropes there', () => {
    for (const [pressure, x] of Object.entries(reference!.azeotrope)) {
      const found = azeotrope(Number(pressure), activityModel('redlich-kister'));
      expect(found.found && Math.abs(found.moleFraction - x), `${pressure} Pa`).toBeLessThan(5e-5);
    }
  });
});

describe('the published sets', () => {
  it.each([
    // Original UNIFAC at 298 K as printed by its distributors (DDBST): x, γ ethanol, γ water.
    [0, 7.6261, 1.0],
    [0.1, 3.433, 1.0393],
    [0.3, 1.6208, 1.2366],
    [0.5, 1.2036, 1.4968],
    [0.9, 1.0088, 2.2209],
    [1, 1.0, 2.6621],
  ])('unifac at x = %d gives the printed %d and %d', (x, ethanol, water) => {
    const [one, two] = gammas(modelOf('unifac'), x, 298);
    // At the very ends the derivative is one-sided.
    const band = x === 0 || x === 1 ? 5e-3 : 6e-5 * 4;
    expect(Math.abs(one - ethanol)).toBeLessThan(band);
    expect(Math.abs(two - water)).toBeLessThan(band);
  });

  it.each([
    // Azeotropes at 1 atm evaluated by separate code with another ethanol equation (0.13 K higher), which moves them by
    // up to 0.005.
    ['wilson-325', 0.8807],
    ['wilson-382', 0.8696],
    ['nrtl-58', 0.8759],
    ['nrtl-110', 0.9088],
    ['nrtl-circulated', 0.8909],
    ['uniquac-174', 0.8733],
    ['uniquac-58', 0.8974],
    ['uniquac-anderson', 0.9062],
    ['uniquac-temperature', 0.8956],
    ['vanlaar-1.68-0.92', 0.9087],
    ['vanlaar-log10', 0.8942],
    ['unifac', 0.8923],
    ['unifac-dortmund', 0.8941],
  ])('%s has its azeotrope near %d', (key, x) => {
    const found = azeotrope(101325, modelOf(key));
    expect(found.found && Math.abs(found.moleFraction - x)).toBeLessThan(0.006);
  });

  it('are worse at 30 °C than the reference model, every one', () => {
    // One published point as a sample: Pemberton & Mash 1978, x = 0.10991, 7.329 kPa, 303.15 K, y = 0.4743.
    const miss = (model: ActivityModel): number => Math.abs(bubblePoint(0.10991, 7329, model).temperature_K - 303.15);
    const reference = miss(activityModel('redlich-kister'));
    expect(reference).toBeLessThan(0.05);
    for (const { key, model } of published) expect(miss(model), key).toBeGreaterThan(reference);
  });
});

describe('the weights', () => {
  it('name every measurement file once, with a role, a reason and what it is worth', () => {
    const files = readdirSync(new URL('../../reference/measurements/', import.meta.url)).filter((name) =>
      name.endsWith('.csv'),
    );
    expect(weights.sets.map(({ set }) => `${set}.csv`).sort()).toEqual(files.sort());
    for (const { role, reason, sigma } of weights.sets) {
      expect(['fit', 'held back', 'outside']).toContain(role);
      expect(reason.length).toBeGreaterThan(20);
      expect(Object.keys(sigma).length).toBeGreaterThan(0);
    }
  });

  it('hold back sets at 1 atm, at one temperature and at low pressure', () => {
    const held = weights.sets.filter(({ role }) => role === 'held back').map(({ set }) => set);
    expect(held).toEqual(
      expect.arrayContaining(['rieder-thompson-1949-101kPa', 'vanness-323K-b', 'beebe-1942-25p3kPa']),
    );
  });
});
