// The pressure under which a liquid boils at a given temperature: the bubble equation the other way round.
//   P = x γ1 p1 exp(F1(T, P) − D (1 − y)²) + (1 − x) γ2 p2 exp(F2(T, P) − D y²)
// explicit with an ideal vapour (F = D = 0), else by repeated substitution, which gains a digit or more in each round.

import { checkRange } from '../errors.js';
import type { ActivityModel, ActivityState } from '../mixture/activity/activity-model.js';
import { type ActivityName, modelOf } from '../mixture/activity/registry.js';
import type { ValueAndSlope } from '../numerics/root.js';
import { ethanolSaturation } from '../substances/ethanol-saturation.js';
import { waterSaturation } from '../substances/water-saturation.js';
import type { Kelvin, MoleFraction, Pascal } from '../units/quantities.js';

/** Pressure and vapour over a liquid. */
export interface BubblePressure {
  readonly pressure_Pa: Pascal;
  /** Mole fraction of ethanol in the vapour, y. */
  readonly vapourMoleFraction: MoleFraction;
}

/** Pressures of the two pure substances, where those of the library are not to be used (a data set's own). */
export interface PurePressures {
  readonly ethanol_Pa: Pascal;
  readonly water_Pa: Pascal;
}

/**
 * The pressure under which a liquid boils at a temperature, and the vapour it gives.
 *
 * Equation: x γ1 p1(T) exp(F1 − D (1 − y)²) + (1 − x) γ2 p2(T) exp(F2 − D y²) = P, F and D the vapour's departure from
 * an ideal gas.
 * @param moleFraction Ethanol in the liquid, x, [mol/mol]; 0 to 1; outside it throws.
 * @param temperature_K Temperature T, [K]; 273.16 to 480; outside it throws.
 * @param activity Activity model that gives γ and names its vapour, by name or a model of your own; the default one when left out.
 * @returns Pressure [Pa] and mole fraction in the vapour.
 * @throws InputError when the composition or the temperature is outside its range or the model is none.
 * @example bubblePressure(1, 351.44).pressure_Pa // → 101337
 * Source: modified Raoult's law; Poling, Prausnitz & O'Connell 2001, chapter 8.
 */
export function bubblePressure(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  activity?: ActivityName | ActivityModel,
): BubblePressure {
  checkRange('moleFraction', moleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1');
  checkRange('temperature_K', temperature_K, 273.16, 480, 'a temperature from 273.16 to 480 K');
  return pressureOver(modelOf(activity), moleFraction, temperature_K);
}

/** The same without checks, and with other pure pressures where they are given. */
export function pressureOver(
  model: ActivityModel,
  x: MoleFraction,
  temperature_K: Kelvin,
  pure?: PurePressures,
): BubblePressure {
  const ethanol: ValueAndSlope = { value: 0, slope: 0 };
  const water: ValueAndSlope = { value: 0, slope: 0 };
  ethanolSaturation.logPressure(temperature_K, ethanol);
  waterSaturation.logPressure(temperature_K, water);
  if (pure !== undefined) {
    ethanol.value = Math.log(pure.ethanol_Pa);
    water.value = Math.log(pure.water_Pa);
  }
  const gamma = model.activity(x, temperature_K, blankActivity());
  const first = x * Math.exp(gamma.lnGammaEthanol + ethanol.value);
  const second = (1 - x) * Math.exp(gamma.lnGammaWater + water.value);
  let share = first;
  let pressure_Pa = first + second;
  if (model.vapour !== undefined) {
    const departure: ValueAndSlope = { value: 0, slope: 0 };
    const cross: ValueAndSlope = { value: 0, slope: 0 };
    for (let i = 0; i < MAX_ROUNDS; i++) {
      const before = pressure_Pa;
      const y = share / pressure_Pa;
      model.vapour.cross?.(temperature_K, before, cross);
      model.vapour.ethanol(temperature_K, before, ethanol, departure);
      const nextShare = first * Math.exp(departure.value - cross.value * (1 - y) * (1 - y));
      model.vapour.water(temperature_K, before, water, departure);
      pressure_Pa = nextShare + second * Math.exp(departure.value - cross.value * y * y);
      const settled = Math.abs(pressure_Pa - before) <= 1e-14 * before && Math.abs(nextShare - share) <= 1e-14 * before;
      share = nextShare;
      if (settled) break;
    }
  }
  return { pressure_Pa, vapourMoleFraction: share / pressure_Pa };
}

const MAX_ROUNDS = 60;

function blankActivity(): ActivityState {
  return {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  };
}
