// Pure ethanol: every property as one record, each by its own published equation.

import { MOLAR_MASS_ETHANOL, ZERO_CELSIUS } from '../constants.js';
import { ethanolSaturation } from './ethanol-saturation.js';
import { gasHeatCapacity, GAS_ETHANOL, heatBetween, heatCapacity, LIQUID_ETHANOL } from './heat-capacity.js';
import { saturatedDensityEthanol } from './saturated-density.js';
import { ethanolVirial, secondVirial } from './second-virial.js';
import type { Substance } from './substance.js';
import { heatOfVaporisationEthanol, heatOfVaporisationEthanolSlope } from './vaporisation.js';

const liquidEnthalpy = (temperature_K: number): number => heatBetween(LIQUID_ETHANOL, ZERO_CELSIUS, temperature_K);

/**
 * Pure ethanol. Temperatures: liquid 159.05 to 390 K, ideal gas 50 to 1000 K, vaporisation and density 250 to 500 K, vapour pressure 250 to
 * 513.92 K, second virial coefficient 270 to 513 K; pressures 270 Pa to 6.132 MPa; outside, an InputError.
 *
 * @example ethanol.liquidEnthalpy(351.44) // → 9326
 * @example ethanol.vapourEnthalpy(351.44) // → 48261
 * @example ethanol.liquidHeatCapacity(298.15) // → 112.34
 * @example ethanol.gasHeatCapacity(298.15) // → 65.38
 * @example ethanol.heatOfVaporisation(351.44) // → 38935
 * @example ethanol.heatOfVaporisationSlope(351.44) // → -74.84
 * @example ethanol.saturationPressure(351.44) // → 101337
 * @example ethanol.saturationSlope(351.44) // → 4003.0
 * @example ethanol.boilingTemperature(101325) // → 351.437
 * @example ethanol.saturatedDensity(351.45) // → 734.79
 * @example ethanol.secondVirial(373.15) * 1e6 // → -738.8
 * Source: liquid heat capacity, vaporisation and density Perry's Chemical Engineers' Handbook, 8th ed., 2008, Tables 2-153, 2-150 and 2-32; gas and
 * vapour pressure Poling, Prausnitz & O'Connell, The Properties of Gases and Liquids, 5th ed., 2001, app. A; C. Tsonopoulos, AIChE J. 20 (1974) 263-272.
 */
export const ethanol: Substance = Object.freeze({
  name: 'ethanol',
  molarMass_kg_mol: MOLAR_MASS_ETHANOL,
  liquidEnthalpy,
  vapourEnthalpy: (temperature_K) => liquidEnthalpy(temperature_K) + heatOfVaporisationEthanol(temperature_K),
  liquidHeatCapacity: (temperature_K) => heatCapacity(LIQUID_ETHANOL, temperature_K),
  gasHeatCapacity: (temperature_K) => gasHeatCapacity(GAS_ETHANOL, temperature_K),
  heatOfVaporisation: heatOfVaporisationEthanol,
  heatOfVaporisationSlope: heatOfVaporisationEthanolSlope,
  saturationPressure: (temperature_K) => ethanolSaturation.pressure(temperature_K),
  saturationSlope: (temperature_K) => ethanolSaturation.slope(temperature_K),
  boilingTemperature: (pressure_Pa) => ethanolSaturation.boilingTemperature(pressure_Pa),
  saturatedDensity: saturatedDensityEthanol,
  secondVirial: (temperature_K) => secondVirial(ethanolVirial, temperature_K),
} satisfies Substance);
