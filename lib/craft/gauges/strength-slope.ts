// dq/dx: how strength by volume moves with the mole fraction, by a central difference (one-sided at the ends).

import { strengthFromMoleFraction } from '../../mixture/strength.js';
import type { MoleFraction } from '../../units/quantities.js';

/** dq/dx at x in 0..1. */
export function strengthSlope(moleFraction: MoleFraction): number {
  const low = Math.max(0, moleFraction - STEP);
  const high = Math.min(1, moleFraction + STEP);
  return (strengthFromMoleFraction(high) - strengthFromMoleFraction(low)) / (high - low);
}

const STEP = 1e-5;
