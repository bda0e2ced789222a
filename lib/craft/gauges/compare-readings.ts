// Two ways to the same number, for instance the kettle's strength from its thermometer and from what has been collected:
// can both be right, and if not, which reading is the likeliest to be off?
//
//   gap = a − b,  u² = Σ (c_a,i − c_b,i)²,  apart when |gap| > 2 u
//   input i alone closes the gap when it is off by n_i = −gap/(c_a,i − c_b,i) of its standard uncertainties

import { fieldFaults, recordFault, refuse } from '../../arguments.js';
import { checkRange } from '../../errors.js';
import type { Carried } from '../carry-uncertainty.js';

/** One reading as a cause. */
export interface Suspect {
  /** Path of the input, as in the two estimates. */
  readonly path: string;
  /** By how many of its standard uncertainties it would have to be moved, up or down, to close the gap alone. */
  readonly uncertainties: number;
}

/** Two estimates side by side. */
export interface Compared {
  /** The first less the second, in their unit. */
  readonly gap: number;
  /** Standard uncertainty of the gap; inputs that both share count once. */
  readonly uncertainty: number;
  /** Whether the gap is within two standard uncertainties. */
  readonly agree: boolean;
  /** Inputs that could close it alone, the likeliest first. */
  readonly suspects: readonly Suspect[];
}

/**
 * Whether two estimates of the same quantity can both be right, and which input would explain the gap best.
 *
 * Equation: u² = Σ (c1_i − c2_i)²; agree when |gap| ≤ 2 u; n_i = −gap/(c1_i − c2_i).
 * @param first An estimate from carryUncertainty.
 * @param second Another of the same quantity in the same unit; an input of the same path is the same input.
 * @returns The gap and its standard uncertainty in the unit of the estimates, whether they agree, and the inputs that could close the gap, the likeliest first.
 * @throws InputError when a value is not finite.
 * @example compareReadings({ value: 0.08, uncertainty: 0.01, from: { kettle: 0.01 } }, { value: 0.05, uncertainty: 0.002, from: { volume: 0.002 } }).suspects[0].uncertainties // → -3
 * Source: JCGM 100:2008 (propagation); two standard uncertainties are common practice.
 */
export function compareReadings(first: Carried, second: Carried): Compared {
  checkCarried('first', first);
  checkCarried('second', second);
  const gap = first.value - second.value;
  const paths = [...new Set([...Object.keys(first.from), ...Object.keys(second.from)])];
  const parts = paths.map((path) => ({ path, change: (first.from[path] ?? 0) - (second.from[path] ?? 0) }));
  const uncertainty = Math.hypot(...parts.map(({ change }) => change));
  const suspects = parts
    .filter(({ change }) => change !== 0)
    .map(({ path, change }) => ({ path, uncertainties: -gap / change }))
    .sort((one, other) => Math.abs(one.uncertainties) - Math.abs(other.uncertainties));
  return { gap, uncertainty, agree: Math.abs(gap) <= 2 * uncertainty, suspects };
}

/** An estimate as carryUncertainty gives it: finite numbers, uncertainties of 0 or more. */
function checkCarried(where: string, carried: Carried): void {
  refuse(fieldFaults(where, carried, ['value', 'uncertainty', 'from']));
  checkRange(`${where}.value`, carried.value, -MOST, MOST, 'a finite number');
  checkRange(`${where}.uncertainty`, carried.uncertainty, 0, MOST, 'a standard uncertainty of 0 or more');
  refuse(recordFault(`${where}.from`, carried.from));
  for (const [path, change] of Object.entries(carried.from)) {
    checkRange(`${where}.from.${path}`, change, -MOST, MOST, 'a finite change');
  }
}

/** Squares of larger numbers overflow. */
const MOST = 1e150;
