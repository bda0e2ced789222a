// σ M − J for a banded J with `below` sub- and `above` superdiagonals, factored with partial pivoting
// within the band (the usual band LU: pivoting widens U by `below`). For chains that carry algebraic
// unknowns, where nothing promises diagonal dominance.
// entries: row i holds J[i][i−below .. i+above] at i · (below + 1 + above).

import type { ShiftedMatrix } from './shifted-matrix.js';

/** A banded shifted matrix; `entries[i · width + (j − i + below)]` is J[i][j]. */
export function bandedMatrix(size: number, below: number, above: number): ShiftedMatrix {
  const width = below + 1 + above;
  const entries = new Float64Array(size * width);
  // Working rows have room for fill-in: column j of row i stands at i · stride + (j − i + below).
  const stride = width + below;
  const lu = new Float64Array(size * stride);
  const multipliers = new Float64Array(size * below);
  const swaps = new Int32Array(size);

  return { size, entries, factor, solve, multiply };

  function multiply(x: Float64Array, out: Float64Array): void {
    for (let i = 0; i < size; i++) {
      let sum = 0;
      const last = Math.min(size - 1, i + above);
      for (let j = Math.max(0, i - below); j <= last; j++) sum += entries[i * width + j - i + below]! * x[j]!;
      out[i] = sum;
    }
  }

  function factor(mass: Float64Array, shift: number): boolean {
    for (let i = 0; i < size; i++) {
      for (let k = 0; k < width; k++) lu[i * stride + k] = -entries[i * width + k]!;
      for (let k = width; k < stride; k++) lu[i * stride + k] = 0;
      lu[i * stride + below]! += shift * mass[i]!;
    }
    for (let j = 0; j < size; j++) {
      const last = Math.min(size - 1, j + below);
      let best = j;
      let magnitude = Math.abs(lu[j * stride + below]!);
      for (let i = j + 1; i <= last; i++) {
        const candidate = Math.abs(lu[i * stride + (j - i + below)]!);
        if (candidate > magnitude) {
          magnitude = candidate;
          best = i;
        }
      }
      if (!(magnitude > 0)) return false;
      swaps[j] = best;
      const end = Math.min(size - 1, j + above + below);
      if (best !== j) swapRows(j, best, end);
      const pivot = 1 / lu[j * stride + below]!;
      for (let i = j + 1; i <= last; i++) {
        const offset = i * stride - i + below;
        const multiplier = lu[offset + j]! * pivot;
        multipliers[j * below + (i - j - 1)] = multiplier;
        if (multiplier === 0) continue;
        const pivotOffset = j * stride - j + below;
        for (let c = j + 1; c <= end; c++) lu[offset + c]! -= multiplier * lu[pivotOffset + c]!;
      }
    }
    return true;
  }

  function swapRows(j: number, other: number, end: number): void {
    const a = j * stride - j + below;
    const b = other * stride - other + below;
    for (let c = j; c <= end; c++) {
      const kept = lu[a + c]!;
      lu[a + c] = lu[b + c]!;
      lu[b + c] = kept;
    }
  }

  function solve(b: Float64Array): void {
    for (let j = 0; j < size; j++) {
      const other = swaps[j]!;
      const value = b[other]!;
      if (other !== j) {
        b[other] = b[j]!;
        b[j] = value;
      }
      const last = Math.min(size - 1, j + below);
      for (let i = j + 1; i <= last; i++) b[i]! -= multipliers[j * below + (i - j - 1)]! * value;
    }
    for (let i = size - 1; i >= 0; i--) {
      const offset = i * stride - i + below;
      const end = Math.min(size - 1, i + above + below);
      let sum = b[i]!;
      for (let c = i + 1; c <= end; c++) sum -= lu[offset + c]! * b[c]!;
      b[i] = sum / lu[offset + i]!;
    }
  }
}
