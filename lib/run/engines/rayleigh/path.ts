// The path of a bare pot's kettle, as panels between which everything is found by quadrature.
//
// Along u = ln(x/(1 − x)), with F = x + 1/(α − 1) (rayleigh-integral.ts) and n0 the charge,
//   s = ln(n0/n) = ∫ F du                    amount left, n = n0 e^(−s)
//   t = ∫ (L/Q) dV = ∫ (L/Q) n F du          time: dV = −dn, heat L each mole, power Q
// Panels are as wide as changes s by PANEL, so their number does not depend on how near the azeotrope the charge
// lies; within a panel the five-point Gauss rule and its inner integrals serve both integrals. A charge that is
// exactly an azeotrope or pure keeps its composition, and the same formulas hold.

import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { readValue } from '../../../equilibrium/slice-tables.js';
import { logistic } from '../../../numerics/logit.js';
import { GAUSS_INNER, GAUSS_NODES, GAUSS_WEIGHTS } from '../../../numerics/quadrature.js';
import type { MoleFraction, Second } from '../../../units/quantities.js';
import type { Heat } from '../../problem.js';
import { rayleighIntegrand } from './rayleigh-integral.js';

/** A point of the path. */
export interface PathPoint {
  /** ln(x/(1 − x)); −∞ and +∞ for pure water and pure ethanol. */
  readonly u: number;
  /** ln(n0/n). */
  readonly s: number;
  readonly time_s: Second;
}

/** Change of s over a whole panel. */
const PANEL = 0.04;

/** Seconds to raise one mole of vapour from liquid of composition x. */
export type SecondsPerMole = (moleFraction: MoleFraction) => number;

/** The pace at which a heat raises vapour: latent heat over power (only latent heat counts), or a fixed boil-up. */
export function paceOf(heat: Heat, slice: CurveSlice): SecondsPerMole {
  if (heat.kind === 'boilUp') return () => 1 / heat.rate_mol_s;
  return (moleFraction) => readValue(slice.latentHeat, slice.intervals, moleFraction) / heat.power_W;
}

/** Walks along the path of one charge. */
export interface PathWalker {
  /** ds/du where the path passes u, with its sign turned: F. */
  integrand(u: number): number;
  /** dt/ds there, s: the time in which what is left would be raised as vapour. */
  pace(u: number, s: number): Second;
  /** The point one panel further. */
  next(point: PathPoint): PathPoint;
  /** The point where s has grown by `rise` (0 to one panel) from a panel's start. */
  within(start: PathPoint, rise: number): PathPoint;
}

/** A walker for a charge of `amount_mol` on an equilibrium slice. */
export function pathWalker(slice: CurveSlice, amount_mol: number, secondsPerMole: SecondsPerMole): PathWalker {
  const integrand = new Float64Array(GAUSS_NODES.length);

  function advance(start: PathPoint, width: number): PathPoint {
    let rise = 0;
    for (let i = 0; i < integrand.length; i++) {
      integrand[i] = rayleighIntegrand(slice, logistic(start.u - width * GAUSS_NODES[i]!));
      rise += GAUSS_WEIGHTS[i]! * integrand[i]!;
    }
    let seconds = 0;
    for (let i = 0; i < integrand.length; i++) {
      let inner = 0;
      for (let j = 0; j < integrand.length; j++) inner += GAUSS_INNER[i]![j]! * integrand[j]!;
      const amount = amount_mol * Math.exp(-(start.s + width * inner));
      const pace = secondsPerMole(logistic(start.u - width * GAUSS_NODES[i]!));
      seconds += GAUSS_WEIGHTS[i]! * integrand[i]! * amount * pace;
    }
    return { u: start.u - width, s: start.s + width * rise, time_s: start.time_s + width * seconds };
  }

  return {
    integrand: (u) => rayleighIntegrand(slice, logistic(u)),
    pace: (u, s) => amount_mol * Math.exp(-s) * secondsPerMole(logistic(u)),
    next: (point) => advance(point, PANEL / rayleighIntegrand(slice, logistic(point.u))),
    within(start, rise) {
      if (rise <= 0) return start;
      let width = rise / rayleighIntegrand(slice, logistic(start.u));
      let point = advance(start, width);
      for (let i = 0; i < 20; i++) {
        const miss = point.s - start.s - rise;
        if (Math.abs(miss) <= 1e-14) break;
        width -= miss / rayleighIntegrand(slice, logistic(point.u));
        point = advance(start, width);
      }
      return point;
    },
  };
}
