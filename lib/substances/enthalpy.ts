// Enthalpies of pure ethanol and pure water, counted from the pure liquid at 0 °C.
//
//   h_L(T) = ∫ cp,liquid dT from 0 °C        h_V(T) = h_L(T) + ΔHv(T)
//
// so the vapour is the saturated vapour at T: what boils off a kettle. Superheat is not in it. The pressure's
// own share in the liquid (v ΔP, 2 J/mol for water at 1 atm) is left out.

import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER, ZERO_CELSIUS } from '../constants.js';
import type { JoulePerMole, Kelvin } from '../units/quantities.js';
import {
  heatBetween,
  LIQUID_ETHANOL,
  LIQUID_WATER,
  liquidHeatCapacityEthanol,
  liquidHeatCapacityWater,
} from './heat-capacity.js';
import type { Substance } from './substance.js';
import {
  heatOfVaporisationEthanol,
  heatOfVaporisationEthanolSlope,
  heatOfVaporisationWater,
  heatOfVaporisationWaterSlope,
} from './vaporisation.js';

/**
 * Molar enthalpy of liquid ethanol, counted from the liquid at 0 °C.
 *
 * Equation: h = ∫ cp dT from 273.15 K to T.
 * @param temperature_K Temperature, T, [K]; 159.05..390; outside, an InputError.
 * @returns Enthalpy, h, [J/mol].
 * @throws InputError when the temperature is outside its range.
 * @example liquidEnthalpyEthanol(351.44) // → 9326
 * Source: integral of liquidHeatCapacityEthanol.
 */
export function liquidEnthalpyEthanol(temperature_K: Kelvin): JoulePerMole {
  return heatBetween(LIQUID_ETHANOL, ZERO_CELSIUS, temperature_K);
}

/**
 * Molar enthalpy of liquid water, counted from the liquid at 0 °C.
 *
 * Equation: h = ∫ cp dT from 273.15 K to T.
 * @param temperature_K Temperature, T, [K]; 273.15..533.15; outside, an InputError.
 * @returns Enthalpy, h, [J/mol].
 * @throws InputError when the temperature is outside its range.
 * @example liquidEnthalpyWater(373.124) // → 7550
 * Source: integral of liquidHeatCapacityWater.
 */
export function liquidEnthalpyWater(temperature_K: Kelvin): JoulePerMole {
  return heatBetween(LIQUID_WATER, ZERO_CELSIUS, temperature_K);
}

/**
 * Molar enthalpy of saturated ethanol vapour, counted from the liquid at 0 °C.
 *
 * Equation: H = h_liquid(T) + ΔHv(T).
 * @param temperature_K Temperature, T, [K]; 250..390; outside, an InputError.
 * @returns Enthalpy, H, [J/mol].
 * @throws InputError when the temperature is outside its range.
 * @example vapourEnthalpyEthanol(351.44) // → 48261
 * Source: sum of liquidEnthalpyEthanol and heatOfVaporisationEthanol.
 */
export function vapourEnthalpyEthanol(temperature_K: Kelvin): JoulePerMole {
  return liquidEnthalpyEthanol(temperature_K) + heatOfVaporisationEthanol(temperature_K);
}

/**
 * Molar enthalpy of saturated steam, counted from liquid water at 0 °C.
 *
 * Equation: H = h_liquid(T) + ΔHv(T).
 * @param temperature_K Temperature, T, [K]; 273.15..533.15; outside, an InputError.
 * @returns Enthalpy, H, [J/mol].
 * @throws InputError when the temperature is outside its range.
 * @example vapourEnthalpyWater(373.124) // → 48204
 * Source: sum of liquidEnthalpyWater and heatOfVaporisationWater.
 */
export function vapourEnthalpyWater(temperature_K: Kelvin): JoulePerMole {
  return liquidEnthalpyWater(temperature_K) + heatOfVaporisationWater(temperature_K);
}

/** Ethanol for the heat balances. */
export const ETHANOL: Substance = Object.freeze({
  name: 'ethanol',
  molarMass: MOLAR_MASS_ETHANOL,
  liquidEnthalpy: liquidEnthalpyEthanol,
  vapourEnthalpy: vapourEnthalpyEthanol,
  liquidHeatCapacity: liquidHeatCapacityEthanol,
  heatOfVaporisation: heatOfVaporisationEthanol,
  heatOfVaporisationSlope: heatOfVaporisationEthanolSlope,
});

/** Water for the heat balances. */
export const WATER: Substance = Object.freeze({
  name: 'water',
  molarMass: MOLAR_MASS_WATER,
  liquidEnthalpy: liquidEnthalpyWater,
  vapourEnthalpy: vapourEnthalpyWater,
  liquidHeatCapacity: liquidHeatCapacityWater,
  heatOfVaporisation: heatOfVaporisationWater,
  heatOfVaporisationSlope: heatOfVaporisationWaterSlope,
});
