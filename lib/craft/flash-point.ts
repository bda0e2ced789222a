// At which temperature the vapour over a spirit can first be lit: where it holds as much ethanol as the vapour over pure
// ethanol at its own flash point.
//
//   x γ(x, T) p(T) = p(T_pure)

import { ZERO_CELSIUS } from '../constants.js';
import { checkRange } from '../errors.js';
import type { ActivityState } from '../mixture/activity/activity-model.js';
import { activityModel, DEFAULT_ACTIVITY } from '../mixture/activity/registry.js';
import { moleFractionFromStrength } from '../mixture/strength.js';
import { bracketedRoot } from '../numerics/root.js';
import { ethanol } from '../substances/ethanol.js';
import type { Kelvin, VolumeFraction20C } from '../units/quantities.js';

/**
 * Estimate of a spirit's flash point; for a caution, not for a classification.
 *
 * Equation: x γ1(x, T) p1(T) = p1(T_pure) solved for T; T_pure = 286.15 K (13 °C), closed cup.
 * @param strength Strength by volume at 20 °C, q; 0.02..1; outside, an InputError.
 * @returns Flash point, [K]; some 2 K sure from 30 % mass up, up to 6 K too low below, against an engineering table (reference/worked-examples).
 * @throws InputError when the strength is outside its range.
 * @example flashPoint(0.4) // → 300.6
 * Source: NFPA 497 (2008) for pure ethanol; equal partial pressure of the fuel at the flash point, definition.
 */
export function flashPoint(strength: VolumeFraction20C): Kelvin {
  checkRange('strength', strength, 0.02, 1, 'a strength from 0.02 to 1 (0.40 is 40 % vol)');
  const x = moleFractionFromStrength(strength);
  const model = activityModel(DEFAULT_ACTIVITY);
  const state: ActivityState = {
    lnGammaEthanol: 0,
    lnGammaWater: 0,
    slopeEthanol: 0,
    slopeWater: 0,
    thermalEthanol: 0,
    thermalWater: 0,
  };
  return bracketedRoot(
    (T) => {
      model.activity(x, T, state);
      return x * Math.exp(state.lnGammaEthanol) * ethanol.saturationPressure(T) - AT_FLASH_POINT_Pa;
    },
    FLASH_POINT_ETHANOL_K,
    400,
    1e-6,
  );
}

/** Closed cup, NFPA 497 (2008); IEC 60079-20-1 (2010) has 285.15 K. */
const FLASH_POINT_ETHANOL_K = ZERO_CELSIUS + 13;
const AT_FLASH_POINT_Pa = ethanol.saturationPressure(FLASH_POINT_ETHANOL_K);
