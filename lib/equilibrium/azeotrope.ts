// The azeotrope: the composition at which the vapour is like the liquid, so that distilling changes nothing.

import type { Outcome } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { type ActivityName, modelOf } from '../mixture/activity/registry.js';
import { bracketedRoot } from '../numerics/root.js';
import type { Kelvin, MoleFraction, Pascal } from '../units/quantities.js';
import { bubbleSolver, checkPressure, isExtrapolated } from './bubble-state.js';

/** Where x = y, and the temperature there. */
export interface Azeotrope {
  readonly moleFraction: MoleFraction;
  readonly temperature_K: Kelvin;
  /** Whether the temperature lies outside those that the model was fitted to. */
  readonly extrapolated: boolean;
}

/**
 * The azeotrope at a pressure, or the answer that there is none.
 *
 * Equation: ln α(x, P) = 0 for 0 < x < 1: sign change on a grid, then a bracketed root.
 * @param pressure_Pa Pressure P, [Pa]; 2 kPa to 2 MPa; outside it throws.
 * @param activity Activity model that gives γ, by name or a model of your own; the default one when left out.
 * @returns found true with mole fraction, temperature [K] and whether the model was fitted there; found false with reason 'none' when α stays on one side of 1. With several (no sound model has them) the weakest.
 * @throws InputError when the pressure is outside its range or the model is none.
 * @example foundIn(azeotrope(101325)).moleFraction // → 0.8946
 * Source: definition.
 */
export function azeotrope(pressure_Pa: Pascal, activity?: ActivityName | ActivityModel): Outcome<Azeotrope, 'none'> {
  checkPressure(pressure_Pa);
  const model = modelOf(activity);
  const at = bubbleSolver(model);
  const logVolatility = (x: number): number => Math.log(at(x, pressure_Pa).alpha);
  const pointAt = (moleFraction: number): Outcome<Azeotrope, 'none'> => {
    const { temperature_K } = at(moleFraction, pressure_Pa);
    return { found: true, moleFraction, temperature_K, extrapolated: isExtrapolated(model, temperature_K) };
  };
  let left = logVolatility(0);
  for (let k = 1; k <= GRID; k++) {
    const right = logVolatility(k / GRID);
    if (left !== 0 && right !== 0 && left > 0 !== right > 0) {
      return pointAt(bracketedRoot(logVolatility, (k - 1) / GRID, k / GRID));
    }
    if (right === 0 && k < GRID) {
      return pointAt(k / GRID);
    }
    left = right;
  }
  return {
    found: false,
    reason: 'none',
    message: `With ${model.name} there is no azeotrope at ${(pressure_Pa / 1000).toPrecision(4)} kPa: the vapour is richer than the liquid at every strength.`,
  };
}

const GRID = 64;
