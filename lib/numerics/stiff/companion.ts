// What goes along with an integration, accepted step by accepted step, and may use the matrix factorised for it: sensitivities, linear companions.
// It changes nothing of the integration.

import type { StepMethod } from './step-method.js';

/** Goes along with an integration. */
export interface StepCompanion {
  /** Integration begins, or begins anew, at (s, start); the method has begun. */
  begin(method: StepMethod, s: number, start: Float64Array): void;
  /** A step was accepted; the method has not gone on yet, and its matrix is that of the step. */
  step(method: StepMethod, from: number, to: number, start: Float64Array, mark: number): void;
}
