// One ethanol-water mixture in three bases: mole fraction x, mass fraction p, strength q (volume of
// pure ethanol at 20 °C in a volume of mixture at 20 °C). The only place where strength meets density:
//
//   p = x M1 / (x M1 + (1 − x) M2)          q = p ρ(p, 20 °C) / ρ(1, 20 °C)
//
// with ρ by OIML R 22. Towards q everything is evaluated directly; towards p the same formula is inverted.
// Arguments that miss 0..1 by no more than 1e-9 (rounding of a simulation) count as the end itself.

import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER } from '../constants.js';
import type { MassFraction, MoleFraction, VolumeFraction20C } from '../units/quantities.js';
import { AT_20_CELSIUS, densityByPolynomial, densitySlopeByPolynomial } from './density-at-20.js';
import { rootBetweenZeroAndOne } from './invert.js';
import { share } from './share.js';

/**
 * Mass fraction of ethanol from its mole fraction.
 *
 * Equation: p = x M1 / (x M1 + (1 − x) M2).
 * @param moleFraction Mole fraction of ethanol, x; 0..1; outside, an InputError.
 * @returns Mass fraction of ethanol, p, 0..1.
 * @throws InputError when the mole fraction is not a number from 0 to 1.
 * @example massFractionFromMoleFraction(0.8943) // → 0.9558
 * Source: definition, with the molar masses of lib/constants.ts.
 */
export function massFractionFromMoleFraction(moleFraction: MoleFraction): MassFraction {
  const x = share('moleFraction', moleFraction, 'a mole fraction from 0 to 1');
  return (x * MOLAR_MASS_ETHANOL) / (x * MOLAR_MASS_ETHANOL + (1 - x) * MOLAR_MASS_WATER);
}

/**
 * Mole fraction of ethanol from its mass fraction.
 *
 * Equation: x = (p / M1) / (p / M1 + (1 − p) / M2).
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @returns Mole fraction of ethanol, x, 0..1.
 * @throws InputError when the mass fraction is not a number from 0 to 1.
 * @example moleFractionFromMassFraction(0.4) // → 0.2068
 * Source: definition, with the molar masses of lib/constants.ts.
 */
export function moleFractionFromMassFraction(massFraction: MassFraction): MoleFraction {
  const p = share('massFraction', massFraction, 'a mass fraction from 0 to 1');
  return (p * MOLAR_MASS_WATER) / (p * MOLAR_MASS_WATER + (1 - p) * MOLAR_MASS_ETHANOL);
}

/**
 * Alcoholic strength by volume at 20 °C from the mass fraction.
 *
 * Equation: q = p ρ(p, 20 °C) / ρ(1, 20 °C).
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @returns Strength by volume, q, 0..1 (0.40 is 40 % vol).
 * @throws InputError when the mass fraction is not a number from 0 to 1.
 * @example strengthFromMassFraction(0.9558) // → 0.9718
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 to 5.
 */
export function strengthFromMassFraction(massFraction: MassFraction): VolumeFraction20C {
  return strengthOf(share('massFraction', massFraction, 'a mass fraction from 0 to 1'));
}

/**
 * Mass fraction of ethanol from the alcoholic strength by volume at 20 °C.
 *
 * Equation: q = p ρ(p, 20 °C) / ρ(1, 20 °C) solved for p by safeguarded Newton steps.
 * @param strength Strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @returns Mass fraction of ethanol, p, 0..1.
 * @throws InputError when the strength is not a number from 0 to 1.
 * @example massFractionFromStrength(0.4) // → 0.3330
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 to 5.
 */
export function massFractionFromStrength(strength: VolumeFraction20C): MassFraction {
  const q = share('strength', strength, 'a strength from 0 to 1 (0.40 is 40 % vol)');
  if (q === 0 || q === 1) return q;
  return rootBetweenZeroAndOne(
    (p, out) => {
      out.value = strengthOf(p) - q;
      out.slope =
        (densityByPolynomial(AT_20_CELSIUS, p) + p * densitySlopeByPolynomial(AT_20_CELSIUS, p)) / DENSITY_OF_ETHANOL;
    },
    q * (0.79 + 0.2 * q),
  );
}

/**
 * Alcoholic strength by volume at 20 °C from the mole fraction, without iteration.
 *
 * Equation: x → p by molar masses, then q = p ρ(p, 20 °C) / ρ(1, 20 °C).
 * @param moleFraction Mole fraction of ethanol, x; 0..1; outside, an InputError.
 * @returns Strength by volume at 20 °C, q, 0..1 (0.40 is 40 % vol).
 * @throws InputError when the mole fraction is not a number from 0 to 1.
 * @example strengthFromMoleFraction(0.8943) // → 0.9719
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 to 5.
 */
export function strengthFromMoleFraction(moleFraction: MoleFraction): VolumeFraction20C {
  return strengthOf(massFractionFromMoleFraction(moleFraction));
}

/**
 * Mole fraction of ethanol from the alcoholic strength by volume at 20 °C.
 *
 * Equation: q → p by inversion of R 22, then p → x by molar masses.
 * @param strength Strength by volume at 20 °C, q; 0..1; outside, an InputError.
 * @returns Mole fraction of ethanol, x, 0..1.
 * @throws InputError when the strength is not a number from 0 to 1.
 * @example moleFractionFromStrength(0.095) // → 0.0312
 * Source: OIML R 22, International Alcoholometric Tables, 1975, sections 3 to 5.
 */
export function moleFractionFromStrength(strength: VolumeFraction20C): MoleFraction {
  return moleFractionFromMassFraction(massFractionFromStrength(strength));
}

/** q(p) for a p known to be in 0..1; q(0) = 0 and q(1) = 1 exactly, and round-off just below carries nothing beyond. */
function strengthOf(p: MassFraction): VolumeFraction20C {
  return Math.min(1, (p * densityByPolynomial(AT_20_CELSIUS, p)) / DENSITY_OF_ETHANOL);
}

const DENSITY_OF_ETHANOL = densityByPolynomial(AT_20_CELSIUS, 1);
