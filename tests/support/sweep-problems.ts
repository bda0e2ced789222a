// A few problems for sweeps; all invented. The third cannot be run.

import type { RunProblem } from '#lib/index.js';

/** A pot at so many % vol, down to a fifth of the alcohol. */
export function potAt(strength: number): RunProblem {
  return {
    still: { kettle: { volume_m3: 0.03 } },
    charge: { kind: 'volume', volume_m3: 0.02, strength },
    sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.2 }] }],
    start: 'firstVapour',
  };
}

export const SWEPT: readonly RunProblem[] = [0.05, 0.1, -1, 0.2, 0.3, 0.4].map(potAt);
