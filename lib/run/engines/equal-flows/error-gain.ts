// How errors on the plates count: as much as the spout would feel them. A change δ of the spout's mole fraction goes, in a column that
// stands, with these on the plates below (operating line and equilibrium, from the top down; δx_{N+1} = δ):
//
//   δy_j = r δx_{j+1} + (1 − r) δ,    δy_j = (1 − E) δy_{j−1} + E y*′ δx_j,    δy_{j−1} = r δx_j + (1 − r) δ
//
// Where a plate has to be off by more than the spout for the spout to be off by δ, its error weight is larger by as much. That is so
// in the part of the column that stands near the azeotrope, where whatever comes from below dies away.

/** Error weights of plates are loosened by no more than this. Source: this project's choice, docs/decisions/0021-error-weights-of-plates.md. */
const LOOSEST = 10;
/** Nor beyond this mole fraction: a coarser one would be no composition any more. */
const COARSEST = 1e-3;

/** By how much error weights of plates may be loosened at a tolerance. */
export function loosest(tolerance: number): number {
  return Math.max(1, Math.min(LOOSEST, COARSEST / tolerance));
}
