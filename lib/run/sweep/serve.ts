// The worker's side of a sweep: runs the problems it is sent, one after the other, and answers with what the reader keeps of each.

import { recordFault, refuse, shapeFault } from '../../arguments.js';
import { checkSystem } from '../check-run.js';
import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../../equilibrium/own-system.js';
import { solve } from '../solve.js';
import { isBatch, sentError, type SentAnswer, type SweepBatch, type SweepKept, type SweepReading } from './messages.js';
import { readerNamed, SWEEP_READERS, type SweepReader } from './readers.js';

/** Where a worker gets its messages and answers them: `self` in a browser's worker, `parentPort` in one of Node. */
export interface SweepPort {
  postMessage(message: unknown): void;
}

/** Answers a sweep's batches that come as messages; others are left alone. */
export type SweepServer = (message: unknown) => void;

/**
 * Makes the worker's side of a sweep, for a worker file of one's own; the ready-made file serves the readers of the library.
 *
 * Equation: none.
 * @param port Where answers go: `self` in a browser's worker, `parentPort` in one of Node.
 * @param readers Readers by name, besides the library's own 'end', 'jars', 'steps', 'account' and 'plain'.
 * @param system Equilibrium of ethanol and water; default the library's own.
 * @returns A function to be called with each message's data.
 * @throws InputError when the port cannot post, or readers or system are none.
 * @example typeof serveSweep({ postMessage: () => undefined }) // → 'function'
 * Source: this project.
 */
export function serveSweep(
  port: SweepPort,
  readers: Readonly<Record<string, SweepReader>> = {},
  system: EthanolWater = OWN_SYSTEM,
): SweepServer {
  const expected = 'self in a browser’s worker, parentPort in one of Node';
  refuse(shapeFault('port', port, { postMessage: 'function' }, expected));
  refuse(recordFault('readers', readers));
  checkSystem(system);
  const known: Readonly<Record<string, SweepReader>> = { ...SWEEP_READERS, ...readers };
  return (message) => {
    if (isBatch(message)) void answer(port, message, known, system);
  };
}

async function answer(
  port: SweepPort,
  { id, read, problems }: SweepBatch,
  known: Readonly<Record<string, SweepReader>>,
  system: EthanolWater,
): Promise<void> {
  const answers: SentAnswer[] = [];
  try {
    const reader = await readerOf(read, known);
    for (const problem of problems) {
      try {
        answers.push({ kept: reader(solve(problem, system), read.argument) });
      } catch (error) {
        answers.push({ failed: sentError(error) });
      }
    }
  } catch (error) {
    answers.push(...problems.map(() => ({ failed: sentError(error) })));
  }
  try {
    port.postMessage({ kind: 'sweepKept', id, answers } satisfies SweepKept);
  } catch (error) {
    // What a reader kept cannot be sent: a function, say.
    const failed = { failed: sentError(error) };
    port.postMessage({ kind: 'sweepKept', id, answers: answers.map(() => failed) } satisfies SweepKept);
  }
}

async function readerOf(
  { name, module }: SweepReading,
  known: Readonly<Record<string, SweepReader>>,
): Promise<SweepReader> {
  if (module === undefined) return readerNamed(known, name);
  const loaded = (await import(/* @vite-ignore */ module)) as Readonly<Record<string, SweepReader>>;
  return readerNamed(loaded, name);
}
