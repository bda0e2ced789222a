// A set duty fades away while what it cools gets far below its boiling point: nothing is cooled below its water.

export const FADES_FROM_K = 5;
export const FADES_TO_K = 25;

/** Share of a set duty that is left when its holder is this far below its boiling point. */
export function fade(below_K: number): number {
  if (below_K <= FADES_FROM_K) return 1;
  if (below_K >= FADES_TO_K) return 0;
  const s = (below_K - FADES_FROM_K) / (FADES_TO_K - FADES_FROM_K);
  return 1 - s * s * (3 - 2 * s);
}

/** Derivative of `fade`. */
export function fadeSlope(below_K: number): number {
  if (below_K <= FADES_FROM_K || below_K >= FADES_TO_K) return 0;
  const s = (below_K - FADES_FROM_K) / (FADES_TO_K - FADES_FROM_K);
  return (-6 * s * (1 - s)) / (FADES_TO_K - FADES_FROM_K);
}
