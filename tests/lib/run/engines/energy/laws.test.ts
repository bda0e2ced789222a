// What must hold for any still: balances of ethanol, water and energy, sane rows, and a Jacobian that is the derivative of its equations.

import { completeProblem } from '#lib/run/complete.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { controlsOf } from '#lib/run/engines/energy/controls.js';
import { TrainEquations } from '#lib/run/engines/energy/equations.js';
import { trainOf } from '#lib/run/engines/energy/holders.js';
import type { EnergyProblem } from '#lib/run/problem.js';
import type { EnergySolution } from '#lib/run/solution.js';
import { solve } from '#lib/run/solve.js';
import { startingState } from '#lib/run/engines/energy/start.js';
import { trainTables } from '#lib/run/engines/energy/tables.js';
import { chargeAmounts } from '#lib/run/charge.js';
import { anyTrainProblem } from '../../../../support/any-train.js';
import { trainProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();
const balanceGoal = 1e-9; // share of the charge, design section 5

function charged(problem: EnergyProblem): { ethanol: number; water: number } {
  const all = [problem.charge, ...(problem.doublerCharges ?? []).map((own) => own.charge)].map(chargeAmounts);
  return {
    ethanol: all.reduce((sum, one) => sum + one.ethanol_mol, 0),
    water: all.reduce((sum, one) => sum + one.water_mol, 0),
  };
}

function found(run: EnergySolution, row: number): { ethanol: number; water: number } {
  const held = run.holders.length;
  let ethanol = run.drumAmount_mol[row]! * run.spoutMoleFraction[row]! + run.collectedEthanol_mol[row]!;
  let water = run.drumAmount_mol[row]! * (1 - run.spoutMoleFraction[row]!) + run.collectedWater_mol[row]!;
  for (let j = 0; j < held; j++) {
    const amount = run.holderAmount_mol[row * held + j]!;
    ethanol += amount * run.holderLiquid[row * held + j]!;
    water += amount * (1 - run.holderLiquid[row * held + j]!);
  }
  return { ethanol, water };
}

describe('a still of any kind', () => {
  it('keeps every mole of ethanol and of water at every output time', () => {
    fc.assert(
      fc.property(anyTrainProblem(), (problem) => {
        const run = solve(problem, system);
        const all = charged(problem);
        const goal = balanceGoal * (all.ethanol + all.water);
        for (let row = 0; row < run.rows; row++) {
          const now = found(run, row);
          expect(Math.abs(now.ethanol - all.ethanol)).toBeLessThan(goal);
          expect(Math.abs(now.water - all.water)).toBeLessThan(goal);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('ends as asked, dry, or going on: never because the solver gave up, and its rows stay sane', () => {
    const tolerances = 100; // local errors of 1e-5 that add up
    fc.assert(
      fc.property(anyTrainProblem(), (problem) => {
        const run = solve(problem, system);
        expect(['stopped', 'kettleDry', 'neverMet']).toContain(run.ending.kind);
        for (const column of [run.spoutMoleFraction, run.holderLiquid, run.holderVapour]) {
          expect(column.every((x) => x > -tolerances * 1e-5 && x < 1 + tolerances * 1e-5)).toBe(true);
        }
        expect(run.holderVapourRate_mol_s.every((rate) => rate >= 0)).toBe(true);
        for (let row = 1; row < run.rows; row++) expect(run.time_s[row]!).toBeGreaterThan(run.time_s[row - 1]!);
      }),
      { numRuns: 40 },
    );
  });

  it('accounts for the energy: heat in is what is stored, condensed and lost', () => {
    // Supplied − stored − condensed − enthalpy of what was collected − losses and duties by Simpson's rule on rows within steps.
    const tolerance = 1e-5;
    const tenfold = 10 * tolerance;
    const problem = trainProblem({
      outputs: { kind: 'perStep', points: 4 },
      sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 3600 }] }],
      tolerance,
    });
    const run = solve(problem, system);
    const last = run.rows - 1;
    let lost = 0;
    for (let row = 1; row < run.rows; row++) {
      lost += 0.5 * (run.lost_W[row]! + run.lost_W[row - 1]!) * (run.time_s[row]! - run.time_s[row - 1]!);
    }
    // At total reflux nothing is collected.
    const out = run.condensed_J[last]! + lost;
    const missing = run.supplied_J[last]! - (run.stored_J[last]! - run.stored_J[0]!) - out;
    expect(Math.abs(missing) / run.supplied_J[last]!).toBeLessThan(tenfold);
  });

  it('has the Jacobian of its own equations', () => {
    const agreement = 1e-4; // central differences of a step that is small beside amounts of all sizes
    fc.assert(
      fc.property(
        anyTrainProblem(),
        fc.array(fc.double({ min: -0.03, max: 0.03, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (problem, moves) => {
          const train = trainOf(completeProblem(problem));
          const pressures = [...train.holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
          const tables = trainTables(system.enthalpy('redlich-kister'), pressures, false);
          for (const step of problem.sheet) {
            const controls = controlsOf(step, problem);
            const equations = new TrainEquations(train, tables, 1e-5, controls);
            const state = startingState(completeProblem(problem), train, tables);
            state.forEach((value, i) => (state[i] = value * (1 + moves[i % 8]!)));
            expect(worstEntry(equations, state)).toBeLessThan(agreement);
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});

/** Largest difference between an entry of the Jacobian and a central difference, relative to the difference and a thousandth. */
function worstEntry(equations: TrainEquations, state: Float64Array): number {
  const n = equations.size;
  equations.linearise(0, state, new Float64Array(n));
  const entries = Float64Array.from(equations.matrix.entries);
  const [up, down] = [new Float64Array(n), new Float64Array(n)];
  let worst = 0;
  for (let c = 0; c < n; c++) {
    const h = 1e-8 * Math.max(1, Math.abs(state[c]!));
    const moved = Float64Array.from(state);
    moved[c] = state[c]! + h;
    equations.rightHandSide(0, moved, up);
    moved[c] = state[c]! - h;
    equations.rightHandSide(0, moved, down);
    for (let r = 0; r < n; r++) {
      const difference = (up[r]! - down[r]!) / (2 * h);
      const beside = (c >> 2) - (r >> 2);
      const entry = Math.abs(beside) > 1 ? 0 : entries[48 * (r >> 2) + 16 * (beside + 1) + 4 * (r % 4) + (c % 4)]!;
      worst = Math.max(worst, Math.abs(difference - entry) / (1e-2 + Math.abs(difference)));
    }
  }
  return worst;
}
