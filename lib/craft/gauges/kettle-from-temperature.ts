// What stands in a boiling kettle, read off its thermometer.

import type { Outcome } from '../../errors.js';
import { strengthFromMoleFraction } from '../../mixture/strength.js';
import type { MoleFraction, VolumeFraction20C } from '../../units/quantities.js';
import { liquidBoilingAt, type NoMixture, type ThermometerReading } from './boiling-at.js';
import { strengthSlope } from './strength-slope.js';

/** A boiling kettle. */
export interface KettleRead {
  readonly moleFraction: MoleFraction;
  /** Of what is in the kettle, % vol / 100 at 20 °C. */
  readonly strength: VolumeFraction20C;
  /** Of the vapour that rises from it. */
  readonly vapourStrength: VolumeFraction20C;
  /** How its boiling point moves with its strength, K for one % vol; below 0. */
  readonly kelvinPerPercent: number;
  /** Standard error of the model's boiling temperature there, K. */
  readonly modelError_K: number;
}

/**
 * The strength of a boiling kettle from its temperature.
 *
 * Equation: T(x, P) = T_read − offset − model, P = P_air + ΔP, solved for x between water and the azeotrope.
 * @param reading What was read: `reading_K` [K]; `air_Pa` [Pa], 20 to 200 kPa; `over_Pa` [Pa], the drop of plates and doublers above the kettle, 0 to 50 kPa; `offset_K` [K], by how much the thermometer reads too high; `model_K` [K], added to the model's boiling point.
 * @returns found true with the kettle's strength, its vapour's, and the slope [K for one % vol]; found false with reason 'hotter-than-water' (spent, or a thermometer or pressure that is off) or 'colder-than-azeotrope'.
 * @throws InputError when a field is outside its range.
 * @example foundIn(kettleFromTemperature({ reading_K: 368.15, air_Pa: 101325 })).strength // → 0.0569
 * Source: definition of the bubble point; docs/theory/equilibrium.md.
 */
export function kettleFromTemperature(reading: ThermometerReading): Outcome<KettleRead, NoMixture> {
  const at = liquidBoilingAt(reading);
  if (!at.found) return at;
  const { moleFraction, point, modelError_K } = at;
  return {
    found: true,
    moleFraction,
    strength: strengthFromMoleFraction(moleFraction),
    vapourStrength: strengthFromMoleFraction(point.vapourMoleFraction),
    kelvinPerPercent: 0.01 * (point.temperatureSlope_K / strengthSlope(moleFraction)),
    modelError_K,
  };
}
