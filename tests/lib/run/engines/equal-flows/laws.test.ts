// What must hold for any column: balances, limits, and a Jacobian that is the derivative of its equations.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { azeotrope, solve, type RunSolution, type RunStep } from '#lib/index.js';
import { columnEquations } from '#lib/run/engines/equal-flows/equations.js';
import { columnSystem } from '#lib/run/engines/equal-flows/column-system.js';
import { completeProblem } from '#lib/run/complete.js';
import { anyColumn, columnProblem, system } from '../../../../support/column-problems.js';

const balanceGoal = 1e-9; // share of the charge, design section 5

function ethanolIn(solution: RunSolution, row: number, plateHoldUp: number, condenserHoldUp: number): number {
  const { plates } = solution;
  let sum = solution.kettleAmount_mol[row]! * solution.kettleMoleFraction[row]!;
  for (let j = 0; j < plates; j++) sum += plateHoldUp * solution.plateLiquid[row * plates + j]!;
  return sum + condenserHoldUp * solution.spoutMoleFraction[row]! + solution.collectedEthanol_mol[row]!;
}

describe('a column of any kind', () => {
  it('keeps every mole of ethanol and of water at every output time', () => {
    fc.assert(
      fc.property(anyColumn(), ({ flat, problem }) => {
        const solution = solve(problem, system);
        const { plateHoldUp_mol, condenserHoldUp_mol, plates } = flat;
        const charge = problem.charge.kind === 'amount' ? problem.charge : { amount_mol: 0, moleFraction: 0 };
        const ethanol = charge.amount_mol * charge.moleFraction;
        const held = plates * plateHoldUp_mol + condenserHoldUp_mol;
        for (let row = 0; row < solution.rows; row++) {
          const collected = solution.collectedEthanol_mol[row]! + solution.collectedWater_mol[row]!;
          const total = solution.kettleAmount_mol[row]! + held + collected;
          expect(Math.abs(total - charge.amount_mol)).toBeLessThan(balanceGoal * charge.amount_mol);
          const found = ethanolIn(solution, row, plateHoldUp_mol, condenserHoldUp_mol);
          expect(Math.abs(found - ethanol)).toBeLessThan(balanceGoal * charge.amount_mol);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('leaves 0 to 1 by no more than its tolerance, never lets time run back, and ends as asked or dry', () => {
    const tolerances = 100; // local errors of 1e-6 that add up while an exhausted still is boiled on
    fc.assert(
      fc.property(anyColumn(), ({ problem }) => {
        const solution = solve(problem, system);
        expect(['stopped', 'kettleDry']).toContain(solution.ending.kind);
        for (const column of [solution.spoutMoleFraction, solution.kettleMoleFraction, solution.plateLiquid]) {
          expect(column.every((x) => x > -tolerances * 1e-6 && x < 1 + tolerances * 1e-6)).toBe(true);
        }
        for (let row = 1; row < solution.rows; row++) {
          expect(solution.time_s[row]!).toBeGreaterThan(solution.time_s[row - 1]!);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('collects what its rate says, by a quadrature of its own rows', () => {
    const trapezoid = 2e-4; // of what was collected, at 20 s between rows
    const solution = solve(columnProblem({ outputs: { kind: 'every', interval_s: 20 } }), system);
    let total = 0;
    let water = 0;
    for (let row = 1; row < solution.rows; row++) {
      const seconds = solution.time_s[row]! - solution.time_s[row - 1]!;
      const waterRate = (at: number): number =>
        solution.distillateRate_mol_s[at]! * (1 - solution.spoutMoleFraction[at]!);
      if (row <= solution.stepStarts[1]!) continue; // total reflux
      total += (seconds * (solution.distillateRate_mol_s[row]! + solution.distillateRate_mol_s[row - 1]!)) / 2;
      water += (seconds * (waterRate(row) + waterRate(row - 1))) / 2;
    }
    const collected = solution.collectedEthanol_mol.at(-1)! + solution.collectedWater_mol.at(-1)!;
    expect(Math.abs(total / collected - 1)).toBeLessThan(trapezoid);
    expect(Math.abs(water / solution.collectedWater_mol.at(-1)! - 1)).toBeLessThan(trapezoid);
  });

  it('has the Jacobian of its own equations', () => {
    const centralDifference = 1e-6; // step; agreement to its square times third derivatives
    fc.assert(
      fc.property(anyColumn(), fc.integer({ min: 0, max: 1000 }), ({ problem }, seed) => {
        const column = columnSystem(completeProblem(problem), system.curve('nrtl'));
        column.flows.returned = 0.7;
        column.flows.drawn = 0.3;
        const equations = columnEquations(column, 1e-6);
        const { size } = equations;
        const u = new Float64Array(size).map((_zero, i) => 0.1 + 0.7 * Math.abs(Math.sin(seed + 3.7 * i)));
        u[1] = 0.2 * column.flows.kettleStart_mol;
        const b = 5;
        const slope = new Float64Array(size);
        equations.linearise(b, u, slope);
        const side = (s: number, state: Float64Array): Float64Array => {
          const out = new Float64Array(size);
          equations.rightHandSide(s, state, out);
          return out;
        };
        const stride = column.layout.stride;
        for (let j = 0; j < size; j++) {
          const scale = j === 1 ? column.flows.kettleStart_mol : 1;
          const step = centralDifference * scale;
          const up = u.slice();
          const down = u.slice();
          up[j]! += step;
          down[j]! -= step;
          const high = side(b, up);
          const low = side(b, down);
          for (let i = 0; i < size; i++) {
            const entry = entryOf(equations.matrix.entries, size, stride, i, j);
            expect(Math.abs((high[i]! - low[i]!) / (2 * step) - entry) * scale).toBeLessThan(1e-6);
          }
        }
        const later = side(b + 1e-3, u);
        const earlier = side(b - 1e-3, u);
        for (let i = 0; i < size; i++)
          expect(Math.abs((later[i]! - earlier[i]!) / 2e-3 - slope[i]!)).toBeLessThan(1e-6);
      }),
      { numRuns: 40 },
    );
  });
});

function entryOf(entries: Float64Array, size: number, stride: number, i: number, j: number): number {
  const bandwidth = stride; // tridiagonal or pentadiagonal
  if (Math.abs(i - j) > bandwidth) return 0;
  return stride === 1 ? entries[(j - i + 1) * size + i]! : entries[5 * i + (j - i + 2)]!;
}

describe('a column at its limits', () => {
  it('strengthens the head with each plate and with more reflux, and never passes the azeotrope', () => {
    const head = (plates: number, reflux: number): number => {
      const problem = columnProblem(
        { sheet: [{ reflux, until: [{ kind: 'duration', seconds: 1500 }] }] },
        { plates, efficiency: 1, plateDrop_Pa: 0 },
      );
      return solve(problem, system).spoutMoleFraction.at(-1)!;
    };
    const heads = [1, 2, 4, 8, 16].map((plates) => head(plates, 5));
    heads.slice(1).forEach((value, i) => expect(value).toBeGreaterThan(heads[i]!));
    expect(head(8, 8)).toBeGreaterThan(head(8, 3));
  });

  it('comes within a hair of the azeotrope at total reflux on sixty plates, and stays below it', () => {
    const model = system.model('nrtl');
    const ceiling = azeotrope(101325, model);
    if (!ceiling.found) return expect.unreachable();
    const hold: RunStep = { reflux: 'total', until: [{ kind: 'duration', seconds: 8 * 3600 }] };
    const charge = { kind: 'amount', amount_mol: 2000, moleFraction: 0.3 } as const;
    const problem = columnProblem(
      { charge, sheet: [hold] },
      { plates: 60, efficiency: 1, plateDrop_Pa: 0, plateHoldUp_mol: 1 },
    );
    const head = solve(problem, system).spoutMoleFraction.at(-1)!;
    expect(head).toBeLessThan(ceiling.moleFraction);
    expect(head).toBeGreaterThan(ceiling.moleFraction - 0.001);
  });

  it('gives the same whether plates are ideal or have an efficiency of almost 1', () => {
    const nearlyIdeal = 1 - 1e-9;
    const ideal = solve(columnProblem({ tolerance: 1e-8 }, { efficiency: 1 }), system);
    const almost = solve(columnProblem({ tolerance: 1e-8 }, { efficiency: nearlyIdeal }), system);
    expect(almost.time_s.at(-1)).toBeCloseTo(ideal.time_s.at(-1)!, 2);
    expect(Math.abs(almost.spoutMoleFraction[8]! - ideal.spoutMoleFraction[8]!)).toBeLessThan(1e-6);
  });
});
