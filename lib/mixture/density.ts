// Density of ethanol-water mixtures, the base of all alcoholometry here.
//
//   ρ(p,t) = A1 + Σ A_k p^(k−1) + Σ B_k (t−20)^k + Σ_i Σ_k C_i,k p^k (t−20)^i
//
// with p the mass fraction of ethanol and t in °C; −20..40 °C. At one temperature it is a polynomial
// of degree 11 in p, which is how it is evaluated.
// Source: OIML R 22, International Alcoholometric Tables, 1975, section 4.

import { ZERO_CELSIUS } from '../constants.js';
import { OIML_R22_A } from '../data/oiml-r22-a.js';
import { OIML_R22 } from '../data/oiml-r22.js';
import { coefficientSeries } from '../data/parameter-set.js';
import { checkRange } from '../errors.js';
import type { Kelvin, KilogramPerCubicMetre, MassFraction } from '../units/quantities.js';
import {
  AT_20_CELSIUS,
  densityByPolynomial,
  type DensityPolynomial,
  densitySlopeByPolynomial,
  TWENTY_CELSIUS,
} from './density-at-20.js';
import { share } from './share.js';

export { AT_20_CELSIUS, densityByPolynomial, type DensityPolynomial, densitySlopeByPolynomial, TWENTY_CELSIUS };

/**
 * Density of a mixture of ethanol and water under atmospheric pressure.
 *
 * Equation: ρ(p,t) = A1 + Σ A_k p^(k−1) + Σ B_k (t−20)^k + Σ_i Σ_k C_i,k p^k (t−20)^i, 54 coefficients.
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 253.15..313.15 (−20..40 °C); outside, an InputError. Below the freezing line the value is the formula's, not a liquid's.
 * @returns Density in vacuum, ρ, [kg/m³].
 * @throws InputError when the mass fraction or the temperature is outside its range.
 * @example densityOfMixture(0.5, 293.15) // → 913.77
 * Source: OIML R 22, International Alcoholometric Tables, 1975, section 4.
 */
export function densityOfMixture(massFraction: MassFraction, temperature_K: Kelvin): KilogramPerCubicMetre {
  const p = share('massFraction', massFraction, 'a mass fraction from 0 to 1');
  return densityByPolynomial(densityPolynomial(temperature_K), p);
}

/** The formula gathered into a polynomial in p at one temperature. Throws an InputError outside −20..40 °C. */
export function densityPolynomial(temperature_K: Kelvin): DensityPolynomial {
  checkRange(
    'temperature_K',
    temperature_K,
    LOWEST_K - TEMPERATURE_SLACK_K,
    HIGHEST_K + TEMPERATURE_SLACK_K,
    'a temperature from 253.15 to 313.15 K (−20 to 40 °C), where OIML R 22 holds',
  );
  const warmth = temperature_K - TWENTY_CELSIUS;
  const polynomial = Float64Array.from(OIML_R22_A);
  let power = 1;
  for (let i = 0; i < B.length; i++) {
    power *= warmth;
    polynomial[0]! += B[i]! * power;
    const row = C[i];
    if (row === undefined) continue;
    for (let k = 0; k < row.length; k++) polynomial[k + 1]! += row[k]! * power;
  }
  return polynomial;
}

const B = coefficientSeries(OIML_R22, 'B');
const C = [1, 2, 3, 4, 5].map((i) => coefficientSeries(OIML_R22, `C${i}_`));
const [LOWEST_K, HIGHEST_K] = OIML_R22.range.temperature as [number, number];
/** −20 °C typed in degrees and converted may miss 253.15 K by a rounding error. */
const TEMPERATURE_SLACK_K = 1e-9;

/** The polynomial at 60 °F. */
export const AT_60_FAHRENHEIT: DensityPolynomial = densityPolynomial(ZERO_CELSIUS + (60 - 32) / 1.8);
