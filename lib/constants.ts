// Physical constants, each with its source. Constants that belong to a published fit stay with the fit.

/** Molar gas constant, J/(mol K). Exact since the 2019 SI. Source: CODATA 2018, NIST SP 961. */
export const GAS_CONSTANT = 8.314462618;

/** Standard atmosphere, Pa. Exact by definition. Source: 10th CGPM (1954), resolution 4. */
export const STANDARD_ATMOSPHERE = 101325;

/** 0 °C in kelvin. Exact by definition. Source: SI brochure, 9th ed., 2.3.1. */
export const ZERO_CELSIUS = 273.15;

/** Standard acceleration of gravity, m/s². Exact by definition. Source: 3rd CGPM (1901). */
export const STANDARD_GRAVITY = 9.80665;

/** Molar mass of ethanol, kg/mol. Source: Schroeder, Penoncello & Schroeder, J. Phys. Chem. Ref. Data 43 (2014) 043102. */
export const MOLAR_MASS_ETHANOL = 46.06844e-3;

/** Molar mass of water, kg/mol. Source: IAPWS-95, Wagner & Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387. */
export const MOLAR_MASS_WATER = 18.015268e-3;
