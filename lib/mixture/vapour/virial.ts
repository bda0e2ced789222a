// The vapour by second virial coefficients, as an ideal mixture of real vapours (the Lewis rule):
//   ln φ_i = B_ii P/(R T)   so   F_i = B_ii(T) (p_i − P)/(R T)
// This is the virial equation with the cross coefficient B12 = (B11 + B22)/2. No measured B12 was found; what another
// value would change stands in docs/theory/residuals.md. The Poynting factor is left out (0.02 % in K at 1 atm, 0.3 % at 1 MPa).
// Source: Poling, Prausnitz & O'Connell 2001, chapters 4 and 8.

import { GAS_CONSTANT } from '../../constants.js';
import type { ValueAndSlope } from '../../numerics/root.js';
import { ethanolVirial, type SecondVirial, waterVirial } from '../../substances/second-virial.js';
import type { VapourModel } from './vapour-model.js';

/** The virial vapour with the Lewis rule. */
export const virialVapour: VapourModel = Object.freeze({
  name: 'virial',
  ethanol: departure(ethanolVirial),
  water: departure(waterVirial),
});

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
