// Pure water: every property as one record, each by its own published equation.

import { MOLAR_MASS_WATER, ZERO_CELSIUS } from '../constants.js';
import { gasHeatCapacity, GAS_WATER, heatBetween, heatCapacity, LIQUID_WATER } from './heat-capacity.js';
import { saturatedDensityWater } from './saturated-density.js';
import { secondVirial, waterVirial } from './second-virial.js';
import type { Substance } from './substance.js';
import { heatOfVaporisationWater, heatOfVaporisationWaterSlope } from './vaporisation.js';
import { waterSaturation } from './water-saturation.js';

const liquidEnthalpy = (temperature_K: number): number => heatBetween(LIQUID_WATER, ZERO_CELSIUS, temperature_K);

/**
 * Pure water. Temperatures: liquid 273.15 to 533.15 K, ideal gas 50 to 1000 K, vaporisation 273.15 to 630 K, density 273.16 to 647 K, vapour
 * pressure 273.16 to 647.096 K, second virial coefficient 270 to 513 K; pressures 611.7 Pa to 22.064 MPa; outside, an InputError.
 *
 * @example water.liquidEnthalpy(373.124) // → 7550
 * @example water.vapourEnthalpy(373.124) // → 48204
 * @example water.liquidHeatCapacity(298.15) // → 75.38
 * @example water.gasHeatCapacity(298.15) // → 33.52
 * @example water.heatOfVaporisation(373.124) // → 40654
 * @example water.heatOfVaporisationSlope(373.124) // → -46.76
 * @example water.saturationPressure(373.15) // → 101418
 * @example water.saturationSlope(373.15) // → 3619.2
 * @example water.boilingTemperature(101325) // → 373.124
 * @example water.saturatedDensity(373.124) // → 958.37
 * @example water.secondVirial(373.15) * 1e6 // → -456.8
 * Source: liquid heat capacity Perry's Chemical Engineers' Handbook, 8th ed., 2008, Table 2-153; gas Poling, Prausnitz & O'Connell, 5th ed., 2001, app. A;
 * vaporisation VDI Heat Atlas, 2nd ed., 2010, section D3; vapour pressure and density W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783-787
 * (IAPWS); C. Tsonopoulos, AIChE J. 20 (1974) 263-272.
 */
export const water: Substance = Object.freeze({
  name: 'water',
  molarMass_kg_mol: MOLAR_MASS_WATER,
  liquidEnthalpy,
  vapourEnthalpy: (temperature_K) => liquidEnthalpy(temperature_K) + heatOfVaporisationWater(temperature_K),
  liquidHeatCapacity: (temperature_K) => heatCapacity(LIQUID_WATER, temperature_K),
  gasHeatCapacity: (temperature_K) => gasHeatCapacity(GAS_WATER, temperature_K),
  heatOfVaporisation: heatOfVaporisationWater,
  heatOfVaporisationSlope: heatOfVaporisationWaterSlope,
  saturationPressure: (temperature_K) => waterSaturation.pressure(temperature_K),
  saturationSlope: (temperature_K) => waterSaturation.slope(temperature_K),
  boilingTemperature: (pressure_Pa) => waterSaturation.boilingTemperature(pressure_Pa),
  saturatedDensity: saturatedDensityWater,
  secondVirial: (temperature_K) => secondVirial(waterVirial, temperature_K),
} satisfies Substance);
