// How the readings of the holders lie side by side in one array (streams.ts). Inner loops write the numbers themselves: names from another
// module are looked up each time.

/** Readings of a holder, so many side by side. */
export const READINGS = 11;
/** Mole fraction of the liquid, and the one in equilibrium with it. */
export const LIQUID = 0;
export const EQUILIBRIUM = 1;
export const TEMPERATURE_K = 2;
/** Flows, mol/s, and what they carry, / LAMBDA0. */
export const VAPOUR_RATE = 3;
export const VAPOUR_ENTHALPY = 4;
export const LIQUID_RATE = 5;
export const LIQUID_ENTHALPY = 6;
/** How far below its boiling point the liquid is, K. */
export const BELOW_K = 7;
/** Derivatives of the liquid's mole fraction by ethanol and water, 1/mol. */
export const LIQUID_1 = 8;
export const LIQUID_2 = 9;
/** By how much it stands above the brim where liquid runs over, mol. */
export const CREST = 10;
