// Heat capacities of ethanol and water, as liquids (at saturation) and as ideal gases; polynomials in T.
//
//   liquid  cp = C1 + C2 T + C3 T² + ...          (Perry's Handbook, 8th ed., Table 2-153)
//   gas     cp = R (a0 + a1 T + ... + a4 T⁴)      (Poling, Prausnitz & O'Connell, 5th ed., appendix A)

import { GAS_CONSTANT, ZERO_CELSIUS } from '../constants.js';
import { coefficientSeries, type ParameterSet } from '../data/parameter-set.js';
import { PERRY_LIQUID_HEAT_CAPACITY_ETHANOL } from '../data/perry-liquid-heat-capacity-ethanol.js';
import { PERRY_LIQUID_HEAT_CAPACITY_WATER } from '../data/perry-liquid-heat-capacity-water.js';
import { POLING_GAS_HEAT_CAPACITY_ETHANOL } from '../data/poling-gas-heat-capacity-ethanol.js';
import { POLING_GAS_HEAT_CAPACITY_WATER } from '../data/poling-gas-heat-capacity-water.js';
import { checkRange } from '../errors.js';
import type { Kelvin } from '../units/quantities.js';

/** A polynomial in T, lowest power first, with its range. */
export interface HeatCapacity {
  readonly powers: readonly number[];
  readonly low_K: Kelvin;
  readonly high_K: Kelvin;
  /** In words, for the message. */
  readonly of: string;
}

export const LIQUID_ETHANOL = fitted(PERRY_LIQUID_HEAT_CAPACITY_ETHANOL, 'C', 'liquid ethanol');
export const LIQUID_WATER = fitted(PERRY_LIQUID_HEAT_CAPACITY_WATER, 'C', 'liquid water');
export const GAS_ETHANOL = fitted(POLING_GAS_HEAT_CAPACITY_ETHANOL, 'a', 'ethanol vapour');
export const GAS_WATER = fitted(POLING_GAS_HEAT_CAPACITY_WATER, 'a', 'water vapour');

/** cp at T; an InputError outside the fitted range. */
export function heatCapacity(fit: HeatCapacity, temperature_K: Kelvin): number {
  checkFitted(fit, temperature_K);
  return fit.powers.reduceRight((sum, power) => sum * temperature_K + power, 0);
}

/** cp of an ideal gas at T: R times its polynomial; an InputError outside the fitted range. */
export function gasHeatCapacity(fit: HeatCapacity, temperature_K: Kelvin): number {
  return GAS_CONSTANT * heatCapacity(fit, temperature_K);
}

/** ∫ cp dT from one temperature to another; an InputError when either is outside the fitted range. */
export function heatBetween(fit: HeatCapacity, from_K: Kelvin, to_K: Kelvin): number {
  checkFitted(fit, from_K);
  checkFitted(fit, to_K);
  const integral = (T: number): number => T * fit.powers.reduceRight((sum, power, i) => sum * T + power / (i + 1), 0);
  return integral(to_K) - integral(from_K);
}

function checkFitted({ low_K, high_K, of }: HeatCapacity, temperature_K: Kelvin): void {
  const expected = `a temperature from ${String(low_K)} to ${String(high_K)} K for ${of}`;
  checkRange('temperature_K', temperature_K, low_K, high_K, expected);
}

function fitted(set: ParameterSet, prefix: string, of: string): HeatCapacity {
  const [low_K, high_K] = set.range.temperature as [number, number];
  // The fit for water begins at the triple point, 0.01 K above 0 °C: close enough to be asked for 0 °C.
  return { powers: coefficientSeries(set, prefix), low_K: low_K === 273.16 ? ZERO_CELSIUS : low_K, high_K, of };
}
