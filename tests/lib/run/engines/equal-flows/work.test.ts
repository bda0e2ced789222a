// What a column solve may cost, in counts that no busy machine can move. A bound is what was measured plus a few per cent: work that grows
// beyond it is a change to be explained, here and in docs/benchmarks.md.

import { describe, expect, it } from 'vitest';
import { solve } from '#lib/index.js';
import { bytesPerStep } from '../../../../support/bytes-per-step.js';
import { type ColumnProblem, columnProblem, system } from '../../../../support/column-problems.js';
import { yardstickProblem } from '../../../../support/yardstick-problem.js';

interface Budget {
  readonly name: string;
  readonly problem: ColumnProblem;
  readonly steps: number;
  readonly rejected: number;
  readonly sides: number;
}

const tall = columnProblem(
  { sheet: [{ reflux: 5, until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }] },
  { plates: 40, efficiency: 0.65, plateHoldUp_mol: 1 },
);

/** Liquid runs down almost untouched: far from a chain whose modes die away without swinging, where order 5 is unstable. */
const idle = columnProblem(
  {
    charge: { kind: 'amount', amount_mol: 20000, moleFraction: 0.3 },
    sheet: [{ reflux: 30, until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }],
    outputs: { kind: 'every', interval_s: 3600 },
    tolerance: 1e-5,
  },
  { plates: 60, efficiency: 0.01, plateHoldUp_mol: 2, condenserHoldUp_mol: 1 },
);

const budgets: readonly Budget[] = [
  { name: 'the yardstick problem', problem: yardstickProblem(1e-6), steps: 410, rejected: 10, sides: 430 },
  { name: 'the yardstick problem, coarse', problem: yardstickProblem(1e-4), steps: 210, rejected: 12, sides: 240 },
  { name: 'six plates of an efficiency, two steps', problem: columnProblem(), steps: 258, rejected: 8, sides: 285 },
  { name: 'forty plates of an efficiency', problem: tall, steps: 425, rejected: 6, sides: 448 },
  { name: 'sixty plates that hardly work', problem: idle, steps: 195, rejected: 4, sides: 210 },
];

describe.each(budgets)('$name', ({ problem, steps, rejected, sides }) => {
  it('takes no more steps, sides, Jacobians and factorisations than it did', () => {
    const done = solve(problem, system).statistics;
    expect(done.acceptedSteps).toBeLessThanOrEqual(steps);
    expect(done.rejectedSteps).toBeLessThanOrEqual(rejected);
    expect(done.rightHandSides).toBeLessThanOrEqual(sides);
    // One each attempt; besides, one where a step of the sheet begins and a few to end at its event.
    expect(done.jacobians).toBeLessThanOrEqual(done.acceptedSteps + done.rejectedSteps + 8 * problem.sheet.length);
    expect(done.factorisations).toBe(done.jacobians);
  });
});

describe('a column solve', () => {
  it('is as exact as it is asked to be on the yardstick problem', () => {
    const reference = solve(yardstickProblem(1e-10), system).spoutMoleFraction;
    for (const tolerance of [1e-4, 1e-5, 1e-6, 1e-7]) {
      const { spoutMoleFraction } = solve(yardstickProblem(tolerance), system);
      const error = spoutMoleFraction.reduce((most, x, i) => Math.max(most, Math.abs(x - reference[i]!)), 0);
      expect(error).toBeLessThan(1.2 * tolerance); // measured 0.36 to 0.73
    }
  });

  it('gives the same digits whatever was solved before it', () => {
    const first = solve(yardstickProblem(1e-6), system).plain();
    solve({ ...yardstickProblem(1e-3), heat: { kind: 'power', power_W: 3000 } }, system);
    solve(tall, system);
    expect(solve(yardstickProblem(1e-6), system).plain()).toEqual(first);
  });

  it('leaves what it answered alone when it is asked again', () => {
    const first = solve(columnProblem(), system);
    const kept = first.spoutMoleFraction.slice();
    solve(columnProblem({ charge: { kind: 'amount', amount_mol: 2000, moleFraction: 0.2 } }), system);
    expect(first.spoutMoleFraction).toEqual(kept);
  });

  it('leaves no arrays behind with each step, and few numbers', async () => {
    // Measured 196: numbers that are boxed where they are handed from call to call. An array of the state would add 200.
    const everyStep = 260;
    const rarely = 1e6;
    const bytes = await bytesPerStep(yardstickProblem(1e-5, rarely), yardstickProblem(1e-7, rarely));
    expect(bytes).toBeLessThan(everyStep);
    expect(bytes).toBeGreaterThan(0);
  });
});
