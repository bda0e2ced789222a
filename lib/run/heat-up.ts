// The heat that brings a charge from its filling temperature to its first vapour. Runs begin at the first vapour; this comes
// before.

import { bubblePoint } from '../equilibrium/bubble-point.js';
import { ZERO_CELSIUS } from '../constants.js';
import { checkRange } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import type { ActivityName } from '../mixture/activity/registry.js';
import { liquidEnthalpy } from '../mixture/enthalpy.js';
import type { Kelvin, Pascal } from '../units/quantities.js';
import { chargeAmounts } from './charge.js';
import type { Charge } from './problem.js';

/**
 * The heat that brings a charge to the boil; the still's own metal and its losses are not counted.
 *
 * Equation: Q = n (h(x, T_bubble) − h(x, T_0)).
 * @param charge What is filled in: a volume at 20 °C [m³] with its strength, or an amount [mol] with its mole fraction.
 * @param from_K Temperature of the filled charge, T_0, [K]; 273.15 up to its boiling point; outside, an InputError.
 * @param pressure_Pa Pressure in the kettle, [Pa]; 2 kPa to 2 MPa.
 * @param activity Activity model for the boiling point and the heat of mixing, by name or a model of your own; the default one when left out.
 * @returns Heat, Q, [J].
 * @throws InputError when the charge cannot be used or is filled in hotter than it boils.
 * @example heatToBoil({ kind: 'volume', volume_m3: 0.12, strength: 0.095 }, 293.15, 101325) / 3.6e6 // → 10.24
 * Source: this project, docs/theory/simple-still.md.
 */
export function heatToBoil(
  charge: Charge,
  from_K: Kelvin,
  pressure_Pa: Pascal,
  activity?: ActivityName | ActivityModel,
): number {
  const { ethanol_mol, water_mol } = chargeAmounts(charge);
  const amount_mol = ethanol_mol + water_mol;
  const moleFraction = ethanol_mol / amount_mol;
  const { temperature_K } = bubblePoint(moleFraction, pressure_Pa, activity);
  const expected = `a temperature from 0 °C up to the boiling point, ${temperature_K.toFixed(2)} K`;
  checkRange('from_K', from_K, ZERO_CELSIUS, temperature_K, expected);
  return (
    amount_mol *
    (liquidEnthalpy(moleFraction, temperature_K, activity) - liquidEnthalpy(moleFraction, from_K, activity))
  );
}
