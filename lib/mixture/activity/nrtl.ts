// The NRTL equation, ethanol (1) + water (2), with parameters that change with temperature:
//   τ12 = a12 + b12/T + c12 ln T,  τ21 likewise,  G = exp(−α τ),  p = x1 + x2 G21,  q = x2 + x1 G12
//   gE/RT = x1 x2 (τ21 G21/p + τ12 G12/q)
//   ln γ1 = x2² (τ21 G21²/p² + τ12 G12/q²),  ln γ2 = x1² (τ12 G12²/q² + τ21 G21/p²)
// Parameters: this project's regression with an ideal vapour, reference/regression; used with an ideal vapour.
// Source of the equation: H. Renon, J. M. Prausnitz, AIChE J. 14 (1968) 135-144.

import { NRTL_ETHANOL_WATER as set } from '../../data/nrtl-ethanol-water.js';
import type { Kelvin, MoleFraction } from '../../units/quantities.js';
import type { ActivityModel } from './activity-model.js';
import { fittedRange } from './fitted-range.js';

/** Coefficients of τ12 and τ21, T in K, and α. */
export type NrtlParameters = Readonly<Record<'a12' | 'b12' | 'c12' | 'a21' | 'b21' | 'c21' | 'alpha', number>>;

/** NRTL with given parameters. */
export function nrtlModel(
  parameters: NrtlParameters,
  about: Pick<ActivityModel, 'name' | 'range_K' | 'source'>,
): ActivityModel {
  const { a12, b12, c12, a21, b21, c21, alpha } = parameters;
  return Object.freeze({
    ...about,
    excessGibbs(moleFraction: MoleFraction, temperature_K: Kelvin) {
      const x1 = moleFraction;
      const x2 = 1 - x1;
      const log = Math.log(temperature_K);
      const tau12 = a12 + b12 / temperature_K + c12 * log;
      const tau21 = a21 + b21 / temperature_K + c21 * log;
      const g12 = Math.exp(-alpha * tau12);
      const g21 = Math.exp(-alpha * tau21);
      return x1 * x2 * ((tau21 * g21) / (x1 + x2 * g21) + (tau12 * g12) / (x2 + x1 * g12));
    },
    activity(moleFraction, temperature_K, out) {
      const x1 = moleFraction;
      const x2 = 1 - x1;
      const log = Math.log(temperature_K);
      const tau12 = a12 + b12 / temperature_K + c12 * log;
      const tau21 = a21 + b21 / temperature_K + c21 * log;
      const g12 = Math.exp(-alpha * tau12);
      const g21 = Math.exp(-alpha * tau21);
      const p = x1 + x2 * g21;
      const q = x2 + x1 * g12;
      const pp = p * p;
      const qq = q * q;
      const ethanol = (tau21 * g21 * g21) / pp + (tau12 * g12) / qq;
      const water = (tau12 * g12 * g12) / qq + (tau21 * g21) / pp;
      out.lnGammaEthanol = x2 * x2 * ethanol;
      out.lnGammaWater = x1 * x1 * water;

      // By x: p′ = 1 − G21, q′ = G12 − 1.
      const pSlope = (1 - g21) / p;
      const qSlope = (g12 - 1) / q;
      const ethanolSlope = -2 * (((tau21 * g21 * g21) / pp) * pSlope + ((tau12 * g12) / qq) * qSlope);
      const waterSlope = -2 * (((tau12 * g12 * g12) / qq) * qSlope + ((tau21 * g21) / pp) * pSlope);
      out.slopeEthanol = x2 * (x2 * ethanolSlope - 2 * ethanol);
      out.slopeWater = x1 * (x1 * waterSlope + 2 * water);

      // By T: τ′ = (c − b/T)/T, G′ = −α G τ′, p′ = x2 G21′, q′ = x1 G12′.
      const tau12Thermal = (c12 - b12 / temperature_K) / temperature_K;
      const tau21Thermal = (c21 - b21 / temperature_K) / temperature_K;
      const log12 = -alpha * tau12Thermal;
      const log21 = -alpha * tau21Thermal;
      const pThermal = (x2 * g21 * log21) / p;
      const qThermal = (x1 * g12 * log12) / q;
      const ethanolThermal =
        ((g21 * g21) / pp) * (tau21Thermal + 2 * tau21 * (log21 - pThermal)) +
        (g12 / qq) * (tau12Thermal + tau12 * (log12 - 2 * qThermal));
      const waterThermal =
        ((g12 * g12) / qq) * (tau12Thermal + 2 * tau12 * (log12 - qThermal)) +
        (g21 / pp) * (tau21Thermal + tau21 * (log21 - 2 * pThermal));
      out.thermalEthanol = x2 * x2 * ethanolThermal;
      out.thermalWater = x1 * x1 * waterThermal;
      return out;
    },
  } satisfies ActivityModel);
}

/** NRTL with the parameters of reference/parameters/nrtl-ethanol-water.json. */
export const nrtl: ActivityModel = nrtlModel(set.coefficients, {
  name: 'nrtl',
  range_K: fittedRange(set),
  source:
    'regressed by this project from published measurements, docs/theory/residuals.md; equation of H. Renon, J. M. Prausnitz (1968)',
});
