// Pressure of the air at an altitude, and the altitude for a pressure, in the standard atmosphere.
//
//   H = r0 Z / (r0 + Z),  T = T0 − L H,  P = P0 (T / T0)^(g0 M / (R L))     up to 11 km
//
// The gas constant and the rest are those of the standard, not today's values.
// Source: U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF); ISO 2533:1975. The same below 32 km.

import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../constants.js';
import { checkRange } from '../errors.js';
import type { Pascal } from '../units/quantities.js';

/**
 * Pressure of the air at an altitude in the standard atmosphere; weather moves it by some 2 to 3 kPa.
 *
 * Equation: P = P0 (1 − L H / T0)^(g0 M / (R L)), H = r0 Z / (r0 + Z).
 * @param altitude_m Altitude above sea level, Z, [m]; −600..11000; outside, an InputError.
 * @returns Pressure, P, [Pa].
 * @throws InputError when the altitude is outside its range.
 * @example pressureAtAltitude(1609) // → 83435
 * Source: U.S. Standard Atmosphere, 1976; ISO 2533:1975.
 */
export function pressureAtAltitude(altitude_m: number): Pascal {
  checkRange('altitude_m', altitude_m, LOWEST_m, HIGHEST_m, 'an altitude from -600 to 11000 m');
  return pressureAt(altitude_m);
}

/**
 * Altitude at which the standard atmosphere has a pressure.
 *
 * Equation: H = (T0 / L) (1 − (P/P0)^(R L / (g0 M))), Z = r0 H / (r0 − H).
 * @param pressure_Pa Pressure, P, [Pa]; 22700 (11000 m) to 108740 (−600 m); outside, an InputError.
 * @returns Altitude above sea level, Z, [m].
 * @throws InputError when the pressure is outside its range.
 * @example altitudeAtPressure(89875) // → 1000
 * Source: U.S. Standard Atmosphere, 1976; ISO 2533:1975.
 */
export function altitudeAtPressure(pressure_Pa: Pascal): number {
  checkRange('pressure_Pa', pressure_Pa, LEAST_Pa, MOST_Pa, 'a pressure of the air from -600 to 11000 m altitude');
  const geopotential_m = (SEA_LEVEL_K / LAPSE_K_m) * (1 - (pressure_Pa / STANDARD_ATMOSPHERE) ** (1 / EXPONENT));
  return (EARTH_RADIUS_m * geopotential_m) / (EARTH_RADIUS_m - geopotential_m);
}

function pressureAt(altitude_m: number): Pascal {
  const geopotential_m = (EARTH_RADIUS_m * altitude_m) / (EARTH_RADIUS_m + altitude_m);
  return STANDARD_ATMOSPHERE * (1 - (LAPSE_K_m * geopotential_m) / SEA_LEVEL_K) ** EXPONENT;
}

const SEA_LEVEL_K = 288.15;
const LAPSE_K_m = 0.0065;
const EARTH_RADIUS_m = 6356766;
/** Molar mass of air, kg/mol, and gas constant, J/(mol K), both of the 1976 standard. */
const AIR_kg_mol = 28.9644e-3;
const GAS_CONSTANT_1976 = 8.31432;
const EXPONENT = (STANDARD_GRAVITY * AIR_kg_mol) / (GAS_CONSTANT_1976 * LAPSE_K_m);
const LOWEST_m = -600;
const HIGHEST_m = 11000;
const LEAST_Pa = pressureAt(HIGHEST_m);
const MOST_Pa = pressureAt(LOWEST_m);
