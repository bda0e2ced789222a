// σ M − J for a block-tridiagonal J with blocks of four, factored block by block without pivoting. Meant for chains of
// holders whose four unknowns come in an order in which each pivot is safe by itself, and whose second unknown neither
// acts on the holder below nor is acted on from above: row and column 1 of the upper blocks are taken as 0.
//
//   S_j = σ M_j − D_j − A_j W_{j−1},   W_j = −S_j⁻¹ C_j,   A_j = −J[j][j−1],   C_j = J[j][j+1]
//   z_j = S_j⁻¹ (b_j − A_j z_{j−1}),   x_j = z_j − W_j x_{j+1}
//
// In each block the second unknown goes first, which leaves three by three, T, and its inverse:
//
//   T = S' − m s₁ᵀ,   m = S'₁/s₁₁,   t = T⁻¹ (b' − m b₁),   z₁ = b₁/s₁₁ − q·t,   q = s₁/s₁₁
//
// with S', b' the rows and columns 0, 2, 3; s₁ᵀ, S'₁ row and column 1. Kept of a block: T⁻¹, m, q, 1/s₁₁: 16 numbers.
//
// entries: for block row j three blocks of 16 (row-major): J[j][j−1], J[j][j], J[j][j+1], at 48 j.

import { type BlockStore, factorBlocks } from './block-factor.js';
import type { ShiftedMatrix } from './shifted-matrix.js';

const BLOCK = 4;
const ENTRIES = 48;
/** Numbers kept of a block. */
const KEPT = 16;

/** A block-tridiagonal shifted matrix of so many blocks of four. */
export class BlockTridiagonalMatrix implements ShiftedMatrix {
  readonly size: number;
  readonly entries: Float64Array;
  readonly #store: BlockStore;
  readonly #nothing: Float64Array;

  constructor(blocks: number) {
    this.size = BLOCK * blocks;
    this.entries = new Float64Array(ENTRIES * blocks);
    const kept = new Float64Array(KEPT * blocks);
    const ties = new Float64Array(KEPT * blocks);
    this.#store = { entries: this.entries, kept, ties };
    this.#nothing = new Float64Array(this.size);
  }

  factor(mass: Float64Array, shift: number): boolean {
    return factorBlocks(this.#store, mass, shift, this.#nothing.fill(0));
  }

  factorAndSolve(mass: Float64Array, shift: number, b: Float64Array): boolean {
    if (!factorBlocks(this.#store, mass, shift, b)) return false;
    this.#backwards(b);
    return true;
  }

  solve(b: Float64Array): void {
    const { size } = this;
    const { entries, kept } = this.#store;
    let z0 = 0;
    let z1 = 0;
    let z2 = 0;
    let z3 = 0;
    for (let m = 0, l = 0, k = 0; m < size; m += BLOCK, l += ENTRIES, k += KEPT) {
      // What was found last, z1, comes in last.
      const c0 = b[m]! + entries[l]! * z0 + (entries[l + 2]! * z2 + entries[l + 3]! * z3);
      const c1 = b[m + 1]! + entries[l + 4]! * z0 + (entries[l + 6]! * z2 + entries[l + 7]! * z3);
      const c2 = b[m + 2]! + entries[l + 8]! * z0 + (entries[l + 10]! * z2 + entries[l + 11]! * z3);
      const c3 = b[m + 3]! + entries[l + 12]! * z0 + (entries[l + 14]! * z2 + entries[l + 15]! * z3);
      const b1 = c1 + entries[l + 5]! * z1;
      const b0 = c0 + entries[l + 1]! * z1 - kept[k + 9]! * b1;
      const b2 = c2 + entries[l + 9]! * z1 - kept[k + 10]! * b1;
      const b3 = c3 + entries[l + 13]! * z1 - kept[k + 11]! * b1;
      z0 = kept[k]! * b0 + kept[k + 1]! * b2 + kept[k + 2]! * b3;
      z2 = kept[k + 3]! * b0 + kept[k + 4]! * b2 + kept[k + 5]! * b3;
      z3 = kept[k + 6]! * b0 + kept[k + 7]! * b2 + kept[k + 8]! * b3;
      z1 = kept[k + 15]! * b1 - (kept[k + 12]! * z0 + kept[k + 13]! * z2 + kept[k + 14]! * z3);
      b[m] = z0;
      b[m + 1] = z1;
      b[m + 2] = z2;
      b[m + 3] = z3;
    }
    this.#backwards(b);
  }

  multiply(x: Float64Array, out: Float64Array): void {
    const { size, entries } = this;
    for (let m = 0, e = 0; m < size; m += BLOCK, e += ENTRIES) {
      const first = m > 0 ? 0 : BLOCK;
      const after = m + BLOCK < size ? 3 * BLOCK : 2 * BLOCK;
      for (let row = 0; row < BLOCK; row++) {
        let sum = 0;
        for (let c = first; c < after; c++) {
          sum += entries[e + 16 * (c >> 2) + BLOCK * row + (c & 3)]! * x[m + c - BLOCK]!;
        }
        out[m + row] = sum;
      }
    }
  }

  /** From z to the solution, the last block first. */
  #backwards(b: Float64Array): void {
    const { ties } = this.#store;
    let x0 = b[this.size - 4]!;
    let x2 = b[this.size - 2]!;
    let x3 = b[this.size - 1]!;
    for (let m = this.size - 2 * BLOCK, w = 4 * m; m >= 0; m -= BLOCK, w -= KEPT) {
      b[m + 1]! += ties[w + 3]! * x0 + ties[w + 4]! * x2 + ties[w + 5]! * x3;
      const y0 = b[m]! + ties[w]! * x0 + ties[w + 1]! * x2 + ties[w + 2]! * x3;
      const y2 = b[m + 2]! + ties[w + 6]! * x0 + ties[w + 7]! * x2 + ties[w + 8]! * x3;
      const y3 = b[m + 3]! + ties[w + 9]! * x0 + ties[w + 10]! * x2 + ties[w + 11]! * x3;
      b[m] = x0 = y0;
      b[m + 2] = x2 = y2;
      b[m + 3] = x3 = y3;
    }
  }
}
