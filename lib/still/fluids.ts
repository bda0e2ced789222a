// Liquid and vapour where they boil, as plates and packings feel them: densities, molar masses, surface tension.

import { GAS_CONSTANT, MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER } from '../constants.js';
import { densityOfLiquid } from '../mixture/hot-density.js';
import { massFractionFromMoleFraction } from '../mixture/strength.js';
import type { Kelvin, KilogramPerCubicMetre, MoleFraction, Pascal } from '../units/quantities.js';

/** kg/mol of a mixture. */
export function molarMass(moleFraction: MoleFraction): number {
  return moleFraction * MOLAR_MASS_ETHANOL + (1 - moleFraction) * MOLAR_MASS_WATER;
}

/** Vapour as an ideal gas; real ones at an atmosphere are 1 to 3 % denser. */
export function vapourDensity(
  moleFraction: MoleFraction,
  temperature_K: Kelvin,
  pressure_Pa: Pascal,
): KilogramPerCubicMetre {
  return (pressure_Pa * molarMass(moleFraction)) / (GAS_CONSTANT * temperature_K);
}

/** Below this densities are not known, K; a loosely solved drop of liquid may seem colder for a moment. */
const COLDEST_K = 253.15;

/** Density of the liquid. */
export function liquidDensity(moleFraction: MoleFraction, temperature_K: Kelvin): KilogramPerCubicMetre {
  return densityOfLiquid(massFractionFromMoleFraction(moleFraction), Math.max(COLDEST_K, temperature_K));
}

/** Surface tension of the boiling mixture against its mole fraction, N/m. Values from memory, to some 10 %: water 58, a tenth 30, a third 22, ethanol 17 mN/m. */
const TENSIONS: readonly (readonly [MoleFraction, number])[] = [
  [0, 0.058],
  [0.03, 0.043],
  [0.1, 0.03],
  [0.3, 0.022],
  [1, 0.017],
];

/** Surface tension of the boiling liquid, N/m, by straight lines between TENSIONS. */
export function surfaceTension(moleFraction: MoleFraction): number {
  const x = Math.min(1, Math.max(0, moleFraction));
  const above = TENSIONS.findIndex(([at], i) => i > 0 && x <= at);
  const [x0, s0] = TENSIONS[above - 1]!;
  const [x1, s1] = TENSIONS[above]!;
  return s0 + ((x - x0) / (x1 - x0)) * (s1 - s0);
}
