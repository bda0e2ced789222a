import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { InputError, type RunProblem, solve, sweep, sweepPool } from '#lib/index.js';
import { serveSweep } from '#lib/run/sweep/serve.js';
import { root } from '../../../support/tree.js';
import { potAt, SWEPT } from '../../../support/sweep-problems.js';

/** What each problem keeps when it is run by itself. */
function oneByOne(problems: readonly RunProblem[]): unknown[] {
  return problems.map((problem) => {
    try {
      const run = solve(problem);
      return [run.pureAlcoholCollected_m3.at(-1), run.time_s.at(-1)];
    } catch (error) {
      return (error as Error).message;
    }
  });
}

type EndAnswers = Awaited<ReturnType<typeof sweep<'end'>>>;

function kept(answers: EndAnswers): unknown[] {
  return answers.map((answer) =>
    answer.found ? [answer.kept.pureAlcoholCollected_m3, answer.kept.time_s] : answer.error.message,
  );
}

describe('a sweep in one thread', () => {
  it('keeps what a function reads, in order, and loses nothing to a problem that cannot be run', async () => {
    const answers = await sweep(SWEPT, {
      read: (run) => [run.pureAlcoholCollected_m3.at(-1), run.time_s.at(-1)],
    });
    expect(answers.map((answer) => (answer.found ? answer.kept : answer.error.message))).toEqual(oneByOne(SWEPT));
    expect(answers[2]).toMatchObject({ found: false, error: { faults: [{ argument: 'charge.strength', value: -1 }] } });
  });

  it('refuses a reader nobody knows, and says which there are', async () => {
    await expect(sweep([], { read: { name: 'ends' } })).rejects.toThrow(
      "read is 'ends'; expected one of end, jars, steps, account, plain",
    );
  });

  it('ends when its signal says so', async () => {
    const stop = new AbortController();
    const swept = sweep(SWEPT, { read: 'end', signal: stop.signal, onProgress: () => stop.abort(new Error('enough')) });
    await expect(swept).rejects.toThrow('enough');
  });
});

