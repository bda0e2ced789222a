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
  /** The entry of J that ties row i to its neighbour nearer the middle, over the pivot. */
  readonly #ties: Float64Array;
  /** 1 / pivot. */
  readonly #inverse: Float64Array;
  readonly #nothing: Float64Array;

  constructor(size: number) {
    this.size = size;
    this.entries = new Float64Array(3 * size);
    this.#lower = this.entries.subarray(0, size);
    this.#diagonal = this.entries.subarray(size, 2 * size);
    this.#upper = this.entries.subarray(2 * size);
    this.#middle = size >> 1; // the lower half is never the longer one
    this.#ties = new Float64Array(size);
    this.#inverse = new Float64Array(size);
    this.#nothing = new Float64Array(size);
  }

  factor(mass: Float64Array, shift: number): boolean {
    this.#nothing.fill(0);
    return this.factorAndSolve(mass, shift, this.#nothing);
  }

  factorAndSolve(mass: Float64Array, shift: number, b: Float64Array): boolean {
    const last = this.size - 1;
    const middle = this.#middle;
    const lower = this.#lower;
    const diagonal = this.#diagonal;
    const upper = this.#upper;
    const ties = this.#ties;
    const inverse = this.#inverse;
    let above = 0; // what ties the row above to this one
    let aboveInverse = 0;
    let fromAbove = 0; // right-hand side of the row above
    let below = 0;
    let belowInverse = 0;
    let fromBelow = 0;
    for (let i = 0, j = last; i < middle; i++, j--) {
      const multiplier = lower[i]! * aboveInverse;
      aboveInverse = 1 / (shift * mass[i]! - diagonal[i]! - multiplier * above);
      above = upper[i]!;
      fromAbove = b[i]! + multiplier * fromAbove;
      inverse[i] = aboveInverse;
      ties[i] = above * aboveInverse;
      b[i] = fromAbove;
      if (j > middle) {
        const multiplier = upper[j]! * belowInverse;
        belowInverse = 1 / (shift * mass[j]! - diagonal[j]! - multiplier * below);
        below = lower[j]!;
        fromBelow = b[j]! + multiplier * fromBelow;
        inverse[j] = belowInverse;
        ties[j] = below * belowInverse;
        b[j] = fromBelow;
      }
    }
    const downwards = lower[middle]! * aboveInverse;
    const upwards = upper[middle]! * belowInverse;
    inverse[middle] = 1 / (shift * mass[middle]! - diagonal[middle]! - downwards * above - upwards * below);
    this.#substitute(b, b[middle]! + downwards * fromAbove + upwards * fromBelow);
    return Number.isFinite(b[middle]!); // a vanished pivot spoils what is eliminated after it, down to the middle
  }

  solve(b: Float64Array): void {
    const last = this.size - 1;
    const middle = this.#middle;
    const lower = this.#lower;
    const upper = this.#upper;
    const inverse = this.#inverse;
    let fromAbove = 0;
    let fromBelow = 0;
    let aboveInverse = 0;
    let belowInverse = 0;
    for (let i = 0, j = last; i < middle; i++, j--) {
      fromAbove = b[i]! + lower[i]! * aboveInverse * fromAbove;
      aboveInverse = inverse[i]!;
      b[i] = fromAbove;
      if (j > middle) {
        fromBelow = b[j]! + upper[j]! * belowInverse * fromBelow;
        belowInverse = inverse[j]!;
        b[j] = fromBelow;
      }
    }
    const meeting = b[middle]! + lower[middle]! * aboveInverse * fromAbove + upper[middle]! * belowInverse * fromBelow;
    this.#substitute(b, meeting);
  }

  multiply(x: Float64Array, out: Float64Array): void {
    const last = this.size - 1;
    for (let i = 0; i <= last; i++) {
      let sum = this.#diagonal[i]! * x[i]!;
      if (i > 0) sum += this.#lower[i]! * x[i - 1]!;
      if (i < last) sum += this.#upper[i]! * x[i + 1]!;
      out[i] = sum;
    }
  }

  /** From the middle, whose right-hand side is known, to both ends. */
  #substitute(b: Float64Array, meeting: number): void {
    const last = this.size - 1;
    const middle = this.#middle;
    const ties = this.#ties;
    const inverse = this.#inverse;
    let up = meeting * inverse[middle]!;
    let down = up;
    b[middle] = up;
    for (let i = middle - 1, j = middle + 1; i >= 0; i--, j++) {
      up = b[i]! * inverse[i]! + ties[i]! * up;
      b[i] = up;
      if (j <= last) {
        down = b[j]! * inverse[j]! + ties[j]! * down;
        b[j] = down;
      }
    }
  }
}
