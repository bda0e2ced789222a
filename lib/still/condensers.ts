// Condensers by water: what they can take out, and how much water a duty needs.
//
//   duty = ε ṁ c (T − T_water),  ε = 1 − e^(−UA/(ṁ c))       one side condensing at T

import { checkRange } from '../errors.js';
import type { Kelvin, KelvinDifference, Watt } from '../units/quantities.js';

/** Heat capacity of cooling water, J/(kg K). Source: IAPWS-95 at 20 °C, 4184, rounded. */
export const WATER_J_kg_K = 4184;

/** Conductance between what condenses and the water's inlet, W/K: duty = G (T − T_water). */
export function waterConductance(flow_kg_s: number, transfer_W_K: number): number {
  const capacity = flow_kg_s * WATER_J_kg_K;
  return capacity > 0 ? capacity * -Math.expm1(-transfer_W_K / capacity) : 0;
}

/**
 * The most heat a water-cooled condenser takes out of a vapour that condenses at a temperature.
 *
 * Equation: Q = ṁ c (1 − e^(−UA/(ṁ c))) (T − T_water), never below 0.
 * @param flow_kg_s Water, ṁ, [kg/s]; 0 or more; else an InputError.
 * @param transfer_W_K Heat-transfer coefficient times surface, UA, [W/K]; 0 or more; else an InputError.
 * @param inlet_K Temperature of the water that enters, [K]; 223 to 373; else an InputError.
 * @param condensing_K Temperature at which the vapour condenses, [K]; 223 to 500; else an InputError.
 * @returns Greatest duty, [W].
 * @throws InputError when an argument is outside its range.
 * @example condenserCapacity(0.1, 300, 288.15, 351.5) // → 13565
 * Source: effectiveness of a condenser, for instance Incropera, Fundamentals of Heat and Mass Transfer, 6th ed., 2007, ch. 11.
 */
export function condenserCapacity(
  flow_kg_s: number,
  transfer_W_K: number,
  inlet_K: Kelvin,
  condensing_K: Kelvin,
): Watt {
  checkRange('flow_kg_s', flow_kg_s, 0, 1e4, 'a flow of 0 kg/s or more');
  checkRange('transfer_W_K', transfer_W_K, 0, 1e8, 'a transfer of 0 W/K or more');
  checkRange('inlet_K', inlet_K, 223, 373, 'a temperature from 223 to 373 K');
  checkRange('condensing_K', condensing_K, 223, 500, 'a temperature from 223 to 500 K');
  return capacityOf(flow_kg_s, transfer_W_K, inlet_K, condensing_K);
}

/** The same unchecked, for inner loops. */
export function capacityOf(flow_kg_s: number, transfer_W_K: number, inlet_K: Kelvin, condensing_K: Kelvin): Watt {
  return Math.max(0, waterConductance(flow_kg_s, transfer_W_K) * (condensing_K - inlet_K));
}

/**
 * The water that carries a duty away while warming up by so much.
 *
 * Equation: ṁ = Q/(c ΔT).
 * @param duty_W Heat to be carried away, Q, [W]; 0 or more; else an InputError.
 * @param rise_K How much warmer the water may leave, ΔT, [K]; above 0; else an InputError.
 * @returns Water, ṁ, [kg/s].
 * @throws InputError when the duty or the rise is outside its range.
 * @example waterForDuty(5000, 30) * 60 // → 2.39
 * Source: definition; heat capacity of water by IAPWS-95.
 */
export function waterForDuty(duty_W: Watt, rise_K: KelvinDifference): number {
  checkRange('duty_W', duty_W, 0, 1e12, 'a duty of 0 W or more');
  checkRange('rise_K', rise_K, 1e-3, 100, 'a rise above 0, up to 100 K');
  return duty_W / (WATER_J_kg_K * rise_K);
}
