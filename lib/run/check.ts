// Checks shared by the problems of all runs; each returns the faults it finds.

import type { Fault } from '../errors.js';
import type { Heat } from './problem.js';

/** Most rows of a solution: more help nobody and could fill the memory. */
export const MOST_ROWS = 50_000;

/** A fault unless `value` is finite and within [low, high]. */
export function rangeFault(argument: string, value: number, low: number, high: number, expected: string): Fault[] {
  return typeof value === 'number' && Number.isFinite(value) && value >= low && value <= high
    ? []
    : [{ argument, value, expected }];
}

/** A fault unless `value` is a whole number within [low, high]. */
export function wholeFault(argument: string, value: number, low: number, high: number): Fault[] {
  const fits = Number.isInteger(value) && value >= low && value <= high;
  return fits ? [] : [{ argument, value, expected: `a whole number from ${String(low)} to ${String(high)}` }];
}

/** Faults of a heat: power from `least` up, or a boil-up above 0 where the model takes one. */
export function heatFaults(where: string, heat: Heat, powerOnly: boolean, least: number): Fault[] {
  if (heat.kind === 'power') {
    const expected = least > 0 ? 'a power above 0 W' : 'a power of 0 W or more';
    return rangeFault(`${where}.power_W`, heat.power_W, least, 1e9, expected);
  }
  if (powerOnly) {
    const expected = "'power': a boil-up is given only with the models 'equalFlows' and 'rayleigh'";
    return [{ argument: `${where}.kind`, value: heat.kind, expected }];
  }
  return rangeFault(`${where}.rate_mol_s`, heat.rate_mol_s, 1e-9, 1e9, 'a boil-up above 0 mol/s');
}
