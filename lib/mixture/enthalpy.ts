// Molar enthalpies of ethanol-water mixtures, counted from the two pure liquids at 0 °C.
//
//   h(x, T) = x h1(T) + (1 − x) h2(T) + hE(x, T)        H(y, T) = y H1(T) + (1 − y) H2(T)
//
// The heat of mixing hE comes from the activity model (Gibbs-Helmholtz), so the liquid agrees with the equilibrium
// that boils it. Each vapour counts as saturated at T. Real vapours at the same T but a lower partial
// pressure hold up to some 1 kJ/mol more (ethanol at 1 atm is 1.2 kJ/mol below its ideal gas), 3 % of vaporisation.

import type { JoulePerMole, Kelvin, MoleFraction } from '../units/quantities.js';
import { ethanol } from '../substances/ethanol.js';
import { water } from '../substances/water.js';
import type { ActivityModel } from './activity/activity-model.js';
import type { ActivityName } from './activity/registry.js';
import { excessEnthalpy, excessHeatCapacity } from './activity/excess-enthalpy.js';
import { share } from './share.js';

/**
 * Molar enthalpy of a liquid mixture, heat of mixing included.
 *
 * Equation: h = x h1(T) + (1 − x) h2(T) + hE(x, T), pure liquids at 0 °C have h = 0.
 * @param moleFraction Mole fraction of ethanol in the liquid, x; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 273.15..390; outside, an InputError.
 * @param activity Activity model that gives hE, by name or a model of your own; the default one when left out, 'raoult' for ideal mixing.
 * @returns Enthalpy, h, [J/mol of mixture].
 * @throws InputError when the mole fraction or the temperature is outside its range.
 * @example liquidEnthalpy(0.1, 364.95, 'raoult') // → 7361
 * Source: definition; docs/theory/strength.md.
 */
export function liquidEnthalpy(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  activity?: ActivityName | ActivityModel,
): JoulePerMole {
  const x = share('moleFraction', moleFraction, 'a mole fraction from 0 to 1');
  const apart = x * ethanol.liquidEnthalpy(temperature_K) + (1 - x) * water.liquidEnthalpy(temperature_K);
  return apart + excessEnthalpy(x, temperature_K, activity);
}

/**
 * Molar enthalpy of a saturated vapour mixture.
 *
 * Equation: H = y H1(T) + (1 − y) H2(T), pure liquids at 0 °C have h = 0.
 * @param moleFraction Mole fraction of ethanol in the vapour, y; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 273.15..390; outside, an InputError.
 * @returns Enthalpy, H, [J/mol of mixture].
 * @throws InputError when the mole fraction or the temperature is outside its range.
 * @example vapourEnthalpy(0.5, 355.15) // → 48081
 * Source: definition of ideal mixing, docs/theory/strength.md.
 */
export function vapourEnthalpy(moleFraction: MoleFraction, temperature_K: Kelvin): JoulePerMole {
  const y = share('moleFraction', moleFraction, 'a mole fraction from 0 to 1');
  return y * ethanol.vapourEnthalpy(temperature_K) + (1 - y) * water.vapourEnthalpy(temperature_K);
}

/**
 * Molar heat capacity of a liquid mixture, excess heat capacity included.
 *
 * Equation: cp = x cp1(T) + (1 − x) cp2(T) + cpE(x, T).
 * @param moleFraction Mole fraction of ethanol in the liquid, x; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 273.15..390; outside, an InputError.
 * @param activity Activity model that gives cpE, by name or a model of your own; the default one when left out, 'raoult' for ideal mixing.
 * @returns Heat capacity, cp, [J/(mol K)].
 * @throws InputError when the mole fraction or the temperature is outside its range.
 * @example liquidHeatCapacity(0.1, 298.15, 'raoult') // → 79.08
 * Source: definition; docs/theory/strength.md.
 */
export function liquidHeatCapacity(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  activity?: ActivityName | ActivityModel,
): number {
  const x = share('moleFraction', moleFraction, 'a mole fraction from 0 to 1');
  const apart = x * ethanol.liquidHeatCapacity(temperature_K) + (1 - x) * water.liquidHeatCapacity(temperature_K);
  return apart + excessHeatCapacity(x, temperature_K, activity);
}
