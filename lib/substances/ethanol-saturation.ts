// Vapour pressure of ethanol: the Wagner-type equation (exponents 1, 1.5, 2.5, 5) of Poling et al. It boils at
// 78.29 °C at 1 atm, as measured; the reference equation of state (Schroeder 2014) is 0.13 K high there.
// docs/theory/equilibrium.md says why that decides the choice.
// Source: B. E. Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A.

import type { Kelvin, Pascal } from '../units/quantities.js';
import { saturationLine } from './saturation.js';

/** The saturation line of ethanol. The 250 K limit is ours: the pressure there is still smooth and within 1 % of other equations. */
export const ethanolSaturation = saturationLine({
  criticalTemperature_K: 513.92,
  criticalPressure_Pa: 6.132e6,
  lowest_K: 250,
  terms: [
    [-8.68587, 2],
    [1.17831, 3],
    [-4.8762, 5],
    [1.588, 10],
  ],
});

/**
 * Vapour pressure of pure ethanol.
 *
 * Equation: ln(p/pc) = (Tc/T) (a θ + b θ^1.5 + c θ^2.5 + d θ⁵), θ = 1 − T/Tc.
 * @param temperature_K Temperature T, [K]; 250 to 513.92; outside it throws.
 * @returns Saturation pressure p, [Pa].
 * @throws InputError when the temperature is outside the equation's range.
 * @example saturationPressureEthanol(351.44) // → 101337
 * Source: B. E. Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A.
 */
export function saturationPressureEthanol(temperature_K: Kelvin): Pascal {
  return ethanolSaturation.pressure(temperature_K);
}

/**
 * Slope of the vapour pressure of pure ethanol.
 *
 * Equation: dp/dT, the derivative of the saturation equation.
 * @param temperature_K Temperature T, [K]; 250 to 513.92; outside it throws.
 * @returns dp/dT, [Pa/K].
 * @throws InputError when the temperature is outside the equation's range.
 * @example saturationSlopeEthanol(351.44) // → 4003.0
 * Source: B. E. Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A.
 */
export function saturationSlopeEthanol(temperature_K: Kelvin): number {
  return ethanolSaturation.slope(temperature_K);
}

/**
 * Boiling temperature of pure ethanol at a pressure.
 *
 * Equation: p(T) = P solved for T by Newton's method in 1/T.
 * @param pressure_Pa Pressure P, [Pa]; about 270 Pa to 6.132 MPa; outside it throws.
 * @returns Boiling temperature T, [K].
 * @throws InputError when the pressure is outside the equation's range.
 * @example boilingTemperatureEthanol(101325) // → 351.437
 * Source: B. E. Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A.
 */
export function boilingTemperatureEthanol(pressure_Pa: Pascal): Kelvin {
  return ethanolSaturation.boilingTemperature(pressure_Pa);
}
