// σ M − J for a J with two diagonals on either side, factored without pivoting. Meant for chains of holders with one
// algebraic unknown each (a vapour that is a blend of the vapour below and an equilibrium that rises with the liquid):
// every pivot of their shifted matrices stays above σ M or above 1, because what is eliminated only adds to it.
// entries: row i holds J[i][i−2 .. i+2] at 5 i, as in banded.ts with two and two.

import type { ShiftedMatrix } from './shifted-matrix.js';

/** A pentadiagonal shifted matrix of the given size; `entries[5 i + (j − i + 2)]` is J[i][j]. */
export function pentadiagonalMatrix(size: number): ShiftedMatrix {
  const entries = new Float64Array(5 * size);
  const far = new Float64Array(size); // multiplier of row i − 2
  const near = new Float64Array(size); // multiplier of row i − 1
  const first = new Float64Array(size); // U[i][i + 1]
  const second = new Float64Array(size); // U[i][i + 2]
  const inverse = new Float64Array(size); // 1 / pivot

  return { size, entries, factor, solve, multiply };

  function multiply(x: Float64Array, out: Float64Array): void {
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let j = Math.max(0, i - 2); j < Math.min(size, i + 3); j++) sum += entries[5 * i + j - i + 2]! * x[j]!;
      out[i] = sum;
    }
  }

  function factor(mass: Float64Array, shift: number): boolean {
    let [first2, second2, inverse2] = [0, 0, 0]; // of row i − 2
    let [first1, second1, inverse1] = [0, 0, 0]; // of row i − 1
    for (let i = 0, at = 0; i < size; i++, at += 5) {
      const fromFar = i > 1 ? -entries[at]! * inverse2 : 0;
      const fromNear = i > 0 ? (-entries[at + 1]! - fromFar * first2) * inverse1 : 0;
      const pivot = shift * mass[i]! - entries[at + 2]! - fromFar * second2 - fromNear * first1;
      if (!(Math.abs(pivot) > 0)) return false;
      const above = i + 1 < size ? -entries[at + 3]! - fromNear * second1 : 0;
      const beyond = i + 2 < size ? -entries[at + 4]! : 0;
      first2 = first1;
      second2 = second1;
      inverse2 = inverse1;
      first1 = above;
      second1 = beyond;
      inverse1 = 1 / pivot;
      far[i] = fromFar;
      near[i] = fromNear;
      first[i] = above;
      second[i] = beyond;
      inverse[i] = inverse1;
    }
    return true;
  }

  function solve(b: Float64Array): void {
    let older = 0;
    let old = 0;
    for (let i = 0; i < size; i++) {
      const value = b[i]! - far[i]! * older - near[i]! * old;
      b[i] = value;
      older = old;
      old = value;
    }
    older = 0;
    old = 0;
    for (let i = size - 1; i >= 0; i--) {
      const value = (b[i]! - first[i]! * old - second[i]! * older) * inverse[i]!;
      b[i] = value;
      older = old;
      old = value;
    }
  }
}
