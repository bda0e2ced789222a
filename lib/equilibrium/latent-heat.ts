// The heat that raises one mole of vapour from a boiling liquid. The heat of mixing of the liquid (below 1 % here)
// and the sensible heat of the remaining liquid are left out.

import {
  heatOfVaporisationEthanol,
  heatOfVaporisationEthanolSlope,
  heatOfVaporisationWater,
  heatOfVaporisationWaterSlope,
} from '../substances/vaporisation.js';
import type { BubbleState } from './bubble-state.js';

/** y ΔHv,ethanol(T) + (1 − y) ΔHv,water(T), J/mol. */
export function latentHeat(state: Readonly<BubbleState>): number {
  const { temperature_K, vapour } = state;
  return vapour * heatOfVaporisationEthanol(temperature_K) + (1 - vapour) * heatOfVaporisationWater(temperature_K);
}

/** Its derivative by x at constant pressure, J/mol. */
export function latentHeatSlope(state: Readonly<BubbleState>): number {
  const { temperature_K, vapour, vapourSlope, temperatureSlope } = state;
  const difference = heatOfVaporisationEthanol(temperature_K) - heatOfVaporisationWater(temperature_K);
  const thermal =
    vapour * heatOfVaporisationEthanolSlope(temperature_K) + (1 - vapour) * heatOfVaporisationWaterSlope(temperature_K);
  return vapourSlope * difference + thermal * temperatureSlope;
}
