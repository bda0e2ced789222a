// The bubble point: at which temperature a liquid begins to boil, and what vapour rises.
// The equation and its solution stand in bubble-state.ts.

import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { type ActivityName, modelOf } from '../mixture/activity/registry.js';
import type { Kelvin, KelvinDifference, MoleFraction, Pascal } from '../units/quantities.js';
import { bubbleSolver, checkState, isExtrapolated } from './bubble-state.js';

/** Temperature, vapour and slopes at one composition and pressure. */
export interface BubblePoint {
  readonly temperature_K: Kelvin;
  /** Mole fraction of ethanol in the vapour, y. */
  readonly vapourMoleFraction: MoleFraction;
  /** α = (y/x) / ((1 − y)/(1 − x)). */
  readonly relativeVolatility: number;
  /** ∂T/∂x at constant pressure, K. */
  readonly temperatureSlope_K: KelvinDifference;
  /** ∂y/∂x at constant pressure. */
  readonly vapourSlope: number;
  /** Whether T lies outside the temperatures that the model was fitted to. */
  readonly extrapolated: boolean;
}

/**
 * The temperature at which a liquid boils under a pressure, and the vapour it gives.
 *
 * Equation: x K1 + (1 − x) K2 = 1, K = γ p(T)/P exp F, F the vapour's departure from an ideal gas;  y = x K1.
 * @param moleFraction Ethanol in the liquid, x, [mol/mol]; 0 to 1; outside it throws.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @param activity Activity model that gives γ, by name or a model of your own; the default one when left out.
 * @returns Temperature [K], mole fraction in the vapour, relative volatility, slopes by x, and whether the model was fitted there.
 * @throws InputError when the composition or the pressure is outside its range or the model is none.
 * @example bubblePoint(0.5, 101325).temperature_K // → 352.899
 * Source: modified Raoult's law; Poling, Prausnitz & O'Connell 2001, chapter 8.
 */
export function bubblePoint(
  moleFraction: MoleFraction,
  pressure_Pa: Pascal,
  activity?: ActivityName | ActivityModel,
): BubblePoint {
  checkState(moleFraction, pressure_Pa);
  const model = modelOf(activity);
  const state = bubbleSolver(model)(moleFraction, pressure_Pa);
  return {
    temperature_K: state.temperature_K,
    vapourMoleFraction: state.vapour,
    relativeVolatility: state.alpha,
    temperatureSlope_K: state.temperatureSlope,
    vapourSlope: state.vapourSlope,
    extrapolated: isExtrapolated(model, state.temperature_K),
  };
}
