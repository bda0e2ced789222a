// σ M − J for a block-tridiagonal J with blocks of four, factored block by block without pivoting. Meant for chains of
// holders whose four unknowns come in an order in which each pivot is safe by itself (fast ones first), and whose second
// unknown neither acts on the holder below nor is acted on from above: row and column 1 of the upper blocks are taken as 0.
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
    return this.#forwards(mass, shift, null);
  }

  factorAndSolve(mass: Float64Array, shift: number, b: Float64Array): boolean {
    if (!this.#forwards(mass, shift, b)) return false;
    this.#backwards(b);
    return true;
  }

  /** Factors the blocks one by one and, where there is a right-hand side, carries it along: b becomes z. */
  #forwards(mass: Float64Array, shift: number, b: Float64Array | null): boolean {
    let z0 = 0;
    let z1 = 0;
    let z2 = 0;
    let z3 = 0;
    const entries = this.entries;
    const inverse = this.#inverse;
    const ties = this.#ties;
    const s = this.#work;
    for (let j = 0; j < this.#blocks; j++) {
      const lower = ENTRIES * j;
      const middle = lower + 16;
      const upper = lower + 32;
      const at = 16 * j;
      for (let i = 0; i < 16; i++) s[i] = -entries[middle + i]!;
      if (j > 0) {
        // −A W with A = −J: the lower block of J times W, row by row; W has no second column.
        const w = at - 16;
        for (let r = 0; r < 16; r += 4) {
          const a0 = entries[lower + r]!;
          const a1 = entries[lower + r + 1]!;
          const a2 = entries[lower + r + 2]!;
          const a3 = entries[lower + r + 3]!;
          s[r]! += a0 * ties[w]! + a1 * ties[w + 4]! + a2 * ties[w + 8]! + a3 * ties[w + 12]!;
          s[r + 2]! += a0 * ties[w + 2]! + a1 * ties[w + 6]! + a2 * ties[w + 10]! + a3 * ties[w + 14]!;
          s[r + 3]! += a0 * ties[w + 3]! + a1 * ties[w + 7]! + a2 * ties[w + 11]! + a3 * ties[w + 15]!;
        }
      }
      const m = BLOCK * j;
      s[0]! += shift * mass[m]!;
      s[5]! += shift * mass[m + 1]!;
      s[10]! += shift * mass[m + 2]!;
      s[15]! += shift * mass[m + 3]!;
      if (!invert(s, inverse, at)) return false;
      const u0 = entries[upper]!;
      const u2 = entries[upper + 2]!;
      const u3 = entries[upper + 3]!;
      const v0 = entries[upper + 8]!;
      const v2 = entries[upper + 10]!;
      const v3 = entries[upper + 11]!;
      const w0 = entries[upper + 12]!;
      const w2 = entries[upper + 14]!;
      const w3 = entries[upper + 15]!;
      for (let r = at; r < at + 16; r += 4) {
        const i0 = inverse[r]!;
        const i2 = inverse[r + 2]!;
        const i3 = inverse[r + 3]!;
        ties[r] = -(i0 * u0 + i2 * v0 + i3 * w0);
        ties[r + 2] = -(i0 * u2 + i2 * v2 + i3 * w2);
        ties[r + 3] = -(i0 * u3 + i2 * v3 + i3 * w3);
      }
      if (b === null) continue;
      const b0 =
        b[m]! + entries[lower]! * z0 + entries[lower + 1]! * z1 + entries[lower + 2]! * z2 + entries[lower + 3]! * z3;
      const b1 =
        b[m + 1]! +
        entries[lower + 4]! * z0 +
        entries[lower + 5]! * z1 +
        entries[lower + 6]! * z2 +
        entries[lower + 7]! * z3;
      const b2 =
        b[m + 2]! +
        entries[lower + 8]! * z0 +
        entries[lower + 9]! * z1 +
        entries[lower + 10]! * z2 +
        entries[lower + 11]! * z3;
      const b3 =
        b[m + 3]! +
        entries[lower + 12]! * z0 +
        entries[lower + 13]! * z1 +
        entries[lower + 14]! * z2 +
        entries[lower + 15]! * z3;
      z0 = inverse[at]! * b0 + inverse[at + 1]! * b1 + inverse[at + 2]! * b2 + inverse[at + 3]! * b3;
      z1 = inverse[at + 4]! * b0 + inverse[at + 5]! * b1 + inverse[at + 6]! * b2 + inverse[at + 7]! * b3;
      z2 = inverse[at + 8]! * b0 + inverse[at + 9]! * b1 + inverse[at + 10]! * b2 + inverse[at + 11]! * b3;
      z3 = inverse[at + 12]! * b0 + inverse[at + 13]! * b1 + inverse[at + 14]! * b2 + inverse[at + 15]! * b3;
      b[m] = z0;
      b[m + 1] = z1;
      b[m + 2] = z2;
      b[m + 3] = z3;
    }
    return true;
  }

  solve(b: Float64Array): void {
    const entries = this.entries;
    const inverse = this.#inverse;
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
    this.#backwards(b);
  }

  /** From z to the solution, the last block first. */
  #backwards(b: Float64Array): void {
    const ties = this.#ties;
    const size = this.size;
    for (let m = size - 2 * BLOCK, i = 4 * m; m >= 0; m -= BLOCK, i -= 16) {
      const x0 = b[m + 4]!;
      const x2 = b[m + 6]!;
      const x3 = b[m + 7]!;
      b[m]! -= ties[i]! * x0 + ties[i + 2]! * x2 + ties[i + 3]! * x3;
      b[m + 1]! -= ties[i + 4]! * x0 + ties[i + 6]! * x2 + ties[i + 7]! * x3;
      b[m + 2]! -= ties[i + 8]! * x0 + ties[i + 10]! * x2 + ties[i + 11]! * x3;
      b[m + 3]! -= ties[i + 12]! * x0 + ties[i + 14]! * x2 + ties[i + 15]! * x3;
    }
  }
}

