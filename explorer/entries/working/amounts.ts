// Quantities with their ± as the answers of workings write them.

import { fromSI } from '#lib/index.js';
import { fixed, joined } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { ink } from '../words.js';
import { plusMinus } from '../../text/plus-minus.js';

/** A number of an answer, with how sure it is. */
export interface Known {
  readonly value: number;
  readonly uncertainty: number;
}

const sure = (value: number): Known => ({ value, uncertainty: 0 });
const known = (value: Known | number): Known => (typeof value === 'number' ? sure(value) : value);

/** '65.8 ± 0.3 % vol'. */
export function strengthText(strength: Known | number, { strength: shown }: UnitSystem): string {
  const { value, uncertainty } = known(strength);
  const whole = shown.unit === 'proof' ? 200 : 100;
  return plusMinus(shown.toShown(value), whole * uncertainty, shown.unit, 1);
}

/** '10.8 ± 1.1 L'; small volumes with more digits. */
export function volumeText(volume: Known | number, { volume: shown }: UnitSystem): string {
  const { value, uncertainty } = known(volume);
  const size = shown.toShown(value);
  return plusMinus(size, shown.toShown(uncertainty), shown.unit, decimalsOf(size));
}

/** '5.2 ± 0.1 kg', or pounds where volumes are gallons. */
export function massText(mass: Known | number, units: UnitSystem): string {
  const { value, uncertainty } = known(mass);
  const unit = units.name === 'metric' ? 'kg' : 'lb';
  const size = fromSI(value, unit);
  return plusMinus(size, fromSI(uncertainty, unit), unit, decimalsOf(size));
}

/** '22 °C': to half a degree nobody asks. */
export function temperatureText(temperature_K: number, { temperature }: UnitSystem, decimals = 0): string {
  return joined(fixed(temperature.toShown(temperature_K), decimals), temperature.unit);
}

/** '0.28 °C' of a difference of temperatures. */
export function degreesText(difference_K: number, { temperature }: UnitSystem, decimals: number): string {
  return joined(fixed(difference_K * (temperature.unit === '°F' ? 1.8 : 1), decimals), temperature.unit);
}

export const strengthInk = (strength: Known | number, units: UnitSystem): unknown => ink(strengthText(strength, units));
export const volumeInk = (volume: Known | number, units: UnitSystem): unknown => ink(volumeText(volume, units));
export const massInk = (mass: Known | number, units: UnitSystem): unknown => ink(massText(mass, units));

/** Three digits or so, and never more than a millilitre or a gram tells. */
function decimalsOf(size: number): number {
  const whole = Math.abs(size);
  return whole >= 100 ? 0 : whole >= 10 ? 1 : whole >= 1 ? 2 : 3;
}
