// When the heat is cut, plates go on boiling for a moment on what they hold, with no vapour from below: what they raise then is in equilibrium
// with their liquid, and carries no alcohol off that they do not have.

import { completeProblem } from '#lib/run/complete.js';
import { describe, expect, it } from 'vitest';
import { completeStill, createEthanolWater } from '#lib/index.js';
import { controlsOf } from '#lib/run/engines/energy/controls.js';
import { TrainEquations } from '#lib/run/engines/energy/equations.js';
import { trainOf } from '#lib/run/engines/energy/holders.js';
import type { EnergyProblem } from '#lib/run/problem.js';
import type { EnergySolution } from '#lib/run/solution.js';
import { EQUILIBRIUM, READINGS } from '#lib/run/engines/energy/readings.js';
import { solve } from '#lib/run/solve.js';
import { startingState } from '#lib/run/engines/energy/start.js';
import { trainTables } from '#lib/run/engines/energy/tables.js';
import { platedStill, trainProblem, power } from '../../../../support/train-problems.js';

const system = createEthanolWater();
const after = (seconds: number): EnergyProblem['sheet'][number]['until'] => [{ kind: 'duration', seconds }];

/** A pot under plates that hardly work and hold next to nothing, driven without reflux; then its heat is cut or turned down. */
function turned(
  volume_m3: number,
  air_Pa: number,
  strength: number,
  power_W: number,
  first: EnergyProblem['sheet'][number]['until'],
  then_W: number,
): EnergySolution {
  const column = { kind: 'plates', count: 12, efficiency: 0.24, heatLoss_W_K: 0, metal_J_K: 0 } as const;
  const problem = trainProblem({
    still: completeStill({ kettle: { volume_m3, power_W }, column, air: { pressure_Pa: air_Pa } }),
    charge: { kind: 'volume', volume_m3: 0.9 * volume_m3, strength },
    heat: power(power_W),
    sheet: [
      { reflux: 'none', until: first },
      { reflux: 'none', heat: power(then_W), until: after(4000) },
    ],
    outputs: { kind: 'perStep', points: 4 },
    start: 'cold',
  });
  return solve(problem, system);
}

const large = (then_W: number): EnergySolution =>
  turned(6.4, 110e3, 0.054, 700e3, [{ kind: 'alcoholLeftBelow', share: 0.485 }], then_W);
const small = (then_W: number): EnergySolution => turned(0.07, 24e3, 0.1, 6500, after(2500), then_W);

describe('plates whose vapour from below stops', () => {
  const runs: readonly (readonly [string, () => EnergySolution])[] = [
    ['above a large pot whose heat is cut', () => large(0)],
    ['above a large pot whose heat is turned down to a seventh', () => large(100e3)],
    ['above a small pot, in vacuum, whose heat is cut', () => small(0)],
    ['above a small pot, in vacuum, whose heat is turned down', () => small(1000)],
  ];
  it.each(runs)('never hold less alcohol than none: %s', (_name, solved) => {
    const run = solved();
    const rounding = -1e-4; // ten times the tolerance
    expect(run.ending.kind).toBe('stopped');
    expect(Math.min(...run.holderLiquid)).toBeGreaterThan(rounding);
    expect(Math.min(...run.holderVapour)).toBeGreaterThan(rounding);
  });

  it('never get hotter than water boils at their pressure', () => {
    const run = large(0);
    const width = run.holders.length;
    for (let j = 1; j < width; j++) {
      const boiling_K = system.curve('redlich-kister').at(run.holders[j]!.pressure_Pa).temperature[0]!;
      for (let row = run.stepStarts[1]!; row < run.rows; row++) {
        expect(run.holderTemperature_K[row * width + j]!).toBeLessThanOrEqual(boiling_K + 0.01);
      }
    }
  });
});

describe('the vapour of a plate', () => {
  const problem = trainProblem({ still: platedStill(3, 0.4, true) });
  const train = trainOf(completeProblem(problem));
  const pressures = [...train.holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
  const tables = trainTables(system.enthalpy('redlich-kister'), pressures, false);
  const equations = new TrainEquations(train, tables, 1e-5, controlsOf(problem.sheet[0]!, problem));
  const excess = train.nominalVapour_mol_s * train.holders[0]!.boilLag_s;

  /** The state in which the kettle gives a share of its vapour, its plates all of theirs, and these hold weaker liquid than the kettle. */
  function state(share: number): Float64Array {
    const u = startingState(completeProblem(problem), train, tables);
    u[0]! -= (1 - share) * excess;
    return u;
  }

  /** Efficiency with which the lowest plate works: the share of the way from the vapour below to equilibrium at which its vapour row is nothing. */
  function efficiency(share: number): number {
    const u = state(share);
    const out = new Float64Array(equations.size);
    u[1] = 0.2;
    u[5] = 0;
    equations.rightHandSide(0, u, out);
    return (out[5]! - 0.2) / (equations.streams.readings[READINGS + EQUILIBRIUM]! - 0.2);
  }

  it('passes its liquid with the efficiency of the plate as long as most of it comes from below', () => {
    expect(efficiency(1)).toBeCloseTo(0.4, 12);
    expect(efficiency(0.9)).toBeCloseTo(0.4, 12);
  });

  it('is in equilibrium with its liquid when none comes from below, and in between for some', () => {
    expect(efficiency(-1)).toBeCloseTo(1, 6);
    expect(efficiency(0.4)).toBeGreaterThan(0.6);
    expect(efficiency(0.4)).toBeLessThan(0.8);
  });

  it('changes with both vapours as the Jacobian says', () => {
    const u = state(0.4);
    const n = equations.size;
    equations.linearise(0, u, new Float64Array(n));
    const entries = Float64Array.from(equations.matrix.entries);
    const [up, down] = [new Float64Array(n), new Float64Array(n)];
    for (let column = 0; column < 8; column++) {
      const h = 1e-6 * Math.max(1e-2, Math.abs(u[column]!));
      equations.rightHandSide(0, Float64Array.from(u).fill(u[column]! + h, column, column + 1), up);
      equations.rightHandSide(0, Float64Array.from(u).fill(u[column]! - h, column, column + 1), down);
      const difference = (up[5]! - down[5]!) / (2 * h);
      const entry = entries[48 + (column < 4 ? 0 : 16) + 4 + (column % 4)]!;
      expect(Math.abs(difference - entry)).toBeLessThan(1e-5 * (1 + Math.abs(difference)));
    }
  });
});
