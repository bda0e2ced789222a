// Refuses a problem that cannot be run, naming every bad argument at once: of its shape, else of its still, else of its numbers, else what its
// model cannot run.

import { checkSystem } from './check-run.js';
import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import { InputError, type Fault } from '../errors.js';
import { faultsOfStill } from '../still/check.js';
import { chargeFaults } from './charge.js';
import { heatFaults, MOST_ROWS, rangeFault, wholeFault } from './check.js';
import { refluxFaults } from './check-reflux.js';
import { type CompleteProblem, completeProblem, keepsEnergy } from './complete.js';
import { engineFaults } from './engines/registry.js';
import type { Outputs, RunProblem } from './problem.js';
import { shapeFaults } from './shape.js';

/** The problem with everything filled in; throws an InputError with every fault where it cannot be run. */
export function checkedProblem(problem: RunProblem, system: EthanolWater): CompleteProblem {
  checkSystem(system);
  const { faults, complete } = examined(problem, system);
  if (complete === undefined || faults.length > 0) throw new InputError(...faults);
  return complete;
}

/** Every fault of a problem, or of data that should be one. */
export function faultsOf(problem: unknown, system: EthanolWater): readonly Fault[] {
  checkSystem(system);
  return examined(problem as RunProblem, system).faults;
}

function examined(
  problem: RunProblem,
  system: EthanolWater,
): { readonly faults: readonly Fault[]; readonly complete?: CompleteProblem } {
  const shape = shapeFaults(problem);
  if (shape.length > 0) return { faults: shape };
  const complete = completeProblem(problem);
  const still = faultsOfStill(complete.still, 'still');
  if (still.length > 0) return { faults: still };
  const numbers = numberFaults(complete);
  return { faults: numbers.length > 0 ? numbers : engineFaults(complete, system), complete };
}

/** Numbers that every model needs. */
function numberFaults(problem: CompleteProblem): Fault[] {
  const { charge, heat, sheet, outputs, jars, model, tolerance, still } = problem;
  const [finest, coarsest] = [keepsEnergy(model) ? 1e-10 : 1e-12, 1e-3];
  const aim = `a tolerance from ${String(finest)} to ${String(coarsest)}`;
  const boilUp = keepsEnergy(model);
  return [
    ...chargeFaults(charge),
    ...heatFaults('heat', heat, boilUp, 1e-3),
    ...sheet.flatMap((step, i) =>
      step.heat === undefined ? [] : heatFaults(`sheet[${String(i)}].heat`, step.heat, boilUp, 0),
    ),
    ...sheet.flatMap((step, i) => refluxFaults(`sheet[${String(i)}].reflux`, step.reflux, still)),
    ...outputFaults(outputs),
    ...(jars.kind === 'size' ? rangeFault('jars.volume_m3', jars.volume_m3, 1e-6, 1e3, 'a volume from 1 mL up') : []),
    ...rangeFault('tolerance', tolerance, finest, coarsest, aim),
  ];
}

function outputFaults(outputs: Outputs): Fault[] {
  switch (outputs.kind) {
    case 'every':
      return rangeFault('outputs.interval_s', outputs.interval_s, 1e-3, 1e9, 'an interval from 0.001 s up');
    case 'perStep':
      return wholeFault('outputs.points', outputs.points, 1, 100);
    case 'evenly':
      return wholeFault('outputs.rows', outputs.rows, 2, MOST_ROWS);
  }
}