/** A worker that is no thread: it answers in this one, later. */
class NearWorker {
  readonly #heard: ((event: { data: unknown }) => void)[] = [];
  readonly #failed: ((event: { message: string }) => void)[] = [];
  readonly #serve = serveSweep({
    postMessage: (data) => {
      if (!this.ended) for (const call of this.#heard) call({ data: structuredClone(data) });
    },
  });
  ended = false;
  asked = 0;
  readonly #breaksAt: (problem: RunProblem) => boolean;

  constructor(breaksAt: (problem: RunProblem) => boolean = () => false) {
    this.#breaksAt = breaksAt;
  }

  addEventListener(kind: string, call: (event: { data?: unknown; message?: string }) => void): void {
    if (kind === 'message') this.#heard.push(call);
    if (kind === 'error') this.#failed.push(call);
  }
  postMessage(message: unknown): void {
    const { problems } = structuredClone(message) as { problems: readonly RunProblem[] };
    this.asked += problems.length;
    queueMicrotask(() => {
      if (problems.some((problem) => this.#breaksAt(problem)))
        for (const call of this.#failed) call({ message: 'out of memory' });
      else this.#serve(message);
    });
  }
  terminate(): void {
    this.ended = true;
  }
}

describe('a sweep by workers', () => {
  it.each([1, 2, 5])('gives with %i workers what solve gives one by one', async (workers) => {
    const answers = await sweep(SWEPT, { read: 'end', worker: () => new NearWorker(), workers });
    expect(kept(answers)).toEqual(oneByOne(SWEPT));
    expect(answers[2]).toMatchObject({ found: false, error: { faults: [{ argument: 'charge.strength', value: -1 }] } });
    expect(answers[2]!.found ? undefined : answers[2]!.error).toBeInstanceOf(InputError);
  });

  it('tells how many are done', async () => {
    const told: number[] = [];
    const onProgress = (done: number, of: number): void => void told.push(done / of);
    await sweep(SWEPT, { read: 'end', worker: () => new NearWorker(), workers: 2, onProgress });
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  it('loses only the problem its worker fails at, in a long batch too', async () => {
    const problems = Array.from({ length: 40 }, (_none, i) => potAt(0.05 + 0.005 * i));
    const broken = problems[17]!;
    const breaks = ({ charge }: RunProblem): boolean =>
      charge.kind === 'volume' && broken.charge.kind === 'volume' && charge.strength === broken.charge.strength;
    const answers = await sweep(problems, { read: 'end', worker: () => new NearWorker(breaks), workers: 1 });
    expect(answers.flatMap(({ found }, i) => (found ? [] : [i]))).toEqual([17]);
    expect(answers[17]).toMatchObject({ error: { message: 'a worker failed: out of memory' } });
  });

  it('loses only the problem that cannot be sent', async () => {
    const own = { ...potAt(0.1), activity: { name: 'mine', range_K: [0, 1] as const, source: '' } };
    const problems = [potAt(0.1), { ...own, activity: { ...own.activity, excessGibbs: () => 0 } } as never, potAt(0.2)];
    const answers = await sweep(problems, { read: 'end', worker: () => new NearWorker(), workers: 1 });
    expect(answers.map(({ found }) => found)).toEqual([true, false, true]);
  });

  it('ends its workers, and is refused with the reason, when its signal says so', async () => {
    const stop = new AbortController();
    const made: NearWorker[] = [];
    const worker = (): NearWorker => made[made.push(new NearWorker()) - 1]!;
    const swept = sweep(SWEPT, {
      read: 'end',
      worker,
      workers: 1,
      signal: stop.signal,
      onProgress: () => stop.abort(new Error('enough')),
    });
    await expect(swept).rejects.toThrow('enough');
    expect(made.every(({ ended }) => ended)).toBe(true);
    expect(made.reduce((sum, { asked }) => sum + asked, 0)).toBeLessThan(SWEPT.length);
  });

  it('keeps the workers of a pool from sweep to sweep, and sweeps at the same time do not meet', async () => {
    let made = 0;
    const pool = sweepPool({ worker: () => (made++, new NearWorker()), workers: 2 });
    const both = await Promise.all([
      pool.run<unknown>(SWEPT, { name: 'end' }),
      pool.run<unknown>(SWEPT, { name: 'jars' }),
    ]);
    const again = await pool.run<unknown>(SWEPT, { name: 'end' });
    expect(again).toEqual(both[0]);
    expect(made).toBe(2);
    pool.close();
  });

  it('refuses a function, which cannot be sent', async () => {
    const swept = sweep(SWEPT, { read: () => 0, worker: () => new NearWorker() });
    await expect(swept).rejects.toThrow('read is a function; expected the name of a reader');
  });

  it('refuses a number of workers that is none', () => {
    expect(() => sweepPool({ worker: () => new NearWorker(), workers: 0 })).toThrow(
      'workers is 0; expected a whole number',
    );
  });
});

describe('a sweep by threads of Node', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kettle-sweep-'));
  // As an application would: a bundler makes one file of the library's worker.
  beforeAll(async () => {
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      build: {
        outDir: folder,
        minify: false,
        lib: {
          entry: { worker: join(root, 'lib/run/sweep/worker.ts'), reader: join(root, 'tests/support/sweep-reader.ts') },
          formats: ['es'],
        },
      },
    });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const worker = (): Worker => new Worker(join(folder, 'worker.js'));

  it('gives what solve gives one by one, to the same bits', async () => {
    const answers = await sweep(SWEPT, { read: 'end', worker, workers: 2 });
    expect(kept(answers)).toEqual(oneByOne(SWEPT));
  });

  it('reads with a function of a module, and hands it its argument', async () => {
    const read = { module: join(folder, 'reader.js'), name: 'litresAbove', argument: 0.5 };
    const answers = await sweep(SWEPT, { read, worker, workers: 1 });
    expect(answers[5]).toEqual({ found: true, kept: expect.any(Number) as number });
    expect(answers[2]!.found).toBe(false);
  });

  it('says of a module that is not there that it is not', async () => {
    const answers = await sweep([potAt(0.1)], {
      read: { module: join(folder, 'none.js'), name: 'x' },
      worker,
      workers: 1,
    });
    expect(answers[0]).toMatchObject({
      found: false,
      error: { message: expect.stringContaining('none.js') as string },
    });
  });
});
