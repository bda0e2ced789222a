// What the theory pages state of the model is what the code computes: a page that has fallen behind a new fit fails here, with the number to write.

import { describe, expect, it } from 'vitest';
import {
  ethanol,
  water,
  activityModel,
  azeotrope,
  bubblePoint,
  massFractionFromMoleFraction,
  relativeVolatility,
  strengthFromMoleFraction,
  type ActivityState,
} from '#lib/index.js';
import { read } from '../../support/tree.js';

const ATMOSPHERE = 101325;
const state: ActivityState = {
  lnGammaEthanol: 0,
  lnGammaWater: 0,
  slopeEthanol: 0,
  slopeWater: 0,
  thermalEthanol: 0,
  thermalWater: 0,
};

/** What the real vapour adds to α: α over γ1 p1/(γ2 p2). */
function byVapour(name: 'redlich-kister' | 'nrtl', x: number): number {
  const model = activityModel(name);
  const { temperature_K } = bubblePoint(x, ATMOSPHERE, model);
  const { lnGammaEthanol, lnGammaWater } = model.activity(x, temperature_K, state);
  const ideal =
    Math.exp(lnGammaEthanol - lnGammaWater) *
    (ethanol.saturationPressure(temperature_K) / water.saturationPressure(temperature_K));
  return relativeVolatility(x, ATMOSPHERE, model) / ideal;
}

describe('the relative volatility', () => {
  const page = read('docs/theory/equilibrium.md');

  it('is stated with the factor of the real vapour that the code has', () => {
    expect(page).toContain('α = K₁/K₂ = γ₁p₁ exp(F₁ − D (1 − y)²)/(γ₂p₂ exp(F₂ − D y²))');
    const factors = [0.02, 0.3, 0.89].map((x) => Math.abs(byVapour('redlich-kister', x) - 1));
    expect(Math.max(...factors)).toBeGreaterThan(3e-3);
  });

  it('has no such factor in a model of an ideal vapour', () => {
    for (const x of [0.02, 0.3, 0.89]) expect(byVapour('nrtl', x)).toBeCloseTo(1, 9);
  });

  it.each([0.02, 0.3, 0.89])('is y (1 − x)/(x (1 − y)) at x = %d', (x) => {
    const model = activityModel('redlich-kister');
    const { vapourMoleFraction: y } = bubblePoint(x, ATMOSPHERE, model);
    expect(relativeVolatility(x, ATMOSPHERE, model)).toBeCloseTo((y * (1 - x)) / (x * (1 - y)), 9);
  });
});

describe('the azeotrope on the page of strength', () => {
  const [, mole, mass, volume] =
    /azeotrope of the default model at 1 atm, mole fraction ([\d.]+), is ([\d.]+) % by mass and ([\d.]+) % by volume/.exec(
      read('docs/theory/strength.md'),
    ) ?? [];

  it('is the default model’s, in all three ways of saying it', () => {
    const found = azeotrope(ATMOSPHERE, activityModel('redlich-kister'));
    if (!found.found) throw new Error('the default model has an azeotrope at 1 atm');
    const x = found.moleFraction;
    expect(mole).toBe(x.toFixed(4));
    expect(mass).toBe((100 * massFractionFromMoleFraction(x)).toFixed(1));
    expect(volume).toBe((100 * strengthFromMoleFraction(x)).toFixed(1));
  });
});
