// The numbers of each part of a still, with what each may be, and the checks that every part shares.

import { choiceFault, isRecord, recordFault } from '../arguments.js';
import type { Fault } from '../errors.js';

/** A number's name, least, most, and what it would have to be. */
export type Field = readonly [name: string, low: number, high: number, expected: string];

const TINY = 1e-9;
export const volume = (name: string, low = TINY): Field => [
  name,
  low,
  1e4,
  low > 0 ? 'a volume above 0 m³' : 'a volume of 0 m³ or more',
];
const length = (name: string): Field => [name, 1e-4, 100, 'a length from 0.1 mm to 100 m'];
const loss: Field = ['heatLoss_W_K', 0, 1e6, 'a heat loss of 0 W/K or more'];
const metal: Field = ['metal_J_K', 0, 1e10, 'a heat capacity of 0 J/K or more'];
const kelvin = (name: string): Field => [name, 223, 373, 'a temperature from 223 to 373 K'];
const shareOf = (name: string, low: number): Field => [name, low, 1, `a share from ${String(low)} to 1`];

export const KETTLE: readonly Field[] = [
  volume('volume_m3'),
  length('diameter_m'),
  ['heatingSurfaceHeight_m', 0, 100, 'a height of 0 m or more'],
  ['power_W', 0, 1e9, 'a power of 0 W or more'],
  loss,
  metal,
];
export const DOUBLER: readonly Field[] = [
  volume('volume_m3'),
  length('diameter_m'),
  ['dipDepth_m', 0, 10, 'a depth of 0 m or more'],
  loss,
  metal,
];
export const PLATES: readonly Field[] = [
  ['count', 1, 60, 'a whole number of plates from 1 to 60'],
  length('diameter_m'),
  length('spacing_m'),
  ['weirHeight_m', 0, 1, 'a weir of 0 to 1 m'],
  shareOf('openAreaShare', 1e-3),
  length('holeDiameter_m'),
  ['efficiency', 0.01, 1, 'an efficiency from 0.01 to 1 (1 is an ideal plate)'],
  loss,
  metal,
  ['drop_Pa', 0, 1e5, 'a pressure drop of 0 Pa or more'],
];
export const PACKING: readonly Field[] = [
  length('height_m'),
  length('hetp_m'),
  length('diameter_m'),
  shareOf('voidShare', 0.01),
  ['surface_m2_m3', 1, 1e4, 'a surface from 1 to 10 000 m²/m³'],
  shareOf('liquidShare', 1e-3),
  loss,
  metal,
  ['drop_Pa_m', 0, 1e5, 'a pressure drop of 0 Pa/m or more'],
];
export const HEAD: readonly Field[] = [loss, metal, volume('film_m3')];
export const WATER: readonly Field[] = [
  ['flow_kg_s', 0, 1e4, 'a flow of 0 kg/s or more'],
  kelvin('inlet_K'),
  ['transfer_W_K', 0, 1e8, 'a transfer of 0 W/K or more'],
];
export const AIR: readonly Field[] = [
  ['pressure_Pa', 1e3, 1e6, 'a pressure from 1 kPa to 1 MPa'],
  kelvin('temperature_K'),
];
export const TOTAL: readonly Field[] = [['subcooling_K', 0, 70, 'a subcooling from 0 to 70 K']];
export const MOST_DOUBLERS = 3;

/** A record of a known kind. */
export function kind(where: string, value: unknown, kinds: readonly string[]): Fault[] {
  return isRecord(value) ? choiceFault(`${where}.kind`, value['kind'], kinds) : recordFault(where, value);
}

export function numbers(where: string, value: unknown, fields: readonly Field[]): Fault[] {
  if (!isRecord(value)) return recordFault(where, value);
  return fields.flatMap(([name, low, high, expected]) => {
    const number = value[name];
    const fits = typeof number === 'number' && number >= low && number <= high;
    return fits ? [] : [{ argument: `${where}.${name}`, value: number, expected }];
  });
}

/** A number as it is; NaN for all else. */
export function numberOf(value: unknown): number {
  return typeof value === 'number' ? value : NaN;
}
