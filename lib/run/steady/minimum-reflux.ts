// The least reflux ratio at which a column of endless plates still holds a distillate over a kettle. For ethanol and
// water it is mostly set by a tangent pinch under the bulge of the equilibrium curve near the azeotrope.

import { checkSlice, type CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { readVapour } from '../../equilibrium/slice-tables.js';
import { checkRange, type Outcome } from '../../errors.js';
import type { MoleFraction } from '../../units/quantities.js';

/** The least reflux ratio and where it pinches. */
export interface MinimumReflux {
  /** L/D. */
  readonly reflux: number;
  /** Where operating line and equilibrium curve meet, x. */
  readonly pinchMoleFraction: MoleFraction;
  /** In the kettle, or where the line touches the curve further up. */
  readonly pinch: 'kettle' | 'tangent';
}

const GRID = 400;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The least reflux ratio that can hold a distillate over a kettle, with as many plates as one likes.
 *
 * Equation: r = max over x_B ≤ x < x_D of (x_D − y*(x))/(x_D − x), R = r/(1 − r).
 * @param slice Equilibrium at the column's pressure.
 * @param kettleMoleFraction Ethanol in the kettle, x_B, [mol/mol]; 0 to 1; outside it throws.
 * @param distillateMoleFraction Ethanol in the distillate, x_D, [mol/mol]; 0 to 1; outside it throws.
 * @returns found true with R and its pinch (R is 0 when a bare pot already gives x_D); found false with reason 'beyondAzeotrope' when no reflux can hold it, 'notStronger' when the kettle holds no ethanol or lies at or beyond the azeotrope.
 * @throws InputError when a mole fraction is outside its range.
 * @example foundIn(minimumReflux(createEthanolWater().curve('redlich-kister').at(101325), 0.0312, 0.8)).reflux // → 2.3966
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605-611 (the pinch on the x-y diagram).
 */
export function minimumReflux(
  slice: CurveSlice,
  kettleMoleFraction: MoleFraction,
  distillateMoleFraction: MoleFraction,
): Outcome<MinimumReflux, 'beyondAzeotrope' | 'notStronger'> {
  checkSlice(slice);
  checkRange('kettleMoleFraction', kettleMoleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1');
  checkRange('distillateMoleFraction', distillateMoleFraction, 0, 1, 'a mole fraction of ethanol from 0 to 1');
  const vapour = (x: number): number => readVapour(slice.alpha, slice.intervals, x);
  const low: number = kettleMoleFraction;
  const high: number = distillateMoleFraction;
  if (vapour(low) <= low) {
    return {
      found: false,
      reason: 'notStronger',
      message: `No reflux strengthens a kettle of mole fraction ${String(low)}: its vapour is no stronger than its liquid.`,
    };
  }
  if (high <= vapour(low)) return { found: true, reflux: 0, pinchMoleFraction: low, pinch: 'kettle' };

  const slope = (x: number): number => (high - vapour(x)) / (high - x);
  let best = 0;
  for (let k = 1; k < GRID; k++) if (slope(at(k)) > slope(at(best))) best = k;
  const pinch = best === 0 ? refine(slope, at(0), at(1)) : refine(slope, at(best - 1), at(best + 1));
  const steepest = slope(pinch);
  if (vapour(high) <= high || steepest >= 1) {
    return {
      found: false,
      reason: 'beyondAzeotrope',
      message: `No reflux holds a distillate of mole fraction ${String(high)} over this kettle: it lies at or beyond the azeotrope.`,
    };
  }
  const atKettle = pinch - low <= 1e-6 * (high - low);
  return {
    found: true,
    reflux: steepest / (1 - steepest),
    pinchMoleFraction: atKettle ? low : pinch,
    pinch: atKettle ? 'kettle' : 'tangent',
  };

  function at(k: number): number {
    return low + ((high - low) * k) / GRID;
  }
}

/** Where f is largest between a and b, by golden section. */
function refine(f: (x: number) => number, a: number, b: number): number {
  let low = a;
  let high = b;
  while (high - low > 1e-9) {
    const left = high - GOLDEN * (high - low);
    const right = low + GOLDEN * (high - low);
    if (f(left) >= f(right)) high = right;
    else low = left;
  }
  const middle = 0.5 * (low + high);
  return f(a) >= f(middle) ? a : middle;
}
