// Whether something is a run, or the system that runs are computed with: known by what it has.

import { refuse, shapeFault } from '../arguments.js';

/** Throws an InputError unless something is a solution, or a plain copy of one. */
export function checkRun(run: unknown, argument = 'run'): void {
  const shape = { rows: 'number', time_s: 'numbers', spoutStrength: 'numbers', stepStarts: 'list', problem: 'object' };
  refuse(shapeFault(argument, run, shape, 'a solution as solve gives it, or its plain copy'));
}

/** Throws an InputError unless something is a system. */
export function checkSystem(system: unknown): void {
  const shape = { model: 'function', curve: 'function', enthalpy: 'function' };
  refuse(shapeFault('system', system, shape, 'a system as createEthanolWater() gives it'));
}
