// Heats of vaporisation of ethanol and water along the saturation line, with their slopes.
//
//   ethanol  ΔHv = C1 (1 − T/Tc)^C2                                  (Perry's Handbook, 8th ed., Table 2-150)
//   water    ΔHv = R Tc (A τ^⅓ + B τ^⅔ + C τ + D τ² + E τ⁶), τ = 1 − T/Tc     (VDI Heat Atlas, 2nd ed.)
//
// Published values for ethanol at its normal boiling point spread over 1.5 %: 38.56 (CRC Handbook), 38.94
// (this fit), 39.15 kJ/mol (Schroeder et al. 2014). Water is known to 0.1 %.

import { GAS_CONSTANT, ZERO_CELSIUS } from '../constants.js';
import { PERRY_VAPORISATION_ETHANOL } from '../data/perry-vaporisation-ethanol.js';
import { VDI_VAPORISATION_WATER } from '../data/vdi-vaporisation-water.js';
import { checkRange } from '../errors.js';
import type { JoulePerMole, Kelvin } from '../units/quantities.js';

/** ΔHv of ethanol [J/mol], 250 to 500 K. Source: Perry’s Handbook, 8th ed., 2008, Table 2-150. */
export function heatOfVaporisationEthanol(temperature_K: Kelvin): JoulePerMole {
  checkEthanol(temperature_K);
  return C1 * (1 - temperature_K / TC_ETHANOL) ** C2;
}

/** dΔHv/dT = −C2 ΔHv/(Tc − T) of ethanol, J/(mol K). */
export function heatOfVaporisationEthanolSlope(temperature_K: Kelvin): number {
  return (-C2 * heatOfVaporisationEthanol(temperature_K)) / (TC_ETHANOL - temperature_K);
}

/** ΔHv of water [J/mol], 273.15 to 630 K. Source: VDI Heat Atlas, 2nd ed., 2010, section D3. */
export function heatOfVaporisationWater(temperature_K: Kelvin): JoulePerMole {
  checkWater(temperature_K);
  const tau = 1 - temperature_K / TC_WATER;
  const third = Math.cbrt(tau);
  return GAS_CONSTANT * TC_WATER * (third * (A + B * third) + tau * (C + D * tau) + E * tau ** 6);
}

/** dΔHv/dT = −R (A/3 τ^−⅔ + 2B/3 τ^−⅓ + C + 2 D τ + 6 E τ⁵) of water, J/(mol K). */
export function heatOfVaporisationWaterSlope(temperature_K: Kelvin): number {
  checkWater(temperature_K);
  const tau = 1 - temperature_K / TC_WATER;
  const third = Math.cbrt(tau);
  return -GAS_CONSTANT * (A / (3 * third * third) + (2 * B) / (3 * third) + C + 2 * D * tau + 6 * E * tau ** 5);
}

// The fits reach the critical point, where the slope has no limit; stills need neither that nor ice.
function checkEthanol(temperature_K: Kelvin): void {
  checkRange('temperature_K', temperature_K, 250, 500, 'a temperature from 250 to 500 K for ethanol');
}

function checkWater(temperature_K: Kelvin): void {
  checkRange('temperature_K', temperature_K, ZERO_CELSIUS, 630, 'a temperature from 273.15 to 630 K for water');
}

const { C1, C2 } = PERRY_VAPORISATION_ETHANOL.coefficients;
const TC_ETHANOL = PERRY_VAPORISATION_ETHANOL.constants.criticalTemperature;
const { A, B, C, D, E } = VDI_VAPORISATION_WATER.coefficients;
const TC_WATER = VDI_VAPORISATION_WATER.constants.criticalTemperature;
