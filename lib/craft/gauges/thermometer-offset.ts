// A thermometer checked in boiling water, on the day and at the place where it is used.

import { checkRange } from '../../errors.js';
import { water } from '../../substances/water.js';
import type { Kelvin, Pascal } from '../../units/quantities.js';

/**
 * By how much a thermometer reads too high, from its reading in boiling water.
 *
 * Equation: offset = T_read − T_boil(P) of water.
 * @param reading_K What it shows in boiling water, [K]; 320..400; outside, an InputError.
 * @param air_Pa Pressure of the air, P, [Pa]; 20 kPa to 200 kPa; outside, an InputError.
 * @returns The offset, [K]; below 0 where it reads too low.
 * @throws InputError when the reading or the pressure is outside its range.
 * @example thermometerOffset(373.15, 98000) // → 0.958
 * Source: IAPWS saturation of water; definition.
 */
export function thermometerOffset(reading_K: Kelvin, air_Pa: Pascal): number {
  checkRange('reading_K', reading_K, 320, 400, 'a temperature of boiling water from 320 to 400 K');
  checkRange('air_Pa', air_Pa, 20e3, 200e3, 'a pressure from 20 to 200 kPa');
  return reading_K - water.boilingTemperature(air_Pa);
}
