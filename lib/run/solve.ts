// One door to every run: the kind of problem says who solves it.

import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import type { InputFault } from '../errors.js';
import { columnProblemFaults } from './column/check.js';
import { solveColumn } from './column/solve.js';
import type { ColumnProblem, SimpleProblem } from './problem.js';
import { simpleProblemFaults, solveSimple } from './rayleigh/solve.js';
import { oneOfFault } from './shape.js';
import type { RunSolution } from './solution.js';

/** A run of any still. */
export type RunProblem = SimpleProblem | ColumnProblem;

/**
 * Runs any still in time, from the first vapour to its last stop rule.
 *
 * Equation: solveSimple or solveColumn, by the problem's kind.
 * @param problem A SimpleProblem or a ColumnProblem, as plain data.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Columns of the run, how it ended and what it cost; arrays are the caller's.
 * @throws InputError when a part of the problem cannot be used; problemFaults lists the parts without running.
 * @example solve({ kind: 'simple', charge: { kind: 'amount', amount_mol: 100, moleFraction: 0.18 }, pressure_Pa: 101325, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.01 }, until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }, createEthanolWater()).ending.kind // → 'stopped'
 * Source: this project, docs/theory/column.md and docs/theory/simple-still.md.
 */
export function solve(problem: RunProblem, system: EthanolWater): RunSolution {
  return problem.kind === 'simple' ? solveSimple(problem, system) : solveColumn(problem, system);
}

/**
 * Everything that keeps a problem from being run, without running it.
 *
 * Equation: checks of shape, then of ranges, then of stop rules.
 * @param problem A SimpleProblem or a ColumnProblem, or data that should be one.
 * @param system Equilibrium of ethanol and water, made once by createEthanolWater() and used again.
 * @returns Faults, each with argument, value and what would be right; an empty list when the problem can be run.
 * @example problemFaults({ kind: 'simple', charge: { kind: 'amount', amount_mol: -5, moleFraction: 0.18 }, pressure_Pa: 101325, activity: 'raoult', heat: { kind: 'boilUp', rate_mol_s: 0.01 }, until: [] }, createEthanolWater()).length // → 1
 * Source: this project's error contract (DEVELOPERS.md).
 */
export function problemFaults(problem: RunProblem, system: EthanolWater): readonly InputFault[] {
  const kind: unknown = (problem as Partial<RunProblem> | null)?.kind;
  if (kind === 'simple') return simpleProblemFaults(problem as SimpleProblem, system);
  if (kind === 'column') return columnProblemFaults(problem as ColumnProblem, system);
  return oneOfFault('kind', kind, ['simple', 'column']);
}
