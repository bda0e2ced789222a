// How much more readily ethanol leaves the liquid than water does, as a function of the liquid.

import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { type ActivityName, modelOf } from '../mixture/activity/registry.js';
import type { MoleFraction, Pascal } from '../units/quantities.js';
import { bubbleSolver, checkState } from './bubble-state.js';

/**
 * Relative volatility of ethanol to water at the bubble point.
 *
 * Equation: α = K1/K2 = γ1 p1(T) exp(F1) / (γ2 p2(T) exp(F2)), F what the model's vapour departs from an ideal gas; finite at both ends of x, 1 at the azeotrope.
 * @param moleFraction Ethanol in the liquid, x, [mol/mol]; 0 to 1; outside it throws.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @param activity Activity model that gives γ with the vapour it was fitted with (F = 0 where that is ideal), by name or a model of your own; the default one when left out.
 * @returns Relative volatility α, dimensionless.
 * @throws InputError when the composition or the pressure is outside its range or the model is none.
 * @example relativeVolatility(0.5, 101325) // → 1.8889
 * Source: definition; docs/theory/equilibrium.md for F.
 */
export function relativeVolatility(
  moleFraction: MoleFraction,
  pressure_Pa: Pascal,
  activity?: ActivityName | ActivityModel,
): number {
  checkState(moleFraction, pressure_Pa);
  return bubbleSolver(modelOf(activity))(moleFraction, pressure_Pa).alpha;
}
