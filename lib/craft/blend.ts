// How much of each of two liquids makes a wanted volume of a wanted strength. Each cubic metre of liquid i brings the
// masses e_i and w_i; two balances give the two volumes:
//
//   v1 e1 + v2 e2 = E,  v1 w1 + v2 w2 = W

import { fieldFaults, recordFault, refuse } from '../arguments.js';
import { MOST_m3 } from '../mixture/volume.js';
import { checkRange, InputError } from '../errors.js';
import type { CubicMetre, VolumeFraction20C } from '../units/quantities.js';
import { type Mixed, mix } from './mix.js';
import { checkStrength, massesAt, type Spirit } from './spirit.js';

/** A spirit without its volume. */
export type Liquid = Omit<Spirit, 'volume_m3' | 'companions_kg'>;

/** What is to be made, and of what. */
export interface BlendWanted {
  readonly stronger: Liquid;
  /** Strength 0 for water. */
  readonly weaker: Liquid;
  /** Strength wanted, % vol / 100; between those of the two. */
  readonly strength: VolumeFraction20C;
  /** Volume wanted, at 20 °C, m³; above 0. */
  readonly volume_m3: CubicMetre;
}

/** How much of each, and what comes of it. */
export interface Blended {
  readonly stronger_m3: CubicMetre;
  readonly weaker_m3: CubicMetre;
  readonly mixed: Mixed;
}

/**
 * How much of a stronger and of a weaker liquid makes a volume of a strength between them.
 *
 * Equation: v1 e1 + v2 e2 = E, v1 w1 + v2 w2 = W, with masses of ethanol e and water w a volume.
 * @param wanted What is to be made: `stronger` and `weaker` with their `strength`, 0..1, and `temperature_K` [K], which may be left out; `strength` between the two; `volume_m3` [m³ at 20 °C], above 0.
 * @returns Volumes of both, [m³ at 20 °C], and the mixture.
 * @throws InputError when the strength does not lie between the two, the two are alike, or a field is outside its range.
 * @example blend({ stronger: { strength: 0.8 }, weaker: { strength: 0 }, strength: 0.43, volume_m3: 0.02 }).stronger_m3 // → 0.01075
 * Source: conservation of mass; OIML R 22, 1975.
 */
export function blend(wanted: BlendWanted): Blended {
  refuse(fieldFaults('wanted', wanted, ['stronger', 'weaker', 'strength', 'volume_m3']));
  const { stronger, weaker, strength, volume_m3 } = wanted;
  refuse([...recordFault('wanted.stronger', stronger), ...recordFault('wanted.weaker', weaker)]);
  checkStrength('wanted.stronger.strength', stronger.strength);
  checkStrength('wanted.weaker.strength', weaker.strength);
  if (!(stronger.strength > weaker.strength)) {
    const expected = `a strength above that of the weaker, ${String(weaker.strength)}`;
    throw new InputError({ argument: 'wanted.stronger.strength', value: stronger.strength, expected });
  }
  const between = `a strength from ${String(weaker.strength)} to ${String(stronger.strength)}, between those of the two liquids`;
  checkRange('wanted.strength', strength, weaker.strength, stronger.strength, between);
  checkRange('wanted.volume_m3', volume_m3, Number.MIN_VALUE, MOST_m3, 'a volume above 0 m³');

  const one = massesAt({ ...stronger, volume_m3: 1 }, 'wanted.stronger');
  const other = massesAt({ ...weaker, volume_m3: 1 }, 'wanted.weaker');
  const whole = massesAt({ volume_m3, strength }, 'wanted');
  const divisor = one.ethanol_kg * other.water_kg - other.ethanol_kg * one.water_kg;
  const part = (ethanol_kg: number, water_kg: number): number => Math.max(0, (ethanol_kg - water_kg) / divisor);
  const stronger_m3 = part(whole.ethanol_kg * other.water_kg, whole.water_kg * other.ethanol_kg);
  const weaker_m3 = part(whole.water_kg * one.ethanol_kg, whole.ethanol_kg * one.water_kg);
  const mixed = mix([
    { ...stronger, volume_m3: stronger_m3 },
    { ...weaker, volume_m3: weaker_m3 },
  ]);
  return { stronger_m3, weaker_m3, mixed };
}
