// What the integrator asks of a method, and the family: one contract, one member a line.

import { BDF4, BDF5, MultistepStep, type MultistepMethod } from './multistep-step.js';
import { RODAS4 } from './rodas4.js';
import { RODAS5P } from './rodas5p.js';
import { RosenbrockStep } from './rosenbrock-step.js';
import type { RosenbrockTableau } from './rosenbrock-tableau.js';
import type { StepMethod } from './step-method.js';
import type { StiffSystem } from './stiff-system.js';

/** A method as data: the table of a Rosenbrock method, or a multistep formula. */
export type StiffMethod = RosenbrockTableau | MultistepMethod;

/** Every method. */
export const STIFF_METHODS: readonly StiffMethod[] = [BDF5, BDF4, RODAS4, RODAS5P];

/** Puts a method to work on a system. */
export function stepMethod(system: StiffSystem, method: StiffMethod): StepMethod {
  return 'gamma' in method ? new RosenbrockStep(system, method) : new MultistepStep(system, method);
}
