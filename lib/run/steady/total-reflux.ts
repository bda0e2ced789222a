// How many ideal stages it takes at total reflux: the least number for a separation, as Fenske's formula gives it
// where the relative volatility is constant.

import { checkSlice, type CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { readVapour } from '../../equilibrium/slice-tables.js';
import { checkRange, InputError, type Outcome } from '../../errors.js';
import { logit } from '../../numerics/logit.js';
import type { MoleFraction } from '../../units/quantities.js';

/** A count of ideal stages, the kettle counted. */
export interface StageCount {
  /** Stages; the part of the last one is measured in ln(y/(1 − y)), so that it is Fenske's number at constant α. */
  readonly stages: number;
}

const MOST_STAGES = 10_000;
/** A stage that gains less than this share of what it has has come to rest at the azeotrope. */
const AT_REST = 1e-14;

/**
 * The number of ideal stages at total reflux between a kettle and a head composition, the kettle counted as one.
 *
 * Equation: y_n = y*(y_(n−1)) from the kettle's x until y_n reaches the wanted head composition.
 * @param slice Equilibrium at the column's pressure.
 * @param fromMoleFraction Ethanol in the kettle, [mol/mol]; above 0, below 1.
 * @param toMoleFraction Ethanol at the head, [mol/mol]; at least the kettle's, below 1.
 * @returns found true with the number of stages (a fraction for the last); found false with reason 'beyondAzeotrope' when no number of stages reaches it.
 * @throws InputError when a mole fraction is outside its range.
 * @example foundIn(stagesAtTotalReflux(createEthanolWater().curve('redlich-kister').at(101325), 0.0312, 0.8)).stages // → 5.9078
 * Source: M. R. Fenske, Ind. Eng. Chem. 24 (1932) 482-485; W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611.
 */
export function stagesAtTotalReflux(
  slice: CurveSlice,
  fromMoleFraction: MoleFraction,
  toMoleFraction: MoleFraction,
): Outcome<StageCount, 'beyondAzeotrope'> {
  checkSlice(slice);
  const inside = [Number.MIN_VALUE, 1 - Number.EPSILON] as const;
  checkRange('fromMoleFraction', fromMoleFraction, ...inside, 'a mole fraction of ethanol between 0 and 1');
  checkRange('toMoleFraction', toMoleFraction, ...inside, 'a mole fraction of ethanol between 0 and 1');
  if (toMoleFraction < fromMoleFraction) {
    throw new InputError({
      argument: 'toMoleFraction',
      value: toMoleFraction,
      expected: `a head at least as rich as the kettle (${String(fromMoleFraction)})`,
    });
  }
  let below: number = fromMoleFraction;
  for (let stages = 0; stages < MOST_STAGES; stages++) {
    if (below >= toMoleFraction) return { found: true, stages };
    const above = readVapour(slice.alpha, slice.intervals, below);
    if (above - below < AT_REST * below) break;
    if (above >= toMoleFraction) {
      const part = (logit(toMoleFraction) - logit(below)) / (logit(above) - logit(below));
      return { found: true, stages: stages + part };
    }
    below = above;
  }
  return {
    found: false,
    reason: 'beyondAzeotrope',
    message: `No number of stages reaches a mole fraction of ${String(toMoleFraction)}: the stairs end at ${below.toFixed(4)}.`,
  };
}
