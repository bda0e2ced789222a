// Volumes of ethanol-water mixtures at 20 °C and the amounts in them; the shrinking on mixing.

import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER } from '../constants.js';
import { checkRange, InputError } from '../errors.js';
import type { CubicMetre, Kelvin, MassFraction, Mole, VolumeFraction20C } from '../units/quantities.js';
import { AT_20_CELSIUS, densityByPolynomial, densityPolynomial } from './density.js';
import { share } from './share.js';
import { massFractionFromStrength } from './strength.js';

/** Amounts of the two components of a mixture. */
export interface Amounts {
  readonly ethanol_mol: Mole;
  readonly water_mol: Mole;
}

/**
 * Volume of pure alcohol, at 20 °C, in a volume of mixture measured at 20 °C.
 *
 * Equation: V_alcohol = q V.
 * @param volume_m3 Volume of mixture at 20 °C, V, [m³]; 0 or more; else an InputError.
 * @param strength Strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @returns Volume of pure alcohol at 20 °C, [m³]; 0.001 m³ is one litre of pure alcohol (LPA).
 * @throws InputError when the volume is negative or not finite, or the strength is outside 0..1.
 * @example pureAlcoholVolume(0.120, 0.095) // → 0.0114
 * Source: definition of strength by volume, OIML R 22, 1975, section 3.
 */
export function pureAlcoholVolume(volume_m3: CubicMetre, strength: VolumeFraction20C): CubicMetre {
  checkVolume(volume_m3);
  return volume_m3 * share('strength', strength, 'a strength from 0 to 1 (0.40 is 40 % vol)');
}

/**
 * Volume at 20 °C of given amounts of ethanol and water as one mixture, without iteration.
 *
 * Equation: V = (n1 M1 + n2 M2) / ρ(p, 20 °C).
 * @param ethanol_mol Amount of ethanol, n1, [mol]; 0 or more (rounding below 0 counts as 0); else an InputError.
 * @param water_mol Amount of water, n2, [mol]; 0 or more (rounding below 0 counts as 0); else an InputError.
 * @returns Volume at 20 °C, V, [m³]; 0 when there is nothing.
 * @throws InputError when an amount is negative or not finite.
 * @example volumeAt20C(100, 1000) // → 0.023367
 * Source: OIML R 22, International Alcoholometric Tables, 1975, section 4.
 */
export function volumeAt20C(ethanol_mol: Mole, water_mol: Mole): CubicMetre {
  checkAmount('ethanol_mol', ethanol_mol);
  checkAmount('water_mol', water_mol);
  const ethanol_kg = MOLAR_MASS_ETHANOL * ethanol_mol;
  const mass_kg = ethanol_kg + MOLAR_MASS_WATER * water_mol;
  // Compared so that NaN fails as well.
  if (!(ethanol_kg >= -ROUNDING * mass_kg && ethanol_kg <= (1 + ROUNDING) * mass_kg && mass_kg < Infinity)) {
    const argument = ethanol_mol >= 0 && ethanol_mol < Infinity ? 'water_mol' : 'ethanol_mol';
    const value = argument === 'water_mol' ? water_mol : ethanol_mol;
    throw new InputError({ argument, value, expected: 'an amount of 0 mol or more' });
  }
  if (mass_kg === 0) return 0;
  const massFraction = Math.min(1, Math.max(0, ethanol_kg / mass_kg));
  return mass_kg / densityByPolynomial(AT_20_CELSIUS, massFraction);
}

/**
 * Amounts of ethanol and water in a volume of mixture measured at 20 °C.
 *
 * Equation: m = V ρ(p, 20 °C), n1 = p m / M1, n2 = (1 − p) m / M2.
 * @param volume_m3 Volume of mixture at 20 °C, V, [m³]; 0 or more; else an InputError.
 * @param strength Strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @returns Amounts of ethanol and water, [mol].
 * @throws InputError when the volume is negative or not finite, or the strength is outside 0..1.
 * @example amountsFromVolume(0.120, 0.095).ethanol_mol // → 195.30
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 to 5.
 */
export function amountsFromVolume(volume_m3: CubicMetre, strength: VolumeFraction20C): Amounts {
  checkVolume(volume_m3);
  const massFraction = massFractionFromStrength(strength);
  const mass_kg = volume_m3 * densityByPolynomial(AT_20_CELSIUS, massFraction);
  return {
    ethanol_mol: (mass_kg * massFraction) / MOLAR_MASS_ETHANOL,
    water_mol: (mass_kg * (1 - massFraction)) / MOLAR_MASS_WATER,
  };
}

/**
 * Share of the volume that is lost when pure ethanol and pure water at the same temperature are mixed.
 *
 * Equation: 1 − (1/ρ(p,T)) / (p/ρ(1,T) + (1 − p)/ρ(0,T)).
 * @param massFraction Mass fraction of ethanol in the mixture, p; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 253.15..313.15; outside, an InputError.
 * @returns Contraction as a share of the sum of the volumes; 0 for the pure substances.
 * @throws InputError when the mass fraction or the temperature is outside its range.
 * @example contraction(0.466, 293.15) // → 0.03546
 * Source: OIML R 22, International Alcoholometric Tables, 1975, section 4.
 */
export function contraction(massFraction: MassFraction, temperature_K: Kelvin): number {
  const p = share('massFraction', massFraction, 'a mass fraction from 0 to 1');
  const polynomial = densityPolynomial(temperature_K);
  if (p === 0 || p === 1) return 0;
  const apart = p / densityByPolynomial(polynomial, 1) + (1 - p) / densityByPolynomial(polynomial, 0);
  return 1 - 1 / (densityByPolynomial(polynomial, p) * apart);
}

function checkAmount(argument: string, amount_mol: number): void {
  checkRange(argument, amount_mol, -MOST_mol, MOST_mol, 'an amount of 0 mol or more');
}

function checkVolume(volume_m3: CubicMetre): void {
  checkRange('volume_m3', volume_m3, 0, MOST_m3, 'a volume of 0 m³ or more');
}

const ROUNDING = 1e-9;
/** Ten times what lies in the deepest lake, and as many moles: more is a slip. */
export const MOST_m3 = 1e12;
const MOST_mol = 1e17;
