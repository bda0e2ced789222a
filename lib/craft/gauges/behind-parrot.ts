// A parrot holds some spirit round its hydrometer, so the hydrometer shows a mixture of what has run in lately. Well
// mixed, its strength follows the spout's by
//
//   dq_p/dV = (q_s − q_p)/V_p,  hence  q_s = q_p + V_p dq_p/dV

import { checkRange } from '../../errors.js';
import type { CubicMetre, VolumeFraction20C } from '../../units/quantities.js';

/**
 * The strength at the spout behind a parrot whose reading is falling.
 *
 * Equation: q_s = q_p + V_p dq_p/dV, the parrot taken as well mixed.
 * @param strength What the parrot's hydrometer shows, made true, q_p, [volume fraction at 20 °C]; 0..1; outside, an InputError.
 * @param parrot_m3 Spirit the parrot holds, V_p, [m³]; 0..0.1; outside, an InputError.
 * @param change_per_m3 How the reading moves with the volume that has come over, dq_p/dV, [1/m³]: −30 is 3 % vol lower a litre; −1e6..1e6; outside, an InputError.
 * @returns Strength at the spout, [volume fraction at 20 °C], held to 0..1.
 * @throws InputError when an argument is outside its range.
 * @example behindParrot(0.6, 0.0003, -30) // → 0.591
 * Source: balance of a well-mixed vessel.
 */
export function behindParrot(
  strength: VolumeFraction20C,
  parrot_m3: CubicMetre,
  change_per_m3: number,
): VolumeFraction20C {
  checkRange('strength', strength, 0, 1, 'a strength from 0 to 1 (0.40 is 40 % vol)');
  checkRange('parrot_m3', parrot_m3, 0, 0.1, 'a volume from 0 to 0.1 m³');
  checkRange('change_per_m3', change_per_m3, -1e6, 1e6, 'a change from -1e6 to 1e6 per m³');
  return Math.min(1, Math.max(0, strength + parrot_m3 * change_per_m3));
}
