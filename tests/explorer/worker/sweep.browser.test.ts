import { expect, it } from 'vitest';
import { solve, sweep } from '#lib/index.js';
import { SWEPT } from '../../support/sweep-problems.js';

const worker = (): Worker =>
  new Worker(new URL('../../../lib/run/sweep/worker.ts', import.meta.url), { type: 'module' });

it('a sweep by workers of the browser gives what solve gives one by one', async () => {
  const answers = await sweep(SWEPT, { read: 'end', worker, workers: 2 });
  expect(answers.map(({ found }) => found)).toEqual([true, true, false, true, true, true]);
  answers.forEach((answer, i) => {
    if (answer.found) expect(answer.kept.pureAlcoholCollected_m3).toBe(solve(SWEPT[i]!).pureAlcoholCollected_m3.at(-1));
    else expect(answer.error.message).toContain('charge.strength is -1');
  });
});

it('a worker whose file is not there is told of', async () => {
  const missing = (): Worker => new Worker(new URL('./none.js', import.meta.url), { type: 'module' });
  const answers = await sweep(SWEPT.slice(0, 1), { read: 'end', worker: missing, workers: 1 });
  expect(answers[0]).toMatchObject({
    found: false,
    error: { message: expect.stringContaining('a worker failed') as string },
  });
});