/** Inverse of a 4 × 4 matrix by blocks of two, [[P, Q], [R, S]]: P first, then S − R P⁻¹ Q; false when one of them is singular. */
function invert(a: Float64Array, out: Float64Array, at: number): boolean {
  const determinant = a[0]! * a[5]! - a[1]! * a[4]!;
  if (!(Math.abs(determinant) > 0)) return false;
  const p = 1 / determinant;
  const p00 = a[5]! * p;
  const p01 = -a[1]! * p;
  const p10 = -a[4]! * p;
  const p11 = a[0]! * p;
  // P⁻¹ Q and R P⁻¹
  const q00 = p00 * a[2]! + p01 * a[6]!;
  const q01 = p00 * a[3]! + p01 * a[7]!;
  const q10 = p10 * a[2]! + p11 * a[6]!;
  const q11 = p10 * a[3]! + p11 * a[7]!;
  const r00 = a[8]! * p00 + a[9]! * p10;
  const r01 = a[8]! * p01 + a[9]! * p11;
  const r10 = a[12]! * p00 + a[13]! * p10;
  const r11 = a[12]! * p01 + a[13]! * p11;
  const t00 = a[10]! - a[8]! * q00 - a[9]! * q10;
  const t01 = a[11]! - a[8]! * q01 - a[9]! * q11;
  const t10 = a[14]! - a[12]! * q00 - a[13]! * q10;
  const t11 = a[15]! - a[12]! * q01 - a[13]! * q11;
  const rest = t00 * t11 - t01 * t10;
  if (!(Math.abs(rest) > 0)) return false;
  const t = 1 / rest;
  const s00 = t11 * t;
  const s01 = -t01 * t;
  const s10 = -t10 * t;
  const s11 = t00 * t;
  const u00 = q00 * s00 + q01 * s10;
  const u01 = q00 * s01 + q01 * s11;
  const u10 = q10 * s00 + q11 * s10;
  const u11 = q10 * s01 + q11 * s11;
  out[at] = p00 + u00 * r00 + u01 * r10;
  out[at + 1] = p01 + u00 * r01 + u01 * r11;
  out[at + 2] = -u00;
  out[at + 3] = -u01;
  out[at + 4] = p10 + u10 * r00 + u11 * r10;
  out[at + 5] = p11 + u10 * r01 + u11 * r11;
  out[at + 6] = -u10;
  out[at + 7] = -u11;
  out[at + 8] = -(s00 * r00 + s01 * r10);
  out[at + 9] = -(s00 * r01 + s01 * r11);
  out[at + 10] = s00;
  out[at + 11] = s01;
  out[at + 12] = -(s10 * r00 + s11 * r10);
  out[at + 13] = -(s10 * r01 + s11 * r11);
  out[at + 14] = s10;
  out[at + 15] = s11;
  return true;
}
