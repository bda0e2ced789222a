// Wilson's equation, ethanol (1) + water (2):
//   gE/RT = −x1 ln a − x2 ln b,  a = x1 + Λ12 x2,  b = x2 + Λ21 x1
//   ln Λ12 = a12 + b12/T + c12 ln T,  ln Λ21 likewise (the ratio of volumes is in a)
//   ln γ1 = −ln a + x2 B,  ln γ2 = −ln b − x1 B,  B = Λ12/a − Λ21/b
// With energies independent of temperature (c = 0, a fixed by the volumes) it moves the azeotrope the wrong way with
// pressure. Parameters: this project's regression with an ideal vapour, reference/regression.
// Source: G. M. Wilson, J. Am. Chem. Soc. 86 (1964) 127-130.

import { WILSON_ETHANOL_WATER as set } from '../../data/wilson-ethanol-water.js';
import type { Kelvin, MoleFraction } from '../../units/quantities.js';
import type { ActivityModel } from './activity-model.js';
import { fittedRange } from './fitted-range.js';

/** Coefficients of ln Λ12 and ln Λ21, T in K. */
export type WilsonParameters = Readonly<Record<'a12' | 'b12' | 'c12' | 'a21' | 'b21' | 'c21', number>>;

/** Wilson's equation with given parameters. */
export function wilsonModel(
  parameters: WilsonParameters,
  about: Pick<ActivityModel, 'name' | 'range_K' | 'source'>,
): ActivityModel {
  const { a12, b12, c12, a21, b21, c21 } = parameters;
  return Object.freeze({
    ...about,
    excessGibbs(moleFraction: MoleFraction, temperature_K: Kelvin) {
      const x1: number = moleFraction;
      const x2 = 1 - x1;
      const log = Math.log(temperature_K);
      const l12 = Math.exp(a12 + b12 / temperature_K + c12 * log);
      const l21 = Math.exp(a21 + b21 / temperature_K + c21 * log);
      return -x1 * Math.log(x1 + l12 * x2) - x2 * Math.log(x2 + l21 * x1);
    },
    activity(moleFraction, temperature_K, out) {
      const x1: number = moleFraction;
      const x2 = 1 - x1;
      const log = Math.log(temperature_K);
      const l12 = Math.exp(a12 + b12 / temperature_K + c12 * log);
      const l21 = Math.exp(a21 + b21 / temperature_K + c21 * log);
      const a = x1 + l12 * x2;
      const b = x2 + l21 * x1;
      const bracket = l12 / a - l21 / b;
      out.lnGammaEthanol = -Math.log(a) + x2 * bracket;
      out.lnGammaWater = -Math.log(b) - x1 * bracket;

      const aSlope = 1 - l12;
      const bSlope = l21 - 1;
      const bracketSlope = (l21 * bSlope) / (b * b) - (l12 * aSlope) / (a * a);
      out.slopeEthanol = -aSlope / a - bracket + x2 * bracketSlope;
      out.slopeWater = -bSlope / b - bracket - x1 * bracketSlope;

      const l12Thermal = (l12 * (c12 - b12 / temperature_K)) / temperature_K;
      const l21Thermal = (l21 * (c21 - b21 / temperature_K)) / temperature_K;
      const bracketThermal = (l12Thermal * x1) / (a * a) - (l21Thermal * x2) / (b * b);
      out.thermalEthanol = (-x2 * l12Thermal) / a + x2 * bracketThermal;
      out.thermalWater = (-x1 * l21Thermal) / b - x1 * bracketThermal;
      return out;
    },
  } satisfies ActivityModel);
}

/** Wilson's equation with the parameters of reference/parameters/wilson-ethanol-water.json. */
export const wilson: ActivityModel = wilsonModel(set.coefficients, {
  name: 'wilson',
  range_K: fittedRange(set),
  source:
    'regressed by this project from published measurements, docs/theory/residuals.md; equation of G. M. Wilson (1964)',
});
