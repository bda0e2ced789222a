// Heat of mixing and excess heat capacity of the liquid from the activity model (Gibbs-Helmholtz):
//   hE = −R T² (∂(gE/RT)/∂T) = −R T² (x ∂lnγ1/∂T + (1 − x) ∂lnγ2/∂T),  cpE = (∂hE/∂T)
// The second derivative by T is taken by a central difference of the first, which the models give in closed form.

import { GAS_CONSTANT } from '../../constants.js';
import { checkRange } from '../../errors.js';
import type { JoulePerMole, Kelvin, MoleFraction } from '../../units/quantities.js';
import type { ActivityModel, ActivityState } from './activity-model.js';
import { type ActivityName, modelOf } from './registry.js';

/**
 * Molar heat of mixing of the liquid; negative where mixing gives off heat.
 *
 * Equation: hE = −R T² (x ∂ ln γ1/∂T + (1 − x) ∂ ln γ2/∂T).
 * @param moleFraction Mole fraction of ethanol, x, [mol/mol]; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 250..500; outside, an InputError.
 * @param activity Activity model that gives γ, by name or a model of your own; the default one when left out.
 * @returns Heat of mixing, hE, [J/mol of mixture].
 * @throws InputError when the mole fraction or the temperature is outside its range or the model is none.
 * @example excessEnthalpy(0.15, 298.15, 'raoult') // → 0
 * Source: Gibbs-Helmholtz equation.
 */
export function excessEnthalpy(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  activity?: ActivityName | ActivityModel,
): JoulePerMole {
  check(moleFraction, temperature_K);
  return heatOfMixing(modelOf(activity), moleFraction, temperature_K, blank());
}

/**
 * Excess molar heat capacity of the liquid.
 *
 * Equation: cpE = ∂hE/∂T at constant composition, by a central difference over 0.2 K.
 * @param moleFraction Mole fraction of ethanol, x, [mol/mol]; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 250..500; outside, an InputError.
 * @param activity Activity model that gives γ, by name or a model of your own; the default one when left out.
 * @returns Excess heat capacity, cpE, [J/(mol K)].
 * @throws InputError when the mole fraction or the temperature is outside its range or the model is none.
 * @example excessHeatCapacity(0.15, 298.15, 'raoult') // → 0
 * Source: definition.
 */
export function excessHeatCapacity(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  activity?: ActivityName | ActivityModel,
): number {
  check(moleFraction, temperature_K);
  const model = modelOf(activity);
  const state = blank();
  const above = heatOfMixing(model, moleFraction, temperature_K + STEP_K, state);
  return (above - heatOfMixing(model, moleFraction, temperature_K - STEP_K, state)) / (2 * STEP_K);
}

const STEP_K = 0.1;

function heatOfMixing(
  model: ActivityModel,
  x: MoleFraction,
  temperature_K: Kelvin,
  state: ActivityState,
): JoulePerMole {
  const { thermalEthanol, thermalWater } = model.activity(x, temperature_K, state);
  return -GAS_CONSTANT * temperature_K * temperature_K * (x * thermalEthanol + (1 - x) * thermalWater) + 0;
}

function check(moleFraction: MoleFraction, temperature_K: Kelvin): void {
  checkRange('moleFraction', moleFraction, 0, 1, 'a mole fraction from 0 to 1');
  checkRange('temperature_K', temperature_K, 250, 500, 'a temperature from 250 to 500 K');
}

function blank(): ActivityState {
  return {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  };
}
