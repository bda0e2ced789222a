// Where the heat of a run has gone: supplied = stored more than at the start + taken out at the condenser + carried
// off by the distillate + duty of a partial condenser + lost. Checked on random stills that draw distillate.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import type { EnergySolution } from '#lib/run/solution.js';
import { solve } from '#lib/run/solve.js';
import { anyTrainProblem } from '../../../../support/any-train.js';
import { doubler, platedStill, pot, trainProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

/** A rate over the run, by Milne's rule on three points inside each step of the solver, which leaps of the heat between steps do not touch. */
function integral(run: EnergySolution, rate: (row: number) => number): number {
  let sum = 0;
  let row = 0;
  while (row < run.rows - 1) {
    const quarter = run.time_s[row + 1]! - run.time_s[row]!;
    const four = row + 4 < run.rows ? run.time_s[row + 4]! - run.time_s[row]! : 0;
    if (Math.abs(four - 4 * quarter) < 1e-6 * quarter + 1e-8) {
      sum += (four / 3) * (2 * rate(row + 1) - rate(row + 2) + 2 * rate(row + 3));
      row += 4;
    } else {
      sum += 0.5 * quarter * (rate(row) + rate(row + 1));
      row += 1;
    }
  }
  return sum;
}

describe('the heat of a run', () => {
  it('is accounted for to ten times the tolerance, with distillate, doublers and condensers of every kind', () => {
    const tenfold = 10; // design section 5; measured at most 7.0 over 2 600 stills, 1.4 at 1e-3 over 4 500
    fc.assert(
      fc.property(anyTrainProblem(), fc.constantFrom(1e-3, 1e-4, 1e-5, 1e-6), (problem, tolerance) => {
        const run = solve({ ...problem, tolerance, outputs: { kind: 'perStep', points: 4 } }, system);
        const last = run.rows - 1;
        const carried = integral(run, (row) => run.lost_W[row]! + run.refluxDuty_W[row]!);
        const gone = run.condensed_J[last]! + run.collected_J[last]! + carried;
        const missing = run.supplied_J[last]! - (run.stored_J[last]! - run.stored_J[0]!) - gone;
        expect(Math.abs(missing) / run.supplied_J[last]!).toBeLessThan(tenfold * tolerance);
      }),
      { numRuns: 25 },
    );
  });
});

describe('the duty of the condenser', () => {
  it('adds up to what it took out, also where a full doubler runs over into it', () => {
    const full = { ...doubler, overflow: 'over', volume_m3: 0.009 } as const;
    const problem = trainProblem({
      still: pot([full]),
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.0088, strength: 0.3 } }],
      start: 'cold',
      sheet: [{ reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 0.01 }] }],
      outputs: { kind: 'perStep', points: 4 },
    });
    const run = solve(problem, system);
    const tenfold = 1e-4;
    const duty = integral(run, (row) => run.condenserDuty_W[row]!);
    expect(Math.abs(duty / run.condensed_J.at(-1)! - 1)).toBeLessThan(tenfold);
  });

  const filling = trainProblem({
    still: {
      ...platedStill(2),
      refluxCondenser: { kind: 'total', holdUp: { kind: 'volume', volume_m3: 5e-3 }, subcooling_K: 20 },
    },
    start: 'cold',
    sheet: [
      { reflux: 'total', until: [{ kind: 'firstVapour' }] },
      { reflux: 3, until: [{ kind: 'collectedVolume', volume_m3: 1e-3 }] },
    ],
    outputs: { kind: 'perStep', points: 4 },
  });

  it('adds up to what it took out, also while a large drum fills', () => {
    const run = solve(filling, system);
    const tenfold = 1e-4;
    const duty = integral(run, (row) => run.condenserDuty_W[row]!);
    expect(Math.abs(duty / run.condensed_J.at(-1)! - 1)).toBeLessThan(tenfold);
  });

  it('does not count what its drum fills with as taken out: no more heat leaves there than is put in and not lost', () => {
    const run = solve(filling, system);
    const full = Math.max(...run.drumAmount_mol);
    let fills = 0;
    for (let row = 0; row < run.rows; row++) {
      if (run.drumAmount_mol[row]! > 0.9 * full) continue;
      fills++;
      expect(run.condenserDuty_W[row]!).toBeLessThan(run.power_W[row]! - run.lost_W[row]!);
    }
    expect(fills).toBeGreaterThan(20);
    expect(Math.max(...run.condenserDuty_W)).toBeGreaterThan(0.9 * 5500);
  });
});
