// σ M − J for a tridiagonal J, factored without pivoting (Thomas). Meant for chains of holders, whose
// shifted matrices are diagonally dominant by columns: what leaves one holder enters its neighbours.
// entries: [lower | diagonal | upper], each of length n; lower[i] = J[i][i−1], upper[i] = J[i][i+1].

import type { ShiftedMatrix } from './shifted-matrix.js';

/** A tridiagonal shifted matrix of the given size. */
export function tridiagonalMatrix(size: number): ShiftedMatrix {
  const entries = new Float64Array(3 * size);
  const lower = entries.subarray(0, size);
  const diagonal = entries.subarray(size, 2 * size);
  const upper = entries.subarray(2 * size);
  const below = new Float64Array(size); // multipliers l[i] = a[i][i−1] / pivot[i−1]
  const above = new Float64Array(size); // −J upper
  const inverse = new Float64Array(size); // 1 / pivot

  return { size, entries, factor, solve };

  function factor(mass: Float64Array, shift: number): boolean {
    let pivot = shift * mass[0]! - diagonal[0]!;
    if (!(Math.abs(pivot) > 0)) return false;
    let reciprocal = 1 / pivot;
    inverse[0] = reciprocal;
    for (let i = 1; i < size; i++) {
      const over = -upper[i - 1]!;
      const multiplier = -lower[i]! * reciprocal;
      above[i - 1] = over;
      below[i] = multiplier;
      pivot = shift * mass[i]! - diagonal[i]! - multiplier * over;
      if (!(Math.abs(pivot) > 0)) return false;
      reciprocal = 1 / pivot;
      inverse[i] = reciprocal;
    }
    return true;
  }

  function solve(b: Float64Array): void {
    let carried = b[0]!;
    for (let i = 1; i < size; i++) {
      carried = b[i]! - below[i]! * carried;
      b[i] = carried;
    }
    let known = b[size - 1]! * inverse[size - 1]!;
    b[size - 1] = known;
    for (let i = size - 2; i >= 0; i--) {
      known = (b[i]! - above[i]! * known) * inverse[i]!;
      b[i] = known;
    }
  }
}
