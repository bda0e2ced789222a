// Many problems on all processors. What a reader keeps of each run comes back, in order; a problem that cannot be run takes no other with it.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { fieldFaults, listFault, recordFault, refuse, typeCode } from '../../arguments.js';
import { InputError } from '../../errors.js';
import type { RunProblem } from '../problem.js';
import type { RunSolution } from '../solution.js';
import { solveAsync } from '../solve-async.js';
import { processors, type SweepWorker } from './host.js';
import { poolOf, type SweepAnswer, type SweepPool, type SweepWatch } from './pool.js';
import type { SweepReading } from './messages.js';
import { readerNamed, SWEEP_READERS, type SweepReader, type SweepReaders } from './readers.js';

/** How a sweep is shared out. */
export interface SweepWorkers {
  /** Makes a worker of the library's worker file, or of one's own that calls serveSweep. */
  readonly worker: () => SweepWorker;
  /** How many; default one a processor. */
  readonly workers?: number;
}

/** A sweep by workers, or in this thread where none are given: then `read` may be a function as well. */
export interface SweepOptions extends SweepWatch, Partial<SweepWorkers> {
  readonly read: keyof SweepReaders | SweepReading | ((run: RunSolution) => unknown);
  /** Equilibrium for a sweep in this thread; workers have their own. */
  readonly system?: EthanolWater;
}

/** What a reader keeps. */
type KeptBy<Read> = Read extends keyof SweepReaders
  ? SweepReaders[Read]
  : Read extends (run: RunSolution) => infer Kept
    ? Kept
    : unknown;

/**
 * Runs any list of problems, on all processors where workers are given, and keeps of each run what a reader reads.
 *
 * Equation: as solve, problem by problem, to the same bits.
 * @param problems Problems as solve takes them; plain data where they go to workers.
 * @param options What to keep, who runs it, a signal that cancels, who is told of progress.
 * @returns A promise of one answer a problem, in their order: found true with what was kept, or found false with the error of that problem alone.
 * @throws InputError (the promise is rejected) when no reader of that name is known here, or a function is to go to workers; the signal's reason when it is cancelled.
 * @example sweep([], { read: 'end' }) instanceof Promise // → true
 * Source: this project, docs/how-it-works/sweep.md.
 */
export async function sweep<Read extends SweepOptions['read']>(
  problems: readonly RunProblem[],
  options: SweepOptions & { readonly read: Read },
): Promise<readonly SweepAnswer<KeptBy<Read>>[]> {
  refuse(listFault('problems', problems, 'problems', 0, Infinity));
  refuse(fieldFaults('options', options, OPTIONS));
  const { read, worker, workers } = options;
  if (worker === undefined) return inThisThread(problems, options);
  if (typeof read === 'function') {
    const expected = 'the name of a reader, or { name, module }: a function cannot be sent to a worker';
    throw new InputError({ argument: 'options.read', value: read, expected });
  }
  const pool = sweepPool({ worker, ...(workers === undefined ? {} : { workers }) });
  try {
    return await pool.run(problems, typeof read === 'string' ? { name: read } : read, options);
  } finally {
    pool.close();
  }
}

/**
 * Workers that are kept from sweep to sweep.
 *
 * Equation: none.
 * @param by Who makes a worker, and how many there are to be; default one a processor.
 * @returns A pool: `run` does as sweep does, `close` ends the workers.
 * @throws InputError when the number of workers is not a whole number from 1.
 * @example typeof sweepPool({ worker: () => ({ postMessage: () => undefined, terminate: () => undefined }) }).run // → 'function'
 * Source: this project, docs/how-it-works/sweep.md.
 */
export function sweepPool(by: SweepWorkers): SweepPool {
  refuse(fieldFaults('by', by, ['worker', 'workers']));
  const { worker, workers = processors() } = by;
  if (typeof worker !== 'function') {
    const expected = 'a function that makes a worker';
    throw new InputError({ code: typeCode(worker), argument: 'by.worker', value: worker, expected });
  }
  if (!(Number.isInteger(workers) && workers >= 1 && workers <= 1024)) {
    throw new InputError({ argument: 'workers', value: workers, expected: 'a whole number from 1 to 1024' });
  }
  return poolOf(worker, workers);
}

const OPTIONS = ['read', 'worker', 'workers', 'signal', 'onProgress', 'system'];

async function inThisThread<Kept>(
  problems: readonly RunProblem[],
  { read, signal, onProgress, system }: SweepOptions,
): Promise<readonly SweepAnswer<Kept>[]> {
  const reader = typeof read === 'function' ? read : here(read);
  const argument = typeof read === 'object' ? read.argument : undefined;
  const answers: SweepAnswer<Kept>[] = [];
  for (const problem of problems) {
    try {
      const run = await solveAsync(problem, signal === undefined ? {} : { signal }, system);
      answers.push({ found: true, kept: reader(run, argument) as Kept });
    } catch (error) {
      if (signal?.aborted === true) throw error;
      answers.push({ found: false, error: error instanceof Error ? error : new Error(String(error)) });
    }
    onProgress?.(answers.length, problems.length);
  }
  return answers;
}

function here(read: keyof SweepReaders | SweepReading): SweepReader {
  if (typeof read !== 'string') refuse(recordFault('options.read', read));
  const { name, module } = typeof read === 'string' ? { name: read, module: undefined } : read;
  if (module === undefined) return readerNamed(SWEEP_READERS, name);
  throw new InputError({ argument: 'read.module', value: module, expected: 'none: without workers pass the function' });
}
