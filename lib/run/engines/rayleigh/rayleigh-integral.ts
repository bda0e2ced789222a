// Rayleigh's equation as one number: how much of a charge is left when its composition has gone from one value to
// another.
//
//   ln(S0/S) = ∫_x^x0 dx/(y* − x)
// With u = ln(x/(1 − x)) and y* − x = (α − 1) x (1 − x)/(1 + (α − 1) x) the integrand becomes
//   dx/(y* − x) = (x + 1/(α − 1)) du,
// which is smooth at both ends of the scale; only the azeotrope (α = 1) is singular.
// Source: Lord Rayleigh, Phil. Mag. (6) 4 (1902) 521-537.

import { checkSlice, type CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { readValue } from '../../../equilibrium/slice-tables.js';
import { checkRange, type Outcome } from '../../../errors.js';
import { logistic, logit } from '../../../numerics/logit.js';
import { integral } from '../../../numerics/quadrature.js';
import type { MoleFraction } from '../../../units/quantities.js';

/** Smallest |α − 1| on the way that is not called the azeotrope. */
const NEAR_AZEOTROPE = 1e-9;

/** Outcome of rayleighLeft. */
export interface RayleighLeft {
  /** S/S0, moles left of each mole charged. */
  readonly shareLeft: number;
}

/** x + 1/(α − 1): the integrand by u = ln(x/(1 − x)). At the azeotrope a very large number instead of infinity. */
export function rayleighIntegrand(slice: CurveSlice, moleFraction: MoleFraction): number {
  const lift = readValue(slice.alpha, slice.intervals, moleFraction) - 1;
  return moleFraction + 1 / (lift === 0 ? Number.MIN_VALUE * 1e20 : lift);
}

/**
 * The share of a simple still's charge that is left when its composition has gone from one value to another.
 *
 * Equation: ln(S0/S) = ∫ dx/(y* − x), by adaptive quadrature in ln(x/(1 − x)).
 * @param slice Equilibrium at the still's pressure.
 * @param fromMoleFraction Ethanol in the charge, x0, [mol/mol]; above 0, below 1.
 * @param toMoleFraction Ethanol in the residue, x, [mol/mol]; above 0, below 1.
 * @returns found true with S/S0; found false with reason 'unreachable' when boiling moves the kettle the other way or the azeotrope lies between.
 * @throws InputError when a mole fraction is not between 0 and 1.
 * @example foundIn(rayleighLeft(createEthanolWater().curve('redlich-kister').at(101325), 0.18, 0.06)).shareLeft // → 0.7043
 * Source: Lord Rayleigh, Phil. Mag. (6) 4 (1902) 521-537.
 */
export function rayleighLeft(
  slice: CurveSlice,
  fromMoleFraction: MoleFraction,
  toMoleFraction: MoleFraction,
): Outcome<RayleighLeft, 'unreachable'> {
  checkSlice(slice);
  const least = Number.MIN_VALUE;
  checkRange('fromMoleFraction', fromMoleFraction, least, 1 - Number.EPSILON, 'a mole fraction between 0 and 1');
  checkRange('toMoleFraction', toMoleFraction, least, 1 - Number.EPSILON, 'a mole fraction between 0 and 1');
  if (!reachable(slice, fromMoleFraction, toMoleFraction)) {
    return {
      found: false,
      reason: 'unreachable',
      message: `Boiling a liquid of mole fraction ${String(fromMoleFraction)} never leaves one of ${String(toMoleFraction)}.`,
    };
  }
  const logarithm = integral(
    (u) => rayleighIntegrand(slice, logistic(u)),
    logit(toMoleFraction),
    logit(fromMoleFraction),
    1e-12,
  );
  return { found: true, shareLeft: Math.exp(-logarithm) };
}

/** Weak charges grow weaker, charges above the azeotrope stronger, and neither passes it. */
function reachable(slice: CurveSlice, from: MoleFraction, to: MoleFraction): boolean {
  if (from === to) return true;
  const samples = 256;
  for (let i = 0; i <= samples; i++) {
    const lift = readValue(slice.alpha, slice.intervals, from + (i / samples) * (to - from)) - 1;
    if (Math.abs(lift) < NEAR_AZEOTROPE || lift > 0 !== to < from) return false;
  }
  return true;
}
