// A quantity of liquid as the distiller knows it: so much, of such a strength. What is computed with it is computed with
// masses, since masses add up and volumes do not:
//
//   m = V ρ(p, 20 °C),  m1 = p m,  m2 = (1 − p) m

import { fieldFaults, refuse } from '../arguments.js';
import { MOST_m3 } from '../mixture/volume.js';
import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER, ZERO_CELSIUS } from '../constants.js';
import { checkRange, InputError } from '../errors.js';
import { AT_20_CELSIUS, densityByPolynomial, densityPolynomial } from '../mixture/density.js';
import { massFractionFromStrength, strengthFromMassFraction } from '../mixture/strength.js';
import type { CubicMetre, Kelvin, Kilogram, MassFraction, VolumeFraction20C } from '../units/quantities.js';

/** Spirit, wash, feints or water in a jar, a tank or a kettle. */
export interface Spirit {
  /** Volume at 20 °C, m³; 0 or more. */
  readonly volume_m3: CubicMetre;
  /** Strength by volume at 20 °C; 0 for water. */
  readonly strength: VolumeFraction20C;
  /** How warm it is, K; 273.15..333.15. Asked for only where the temperature of a mixture is wanted. */
  readonly temperature_K?: Kelvin;
  /** Mass of what is dissolved in it besides, by name, kg. Does not count to volume and strength. */
  readonly companions_kg?: Readonly<Record<string, Kilogram>>;
}

/** Masses of the two components. */
export interface Masses {
  readonly ethanol_kg: Kilogram;
  readonly water_kg: Kilogram;
}

/** What was measured of a quantity of spirit that is not at 20 °C. */
export interface MeasuredVolume {
  /** Volume as it was read, m³, at `temperature_K`; 0 or more. */
  readonly volume_m3: CubicMetre;
  /** How warm the liquid was, K; 253.15..313.15. */
  readonly temperature_K: Kelvin;
  /** True strength by volume at 20 °C; a hydrometer's reading is made true by trueStrengthFromReading. */
  readonly strength: VolumeFraction20C;
}

/**
 * Spirit from a volume that was measured at another temperature than 20 °C; the vessel's own expansion is not counted.
 *
 * Equation: V = V_T ρ(p, T) / ρ(p, 20 °C).
 * @param measured What was measured: `volume_m3`, V_T, [m³], 0 or more; `temperature_K`, T, [K], 253.15..313.15; `strength`, q, 0..1. Outside, an InputError.
 * @returns The spirit: its volume at 20 °C, [m³], its strength and temperature.
 * @throws InputError when a field is outside its range.
 * @example spiritFromMeasured({ volume_m3: 0.1, temperature_K: 303.15, strength: 0.6 }).volume_m3 // → 0.09910
 * Source: OIML R 22, International Alcoholometric Tables, 1975, section 4.
 */
export function spiritFromMeasured(measured: MeasuredVolume): Spirit {
  refuse(fieldFaults('measured', measured, ['volume_m3', 'temperature_K', 'strength']));
  const { volume_m3, temperature_K, strength } = measured;
  checkVolume('measured.volume_m3', volume_m3);
  const p = massFractionFromStrength(strength);
  const shrunk = densityByPolynomial(densityPolynomial(temperature_K), p) / densityByPolynomial(AT_20_CELSIUS, p);
  return { volume_m3: volume_m3 * shrunk, strength, temperature_K };
}

/**
 * Masses of ethanol and water in a quantity of spirit.
 *
 * Equation: m1 = p V ρ(p, 20 °C), m2 = (1 − p) V ρ(p, 20 °C).
 * @param spirit The spirit: `volume_m3`, V, [m³], 0 or more; `strength`, q, 0..1. Outside, an InputError.
 * @returns Masses of ethanol and water, [kg].
 * @throws InputError when the volume or the strength is outside its range.
 * @example massesOf({ volume_m3: 0.02, strength: 0.43 }).ethanol_kg // → 6.787
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 and 4.
 */
export function massesOf(spirit: Spirit): Masses {
  return massesAt(spirit, 'spirit');
}

/** The same, with the argument's own name in what is thrown. */
export function massesAt(spirit: Spirit, argument: string): Masses {
  checkSpirit(spirit, argument);
  const p = massFractionFromStrength(spirit.strength);
  const mass_kg = spirit.volume_m3 * densityByPolynomial(AT_20_CELSIUS, p);
  return { ethanol_kg: p * mass_kg, water_kg: (1 - p) * mass_kg };
}

/** Spirit of given masses; nothing at all is no strength: 0. */
export function spiritOfMasses({ ethanol_kg, water_kg }: Masses): { volume_m3: CubicMetre; strength: number } {
  const mass_kg = ethanol_kg + water_kg;
  if (mass_kg === 0) return { volume_m3: 0, strength: 0 };
  const p: MassFraction = Math.min(1, Math.max(0, ethanol_kg / mass_kg));
  return { volume_m3: mass_kg / densityByPolynomial(AT_20_CELSIUS, p), strength: strengthFromMassFraction(p) };
}

/** Amounts of masses, mol. */
export function amountsOfMasses({ ethanol_kg, water_kg }: Masses): { ethanol_mol: number; water_mol: number } {
  return { ethanol_mol: ethanol_kg / MOLAR_MASS_ETHANOL, water_mol: water_kg / MOLAR_MASS_WATER };
}

/** Throws an InputError unless it is a spirit; `argument` is what the caller calls it. */
export function checkSpirit(spirit: Spirit, argument: string): void {
  const given: unknown = spirit;
  if (typeof given !== 'object' || given === null) {
    throw new InputError({ argument, value: given, expected: 'a spirit: { volume_m3, strength }' });
  }
  checkVolume(`${argument}.volume_m3`, spirit.volume_m3);
  checkStrength(`${argument}.strength`, spirit.strength);
  if (spirit.temperature_K !== undefined) checkTemperature(`${argument}.temperature_K`, spirit.temperature_K);
  for (const [name, mass_kg] of Object.entries(spirit.companions_kg ?? {})) {
    checkRange(`${argument}.companions_kg.${name}`, mass_kg, 0, Number.MAX_VALUE, 'a mass of 0 kg or more');
  }
}

export function checkVolume(argument: string, volume_m3: number): void {
  checkRange(argument, volume_m3, 0, MOST_m3, 'a volume of 0 m³ or more');
}

export function checkStrength(argument: string, strength: number): void {
  checkRange(argument, strength, 0, 1, 'a strength from 0 to 1 (0.40 is 40 % vol)');
}

/** Where liquids are mixed by hand: the enthalpies begin at 0 °C, and nobody should stir hotter spirit. */
export function checkTemperature(argument: string, temperature_K: number): void {
  const expected = 'a temperature from 273.15 to 333.15 K (0 to 60 °C)';
  checkRange(argument, temperature_K, ZERO_CELSIUS - ROUNDING_K, ZERO_CELSIUS + 60 + ROUNDING_K, expected);
}

/** Degrees that were converted may miss an end by a rounding error. */
const ROUNDING_K = 1e-9;
