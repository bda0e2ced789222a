// One door to every run: the model says which equations are solved.

import { fieldFaults, listFault, refuse, shapeFault } from '../arguments.js';
import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import { OWN_SYSTEM } from '../equilibrium/own-system.js';
import { coded, type InputFault } from '../errors.js';
import { checkedProblem, faultsOf } from './check-problem.js';
import { drive, type RunObserver } from './drive.js';
import { sharedEngine } from './engines/registry.js';
import type { AnyProblem, EnergyProblem, RunProblem, SimplifiedProblem } from './problem.js';
import type { EnergySolution, RunSolution } from './solution.js';
import { solutionOf } from './solved.js';

/** What can be asked of a run besides its problem. */
export interface SolveOptions {
  /** Each is shown every accepted step of the solver. */
  readonly observers?: readonly RunObserver[];
}

/**
 * Runs any still in time, through its run sheet.
 *
 * Equation: balances of ethanol, water and energy on every vessel (model 'energy'), or a named simplification of them.
 * @param problem Still, charge, run sheet and the rest as plain data; see RunProblem for units, ranges and defaults.
 * @param system Equilibrium of ethanol and water, made by createEthanolWater(); default the library's own.
 * @param options Observers of the run.
 * @returns Columns of the run, its jars, how it ended and what it cost; columns are worked out when first asked for.
 * @throws InputError when a part of the problem cannot be used, or a stop rule lies beyond any run; problemFaults lists the parts without running.
 * @example solve({ still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'volume', volume_m3: 0.06, strength: 0.1 }, sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }] }).ending.kind // → 'stopped'
 * Source: this project, docs/theory/train.md, docs/theory/column.md and docs/theory/simple-still.md.
 */
export function solve<Problem extends RunProblem>(
  problem: AnyProblem<Problem>,
  system?: EthanolWater,
  options?: SolveOptions,
): RunSolution;
export function solve(problem: SimplifiedProblem, system?: EthanolWater, options?: SolveOptions): RunSolution;
export function solve(problem: EnergyProblem, system?: EthanolWater, options?: SolveOptions): EnergySolution;
export function solve(problem: RunProblem, system: EthanolWater = OWN_SYSTEM, options: SolveOptions = {}): RunSolution {
  refuse(fieldFaults('options', options, ['observers']));
  const observers = observersOf(options);
  const complete = checkedProblem(problem, system);
  const engine = sharedEngine(complete, system);
  const running = drive(complete, engine, observers);
  let turn = running.next();
  while (turn.done !== true) turn = running.next();
  // The engine's own record is written over by the next run.
  const course = { ...turn.value, path: engine.path.copy() };
  return solutionOf(complete, system, course, engine.holders);
}

/** The observers of the options; an InputError unless each can be shown a step. */
export function observersOf({ observers = [] }: SolveOptions): readonly RunObserver[] {
  refuse(listFault('options.observers', observers, 'observers', 0, 1000));
  const expected = 'an observer: { step(view, engine, index) }';
  refuse(
    observers.flatMap((one, i) => shapeFault(`options.observers[${String(i)}]`, one, { step: 'function' }, expected)),
  );
  return observers;
}

/**
 * Everything that keeps a problem from being run, without running it.
 *
 * Equation: checks of shape, then of the still, then of ranges, then of what the model cannot run.
 * @param problem A RunProblem, or data that should be one.
 * @param system Equilibrium of ethanol and water; default the library's own.
 * @returns Faults, each with argument, value and what would be right: all of the first group that has any, of shape (unknown names and kinds among them), then of the still, then numbers, then what the model cannot run; an empty list when the problem can be run.
 * @example problemFaults({ still: { kettle: { volume_m3: 0.1 } }, charge: { kind: 'volume', volume_m3: -5, strength: 0.1 }, sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }] }).length // → 1
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function problemFaults(problem: RunProblem, system: EthanolWater = OWN_SYSTEM): readonly InputFault[] {
  return faultsOf(problem, system).map(coded);
}
