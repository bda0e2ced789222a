// Density at 20 °C, where strength by volume is defined: of the formula of OIML R 22 the terms in A alone. Whoever converts
// strengths and nothing else is given no other coefficients.

import { ZERO_CELSIUS } from '../constants.js';
import { OIML_R22_A } from '../data/oiml-r22-a.js';
import type { KilogramPerCubicMetre, MassFraction } from '../units/quantities.js';

/** 20 °C, where strength by volume is defined, K. */
export const TWENTY_CELSIUS = ZERO_CELSIUS + 20;

/** Coefficients of ρ in powers of the mass fraction at one temperature, lowest power first, kg/m³. */
export type DensityPolynomial = Float64Array;

/** The polynomial at 20 °C. */
export const AT_20_CELSIUS: DensityPolynomial = Float64Array.from(OIML_R22_A);

/** ρ at a mass fraction that the caller knows to be in 0..1, kg/m³. */
export function densityByPolynomial(polynomial: DensityPolynomial, massFraction: MassFraction): KilogramPerCubicMetre {
  let density = 0;
  for (let k = polynomial.length - 1; k >= 0; k--) density = density * massFraction + polynomial[k]!;
  return density;
}

/** ∂ρ/∂p at a mass fraction that the caller knows to be in 0..1, kg/m³. */
export function densitySlopeByPolynomial(polynomial: DensityPolynomial, massFraction: MassFraction): number {
  let slope = 0;
  for (let k = polynomial.length - 1; k >= 1; k--) slope = slope * massFraction + k * polynomial[k]!;
  return slope;
}
