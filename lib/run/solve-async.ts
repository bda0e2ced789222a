// The same run in slices, so that others have their turn in between: it can be watched and cancelled. It has equations of its own, so that
// several can be under way at once.

import { fieldFaults, refuse } from '../arguments.js';
import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../equilibrium/own-system.js';
import type { Second } from '../units/quantities.js';
import { checkedProblem } from './check-problem.js';
import { drive } from './drive.js';
import { engineOf } from './engines/registry.js';
import type { AnyProblem, EnergyProblem, RunProblem, SimplifiedProblem } from './problem.js';
import type { EnergySolution, RunSolution } from './solution.js';
import { observersOf, type SolveOptions } from './solve.js';
import { solutionOf } from './solved.js';

/** What tells a run to stop; an AbortSignal is one. */
export interface Cancelling {
  readonly aborted: boolean;
  readonly reason?: unknown;
}

/** What can be asked of a run in slices. */
export interface SolveAsyncOptions extends SolveOptions {
  /** Looked at between slices. */
  readonly signal?: Cancelling;
  /** Told after every slice how far the run has come. */
  readonly onProgress?: (reached_s: Second) => void;
}

/** Steps of the solver in a slice: some ten milliseconds of the full model. */
const SLICE = 64;

/**
 * Runs any still in time, in slices between which others have their turn.
 *
 * Equation: as solve, to the same bits.
 * @param problem Still, charge, run sheet and the rest as plain data; see RunProblem.
 * @param options A signal that cancels, who is told of progress, observers.
 * @param system Equilibrium of ethanol and water; default the library's own.
 * @returns A promise of what solve gives.
 * @throws InputError (the promise is rejected) when a part of the problem cannot be used; the signal's reason when it is cancelled.
 * @example solveAsync({ still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 }, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }] }) instanceof Promise // → true
 * Source: this project, docs/decisions/0032-one-run.md.
 */
export function solveAsync<Problem extends RunProblem>(
  problem: AnyProblem<Problem>,
  options?: SolveAsyncOptions,
  system?: EthanolWater,
): Promise<RunSolution>;
export function solveAsync(
  problem: SimplifiedProblem,
  options?: SolveAsyncOptions,
  system?: EthanolWater,
): Promise<RunSolution>;
export function solveAsync(
  problem: EnergyProblem,
  options?: SolveAsyncOptions,
  system?: EthanolWater,
): Promise<EnergySolution>;
export async function solveAsync(
  problem: RunProblem,
  options: SolveAsyncOptions = {},
  system: EthanolWater = OWN_SYSTEM,
): Promise<RunSolution> {
  refuse(fieldFaults('options', options, ['observers', 'signal', 'onProgress']));
  const { signal, onProgress } = options;
  const observers = observersOf(options);
  const complete = checkedProblem(problem, system);
  const engine = engineOf(complete, system);
  const running = drive(complete, engine, observers, SLICE);
  for (;;) {
    if (signal?.aborted === true) return Promise.reject(cancelled(signal));
    const turn = running.next();
    if (turn.done === true) return solutionOf(complete, system, turn.value, engine.holders);
    onProgress?.(turn.value);
    await othersTurn();
  }
}

/** Why a run was cancelled, as an error. */
function cancelled({ reason }: Cancelling): Error {
  return reason instanceof Error ? reason : new Error('the run was cancelled', { cause: reason });
}

/** Resolves when whatever else waits has had its turn. Every host has setTimeout; the language does not say so. */
function othersTurn(): Promise<void> {
  const host = globalThis as unknown as { setTimeout(call: () => void, ms: number): unknown };
  return new Promise((resolve) => host.setTimeout(resolve, 0));
}
