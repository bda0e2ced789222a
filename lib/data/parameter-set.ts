// The shape of every file in this folder that reference/parameters/build-data.mjs writes: a published
// set of parameters, converted to SI and frozen.

import { InputError } from '../errors.js';

/** Published parameters in SI units, ready for the function named by `equation`. */
export interface ParameterSet<Name extends string = string, Constant extends string = string> {
  /** Key of the set, also the name of its file in reference/parameters. */
  readonly key: string;
  readonly title: string;
  /** Name of the library function the coefficients belong to. */
  readonly equation: string;
  readonly substances: readonly string[];
  readonly coefficients: Readonly<Record<Name, number>>;
  /** Constants used when the coefficients were regressed: gas constant, reference temperature ... */
  readonly constants: Readonly<Record<Constant, number>>;
  /** Range of validity, SI, by name of the quantity. */
  readonly range: Readonly<Record<string, readonly number[]>>;
  /** Key in reference/bibliography.bib. */
  readonly source: string;
}

/** The set, frozen through and through. */
export function parameterSet<Name extends string, Constant extends string>(
  set: ParameterSet<Name, Constant>,
): ParameterSet<Name, Constant> {
  for (const part of [set.substances, set.coefficients, set.constants, set.range, ...Object.values(set.range)]) {
    Object.freeze(part);
  }
  return Object.freeze(set);
}

/** The coefficients `prefix`1, `prefix`2 ... of a set in order, as many as there are. */
export function coefficientSeries(set: ParameterSet, prefix: string): readonly number[] {
  const series: number[] = [];
  for (let value = set.coefficients[`${prefix}1`]; value !== undefined;) {
    series.push(value);
    value = set.coefficients[`${prefix}${series.length + 1}`];
  }
  if (series.length === 0) {
    throw new InputError({ argument: 'prefix', value: prefix, expected: `a series of coefficients of ${set.key}` });
  }
  return Object.freeze(series);
}
