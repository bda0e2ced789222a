// The factorisation of a block-tridiagonal shifted matrix (block-tridiagonal.ts, which has the formulas and the names), from the first
// block to the last, written out: sixteen numbers of a block at a time in local variables.

const BLOCK = 4;
const ENTRIES = 48;
const KEPT = 16;

/** A block-tridiagonal J, and what is kept of its factorisation. */
export interface BlockStore {
  /** J[j][j−1], J[j][j], J[j][j+1] row by row, 48 a block row. */
  readonly entries: Float64Array;
  /** T⁻¹ row by row, m, q, 1/s₁₁, 16 a block. */
  readonly kept: Float64Array;
  /** −W row by row without its second column, 12 of 16 a block. */
  readonly ties: Float64Array;
}

/** Factors the blocks one by one and carries a right-hand side along, which becomes z. False when a pivot vanishes. */
export function factorBlocks(
  { entries, kept, ties }: BlockStore,
  mass: Float64Array,
  shift: number,
  b: Float64Array,
): boolean {
  let z0 = 0;
  let z1 = 0;
  let z2 = 0;
  let z3 = 0;
  for (let j = 0; KEPT * j < kept.length; j++) {
    const m = BLOCK * j;
    const d = ENTRIES * j + 16;
    const at = KEPT * j;
    let s00 = shift * mass[m]! - entries[d]!;
    const s01 = -entries[d + 1]!;
    let s02 = -entries[d + 2]!;
    let s03 = -entries[d + 3]!;
    let s10 = -entries[d + 4]!;
    const s11 = shift * mass[m + 1]! - entries[d + 5]!;
    let s12 = -entries[d + 6]!;
    let s13 = -entries[d + 7]!;
    let s20 = -entries[d + 8]!;
    const s21 = -entries[d + 9]!;
    let s22 = shift * mass[m + 2]! - entries[d + 10]!;
    let s23 = -entries[d + 11]!;
    let s30 = -entries[d + 12]!;
    const s31 = -entries[d + 13]!;
    let s32 = -entries[d + 14]!;
    let s33 = shift * mass[m + 3]! - entries[d + 15]!;
    let b0 = b[m]!;
    let b1 = b[m + 1]!;
    let b2 = b[m + 2]!;
    let b3 = b[m + 3]!;
    if (j > 0) {
      const l = d - 16;
      const w = at - KEPT;
      const w00 = ties[w]!;
      const w02 = ties[w + 1]!;
      const w03 = ties[w + 2]!;
      const w10 = ties[w + 3]!;
      const w12 = ties[w + 4]!;
      const w13 = ties[w + 5]!;
      const w20 = ties[w + 6]!;
      const w22 = ties[w + 7]!;
      const w23 = ties[w + 8]!;
      const w30 = ties[w + 9]!;
      const w32 = ties[w + 10]!;
      const w33 = ties[w + 11]!;
      const a00 = entries[l]!;
      const a01 = entries[l + 1]!;
      const a02 = entries[l + 2]!;
      const a03 = entries[l + 3]!;
      s00 -= a00 * w00 + a01 * w10 + (a02 * w20 + a03 * w30);
      s02 -= a00 * w02 + a01 * w12 + (a02 * w22 + a03 * w32);
      s03 -= a00 * w03 + a01 * w13 + (a02 * w23 + a03 * w33);
      const a10 = entries[l + 4]!;
      const a11 = entries[l + 5]!;
      const a12 = entries[l + 6]!;
      const a13 = entries[l + 7]!;
      s10 -= a10 * w00 + a11 * w10 + (a12 * w20 + a13 * w30);
      s12 -= a10 * w02 + a11 * w12 + (a12 * w22 + a13 * w32);
      s13 -= a10 * w03 + a11 * w13 + (a12 * w23 + a13 * w33);
      const a20 = entries[l + 8]!;
      const a21 = entries[l + 9]!;
      const a22 = entries[l + 10]!;
      const a23 = entries[l + 11]!;
      s20 -= a20 * w00 + a21 * w10 + (a22 * w20 + a23 * w30);
      s22 -= a20 * w02 + a21 * w12 + (a22 * w22 + a23 * w32);
      s23 -= a20 * w03 + a21 * w13 + (a22 * w23 + a23 * w33);
      const a30 = entries[l + 12]!;
      const a31 = entries[l + 13]!;
      const a32 = entries[l + 14]!;
      const a33 = entries[l + 15]!;
      s30 -= a30 * w00 + a31 * w10 + (a32 * w20 + a33 * w30);
      s32 -= a30 * w02 + a31 * w12 + (a32 * w22 + a33 * w32);
      s33 -= a30 * w03 + a31 * w13 + (a32 * w23 + a33 * w33);
      b0 += a00 * z0 + a01 * z1 + (a02 * z2 + a03 * z3);
      b1 += a10 * z0 + a11 * z1 + (a12 * z2 + a13 * z3);
      b2 += a20 * z0 + a21 * z1 + (a22 * z2 + a23 * z3);
      b3 += a30 * z0 + a31 * z1 + (a32 * z2 + a33 * z3);
    }
    if (!(Math.abs(s11) > 0)) return false;
    const p = 1 / s11;
    const m0 = s01 * p;
    const m2 = s21 * p;
    const m3 = s31 * p;
    s00 -= m0 * s10;
    s02 -= m0 * s12;
    s03 -= m0 * s13;
    s20 -= m2 * s10;
    s22 -= m2 * s12;
    s23 -= m2 * s13;
    s30 -= m3 * s10;
    s32 -= m3 * s12;
    s33 -= m3 * s13;
    const c00 = s22 * s33 - s23 * s32;
    const c02 = s23 * s30 - s20 * s33;
    const c03 = s20 * s32 - s22 * s30;
    const determinant = s00 * c00 + s02 * c02 + s03 * c03;
    if (!(Math.abs(determinant) > 0)) return false;
    const t = 1 / determinant;
    const t00 = c00 * t;
    const t20 = c02 * t;
    const t30 = c03 * t;
    const t02 = (s03 * s32 - s02 * s33) * t;
    const t22 = (s00 * s33 - s03 * s30) * t;
    const t32 = (s02 * s30 - s00 * s32) * t;
    const t03 = (s02 * s23 - s03 * s22) * t;
    const t23 = (s03 * s20 - s00 * s23) * t;
    const t33 = (s00 * s22 - s02 * s20) * t;
    kept[at] = t00;
    kept[at + 1] = t02;
    kept[at + 2] = t03;
    kept[at + 3] = t20;
    kept[at + 4] = t22;
    kept[at + 5] = t23;
    kept[at + 6] = t30;
    kept[at + 7] = t32;
    kept[at + 8] = t33;
    kept[at + 9] = m0;
    kept[at + 10] = m2;
    kept[at + 11] = m3;
    const q0 = s10 * p;
    const q2 = s12 * p;
    const q3 = s13 * p;
    kept[at + 12] = q0;
    kept[at + 13] = q2;
    kept[at + 14] = q3;
    kept[at + 15] = p;
    b0 -= m0 * b1;
    b2 -= m2 * b1;
    b3 -= m3 * b1;
    b[m] = z0 = t00 * b0 + t02 * b2 + t03 * b3;
    b[m + 2] = z2 = t20 * b0 + t22 * b2 + t23 * b3;
    b[m + 3] = z3 = t30 * b0 + t32 * b2 + t33 * b3;
    b[m + 1] = z1 = p * b1 - (q0 * z0 + q2 * z2 + q3 * z3);
    const u = d + 16;
    const u00 = entries[u]!;
    const u20 = entries[u + 8]!;
    const u30 = entries[u + 12]!;
    const v00 = t00 * u00 + t02 * u20 + t03 * u30;
    const v20 = t20 * u00 + t22 * u20 + t23 * u30;
    const v30 = t30 * u00 + t32 * u20 + t33 * u30;
    const u02 = entries[u + 2]!;
    const u22 = entries[u + 10]!;
    const u32 = entries[u + 14]!;
    const v02 = t00 * u02 + t02 * u22 + t03 * u32;
    const v22 = t20 * u02 + t22 * u22 + t23 * u32;
    const v32 = t30 * u02 + t32 * u22 + t33 * u32;
    const u03 = entries[u + 3]!;
    const u23 = entries[u + 11]!;
    const u33 = entries[u + 15]!;
    const v03 = t00 * u03 + t02 * u23 + t03 * u33;
    const v23 = t20 * u03 + t22 * u23 + t23 * u33;
    const v33 = t30 * u03 + t32 * u23 + t33 * u33;
    ties[at] = v00;
    ties[at + 1] = v02;
    ties[at + 2] = v03;
    ties[at + 3] = -(q0 * v00 + q2 * v20 + q3 * v30);
    ties[at + 4] = -(q0 * v02 + q2 * v22 + q3 * v32);
    ties[at + 5] = -(q0 * v03 + q2 * v23 + q3 * v33);
    ties[at + 6] = v20;
    ties[at + 7] = v22;
    ties[at + 8] = v23;
    ties[at + 9] = v30;
    ties[at + 10] = v32;
    ties[at + 11] = v33;
  }
  return true;
}
