// Limits read off any run of any still, at every moment the solver passes through.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, limitsOf } from '#lib/index.js';
import { solve } from '#lib/run/solve.js';
import type { EnergySolution } from '#lib/run/solution.js';
import type { Still } from '#lib/still/still.js';
import { anyTrainProblem } from '../../../support/any-train.js';
import { platedStill, trainProblem } from '../../../support/train-problems.js';

const system = createEthanolWater();

describe('the limits of any run', () => {
  it('stand at moments of the run, and how far they are passed is a number', () => {
    fc.assert(
      fc.property(anyTrainProblem(), (any) => {
        const problem = { ...any, outputs: { kind: 'perStep' as const, points: 2 } };
        const run = solve(problem, system);
        for (const limit of limitsOf(run, system)) {
          expect(limit.worst).toBeGreaterThanOrEqual(0);
          expect(limit.worst).toBeLessThan(Infinity);
          expect(limit.from_s).toBeLessThanOrEqual(limit.worst_s);
          expect(limit.worst_s).toBeLessThanOrEqual(limit.to_s);
          expect(limit.to_s).toBeLessThanOrEqual(run.time_s.at(-1)!);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('can be read where a stream that just begins stands a hair below nothing', () => {
    const column: Still['column'] = {
      kind: 'packing',
      height_m: 1,
      hetp_m: 0.25,
      diameter_m: 0.08,
      voidShare: 0.9,
      surface_m2_m3: 300,
      liquidShare: 0.06,
      heatLoss_W_K: 0,
      metal_J_K: 0,
      drop_Pa_m: 300,
    };
    const still = { ...platedStill(0), column };
    const problem = trainProblem({ still, sheet: [{ reflux: 3, until: [{ kind: 'duration', seconds: 600 }] }] });
    const run: EnergySolution = solve(problem, system);
    const below = { ...run.plain(), holderLiquidRate_mol_s: run.holderLiquidRate_mol_s.map(() => -1e-18) };
    expect(limitsOf(below, system).every(({ worst }) => Number.isFinite(worst))).toBe(true);
  });

  it('can be read where a loosely solved drop seems colder than densities are known', () => {
    const problem = trainProblem({ sheet: [{ reflux: 3, until: [{ kind: 'duration', seconds: 600 }] }] });
    const run = solve(problem, system);
    const freezing = { ...run.plain(), holderTemperature_K: run.holderTemperature_K.map(() => 230) };
    expect(limitsOf(freezing, system).every(({ worst }) => Number.isFinite(worst))).toBe(true);
  });
});
