// The dew point: at which temperature a vapour begins to condense, and what liquid falls out.

import { checkRange } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { type ActivityName, modelOf } from '../mixture/activity/registry.js';
import { bracketedNewton } from '../numerics/root.js';
import type { Kelvin, MoleFraction, Pascal } from '../units/quantities.js';
import { bubbleSolver, checkPressure } from './bubble-state.js';

/** Temperature and first liquid of a condensing vapour. */
export interface DewPoint {
  readonly temperature_K: Kelvin;
  /** Mole fraction of ethanol in the first liquid, x. */
  readonly liquidMoleFraction: MoleFraction;
}

/**
 * The temperature at which a vapour begins to condense under a pressure, and the first liquid.
 *
 * Equation: y*(x, P) = y solved for x by safeguarded Newton (y* rises with x); T is the bubble point of x.
 * @param vapourMoleFraction Ethanol in the vapour, y, [mol/mol]; 0 to 1; outside it throws.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @param activity Activity model that gives γ, by name or a model of your own; the default one when left out.
 * @returns Temperature [K] and mole fraction in the liquid.
 * @throws InputError when the composition or the pressure is outside its range or the model is none.
 * @example dewPoint(0.5, 101325).liquidMoleFraction // → 0.1513
 * Source: definition; modified Raoult's law.
 */
export function dewPoint(
  vapourMoleFraction: MoleFraction,
  pressure_Pa: Pascal,
  activity?: ActivityName | ActivityModel,
): DewPoint {
  checkRange('vapourMoleFraction', vapourMoleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1');
  checkPressure(pressure_Pa);
  const at = bubbleSolver(modelOf(activity));
  const liquid = bracketedNewton(
    (x, out) => {
      const state = at(x, pressure_Pa);
      out.value = state.vapour - vapourMoleFraction;
      out.slope = state.vapourSlope;
    },
    0,
    1,
    0.5 * vapourMoleFraction,
  );
  return { temperature_K: at(liquid, pressure_Pa).temperature_K, liquidMoleFraction: liquid };
}
