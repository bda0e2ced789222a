// Names for what a number measures. A flavour is a plain number to the computer; to the compiler a
// mole fraction can no longer be passed where a mass fraction is wanted, while literals stay usable.

/** A number with a tag that only the compiler sees. */
export type Quantity<Tag extends string> = number & { readonly quantity?: Tag };

/** mol ethanol / mol mixture, 0..1. */
export type MoleFraction = Quantity<'mole fraction of ethanol'>;
/** kg ethanol / kg mixture, 0..1. */
export type MassFraction = Quantity<'mass fraction of ethanol'>;
/** Volume of pure ethanol at 20 °C / volume of mixture at 20 °C, 0..1 (0.40 is 40 % vol). */
export type VolumeFraction20C = Quantity<'volume fraction of ethanol at 20 °C'>;
/** US proof, 0..200: twice the % vol at 60 °F. */
export type ProofUS = Quantity<'US proof'>;
/** Thermodynamic temperature, K. */
export type Kelvin = Quantity<'K'>;
/** A difference of temperatures or an error of one, K: never a temperature itself. */
export type KelvinDifference = Quantity<'difference of temperatures, K'>;
/** Pressure, Pa. */
export type Pascal = Quantity<'Pa'>;
/** Amount of substance, mol. */
export type Mole = Quantity<'mol'>;
/** Mass, kg. */
export type Kilogram = Quantity<'kg'>;
/** Volume, m³. */
export type CubicMetre = Quantity<'m³'>;
/** Density, kg/m³. */
export type KilogramPerCubicMetre = Quantity<'kg/m³'>;
/** Power, W. */
export type Watt = Quantity<'W'>;
/** Time, s. */
export type Second = Quantity<'s'>;
/** Molar energy, J/mol. */
export type JoulePerMole = Quantity<'J/mol'>;
