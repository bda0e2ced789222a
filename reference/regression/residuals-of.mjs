// Residuals of a model at every point of a set: what it gives less what was measured, with the standard error.
// `own` compares isothermal sets relative to their own pure pressures, as the regression does.

import { bubbleSolver } from '../../dist/lib/equilibrium/bubble-state.js';
import { pressureOver } from '../../dist/lib/equilibrium/bubble-pressure.js';
import { excessEnthalpy, excessHeatCapacity } from '../../dist/lib/mixture/activity/excess-enthalpy.js';
import { ethanol, water } from '../../dist/lib/index.js';
import { sigmas } from './measurements.mjs';

/** [{ quantity, residual, sigma, relative }] of one set; residual in the unit of sigma. */
export function residualsOf(model, entry, { own = false } = {}) {
  return KINDS[entry.kind](model, entry, own);
}

/** Errors of a vapour go with y(1 − y), as one error in ln α would make them; 1 at y = 1/2. */
const vapourScale = (y) => 4 * y * (1 - y);
const used = (entry, quantity) => entry.use === undefined || entry.use.includes(quantity);
const blank = () => ({
  lnGammaEthanol: 0,
  lnGammaWater: 0,
  slopeEthanol: 0,
  slopeWater: 0,
  thermalEthanol: 0,
  thermalWater: 0,
});

const KINDS = {
  isothermal(model, entry, own) {
    return entry.points.flatMap((point) => {
      const sigma = sigmas(entry, point);
      const found = pressureOver(model, point.x, point.temperature, own ? entry.pure : undefined);
      const rows = [
        {
          quantity: 'P',
          residual: found.pressure_Pa / point.pressure - 1,
          sigma: sigma.pressure,
          x: point.x,
          used: true,
        },
      ];
      if (point.y !== undefined) {
        const counts = sigma.y !== undefined;
        const residual = found.vapourMoleFraction - point.y;
        const scale = vapourScale(found.vapourMoleFraction);
        rows.push({ quantity: 'y', residual, sigma: sigma.y, scale, x: point.x, used: counts });
      }
      return rows;
    });
  },
  isobaric(model, entry) {
    const solve = bubbleSolver(model);
    return entry.points.flatMap((point) => {
      const sigma = sigmas(entry, point);
      const { temperature_K, vapour } = solve(point.x, point.pressure);
      return [
        {
          quantity: 'T',
          residual: temperature_K - point.temperature,
          sigma: sigma.temperature,
          x: point.x,
          used: used(entry, 'T_K'),
        },
        {
          quantity: 'y',
          residual: vapour - point.y,
          sigma: sigma.y,
          scale: vapourScale(vapour),
          x: point.x,
          used: true,
        },
      ];
    });
  },
  'heat of mixing': (model, entry) =>
    entry.points.map(({ x, temperature, heat }) => ({
      quantity: 'hE',
      residual: excessEnthalpy(x, temperature, model) - heat,
      sigma: entry.sigma.hE_J_mol,
      x,
      used: true,
    })),
  'heat capacity': (model, entry) =>
    entry.points.map(({ x, temperature, heatCapacity }) => {
      const ideal = x * ethanol.liquidHeatCapacity(temperature) + (1 - x) * water.liquidHeatCapacity(temperature);
      const found = ideal + excessHeatCapacity(x, temperature, model);
      const residual = found / heatCapacity - 1;
      return { quantity: 'cp', residual, sigma: entry.sigma.cp_relative, x, used: true };
    }),
  'limiting activity': (model, entry) =>
    entry.points.map(({ temperature, gamma }) => {
      const { lnGammaEthanol } = model.activity(0, temperature, blank());
      const residual = lnGammaEthanol - Math.log(gamma);
      return { quantity: 'γ∞', residual, sigma: entry.sigma.lnGamma, x: 0, used: true };
    }),
  azeotrope(model, entry) {
    const solve = bubbleSolver(model);
    return entry.points
      .filter((point) => point.fitted)
      .map(({ x, pressure, sigma }) => {
        // The distance to x = y along the tangent of ln α; the slope is kept away from 0, where there is no azeotrope.
        const state = solve(x, pressure);
        const slope = Math.min(LEAST_SLOPE, state.alphaSlope / state.alpha);
        return { quantity: 'x', residual: -Math.log(state.alpha) / slope, sigma, x, used: true };
      });
  },
};

const LEAST_SLOPE = -0.15;
