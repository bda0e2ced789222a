// The one table of conversion factors. Every factor is exact by definition.
//
//   SI value = (value + shift) × over / under
//
// Strength and proof are not here: turning them into an amount takes the density of the mixture, which is
// physics (lib/mixture/strength.ts, lib/mixture/proof.ts).
// Sources: SI Brochure, 9th ed., 2019; NIST SP 811, 2008, appendix B (inch, pound, gallon, BTU, psi, mmHg);
// UK Units of Measurement Regulations 1995 (imperial gallon, 4.54609 L).

import { choiceFault, refuse } from '../arguments.js';
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY, ZERO_CELSIUS } from '../constants.js';
import { InputError } from '../errors.js';

interface Factor {
  readonly quantity: 'volume' | 'temperature' | 'pressure' | 'power' | 'time' | 'mass' | 'length' | 'share';
  readonly over: number;
  readonly under: number;
  readonly shift: number;
}

const POUND_kg = 0.45359237;
const INCH_m = 0.0254;
const HOUR_s = 3600;

const UNITS = Object.freeze({
  'm³': factor('volume', 1),
  L: factor('volume', 1, 1000),
  'US gal': factor('volume', 231 * INCH_m ** 3),
  'imp gal': factor('volume', 4.54609, 1000),
  K: factor('temperature', 1),
  '°C': factor('temperature', 1, 1, ZERO_CELSIUS),
  '°F': factor('temperature', 5, 9, 459.67),
  Pa: factor('pressure', 1),
  kPa: factor('pressure', 1000),
  bar: factor('pressure', 100_000),
  atm: factor('pressure', STANDARD_ATMOSPHERE),
  // Conventional millimetre of mercury: 13 595.1 kg/m³ under standard gravity.
  mmHg: factor('pressure', 13.5951 * STANDARD_GRAVITY),
  psi: factor('pressure', POUND_kg * STANDARD_GRAVITY, INCH_m ** 2),
  W: factor('power', 1),
  kW: factor('power', 1000),
  // International Table BTU.
  'BTU/h': factor('power', 1055.05585262, HOUR_s),
  s: factor('time', 1),
  min: factor('time', 60),
  h: factor('time', HOUR_s),
  kg: factor('mass', 1),
  lb: factor('mass', POUND_kg),
  m: factor('length', 1),
  mm: factor('length', 1, 1000),
  in: factor('length', INCH_m),
  ft: factor('length', 12 * INCH_m),
  '%': factor('share', 1, 100),
});

/** A unit in which a person may give or read a number. */
export type UnitSymbol = keyof typeof UNITS;
/** What a unit measures. */
export type UnitQuantity = Factor['quantity'];

/**
 * A number with a unit as a number in SI.
 *
 * Equation: SI value = (value + shift) × over / under, with the exact factors of the table.
 * @param value The number in that unit, [unit]; any finite number; else an InputError.
 * @param unit The unit, for instance 'US gal' or '°F'; an unknown one is an InputError.
 * @returns The number in m³, K, Pa, W, s, kg, m, or as a share for '%', [SI].
 * @throws InputError when the number is not finite or the unit is not in the table.
 * @example toSI(212, '°F') // → 373.15
 * Source: SI Brochure, 9th ed., 2019; NIST SP 811, 2008, appendix B.
 */
export function toSI(value: number, unit: UnitSymbol): number {
  const { shift, over, under } = factorOf(value, unit);
  return ((value + shift) * over) / under;
}

/**
 * A number in SI as a number in another unit.
 *
 * Equation: value = SI value × under / over − shift, with the exact factors of the table.
 * @param value The number in m³, K, Pa, W, s, kg, m, or the share for '%', [SI]; any finite number; else an InputError.
 * @param unit The unit wanted, for instance 'US gal' or '°F'; an unknown one is an InputError.
 * @returns The number in that unit, [unit].
 * @throws InputError when the number is not finite or the unit is not in the table.
 * @example fromSI(101325, 'mmHg') // → 760.00
 * Source: SI Brochure, 9th ed., 2019; NIST SP 811, 2008, appendix B.
 */
export function fromSI(value: number, unit: UnitSymbol): number {
  const { shift, over, under } = factorOf(value, unit);
  return (value * under) / over - shift;
}

/**
 * The units of the table that measure one quantity, the SI unit first.
 *
 * Equation: rows of the table whose quantity is the one asked for.
 * @param quantity What is measured: 'volume', 'temperature', 'pressure', 'power', 'time', 'mass', 'length' or 'share'.
 * @returns The units, in the order of the table.
 * @throws InputError when nothing in the table measures that.
 * @example unitsOf('time').join(' ') // → 's min h'
 * Source: this project's table of units.
 */
export function unitsOf(quantity: UnitQuantity): readonly UnitSymbol[] {
  const quantities = [...new Set(Object.values(UNITS).map((unit) => unit.quantity))];
  refuse(choiceFault('quantity', quantity, quantities));
  return (Object.keys(UNITS) as UnitSymbol[]).filter((unit) => UNITS[unit].quantity === quantity);
}

function factor(quantity: UnitQuantity, over: number, under = 1, shift = 0): Factor {
  return Object.freeze({ quantity, over, under, shift });
}

function factorOf(value: number, unit: UnitSymbol): Factor {
  if (!Number.isFinite(value)) throw new InputError({ argument: 'value', value, expected: 'a finite number' });
  if (typeof unit !== 'string' || !Object.hasOwn(UNITS, unit)) {
    throw new InputError(...choiceFault('unit', unit, Object.keys(UNITS)));
  }
  return UNITS[unit];
}
