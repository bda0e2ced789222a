// What a pure substance is to the mixture, the equilibrium and the heat balances. One record each: ethanol.ts, water.ts.
//
//   h_L(T) = ∫ cp,liquid dT from 0 °C        h_V(T) = h_L(T) + ΔHv(T)
//
// so the vapour is the saturated vapour at T: what boils off a kettle. Superheat is not in it. The pressure's
// own share in the liquid (v ΔP, 2 J/mol for water at 1 atm) is left out.

import type { JoulePerMole, Kelvin, KilogramPerCubicMetre, Pascal } from '../units/quantities.js';

/**
 * One pure substance; every function throws an InputError outside its range. Enthalpies count from the pure liquid at 0 °C,
 * and the vapour is the saturated vapour: what boils off a kettle.
 */
export interface Substance {
  readonly name: 'ethanol' | 'water';
  /** Molar mass, kg/mol. */
  readonly molarMass_kg_mol: number;
  /** Molar enthalpy of the liquid, h = ∫ cp dT from 0 °C, J/mol. */
  liquidEnthalpy(temperature_K: Kelvin): JoulePerMole;
  /** Molar enthalpy of the saturated vapour, H = h + ΔHv, J/mol. */
  vapourEnthalpy(temperature_K: Kelvin): JoulePerMole;
  /** Molar heat capacity of the liquid, J/(mol K). */
  liquidHeatCapacity(temperature_K: Kelvin): number;
  /** Molar heat capacity of the vapour as an ideal gas, J/(mol K). */
  gasHeatCapacity(temperature_K: Kelvin): number;
  /** Molar heat of vaporisation at saturation, ΔHv, J/mol. */
  heatOfVaporisation(temperature_K: Kelvin): JoulePerMole;
  /** Its slope along the saturation line, dΔHv/dT, J/(mol K). */
  heatOfVaporisationSlope(temperature_K: Kelvin): number;
  /** Vapour pressure, p, Pa. */
  saturationPressure(temperature_K: Kelvin): Pascal;
  /** Its slope, dp/dT, Pa/K. */
  saturationSlope(temperature_K: Kelvin): number;
  /** Boiling temperature under a pressure, K: p(T) = P solved for T. */
  boilingTemperature(pressure_Pa: Pascal): Kelvin;
  /** Density of the saturated liquid, kg/m³. */
  saturatedDensity(temperature_K: Kelvin): KilogramPerCubicMetre;
  /** Second virial coefficient of the vapour, B, m³/mol. */
  secondVirial(temperature_K: Kelvin): number;
}
