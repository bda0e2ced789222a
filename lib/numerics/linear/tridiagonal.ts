// σ M − J for a tridiagonal J, factored without pivoting from both ends at once: rows above the middle are eliminated
// downwards, rows below it upwards, and the two meet. The two halves do not wait for each other, which takes a third
// off the time of the usual one-way sweep. Meant for chains of holders, whose shifted matrices are diagonally dominant
// by columns: what leaves one holder enters its neighbours.
// entries: [lower | diagonal | upper], each of length n; lower[i] = J[i][i−1], upper[i] = J[i][i+1].

import type { ShiftedMatrix } from './shifted-matrix.js';

/** A tridiagonal shifted matrix of the given size. A class, so that the engine sees one `solve`, whatever the matrix. */
export class TridiagonalMatrix implements ShiftedMatrix {
  readonly size: number;
  readonly entries: Float64Array;
  readonly #lower: Float64Array;
  readonly #diagonal: Float64Array;
  readonly #upper: Float64Array;
  readonly #middle: number;
  /** What row i takes of its eliminated neighbour, towards the middle. */
  readonly #multipliers: Float64Array;
  /** The entry that ties row i to its neighbour nearer the middle, over its pivot. */
  readonly #ties: Float64Array;
  /** 1 / pivot. */
  readonly #inverse: Float64Array;

  constructor(size: number) {
    this.size = size;
    this.entries = new Float64Array(3 * size);
    this.#lower = this.entries.subarray(0, size);
    this.#diagonal = this.entries.subarray(size, 2 * size);
    this.#upper = this.entries.subarray(2 * size);
    this.#middle = size >> 1;
    this.#multipliers = new Float64Array(size);
    this.#ties = new Float64Array(size);
    this.#inverse = new Float64Array(size);
  }

  factor(mass: Float64Array, shift: number): boolean {
    const size = this.size;
    const middle = this.#middle;
    const lower = this.#lower;
    const diagonal = this.#diagonal;
    const upper = this.#upper;
    const multipliers = this.#multipliers;
    const ties = this.#ties;
    const inverse = this.#inverse;
    let above = 0; // tie of the row above, not yet over its pivot
    let aboveInverse = 0;
    let below = 0;
    let belowInverse = 0;
    let regular = true;
    for (let i = 0, j = size - 1; i < middle || j > middle; i++, j--) {
      if (i < middle) {
        const multiplier = i > 0 ? -lower[i]! * aboveInverse : 0;
        const pivot = shift * mass[i]! - diagonal[i]! - multiplier * above;
        regular &&= Math.abs(pivot) > 0;
        aboveInverse = 1 / pivot;
        above = -upper[i]!;
        multipliers[i] = multiplier;
        inverse[i] = aboveInverse;
        ties[i] = above * aboveInverse;
      }
      if (j > middle) {
        const multiplier = j < size - 1 ? -upper[j]! * belowInverse : 0;
        const pivot = shift * mass[j]! - diagonal[j]! - multiplier * below;
        regular &&= Math.abs(pivot) > 0;
        belowInverse = 1 / pivot;
        below = -lower[j]!;
        multipliers[j] = multiplier;
        inverse[j] = belowInverse;
        ties[j] = below * belowInverse;
      }
    }
    const fromAbove = middle > 0 ? lower[middle]! * ties[middle - 1]! : 0;
    const fromBelow = middle < size - 1 ? upper[middle]! * ties[middle + 1]! : 0;
    const pivot = shift * mass[middle]! - diagonal[middle]! + fromAbove + fromBelow;
    inverse[middle] = 1 / pivot;
    return regular && Math.abs(pivot) > 0;
  }

  solve(b: Float64Array): void {
    const middle = this.#middle;
    const lower = this.#lower;
    const upper = this.#upper;
    const multipliers = this.#multipliers;
    const ties = this.#ties;
    const inverse = this.#inverse;
    const last = this.size - 1;
    for (let i = 1, j = last - 1; i < middle || j > middle; i++, j--) {
      if (i < middle) b[i]! -= multipliers[i]! * b[i - 1]!;
      if (j > middle) b[j]! -= multipliers[j]! * b[j + 1]!;
    }
    let known = b[middle]!;
    if (middle > 0) known += lower[middle]! * inverse[middle - 1]! * b[middle - 1]!;
    if (middle < last) known += upper[middle]! * inverse[middle + 1]! * b[middle + 1]!;
    known *= inverse[middle]!;
    b[middle] = known;
    let up = known;
    let down = known;
    for (let i = middle - 1, j = middle + 1; i >= 0 || j <= last; i--, j++) {
      if (i >= 0) {
        up = b[i]! * inverse[i]! - ties[i]! * up;
        b[i] = up;
      }
      if (j <= last) {
        down = b[j]! * inverse[j]! - ties[j]! * down;
        b[j] = down;
      }
    }
  }
}
