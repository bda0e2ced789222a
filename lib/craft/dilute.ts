// Bringing spirit down with water. The pure alcohol stays, so a volume and a strength belong together: V2 = V1 q1/q2;
// the water is found by mass, because the volumes of spirit and water do not add up:
//
//   water = m1 (p1/p2 − 1)

import { fieldFaults, refuse } from '../arguments.js';
import { checkRange, InputError } from '../errors.js';
import { AT_20_CELSIUS, densityByPolynomial } from '../mixture/density.js';
import { massFractionFromStrength } from '../mixture/strength.js';
import type { CubicMetre, Kelvin, Kilogram, VolumeFraction20C } from '../units/quantities.js';
import { mix } from './mix.js';
import { checkSpirit, checkStrength, checkTemperature, massesAt, type Spirit } from './spirit.js';

/** What is to be brought down, and to what. */
export interface Dilution {
  readonly spirit: Spirit;
  /** Either the strength wanted, % vol / 100, above 0 and not above the spirit's ... */
  readonly strength?: VolumeFraction20C;
  /** ... or the volume wanted at 20 °C, m³, not below the spirit's. */
  readonly volume_m3?: CubicMetre;
  /** How warm the water is, K; 273.15..333.15. Wanted only for the temperature of the result. */
  readonly water_K?: Kelvin;
}

/** How spirit is brought down. */
export interface Diluted {
  /** Water to weigh in. */
  readonly water_kg: Kilogram;
  /** The same as volume at 20 °C. */
  readonly water_m3: CubicMetre;
  /** What comes of it; with a temperature where spirit and water had one. */
  readonly spirit: Spirit;
  /** By how much less than spirit and water apart, at 20 °C. */
  readonly lost_m3: CubicMetre;
  /** How much mixing warms it, K; undefined where a temperature is missing. */
  readonly warmed_K: number | undefined;
}

/**
 * The water that brings a spirit down to a strength, or up to a volume, and what comes of it.
 *
 * Equation: water = m (p1/p2 − 1), p2 of the strength wanted; for a volume wanted V2, q2 = V1 q1/V2.
 * @param dilution What is brought down: `spirit` with `volume_m3` [m³ at 20 °C] and `strength`, 0..1; either `strength`, above 0 to the spirit's, or `volume_m3` [m³], the spirit's or more; `water_K` [K], 273.15..333.15, may be left out.
 * @returns Water by mass [kg] and by volume [m³ at 20 °C], the spirit that comes of it, the volume lost [m³], how much it warms [K].
 * @throws InputError when both or neither of strength and volume are given, when water cannot lead there, or a field is outside its range.
 * @example dilute({ spirit: { volume_m3: 0.1, strength: 0.7 }, strength: 0.4 }).water_m3 // → 0.07749
 * Source: conservation of mass; OIML R 22, 1975; 27 CFR 30.66 has worked examples.
 */
export function dilute(dilution: Dilution): Diluted {
  refuse(fieldFaults('dilution', dilution, ['spirit', 'strength', 'volume_m3', 'water_K']));
  const { spirit, water_K } = dilution;
  const { ethanol_kg, water_kg: held_kg } = massesAt(spirit, 'dilution.spirit');
  if (water_K !== undefined) checkTemperature('dilution.water_K', water_K);
  const strength = strengthWanted(dilution);
  const water_kg = Math.max(0, waterBeside(ethanol_kg, strength) - held_kg);
  const water_m3 = water_kg / WATER_20C;
  const water: Spirit = {
    volume_m3: water_m3,
    strength: 0,
    ...(water_K === undefined ? {} : { temperature_K: water_K }),
  };
  const { spirit: mixed, lost_m3, warmed_K } = mix([spirit, water]);
  return { water_kg, water_m3, spirit: mixed, lost_m3, warmed_K };
}

/** The strength that is wanted, by itself or through a volume. */
function strengthWanted({ spirit, strength, volume_m3 }: Dilution): VolumeFraction20C {
  checkSpirit(spirit, 'dilution.spirit');
  if ((strength === undefined) === (volume_m3 === undefined)) {
    throw new InputError({
      argument: 'dilution',
      value: { strength, volume_m3 },
      expected: 'either the strength or the volume that is wanted',
    });
  }
  if (volume_m3 !== undefined) {
    const expected = 'a volume not below that of the spirit, which water can only add to';
    checkRange('dilution.volume_m3', volume_m3, spirit.volume_m3, Number.MAX_VALUE, expected);
    if (volume_m3 === 0)
      throw new InputError({ argument: 'dilution.spirit.volume_m3', value: 0, expected: 'more than nothing' });
    return (spirit.volume_m3 * spirit.strength) / volume_m3;
  }
  checkStrength('dilution.strength', strength!);
  if (strength! > spirit.strength + ROUNDING || (strength === 0 && spirit.strength > 0)) {
    const expected = `a strength above 0 and not above ${String(spirit.strength)}, which is the spirit's`;
    throw new InputError({ argument: 'dilution.strength', value: strength, expected });
  }
  return strength!;
}

/** Water that stands beside so much ethanol in a mixture of a strength, kg. */
function waterBeside(ethanol_kg: Kilogram, strength: VolumeFraction20C): Kilogram {
  if (ethanol_kg === 0) return 0;
  const p = massFractionFromStrength(strength);
  return (ethanol_kg * (1 - p)) / p;
}

/** A strength that was computed may be above the spirit's by a rounding error. */
const ROUNDING = 1e-9;
const WATER_20C = densityByPolynomial(AT_20_CELSIUS, 0);
