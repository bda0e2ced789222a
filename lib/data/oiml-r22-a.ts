// Written by reference/parameters/build-data.mjs from reference/parameters/oiml-r22.json; edit that file, not this one.

/** A1, A2 ... of: Density of ethanol-water mixtures, general formula of the International Alcoholometric Tables; SI units. Source: oiml1975 in reference/bibliography.bib, section 4, formula and table of 54 coefficients; also the Annex, section 4, of Council Directive 76/766/EEC (oj1976). */
export const OIML_R22_A = Object.freeze([
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
  -547846.1354, 223446.0334, -39032.85426,
] as const);
