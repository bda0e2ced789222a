// Wilson's equation, ethanol (1) + water (2):
//   gE/RT = −x1 ln a − x2 ln b,  a = x1 + Λ12 x2,  b = x2 + Λ21 x1
//   Λ12 = (V2/V1) exp(−A12/RT),  Λ21 = (V1/V2) exp(−A21/RT)
//   ln γ1 = −ln a + x2 B,  ln γ2 = −ln b − x1 B,  B = Λ12/a − Λ21/b
// With parameters independent of temperature it moves the azeotrope the wrong way with pressure.
// Source: G. M. Wilson, J. Am. Chem. Soc. 86 (1964) 127-130.

import { WILSON_ETHANOL_WATER as set } from '../../data/wilson-ethanol-water.js';
import type { ActivityModel } from './activity-model.js';
import { fittedRange } from './fitted-range.js';

const { A12, A21, V1, V2 } = set.coefficients;
const energy12_K = A12 / set.constants.R;
const energy21_K = A21 / set.constants.R;
const volumeRatio = V2 / V1;

/** Wilson's equation with the parameters of reference/parameters/wilson-ethanol-water.json. */
export const wilson: ActivityModel = Object.freeze({
  name: 'wilson',
  range_K: fittedRange(set),
  source: 'J. Gmehling, U. Onken, DECHEMA Chemistry Data Series I/1 (1977); equation of G. M. Wilson (1964)',
  excessGibbs(moleFraction, temperature_K) {
    const x1: number = moleFraction;
    const x2 = 1 - x1;
    const l12 = volumeRatio * Math.exp(-energy12_K / temperature_K);
    const l21 = Math.exp(-energy21_K / temperature_K) / volumeRatio;
    return -x1 * Math.log(x1 + l12 * x2) - x2 * Math.log(x2 + l21 * x1);
  },
  activity(moleFraction, temperature_K, out) {
    const x1: number = moleFraction;
    const x2 = 1 - x1;
    const l12 = volumeRatio * Math.exp(-energy12_K / temperature_K);
    const l21 = Math.exp(-energy21_K / temperature_K) / volumeRatio;
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

    const l12Thermal = (l12 * energy12_K) / (temperature_K * temperature_K);
    const l21Thermal = (l21 * energy21_K) / (temperature_K * temperature_K);
    const bracketThermal = (l12Thermal * x1) / (a * a) - (l21Thermal * x2) / (b * b);
    out.thermalEthanol = (-x2 * l12Thermal) / a + x2 * bracketThermal;
    out.thermalWater = (-x1 * l21Thermal) / b - x1 * bracketThermal;
    return out;
  },
} satisfies ActivityModel);
