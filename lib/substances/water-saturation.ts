// Vapour pressure of water: the IAPWS saturation equation on ITS-90.
// Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787; also eq. 2.5 of 31 (2002) 387-535.

import type { Kelvin, Pascal } from '../units/quantities.js';
import { saturationLine } from './saturation.js';

/** The IAPWS saturation line of water. */
export const waterSaturation = saturationLine({
  criticalTemperature_K: 647.096,
  criticalPressure_Pa: 22.064e6,
  lowest_K: 273.16,
  terms: [
    [-7.85951783, 2],
    [1.84408259, 3],
    [-11.7866497, 6],
    [22.6807411, 7],
    [-15.9618719, 8],
    [1.80122502, 15],
  ],
});

/**
 * Vapour pressure of pure water.
 *
 * Equation: ln(p/pc) = (Tc/T) (a1 θ + a2 θ^1.5 + a3 θ³ + a4 θ^3.5 + a5 θ⁴ + a6 θ^7.5), θ = 1 − T/Tc.
 * @param temperature_K Temperature T, [K]; 273.16 to 647.096; outside it throws.
 * @returns Saturation pressure p, [Pa].
 * @throws InputError when the temperature is outside the equation's range.
 * @example saturationPressureWater(373.15) // → 101418
 * Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787 (IAPWS).
 */
export function saturationPressureWater(temperature_K: Kelvin): Pascal {
  return waterSaturation.pressure(temperature_K);
}

/**
 * Slope of the vapour pressure of pure water.
 *
 * Equation: dp/dT, the derivative of the IAPWS saturation equation.
 * @param temperature_K Temperature T, [K]; 273.16 to 647.096; outside it throws.
 * @returns dp/dT, [Pa/K].
 * @throws InputError when the temperature is outside the equation's range.
 * @example saturationSlopeWater(373.15) // → 3619.2
 * Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787 (IAPWS).
 */
export function saturationSlopeWater(temperature_K: Kelvin): number {
  return waterSaturation.slope(temperature_K);
}

/**
 * Boiling temperature of pure water at a pressure.
 *
 * Equation: p(T) = P solved for T by Newton's method in 1/T.
 * @param pressure_Pa Pressure P, [Pa]; 611.657 Pa to 22.064 MPa; outside it throws.
 * @returns Boiling temperature T, [K].
 * @throws InputError when the pressure is outside the equation's range.
 * @example boilingTemperatureWater(101325) // → 373.124
 * Source: W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787 (IAPWS).
 */
export function boilingTemperatureWater(pressure_Pa: Pascal): Kelvin {
  return waterSaturation.boilingTemperature(pressure_Pa);
}
