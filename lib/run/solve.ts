// One door to every run: the kind of problem says who solves it.

import { InputError, type InputFault } from '../errors.js';
import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import { columnProblemFaults } from './engines/equal-flows/check.js';
import { solveColumn } from './engines/equal-flows/solve.js';
import type { ColumnProblem, SimpleProblem } from './problem.js';
import { simpleProblemFaults, solveSimple } from './engines/rayleigh/solve.js';
import { oneOfFault } from './shape.js';
import type { RunSolution } from './solution.js';
import { trainProblemFaults } from './engines/energy/check.js';
import type { TrainProblem } from './engines/energy/problem.js';
import type { TrainSolution } from './engines/energy/solution.js';
import { solveTrain } from './engines/energy/solve.js';

/** A run of any still. */
export type RunProblem = SimpleProblem | ColumnProblem | TrainProblem;

/** What a problem of a kind answers with. */
export type SolutionOf<Problem extends RunProblem> = Problem extends TrainProblem ? TrainSolution : RunSolution;

/**
 * Runs any still in time, to the last stop rule of its run sheet.
 *
 * Equation: the bare pot by quadrature, the column at constant molar overflow or the still with its energy, by the problem's kind.
 * @param problem A SimpleProblem, a ColumnProblem or a TrainProblem, as plain data.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run, how it ended and what it cost; arrays are the caller's.
 * @throws InputError when a part of the problem cannot be used; problemFaults lists the parts without running.
 * @example solve({ kind: 'simple', charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, pressure_Pa: 101325, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.01 }, until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }, createEthanolWater()).ending.kind // → 'stopped'
 * Source: this project, docs/theory/train.md, docs/theory/column.md and docs/theory/simple-still.md.
 */
export function solve<Problem extends RunProblem>(problem: Problem, system: EthanolWater): SolutionOf<Problem> {
  return solveAny(problem, system) as SolutionOf<Problem>;
}

function solveAny(problem: RunProblem, system: EthanolWater): RunSolution | TrainSolution {
  switch ((problem as RunProblem | null | undefined)?.kind) {
    case 'simple':
      return solveSimple(problem as SimpleProblem, system);
    case 'column':
      return solveColumn(problem as ColumnProblem, system);
    case 'train':
      return solveTrain(problem as TrainProblem, system);
    default:
      throw new InputError(...problemFaults(problem, system));
  }
}

/**
 * Everything that keeps a problem from being run, without running it.
 *
 * Equation: checks of shape, then of ranges, then of stop rules.
 * @param problem A SimpleProblem, a ColumnProblem or a TrainProblem, or data that should be one.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Faults, each with argument, value and what would be right: all of the first group that has any, of shape (unknown names and kinds among them), then numbers, then how they go together, then stop rules; an empty list when the problem can be run.
 * @example problemFaults({ kind: 'simple', charge: { kind: 'amount', amount_mol: -5, moleFraction: 0.18 }, pressure_Pa: 101325, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.01 }, until: [] }, createEthanolWater()).length // → 1
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function problemFaults(problem: RunProblem, system: EthanolWater): readonly InputFault[] {
  const kind: unknown = (problem as Partial<RunProblem> | null | undefined)?.kind;
  if (kind === 'simple') return simpleProblemFaults(problem as SimpleProblem, system);
  if (kind === 'column') return columnProblemFaults(problem as ColumnProblem, system);
  if (kind === 'train') return trainProblemFaults(problem as TrainProblem, system);
  return oneOfFault('kind', kind, ['simple', 'column', 'train']);
}
