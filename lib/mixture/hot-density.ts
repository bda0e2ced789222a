// Density of hot ethanol-water liquid, from 40 °C, where OIML R 22 ends, to 130 °C:
//
//   V(x, T) = x V1(T) + (1 − x) V2(T) + VE(x),  ρ = (x M1 + (1 − x) M2)/V
//
// V_i is the volume of the pure saturated liquid by its own equation, scaled by a constant so that it meets R 22 at
// 40 °C (by 4e-5 for water, 4e-4 for ethanol). VE is the excess volume of R 22 at 40 °C, kept at that value. So it is continuous
// with R 22. Marsh & Richards (Aust. J. Chem. 33 (1980) 2121) found VE at x = 0.082 independent of temperature from
// 5 to 65 °C; between 30 and 40 °C R 22's own VE moves by at most 0.03 cm³/mol. Carried upward that far per 10 K, the
// error is 0.12 % of the density per 10 K at worst: some 0.5 % at the boiling points.
// Sources: ethanol Perry's Handbook, 8th ed., Table 2-32; water IAPWS, Wagner & Pruss 1993.

import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER, ZERO_CELSIUS } from '../constants.js';
import { checkRange } from '../errors.js';
import type { Kelvin, KilogramPerCubicMetre, MassFraction } from '../units/quantities.js';
import { saturatedDensityEthanol, saturatedDensityWater } from '../substances/saturated-density.js';
import { densityByPolynomial, densityOfMixture, densityPolynomial } from './density.js';
import { share } from './share.js';

/**
 * Density of a liquid mixture up to its boiling point; below 40 °C the value of OIML R 22.
 *
 * Equation: V = x V1(T) + (1 − x) V2(T) + VE(x, 40 °C), ρ = M/V.
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 253.15..403.15 (−20..130 °C); outside, an InputError.
 * @returns Density, ρ, [kg/m³]; error some 0.12 % per 10 K above 40 °C.
 * @throws InputError when the mass fraction or the temperature is outside its range.
 * @example densityOfLiquid(0, 373.124) // → 958.4
 * Source: this project's combination, docs/theory/strength.md; OIML R 22, 1975; Perry's Handbook, 8th ed., 2008; Wagner & Pruss 1993.
 */
export function densityOfLiquid(massFraction: MassFraction, temperature_K: Kelvin): KilogramPerCubicMetre {
  if (typeof temperature_K === 'number' && temperature_K <= SEAM_K)
    return densityOfMixture(massFraction, temperature_K);
  const p = share('massFraction', massFraction, 'a mass fraction from 0 to 1');
  checkRange('temperature_K', temperature_K, SEAM_K, 403.15, 'a temperature from 253.15 to 403.15 K (−20 to 130 °C)');
  // Per kilogram: the volume of the parts, then what mixing takes off at 40 °C.
  const parts =
    (p * ETHANOL_SCALE) / saturatedDensityEthanol(temperature_K) +
    ((1 - p) * WATER_SCALE) / saturatedDensityWater(temperature_K);
  return 1 / (parts + excessVolumeAtSeam(p));
}

/**
 * Excess volume of a mixture at a temperature where OIML R 22 holds; negative, as mixing shrinks.
 *
 * Equation: VE = M/ρ(p, T) − x M1/ρ(1, T) − (1 − x) M2/ρ(0, T).
 * @param massFraction Mass fraction of ethanol, p; 0..1; outside, an InputError.
 * @param temperature_K Temperature, T, [K]; 253.15..313.15; outside, an InputError.
 * @returns Excess volume, VE, [m³/mol of mixture].
 * @throws InputError when the mass fraction or the temperature is outside its range.
 * @example excessVolume(0.5, 293.15) * 1e6 // → -1.0375
 * Source: definition; OIML R 22, 1975, section 4.
 */
export function excessVolume(massFraction: MassFraction, temperature_K: Kelvin): number {
  const p = share('massFraction', massFraction, 'a mass fraction from 0 to 1');
  const molarMass = 1 / (p / MOLAR_MASS_ETHANOL + (1 - p) / MOLAR_MASS_WATER);
  return molarMass * excessPerKilogram(densityPolynomial(temperature_K), p);
}

const SEAM_K = ZERO_CELSIUS + 40;
const AT_SEAM = densityPolynomial(SEAM_K);
const ETHANOL_SCALE = saturatedDensityEthanol(SEAM_K) / densityByPolynomial(AT_SEAM, 1);
const WATER_SCALE = saturatedDensityWater(SEAM_K) / densityByPolynomial(AT_SEAM, 0);

function excessVolumeAtSeam(massFraction: MassFraction): number {
  return excessPerKilogram(AT_SEAM, massFraction);
}

function excessPerKilogram(polynomial: Float64Array, p: MassFraction): number {
  const parts = p / densityByPolynomial(polynomial, 1) + (1 - p) / densityByPolynomial(polynomial, 0);
  return 1 / densityByPolynomial(polynomial, p) - parts;
}
