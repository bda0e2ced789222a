// A run in slices: the same bits, others have their turn, and it can be cancelled.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, InputError, type RunProblem, solve, solveAsync } from '#lib/index.js';
import { columnProblem } from '../../support/column-problems.js';
import { trainProblem } from '../../support/train-problems.js';

const system = createEthanolWater();
const problems: readonly [string, RunProblem][] = [
  ['a column with its energy', trainProblem()],
  ['a column at constant flows', columnProblem()],
  [
    'a pot by quadrature, until it is dry',
    {
      model: 'rayleigh',
      still: { kettle: { volume_m3: 0.15 } },
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.1 },
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 1e9 }] }],
    },
  ],
];

describe.each(problems)('%s in slices', (_name, problem) => {
  it('gives the same bits as at once, two of them under way together', async () => {
    const whole = solve(problem, system).plain();
    const both = await Promise.all([solveAsync(problem, {}, system), solveAsync(problem, {}, system)]);
    for (const run of both) expect(run.plain()).toEqual(whole);
  });

  it('tells how far it has come, further each time', async () => {
    const told: number[] = [];
    await solveAsync(problem, { onProgress: (reached_s) => told.push(reached_s) }, system);
    expect(told.length).toBeGreaterThan(0);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  it('ends with the signal’s reason when it is cancelled, and not before', async () => {
    const stop = new AbortController();
    const reason = new Error('enough');
    const running = solveAsync(problem, { signal: stop.signal, onProgress: () => stop.abort(reason) }, system);
    await expect(running).rejects.toBe(reason);
  });
});

describe('a run in slices that cannot be run', () => {
  it('is refused as at once', async () => {
    const bad = { ...columnProblem(), tolerance: 5 };
    await expect(solveAsync(bad, {}, system)).rejects.toThrow(InputError);
  });
});
