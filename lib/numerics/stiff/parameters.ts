// How a stiff system changes with its parameters, as whoever carries sensitivities asks for it: M u' = f(s, u, p).

import type { StiffSystem } from './stiff-system.js';

/** A system with parameters p_k beside its state. */
export interface ParameterSlopes {
  readonly count: number;
  /** The system once more, with storage that is free for this. */
  readonly system: StiffSystem;
  /** Diagonal of ∂M/∂p_k; null where M does not depend on p_k. */
  massSlope(k: number): Float64Array | null;
  /** What follows is asked at (s, u); with the Jacobian there in `system.matrix` where it is wanted. */
  look(s: number, u: Float64Array, withJacobian: boolean): void;
  /** out = ∂f/∂p_k there. */
  byParameter(k: number, out: Float64Array): void;
  /** Makes ready the derivative of the Jacobian at (s, u) with u along v and with p_k, */
  turn(k: number, s: number, u: Float64Array, v: Float64Array): void;
  /** of which out = this times w. */
  turned(k: number, w: Float64Array, out: Float64Array): void;
}
