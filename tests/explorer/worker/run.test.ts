// A run that takes long tells how far it has come; one that does not says nothing.

import { afterEach, describe, expect, it, vi } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { createSolver } from '../../../explorer/worker/answering.js';
import type { RunQuestion } from '../../../explorer/worker/kinds/run.js';

const question: RunQuestion<'time_s'> = {
  kind: 'run',
  problem: {
    still: { kettle: { volume_m3: 0.1 } },
    charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 },
    sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.2 }] }],
  },
  keep: ['time_s'],
};
const solve = createSolver(createEthanolWater());

/** Every look at the clock is so much later. */
function clock(step_ms: number): void {
  let now_ms = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => (now_ms += step_ms));
}

afterEach(() => void vi.restoreAllMocks());

describe('a run in the worker', () => {
  it('tells how far it has come once it takes longer than a second, and goes on telling', async () => {
    clock(50);
    const reached: number[] = [];
    const reply = await solve(question, (reached_s) => reached.push(reached_s));
    expect(reached.length).toBeGreaterThan(2);
    expect([...reached].sort((a, b) => a - b)).toEqual(reached);
    if (reply.kind !== 'answered' || reply.answer.kind !== 'run') throw new Error('no run');
    const { time_s } = (reply.answer as unknown as { solution: { time_s: Float64Array } }).solution;
    expect(reached[0]!).toBeGreaterThan(0);
    expect(reached.at(-1)!).toBeLessThanOrEqual(time_s.at(-1)!);
  });

  it('says nothing where it is quick', async () => {
    clock(0);
    const told = vi.fn();
    await solve(question, told);
    expect(told).not.toHaveBeenCalled();
  });
});
