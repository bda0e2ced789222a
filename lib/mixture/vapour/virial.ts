// The vapour by second virial coefficients:
//   ln φ_1 = (P/RT) (B11 + (1 − y)² δ),  ln φ_2 = (P/RT) (B22 + y² δ),  δ = 2 B12 − B11 − B22
// so   F_i = B_ii(T) (p_i − P)/(R T),  D = P δ/(R T)
// No measured B12 was found. B12 = (1 + c) (B11 + B22)/2: c = 0 is the Lewis rule, and c is chosen with the parameters of
// an activity model; what another value would change stands in docs/theory/residuals.md. The Poynting factor is left out
// (0.02 % in K at 1 atm, 0.3 % at 1 MPa).
// Source: Poling, Prausnitz & O'Connell 2001, chapters 4 and 8.

import { GAS_CONSTANT } from '../../constants.js';
import type { ValueAndSlope } from '../../numerics/root.js';
import { ethanolVirial, type SecondVirial, waterVirial } from '../../substances/second-virial.js';
import type { VapourModel } from './vapour-model.js';

/** The virial vapour with B12 = (1 + c) (B11 + B22)/2; dimensionless c, 0 for the Lewis rule. */
export function virialVapour(c: number): VapourModel {
  const pure = { name: 'virial', ethanol: departure(ethanolVirial), water: departure(waterVirial) };
  return Object.freeze(c === 0 ? pure : { ...pure, cross: unlike(c) });
}

function departure(virial: SecondVirial): VapourModel['ethanol'] {
  const b: ValueAndSlope = { value: 0, slope: 0 };
  return (temperature_K, pressure_Pa, logSaturation, out) => {
    virial(temperature_K, b);
    const saturation_Pa = Math.exp(logSaturation.value);
    const excess = (saturation_Pa - pressure_Pa) / (GAS_CONSTANT * temperature_K);
    out.value = b.value * excess;
    out.slope =
      (b.slope - b.value / temperature_K) * excess +
      (b.value * saturation_Pa * logSaturation.slope) / (GAS_CONSTANT * temperature_K);
  };
}

function unlike(c: number): NonNullable<VapourModel['cross']> {
  const ethanol: ValueAndSlope = { value: 0, slope: 0 };
  const water: ValueAndSlope = { value: 0, slope: 0 };
  return (temperature_K, pressure_Pa, out) => {
    ethanolVirial(temperature_K, ethanol);
    waterVirial(temperature_K, water);
    const factor = (c * pressure_Pa) / (GAS_CONSTANT * temperature_K);
    const sum = ethanol.value + water.value;
    out.value = factor * sum;
    out.slope = factor * (ethanol.slope + water.slope - sum / temperature_K);
  };
}
