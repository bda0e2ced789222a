// The workers and the queue before them: one for the first figure, then as many as may be; nobody works on what nobody
// wants; what fails is tried again.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StagesQuestion } from '../../../explorer/worker/kinds/stages.js';
import { Pool, type Listening, type Ticket, type Urgency } from '../../../explorer/worker/pool.js';
import { whileWaiting, type Waiting } from '../../../explorer/offline/wanted.js';
import type { ToSolver } from '../../../explorer/worker/solver.worker.js';

const stages = (fromStrength: number): StagesQuestion => ({
  kind: 'stages',
  activity: 'nrtl',
  pressure_Pa: 1e5,
  fromStrength,
  toStrengths: [],
});

/** A worker that answers when it is told to; `has` what has been posted to it, by strength. */
interface Worker extends Listening {
  readonly posted: ToSolver[];
  ended: boolean;
}

function shop(most: number) {
  const workers: Worker[] = [];
  const afresh = vi.fn(() => Promise.resolve());
  const pool = new Pool({
    most,
    afresh,
    start: (listening) => {
      const worker: Worker = { ...listening, posted: [], ended: false };
      workers.push(worker);
      return { post: (message) => worker.posted.push(message), end: () => (worker.ended = true) };
    },
  });
  const has = (worker: Worker): number[] =>
    worker.posted.map(({ question }) => (question as StagesQuestion).fromStrength);
  /** The oldest question of a worker is answered. */
  const answer = (worker: Worker): void => {
    const { id } = worker.posted.shift()!;
    worker.said({ id, reply: { kind: 'answered', answer: { kind: 'stages', stages: [], ladder: [] } } });
  };
  const ask = (strength: number, urgency: Urgency = 'now'): Ticket & { readonly outcome: string[] } => {
    const ticket = pool.ask(stages(strength), urgency, () => undefined);
    const outcome: string[] = [];
    ticket.reply.then(
      ({ kind }) => outcome.push(kind),
      (error: unknown) => outcome.push((error as Error).message),
    );
    return { ...ticket, outcome };
  };
  return { pool, workers, has, answer, ask, afresh };
}

