// A reader of one's own for a sweep, in a module of its own.

import { aboveStrength, type RunSolution } from '#lib/index.js';

/** Volume that came over above a strength, m³. */
export function litresAbove(run: RunSolution, strength: unknown): number {
  const above = aboveStrength(run, Number(strength));
  return above.volume_m3;
}
