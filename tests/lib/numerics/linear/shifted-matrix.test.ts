// Structured solvers against dense Gaussian elimination on random matrices.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BlockTridiagonalMatrix } from '#lib/numerics/linear/block-tridiagonal.js';
import { bandedMatrix } from '#lib/numerics/linear/banded.js';
import { pentadiagonalMatrix } from '#lib/numerics/linear/pentadiagonal.js';
import { TridiagonalMatrix } from '#lib/numerics/linear/tridiagonal.js';

const roundOff = 1e-9; // well-conditioned matrices of size ≤ 12

function residual(matrix: number[][], solution: Float64Array, right: number[]): number {
  return Math.max(
    ...matrix.map((row, i) => Math.abs(row.reduce((sum, value, j) => sum + value * solution[j]!, 0) - right[i]!)),
  );
}

const numbers = (length: number): fc.Arbitrary<number[]> =>
  fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: length, maxLength: length });

describe('shifted matrices', () => {
  it('solve (σM − J) k = b for any band, with zeros in M', () => {
    fc.assert(
      fc.property(
        fc.record({
          n: fc.integer({ min: 1, max: 12 }),
          below: fc.integer({ min: 0, max: 3 }),
          above: fc.integer({ min: 0, max: 3 }),
        }),
        numbers(200),
        ({ n, below, above }, random) => {
          const banded = bandedMatrix(n, below, above);
          const mass = new Float64Array(n).map((_v, i) => (i % 3 === 2 ? 0 : 1));
          const shift = 10;
          const dense = Array.from({ length: n }, () => new Array<number>(n).fill(0));
          let next = 0;
          for (let i = 0; i < n; i++) {
            for (let j = Math.max(0, i - below); j <= Math.min(n - 1, i + above); j++) {
              const value = i === j ? -8 + random[next++]! : random[next++]!;
              banded.entries[i * (below + 1 + above) + (j - i + below)] = value;
              dense[i]![j] = (i === j ? shift * mass[i]! : 0) - value;
            }
          }
          const right = random.slice(-n);
          const solution = Float64Array.from(right);
          expect(banded.factor(mass, shift)).toBe(true);
          banded.solve(solution);
          expect(residual(dense, solution, right)).toBeLessThan(roundOff);
        },
      ),
    );
  });

  it('solve block by block as the dense matrix does, with zeros in M', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), numbers(48 * 6 + 24), (blocks, random) => {
        const matrix = new BlockTridiagonalMatrix(blocks);
        const n = 4 * blocks;
        const mass = new Float64Array(n).map((_v, i) => (i % 4 === 1 ? 0 : 1));
        const shift = 10;
        const dense = Array.from({ length: n }, () => new Array<number>(n).fill(0));
        for (let i = 0, next = 0; i < n; i++) {
          dense[i]![i] = shift * mass[i]!;
          for (const neighbour of [-1, 0, 1]) {
            const block = Math.floor(i / 4) + neighbour;
            for (let c = 0; c < 4; c++, next++) {
              if (block < 0 || block >= blocks) continue;
              if (neighbour === 1 && (c === 1 || i % 4 === 1)) continue; // taken as 0
              const j = 4 * block + c;
              const value = i === j ? -14 + random[next]! : random[next]!;
              matrix.entries[48 * Math.floor(i / 4) + 16 * (neighbour + 1) + 4 * (i % 4) + c] = value;
              dense[i]![j]! -= value;
            }
          }
        }
        const right = random.slice(-n);
        const solution = Float64Array.from(right);
        const atOnce = Float64Array.from(right);
        expect(matrix.factor(mass, shift)).toBe(true);
        matrix.solve(solution);
        expect(residual(dense, solution, right)).toBeLessThan(roundOff);
        expect(matrix.factorAndSolve(mass, shift, atOnce)).toBe(true);
        expect(residual(dense, atOnce, right)).toBeLessThan(roundOff);
      }),
    );
  });

  it('pivot where the diagonal vanishes', () => {
    const banded = bandedMatrix(2, 1, 1);
    banded.entries.set([0, 0, -1, -1, 0, 0]); // J = [[0, −1], [−1, 0]]
    const right = Float64Array.from([3, 5]);
    expect(banded.factor(new Float64Array(2), 1)).toBe(true);
    banded.solve(right);
    expect([...right]).toEqual([5, 3]);
  });

  it('say so when the matrix is singular', () => {
    expect(bandedMatrix(2, 1, 1).factor(new Float64Array(2), 1)).toBe(false);
    expect(new TridiagonalMatrix(2).factor(new Float64Array(2), 1)).toBe(false);
    for (const row of [0, 1, 2, 3, 4]) {
      const chain = new TridiagonalMatrix(5);
      chain.entries.fill(0.5);
      const mass = new Float64Array(5).map((_zero, i) => (i === row ? 0.25 : 1));
      chain.entries.fill(-4, 5, 10);
      chain.entries[5 + row] = 0.25; // with neighbours of its own the pivot of this row alone is 0
      chain.entries[row] = 0;
      chain.entries[10 + row] = 0;
      expect(chain.factor(mass, 1), `row ${String(row)}`).toBe(false);
    }
  });

  it('agree between the pentadiagonal and the banded member', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), numbers(120), (n, random) => {
        const pentadiagonal = pentadiagonalMatrix(n);
        const banded = bandedMatrix(n, 2, 2);
        const mass = new Float64Array(n).map((_v, i) => (i % 2 === 0 ? 1 : 0.5));
        pentadiagonal.entries.set(random.slice(0, 5 * n));
        banded.entries.set(pentadiagonal.entries);
        const one = Float64Array.from(random.slice(-n));
        const other = Float64Array.from(one);
        pentadiagonal.factor(mass, 15);
        banded.factor(mass, 15);
        pentadiagonal.solve(one);
        banded.solve(other);
        one.forEach((value, i) => expect(value).toBeCloseTo(other[i]!, 12));
      }),
    );
  });

  it('agree between the tridiagonal and the banded member', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), numbers(80), (n, random) => {
        const tridiagonal = new TridiagonalMatrix(n);
        const banded = bandedMatrix(n, 1, 1);
        const mass = new Float64Array(n).fill(1);
        for (let i = 0; i < n; i++) {
          for (let d = -1; d <= 1; d++) {
            const value = random[3 * i + d + 1]!;
            tridiagonal.entries[(d + 1) * n + i] = value;
            banded.entries[3 * i + d + 1] = value;
          }
        }
        const one = Float64Array.from(random.slice(-n));
        const other = Float64Array.from(one);
        const atOnce = Float64Array.from(one);
        tridiagonal.factor(mass, 5);
        banded.factor(mass, 5);
        tridiagonal.solve(one);
        banded.solve(other);
        one.forEach((value, i) => expect(value).toBeCloseTo(other[i]!, 12));
        expect(tridiagonal.factorAndSolve(mass, 5, atOnce)).toBe(true);
        expect(atOnce).toEqual(one);
      }),
    );
  });
});