const turn = (): Promise<unknown> => vi.advanceTimersByTimeAsync(0);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('the pool of workers', () => {
  it('works on the first figure with one worker, whatever it asks', () => {
    const { workers, has, ask } = shop(4);
    for (const strength of [1, 2, 3, 4]) ask(strength, 'first');
    expect(workers.map(has)).toEqual([[1, 2]]);
  });

  it('starts as many as it may for what comes after, and gives each one more than it works on', () => {
    const { workers, has, ask } = shop(3);
    for (let strength = 1; strength <= 8; strength += 1) ask(strength);
    expect(workers.map(has)).toEqual([
      [1, 4],
      [2, 5],
      [3, 6],
    ]);
  });

  it('lets what is urgent go before what may wait, and gives no worker two of the latter', () => {
    const { workers, has, answer, ask } = shop(1);
    for (const strength of [1, 2, 3]) ask(strength, 'later');
    ask(9);
    expect(has(workers[0]!)).toEqual([1, 9]);
    answer(workers[0]!);
    answer(workers[0]!);
    expect(has(workers[0]!)).toEqual([2]);
  });

  it('hurries what somebody wants sooner', () => {
    const { workers, has, answer, ask } = shop(1);
    ask(1, 'later');
    ask(2, 'later');
    ask(3, 'later').keep('now');
    answer(workers[0]!);
    expect(has(workers[0]!)).toEqual([3]);
  });

  it('drops a question from the queue that nobody wants any more', async () => {
    const { workers, has, answer, ask } = shop(1);
    ask(1, 'later');
    const dropped = ask(2, 'later');
    ask(3, 'later');
    expect(dropped.drop()).toBe(true);
    answer(workers[0]!);
    expect(has(workers[0]!)).toEqual([3]);
    await turn();
    expect(dropped.outcome).toEqual(['Nobody wants this answer any more.']);
  });

  it('lets one that is worked on come to its end for a moment', async () => {
    const { workers, answer, ask } = shop(1);
    const long = ask(1);
    expect(long.drop()).toBe(false);
    await vi.advanceTimersByTimeAsync(200);
    answer(workers[0]!);
    await vi.advanceTimersByTimeAsync(1000);
    expect([long.outcome, workers[0]!.ended]).toEqual([['answered'], false]);
  });

  it('ends a worker that goes on with what nobody wants, and gives its other question to a new one', async () => {
    const { workers, has, answer, ask } = shop(1);
    const long = ask(1);
    const next = ask(2);
    long.drop();
    await vi.advanceTimersByTimeAsync(400);
    expect([workers[0]!.ended, workers.length, has(workers[1]!)]).toEqual([true, 2, [2]]);
    answer(workers[1]!);
    await turn();
    expect([long.outcome, next.outcome]).toEqual([['Nobody wants this answer any more.'], ['answered']]);
  });

  it('does not end a worker for what lies before it while it works on something that is wanted', async () => {
    const { workers, answer, ask } = shop(1);
    const wanted = ask(1);
    ask(2).drop();
    await vi.advanceTimersByTimeAsync(2000);
    expect(workers[0]!.ended).toBe(false);
    answer(workers[0]!);
    await turn();
    expect(wanted.outcome).toEqual(['answered']);
    await vi.advanceTimersByTimeAsync(400);
    expect(workers[0]!.ended).toBe(true);
  });

  it('goes on with what is wanted after all', async () => {
    const { workers, answer, ask } = shop(1);
    const long = ask(1);
    long.drop();
    long.keep('now');
    await vi.advanceTimersByTimeAsync(2000);
    expect(workers[0]!.ended).toBe(false);
    answer(workers[0]!);
    await turn();
    expect(long.outcome).toEqual(['answered']);
  });

  it('tells how far a run has come', () => {
    const { pool, workers } = shop(1);
    const reached = vi.fn();
    pool.ask(stages(1), 'now', reached);
    workers[0]!.said({ id: workers[0]!.posted[0]!.id, reached_s: 90 });
    expect(reached).toHaveBeenCalledWith(90);
  });

  it('asks all of a worker that lacked a part once more, of another', async () => {
    const { workers, has, answer, ask, afresh } = shop(1);
    const [lacking, other] = [ask(1), ask(2)];
    workers[0]!.said({ id: workers[0]!.posted[0]!.id, missing: 'drift.js' });
    await turn();
    expect([workers[0]!.ended, afresh.mock.calls.length]).toEqual([true, 1]);
    expect(has(workers[1]!).sort()).toEqual([1, 2]);
    answer(workers[1]!);
    answer(workers[1]!);
    await turn();
    expect([lacking.outcome, other.outcome]).toEqual([['answered'], ['answered']]);
  });

  it('asks all of a worker that is gone once more, of another', async () => {
    const { workers, has, ask } = shop(2);
    ask(1);
    ask(2);
    ask(3);
    workers[0]!.gone('no network');
    await turn();
    expect(
      workers
        .filter(({ ended }) => !ended)
        .flatMap(has)
        .sort(),
    ).toEqual([1, 2, 3]);
  });

  it('waits where the worker cannot be had, and goes on when the reader has it tried again', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    vi.stubGlobal('navigator', { onLine: true });
    vi.stubGlobal('addEventListener', () => undefined);
    const { workers, answer, ask } = shop(1);
    let waiting: readonly Waiting[] = [];
    whileWaiting((now) => (waiting = now));
    const patient = ask(1);
    for (const time of [0, 1]) {
      workers[time]!.gone('no network');
      await turn();
    }
    expect([workers.length, patient.outcome, waiting.length]).toEqual([2, [], 1]);
    waiting[0]!.again();
    answer(workers[2]!);
    await turn();
    expect([patient.outcome, waiting.length]).toEqual([['answered'], 0]);
  });

  it('hands on what the solver throws, and asks no other worker for it', async () => {
    const { workers, ask } = shop(1);
    const broken = ask(1);
    workers[0]!.said({ id: workers[0]!.posted[0]!.id, threw: new Error('no such curve') });
    await turn();
    expect([broken.outcome, workers.length]).toEqual([['no such curve'], 1]);
  });
});
