// Spirit brought down slowly: a little water at a time, with a rest after each, as is usual for strong spirit that has
// aged or that clouds. The steps are equal in strength; by which rests and steps a spirit is best brought down is a matter
// of taste (common practice, no published source).

import { fieldFaults, refuse } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';
import type { Kelvin, VolumeFraction20C } from '../units/quantities.js';
import { dilute, type Diluted } from './dilute.js';
import { checkSpirit, checkStrength, checkTemperature, type Spirit } from './spirit.js';

/** What is brought down in steps. */
export interface Reduction {
  readonly spirit: Spirit;
  /** Strength wanted in the end, % vol / 100; above 0, not above the spirit's. */
  readonly strength: VolumeFraction20C;
  /** How many portions of water; a whole number from 1 to 100. */
  readonly steps: number;
  /** How warm the water is, K; 273.15..333.15. */
  readonly water_K?: Kelvin;
  /** How warm the spirit is again after each rest, K; the spirit's own temperature where it is left out. */
  readonly rested_K?: Kelvin;
}

/**
 * The portions of water that bring a spirit down in steps of equal strength, and what stands after each.
 *
 * Equation: q_k = q_0 + (q_n − q_0) k/n; each step water = m (p_(k−1)/p_k − 1).
 * @param reduction What is brought down: `spirit` ([m³ at 20 °C], strength 0..1), `strength` wanted, above 0 to the spirit's, `steps`, 1..100; `water_K` and `rested_K` [K], 273.15..333.15, may be left out.
 * @returns One dilution a step, first to last.
 * @throws InputError when a field is outside its range.
 * @example reduceInSteps({ spirit: { volume_m3: 0.1, strength: 0.7 }, strength: 0.4, steps: 3 })[0].spirit.strength // → 0.6
 * Source: conservation of mass; OIML R 22, 1975.
 */
export function reduceInSteps(reduction: Reduction): readonly Diluted[] {
  refuse(fieldFaults('reduction', reduction, ['spirit', 'strength', 'steps', 'water_K', 'rested_K']));
  const { spirit, strength, steps, water_K } = reduction;
  checkSpirit(spirit, 'reduction.spirit');
  const expected = 'a whole number of steps from 1 to 100';
  if (!Number.isInteger(steps)) throw new InputError({ argument: 'reduction.steps', value: steps, expected });
  checkRange('reduction.steps', steps, 1, 100, expected);
  checkStrength('reduction.spirit.strength', spirit.strength);
  checkRange(
    'reduction.strength',
    strength,
    Number.MIN_VALUE,
    spirit.strength,
    'a strength above 0 and not above the spirit’s',
  );
  const { rested_K = spirit.temperature_K } = reduction;
  if (rested_K !== undefined) checkTemperature('reduction.rested_K', rested_K);
  const done: Diluted[] = [];
  let now = spirit;
  for (let step = 1; step <= steps; step++) {
    const wanted = step === steps ? strength : spirit.strength + ((strength - spirit.strength) * step) / steps;
    const diluted = dilute({ spirit: now, strength: wanted, ...(water_K === undefined ? {} : { water_K }) });
    done.push(diluted);
    now = { ...diluted.spirit, ...(rested_K === undefined ? {} : { temperature_K: rested_K }) };
  }
  return done;
}
