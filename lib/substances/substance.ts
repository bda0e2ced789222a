// What the heat balances ask of a pure substance. Enthalpies count from the pure liquid at 0 °C.

import type { JoulePerMole, Kelvin } from '../units/quantities.js';

/** One pure substance as the mixture and the still see it; every function throws an InputError outside its range. */
export interface Substance {
  readonly name: 'ethanol' | 'water';
  /** kg/mol. */
  readonly molarMass: number;
  /** Molar enthalpy of the liquid, J/mol. */
  liquidEnthalpy(temperature_K: Kelvin): JoulePerMole;
  /** Molar enthalpy of the saturated vapour, J/mol. */
  vapourEnthalpy(temperature_K: Kelvin): JoulePerMole;
  /** Molar heat capacity of the liquid, J/(mol K). */
  liquidHeatCapacity(temperature_K: Kelvin): number;
  /** Molar heat of vaporisation at saturation, J/mol. */
  heatOfVaporisation(temperature_K: Kelvin): JoulePerMole;
  /** Its slope, J/(mol K). */
  heatOfVaporisationSlope(temperature_K: Kelvin): number;
}
