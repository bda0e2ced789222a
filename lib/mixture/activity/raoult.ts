// The ideal solution, Raoult's law: every activity coefficient is one. Kept to show what it misses.

import type { ActivityModel } from './activity-model.js';

/** Raoult's law: gE = 0, ln γ = 0 at every state. */
export const raoult: ActivityModel = Object.freeze({
  name: 'raoult',
  range_K: [0, Infinity] as const,
  source: 'definition (F.-M. Raoult, 1887)',
  excessGibbs: () => 0,
  activity(_moleFraction, _temperature_K, out) {
    out.lnGammaEthanol = 0;
    out.lnGammaWater = 0;
    out.slopeEthanol = 0;
    out.slopeWater = 0;
    out.thermalEthanol = 0;
    out.thermalWater = 0;
    return out;
  },
} satisfies ActivityModel);
