// What the integrator asks of a problem, and nothing more: M u' = f(s, u) with a constant diagonal mass
// matrix M ≥ 0 (a zero makes that row an algebraic equation; the problem must then be of index 1).
// It has never heard of alcohol.

import type { ShiftedMatrix } from '../linear/shifted-matrix.js';

/** A stiff system of differential and algebraic equations in the independent variable s. */
export interface StiffSystem {
  readonly size: number;
  /** Diagonal of M. */
  readonly mass: Float64Array;
  /** Where `linearise` writes ∂f/∂u. */
  readonly matrix: ShiftedMatrix;
  /** out = f(s, u). */
  rightHandSide(s: number, u: Float64Array, out: Float64Array): void;
  /** Writes ∂f/∂u to `matrix.entries` and ∂f/∂s to `slope`. */
  linearise(s: number, u: Float64Array, slope: Float64Array): void;
  /** Set where f does not depend on s: then ∂f/∂s is 0 and need not be asked for. */
  readonly autonomous?: true;
  /** Both at once, where they share most of their work: out = f(s, u) and ∂f/∂u to `matrix.entries`. Need not be there. */
  evaluate?(s: number, u: Float64Array, out: Float64Array): void;
  /** How far ahead the equations have their next corner, as it looks from a state and f there, just evaluated with slopes: no use in stepping beyond. */
  corner?(u: Float64Array, f: Float64Array): number;
  /** Whether a state can be at all: a step that ends in one that cannot is tried again, shorter. May mend round-off in what is kept. Need not be there. */
  admit?(u: Float64Array): boolean;
  /**
   * ∂f/∂p by a number of which systems of the same make stand on both sides: `wide` ones tell what stays through a run, `near` ones follow it. Where
   * it need not be found by a difference; null or not there where it must.
   */
  slopesBy?(wide: BothSides<StiffSystem>, near: BothSides<StiffSystem>): StateSlopes | null;
  /** Error weights at a state: an error of w[i] in component i counts as 1. */
  weights(u: Float64Array, out: Float64Array): void;
}

/** A scalar whose fall through zero (from above) ends an integration. */
export interface FallingEvent {
  value(s: number, u: Float64Array): number;
}

/** Systems on both sides of a number, and how far apart in it. */
export interface BothSides<System> {
  readonly plus: System;
  readonly minus: System;
  readonly apart: number;
}

/** Writes ∂f/∂p at a state where the system was evaluated. */
export interface StateSlopes {
  write(u: Float64Array, out: Float64Array): void;
}
