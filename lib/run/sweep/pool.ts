// Workers that share out the problems of a sweep in batches, and put what comes back in order. A batch whose worker fails is tried again problem
// by problem, so that one problem loses no other.

import type { RunProblem } from '../problem.js';
import type { Cancelling } from '../solve-async.js';
import { type SweepWorker, type Thread, threadOf } from './host.js';
import { isKept, receivedError, sentError, type SentAnswer, type SweepBatch, type SweepReading } from './messages.js';

/** What became of one problem: what the reader kept of its run, or why there is nothing. */
export type SweepAnswer<Kept = unknown> =
  { readonly found: true; readonly kept: Kept } | { readonly found: false; readonly error: Error };

/** Who looks on. */
export interface SweepWatch {
  readonly signal?: Cancelling & { addEventListener?(kind: 'abort', call: () => void): void };
  readonly onProgress?: (done: number, of: number) => void;
}

/** Workers kept from sweep to sweep. */
export interface SweepPool {
  /** Shares a list of problems out; what is kept comes in their order. */
  run<Kept>(
    problems: readonly RunProblem[],
    read: SweepReading,
    watch?: SweepWatch,
  ): Promise<readonly SweepAnswer<Kept>[]>;
  /** Ends the workers; what is under way is rejected. */
  close(): void;
}

/** Each worker gets about so many batches, so that none is left with a long one at the end; and no longer ones than this. */
const BATCHES = 8;
const LONGEST_BATCH = 64;

interface Part {
  readonly job: Job;
  readonly indices: readonly number[];
}
interface Job {
  readonly problems: readonly RunProblem[];
  readonly read: SweepReading;
  readonly answers: SweepAnswer[];
  readonly onProgress: SweepWatch['onProgress'];
  readonly resolve: (answers: readonly SweepAnswer[]) => void;
  readonly reject: (reason: Error) => void;
  done: number;
  over: boolean;
}
interface Seat {
  thread: Thread | undefined;
  part: Part | undefined;
  id: number;
}

/** A pool of so many workers, which are made when first needed. */
export function poolOf(make: () => SweepWorker, count: number): SweepPool {
  const seats: Seat[] = Array.from({ length: count }, () => ({ thread: undefined, part: undefined, id: 0 }));
  const waiting: Part[] = [];
  let sent = 0;
  return {
    run(problems, read, watch = {}) {
      return start(problems, read, watch) as Promise<never>;
    },
    close() {
      for (const { part } of seats) if (part !== undefined) stop(part.job, new Error('the pool was closed'));
      for (const { job } of [...waiting]) stop(job, new Error('the pool was closed'));
      for (const seat of seats) leave(seat);
    },
  };

  function start(
    problems: readonly RunProblem[],
    read: SweepReading,
    { signal, onProgress }: SweepWatch,
  ): Promise<readonly SweepAnswer[]> {
    return new Promise((resolve, reject) => {
      const answers: SweepAnswer[] = Array.from({ length: problems.length });
      const job: Job = { problems, read, answers, onProgress, resolve, reject, done: 0, over: false };
      if (signal?.aborted === true) {
        stop(job, reasonOf(signal));
        return;
      }
      if (problems.length === 0) finish(job);
      signal?.addEventListener?.('abort', () => stop(job, reasonOf(signal)));
      const size = Math.min(LONGEST_BATCH, Math.max(1, Math.ceil(problems.length / (BATCHES * count))));
      for (let i = 0; i < problems.length; i += size) {
        const indices = Array.from({ length: Math.min(size, problems.length - i) }, (_none, k) => i + k);
        waiting.push({ job, indices });
      }
      for (const seat of seats) give(seat);
    });
  }

  /** Hands the next part to a worker that has none. */
  function give(seat: Seat): void {
    if (seat.part !== undefined) return;
    const part = waiting.shift();
    if (part === undefined) return;
    const { job, indices } = part;
    seat.part = part;
    seat.id = ++sent;
    const problems = indices.map((i) => job.problems[i]!);
    const batch: SweepBatch = { kind: 'sweepBatch', id: seat.id, read: job.read, problems };
    try {
      seat.thread ??= seatThread(seat);
      seat.thread.post(batch);
    } catch (error) {
      // A problem that cannot be sent, or no worker at all.
      seat.part = undefined;
      retry(part, error);
      give(seat);
    }
  }

  function seatThread(seat: Seat): Thread {
    const thread: Thread = threadOf(
      make(),
      (data) => {
        if (seat.thread !== thread || !isKept(data) || seat.part === undefined || data.id !== seat.id) return;
        const { job, indices } = seat.part;
        seat.part = undefined;
        indices.forEach((index, k) => settle(job, index, data.answers[k]!));
        told(job);
        give(seat);
      },
      (why) => {
        if (seat.thread !== thread) return;
        const { part } = seat;
        seat.part = undefined;
        leave(seat);
        if (part !== undefined) retry(part, new Error(`a worker failed: ${why}`));
        give(seat);
      },
    );
    return thread;
  }

  /** A part that came to nothing: its problems one by one, or the answer that there is none. */
  function retry({ job, indices }: Part, error: unknown): void {
    if (job.over) return;
    if (indices.length > 1) {
      waiting.unshift(...indices.map((index) => ({ job, indices: [index] })));
      for (const seat of seats) give(seat);
      return;
    }
    settle(job, indices[0]!, { failed: sentError(error) });
    told(job);
  }

  function settle(job: Job, index: number, answer: SentAnswer): void {
    job.answers[index] =
      'kept' in answer ? { found: true, kept: answer.kept } : { found: false, error: receivedError(answer.failed) };
    job.done++;
  }

  function told(job: Job): void {
    if (job.over) return;
    job.onProgress?.(job.done, job.problems.length);
    if (job.done === job.problems.length) finish(job);
  }

  function finish(job: Job): void {
    job.over = true;
    job.resolve(job.answers);
  }

  /** Ends a job: what waits of it is forgotten, workers that are at it are ended, and made anew when needed. */
  function stop(job: Job, reason: Error): void {
    if (job.over) return;
    job.over = true;
    for (let i = waiting.length - 1; i >= 0; i--) if (waiting[i]!.job === job) waiting.splice(i, 1);
    for (const seat of seats) {
      if (seat.part?.job !== job) continue;
      seat.part = undefined;
      leave(seat);
    }
    job.reject(reason);
    for (const seat of seats) give(seat);
  }

  function leave(seat: Seat): void {
    const { thread } = seat;
    seat.thread = undefined;
    thread?.end();
  }
}

function reasonOf({ reason }: Cancelling): Error {
  return reason instanceof Error ? reason : new Error('the sweep was cancelled', { cause: reason });
}
