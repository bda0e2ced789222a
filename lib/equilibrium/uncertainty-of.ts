// How sure whatever follows from the reference model's equilibrium is: a boiling point, a first vapour, stages, all of a run. What is asked is read
// with the model moved by one standard error along each independent direction of its parameters θ, up and down:
//
//   u² = Σ_k ((read(θ + L_k) − read(θ − L_k))/2)²,  L_k the columns of L, covariance = L Lᵀ, and one direction more, along which the vapour's
//   cross coefficient changes by its standard error and θ follows in the fit
//
// Only the equilibrium's own part is in it (`curve` in uncertainty.ts): not what a gauge misreads, nor what is not known of the still, nor the pure
// vapour pressures (0.1 % or 0.03 K each).
// Source: JCGM 100:2008 (GUM), 5.1.3 with its note 2; a change along a column of L is one of uncorrelated inputs.

import { typeCode } from '../arguments.js';
import { coefficientSeries } from '../data/parameter-set.js';
import { REDLICH_KISTER_COVARIANCE as covariance } from '../data/redlich-kister-covariance.js';
import { InputError } from '../errors.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import { EXPANSION, redlichKister, redlichKisterModel } from '../mixture/activity/redlich-kister.js';

/** A result with its standard uncertainty. */
export interface Uncertain {
  readonly value: number;
  /** Standard uncertainty, in the unit of the value; null where the result is lost when the model moves by as much. */
  readonly uncertainty: number | null;
}

/**
 * Standard uncertainty of any results of the library, from that of the reference model's equilibrium alone.
 *
 * Equation: u² = Σ_k ((read(θ + L_k) − read(θ − L_k))/2)², covariance of the parameters θ = L Lᵀ.
 * @param read Reads the results by name with the activity model it is given, in any units; called some forty-five times. A result that there is not is null or NaN.
 * @returns By name each result with its standard uncertainty, which is the equilibrium's own part: gauges, still and pure vapour pressures are not in it.
 * @throws InputError when read is no function or gives no numbers.
 * @example equilibriumUncertaintyOf((model) => ({ rises: bubblePoint(0.0312, 101325, model).vapourMoleFraction })).rises.uncertainty // → 0.0009
 * Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.3; the covariance is this project's, docs/theory/equilibrium.md.
 */
export function equilibriumUncertaintyOf<Name extends string>(
  read: (activity: ActivityModel) => Readonly<Record<Name, number | null>>,
): Readonly<Record<Name, Uncertain>> {
  if (typeof read !== 'function') {
    const expected = 'a function from an activity model to numbers by name';
    throw new InputError({ code: typeCode(read), argument: 'read', value: read, expected });
  }
  const values = numbers(read(redlichKister));
  const squares = new Map(values.map(([name]) => [name, 0]));
  for (const direction of directions()) {
    const [up, down] = [1, -1].map((sign) => new Map(numbers(read(moved(direction, sign)))));
    for (const [name, sum] of squares) {
      squares.set(name, sum + (((up!.get(name) ?? NaN) - (down!.get(name) ?? NaN)) / 2) ** 2);
    }
  }
  return Object.fromEntries(
    values.map(([name, value]) => {
      const uncertainty = Math.sqrt(squares.get(name)!);
      return [name, { value, uncertainty: Number.isFinite(uncertainty) ? uncertainty : null }];
    }),
  ) as unknown as Record<Name, Uncertain>;
}

/** Results by name; what there is not as NaN. */
function numbers(results: unknown): [string, number][] {
  const expected = 'numbers by name, null where there is none';
  if (typeof results !== 'object' || results === null) {
    throw new InputError({ code: typeCode(results), argument: 'read', value: results, expected });
  }
  return Object.entries(results as Record<string, unknown>).map(([name, value]) => {
    if (value === null || value === undefined) return [name, NaN];
    if (typeof value === 'number') return [name, value];
    throw new InputError({ code: typeCode(value), argument: `read: ${name}`, value, expected });
  });
}

/** One standard error of the parameters, and of the vapour's cross coefficient. */
interface Direction {
  readonly parameters: readonly number[];
  readonly cross: number;
}

function moved({ parameters, cross }: Direction, sign: number): ActivityModel {
  let at = 0;
  const series = EXPANSION.series.map((terms) => terms.map((term) => term + sign * parameters[at++]!));
  const { name, range_K, source } = redlichKister;
  return redlichKisterModel({ ...EXPANSION, series, cross: EXPANSION.cross + sign * cross }, { name, range_K, source });
}

/** Columns of L, and that of the cross coefficient. */
function directions(): readonly Direction[] {
  const count = EXPANSION.series.reduce((sum, terms) => sum + terms.length, 0);
  const rows = Array.from({ length: count }, (_, i) => coefficientSeries(covariance, `L${String(i + 1)}_`));
  const columns = rows.map((_, k) => ({ parameters: rows.map((row) => row[k] ?? 0), cross: 0 }));
  return [...columns, { parameters: coefficientSeries(covariance, 'cross_'), cross: covariance.constants.crossStep }];
}
