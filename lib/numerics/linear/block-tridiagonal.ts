// σ M − J for a block-tridiagonal J with blocks of four, factored block by block without pivoting. Meant for chains of
// holders whose four unknowns come in an order in which each pivot is safe by itself (fast ones first): see run/train.
//
//   S_j = σ M_j − D_j − A_j W_{j−1},   W_j = −S_j⁻¹ C_j,   A_j = −J[j][j−1],   C_j = J[j][j+1]
//   z_j = S_j⁻¹ (b_j − A_j z_{j−1}),   x_j = z_j − W_j x_{j+1}
//
// entries: for block row j three blocks of 16 (row-major): J[j][j−1], J[j][j], J[j][j+1], at 48 j.

import type { ShiftedMatrix } from './shifted-matrix.js';

const BLOCK = 4;
const ENTRIES = 48;

/** A block-tridiagonal shifted matrix of so many blocks of four. */
export class BlockTridiagonalMatrix implements ShiftedMatrix {
  readonly size: number;
  readonly entries: Float64Array;
  readonly #blocks: number;
  /** Inverses S_j⁻¹, 16 a block. */
  readonly #inverse: Float64Array;
  /** W_j = S_j⁻¹ times minus the block above, 16 a block. */
  readonly #ties: Float64Array;
  readonly #work = new Float64Array(16);

  constructor(blocks: number) {
    this.size = BLOCK * blocks;
    this.entries = new Float64Array(ENTRIES * blocks);
    this.#blocks = blocks;
    this.#inverse = new Float64Array(16 * blocks);
    this.#ties = new Float64Array(16 * blocks);
  }

  factor(mass: Float64Array, shift: number): boolean {
    const entries = this.entries;
    const inverse = this.#inverse;
    const ties = this.#ties;
    const work = this.#work;
    for (let j = 0; j < this.#blocks; j++) {
      const lower = ENTRIES * j;
      const middle = lower + 16;
      const upper = lower + 32;
      const at = 16 * j;
      for (let r = 0; r < 16; r += 4) {
        let s0 = -entries[middle + r]!;
        let s1 = -entries[middle + r + 1]!;
        let s2 = -entries[middle + r + 2]!;
        let s3 = -entries[middle + r + 3]!;
        if (j > 0) {
          // −A W with A = −J: the lower block of J times W, row by row.
          for (let k = 0; k < 4; k++) {
            const a = entries[lower + r + k]!;
            const w = at - 16 + 4 * k;
            s0 += a * ties[w]!;
            s1 += a * ties[w + 1]!;
            s2 += a * ties[w + 2]!;
            s3 += a * ties[w + 3]!;
          }
        }
        work[r] = s0;
        work[r + 1] = s1;
        work[r + 2] = s2;
        work[r + 3] = s3;
      }
      const m = BLOCK * j;
      work[0]! += shift * mass[m]!;
      work[5]! += shift * mass[m + 1]!;
      work[10]! += shift * mass[m + 2]!;
      work[15]! += shift * mass[m + 3]!;
      if (!invert(work, inverse, at)) return false;
      for (let r = 0; r < 16; r += 4) {
        const i0 = inverse[at + r]!;
        const i1 = inverse[at + r + 1]!;
        const i2 = inverse[at + r + 2]!;
        const i3 = inverse[at + r + 3]!;
        for (let c = 0; c < 4; c++) {
          ties[at + r + c] = -(
            i0 * entries[upper + c]! +
            i1 * entries[upper + 4 + c]! +
            i2 * entries[upper + 8 + c]! +
            i3 * entries[upper + 12 + c]!
          );
        }
      }
    }
    return true;
  }

  solve(b: Float64Array): void {
    const entries = this.entries;
    const inverse = this.#inverse;
    const ties = this.#ties;
    const size = this.size;
    let z0 = 0;
    let z1 = 0;
    let z2 = 0;
    let z3 = 0;
    for (let m = 0, l = 0, i = 0; m < size; m += BLOCK, l += ENTRIES, i += 16) {
      const b0 = b[m]! + entries[l]! * z0 + entries[l + 1]! * z1 + entries[l + 2]! * z2 + entries[l + 3]! * z3;
      const b1 = b[m + 1]! + entries[l + 4]! * z0 + entries[l + 5]! * z1 + entries[l + 6]! * z2 + entries[l + 7]! * z3;
      const b2 =
        b[m + 2]! + entries[l + 8]! * z0 + entries[l + 9]! * z1 + entries[l + 10]! * z2 + entries[l + 11]! * z3;
      const b3 =
        b[m + 3]! + entries[l + 12]! * z0 + entries[l + 13]! * z1 + entries[l + 14]! * z2 + entries[l + 15]! * z3;
      z0 = inverse[i]! * b0 + inverse[i + 1]! * b1 + inverse[i + 2]! * b2 + inverse[i + 3]! * b3;
      z1 = inverse[i + 4]! * b0 + inverse[i + 5]! * b1 + inverse[i + 6]! * b2 + inverse[i + 7]! * b3;
      z2 = inverse[i + 8]! * b0 + inverse[i + 9]! * b1 + inverse[i + 10]! * b2 + inverse[i + 11]! * b3;
      z3 = inverse[i + 12]! * b0 + inverse[i + 13]! * b1 + inverse[i + 14]! * b2 + inverse[i + 15]! * b3;
      b[m] = z0;
      b[m + 1] = z1;
      b[m + 2] = z2;
      b[m + 3] = z3;
    }
    for (let m = size - 2 * BLOCK, i = 4 * m; m >= 0; m -= BLOCK, i -= 16) {
      const x0 = b[m + 4]!;
      const x1 = b[m + 5]!;
      const x2 = b[m + 6]!;
      const x3 = b[m + 7]!;
      b[m]! -= ties[i]! * x0 + ties[i + 1]! * x1 + ties[i + 2]! * x2 + ties[i + 3]! * x3;
      b[m + 1]! -= ties[i + 4]! * x0 + ties[i + 5]! * x1 + ties[i + 6]! * x2 + ties[i + 7]! * x3;
      b[m + 2]! -= ties[i + 8]! * x0 + ties[i + 9]! * x1 + ties[i + 10]! * x2 + ties[i + 11]! * x3;
      b[m + 3]! -= ties[i + 12]! * x0 + ties[i + 13]! * x1 + ties[i + 14]! * x2 + ties[i + 15]! * x3;
    }
  }
}

/** Inverse of a 4 × 4 matrix by elimination in its given order; false when a pivot vanishes. Destroys `a`. */
function invert(a: Float64Array, out: Float64Array, at: number): boolean {
  for (let i = 0; i < 16; i++) out[at + i] = i % 5 === 0 ? 1 : 0;
  for (let p = 0; p < 4; p++) {
    const row = 4 * p;
    const pivot = a[row + p]!;
    if (!(Math.abs(pivot) > 0)) return false;
    const scale = 1 / pivot;
    for (let c = 0; c < 4; c++) {
      a[row + c]! *= scale;
      out[at + row + c]! *= scale;
    }
    for (let r = 0; r < 16; r += 4) {
      if (r === row) continue;
      const factor = a[r + p]!;
      if (factor === 0) continue;
      for (let c = 0; c < 4; c++) {
        a[r + c]! -= factor * a[row + c]!;
        out[at + r + c]! -= factor * out[at + row + c]!;
      }
    }
  }
  return true;
}
