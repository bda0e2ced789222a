// What is read of a run does not change it: its steps, its end and its last row are the same to the last bit, whatever rows are asked for; and a run ends
// whatever its tolerance.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, type EnergySolution, solve } from '#lib/index.js';
import { anyTrainProblem } from '../../../../support/any-train.js';
import { pot, power, trainProblem, type WholeProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

describe('the rows asked for', () => {
  it('steer nothing: steps, ending and last row are the same to the last bit', () => {
    const ways: readonly WholeProblem['outputs'][] = [
      { kind: 'every', interval_s: 1e6 },
      { kind: 'every', interval_s: 17.3 },
      { kind: 'perStep', points: 3 },
    ];
    const end = (run: EnergySolution): unknown => [
      run.statistics,
      run.ending,
      run.time_s.at(-1),
      run.collectedEthanol_mol.at(-1),
      Array.from(run.holderLiquid.slice(-run.holders.length)),
      Array.from(run.holderTemperature_K.slice(-run.holders.length)),
    ];
    fc.assert(
      fc.property(anyTrainProblem(), (problem) => {
        const [first, ...others] = ways.map((outputs) => end(solve({ ...problem, outputs }, system)));
        for (const other of others) expect(other).toEqual(first);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a tight tolerance', () => {
  it('ends on random stills at 1e-10', () => {
    fc.assert(
      fc.property(anyTrainProblem(), (problem) => {
        const { kind, message } = solve({ ...problem, tolerance: 1e-10 }, system).ending;
        // Or a doubler is full.
        if (!message.includes('is full, and what runs over')) expect(['stopped', 'kettleDry']).toContain(kind);
      }),
      { numRuns: Math.ceil(Number(process.env['RANDOM_RUNS'] ?? 500) / 20) },
    );
  });

  it('does not make a bare pot from cold stall at order 1', () => {
    const problem = trainProblem({
      still: pot(),
      charge: { kind: 'volume', volume_m3: 0.11, strength: 0.21 },
      heat: power(6200),
      start: 'cold',
      tolerance: 1e-9,
      sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] }],
    });
    const { ending, statistics } = solve(
      { ...problem, still: { ...pot(), kettle: { ...pot().kettle, heatLoss_W_K: 0 } } },
      system,
    );
    expect(ending.kind).toBe('stopped');
    expect(statistics.acceptedSteps + statistics.rejectedSteps).toBeLessThan(1500); // was 65 000
  });
});
