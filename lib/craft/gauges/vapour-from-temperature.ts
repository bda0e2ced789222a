// What strength a vapour has, read off the thermometer it passes: the head of a still.

import type { Outcome } from '../../errors.js';
import { strengthFromMoleFraction } from '../../mixture/strength.js';
import type { MoleFraction, VolumeFraction20C } from '../../units/quantities.js';
import { liquidBoilingAt, type NoMixture, type ThermometerReading } from './boiling-at.js';
import { strengthSlope } from './strength-slope.js';

/** A vapour at its dew point. */
export interface VapourRead {
  readonly moleFraction: MoleFraction;
  /** Of the spirit it condenses to, % vol / 100 at 20 °C. */
  readonly strength: VolumeFraction20C;
  /** How its dew point moves with its strength, K for one % vol; near 0 at the azeotrope, where a thermometer tells nothing. */
  readonly kelvinPerPercent: number;
  /** Standard error of the model's temperature there, K. */
  readonly modelError_K: number;
}

/**
 * The strength of a vapour from its temperature, as long as it is not overheated and liquid hangs on the thermometer.
 *
 * Equation: T_dew(y, P) = T_read − offset − model; the dew point of y is the bubble point of the liquid under it, y = y*(x).
 * @param reading What was read: `reading_K` [K]; `air_Pa` [Pa], 20 to 200 kPa; `over_Pa` [Pa], 0 to 50 kPa; `offset_K` [K], by how much the thermometer reads too high; `model_K` [K], added to the model's temperature.
 * @returns found true with the strength and the slope [K for one % vol]; found false with reason 'hotter-than-water' or 'colder-than-azeotrope'.
 * @throws InputError when a field is outside its range.
 * @example foundIn(vapourFromTemperature({ reading_K: 353.15, air_Pa: 101325 })).strength // → 0.8710
 * Source: definition of the dew point; docs/theory/equilibrium.md.
 */
export function vapourFromTemperature(reading: ThermometerReading): Outcome<VapourRead, NoMixture> {
  const at = liquidBoilingAt(reading);
  if (!at.found) return at;
  const { point, modelError_K } = at;
  const moleFraction = point.vapourMoleFraction;
  const slope = strengthSlope(moleFraction) * point.vapourSlope;
  return {
    found: true,
    moleFraction,
    strength: strengthFromMoleFraction(moleFraction),
    kelvinPerPercent: 0.01 * (point.temperatureSlope_K / slope),
    modelError_K,
  };
}
