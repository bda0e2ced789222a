// What a thermometer in the kettle is off when one forgets that the kettle stands under more than the air.

import { checkRange } from '../errors.js';
import { water } from '../substances/water.js';
import type { KelvinDifference, Pascal } from '../units/quantities.js';

/**
 * How much hotter a kettle boils for the pressure that plates, packing or a doubler's liquid put on it.
 *
 * Equation: ΔT = T_boil(P + ΔP) − T_boil(P), of water: a weak kettle's within a twentieth.
 * @param air_Pa Pressure of the air, P, [Pa]; 20 kPa to 200 kPa; else an InputError.
 * @param over_Pa What the kettle stands under besides, ΔP, [Pa]; 0 to 50 kPa; else an InputError.
 * @returns Kelvin by which the gauge reads too high, ΔT, [K].
 * @throws InputError when a pressure is outside its range.
 * @example gaugeOffset(101325, 20 * 400) // → 2.14
 * Source: IAPWS saturation of water; definition.
 */
export function gaugeOffset(air_Pa: Pascal, over_Pa: Pascal): KelvinDifference {
  checkRange('air_Pa', air_Pa, 20e3, 200e3, 'a pressure from 20 to 200 kPa');
  checkRange('over_Pa', over_Pa, 0, 50e3, 'a pressure from 0 to 50 kPa');
  return water.boilingTemperature(air_Pa + over_Pa) - water.boilingTemperature(air_Pa);
}
