// What the integrator asks of a method at work on a system. One-step methods know nothing of the past; multistep methods
// keep it from `begin` on and grow it by `advance`.

/** Counts of work. */
export interface WorkCounts {
  rightHandSides: number;
  jacobians: number;
  factorisations: number;
}

/** A method with its storage; steps allocate nothing. */
export interface StepMethod {
  /** State at the end of the last attempted step. */
  readonly end: Float64Array;
  readonly work: WorkCounts;
  /** Vectors that the dense output of a step needs besides its start and end; 0 where past states serve. */
  readonly denseVectors: number;
  /** Order of the last attempted step's dense output, as the number of states before its end that it goes through. */
  readonly order: number;
  /** The state before the start with which a multistep method began; undefined for methods without a past. */
  readonly before: { readonly moment: number; readonly state: Float64Array } | undefined;
  /** Forgets the past: integration begins, or begins anew, at (s, start); h is the first step that will be tried. */
  begin(s: number, start: Float64Array, h: number): void;
  /** From now on s is counted from what was `by`, in a system that does not depend on it. */
  shift(by: number): void;
  /** Prepares attempts from (s, start); called once a step. Returns the longest step worth trying from there, Infinity as a rule. */
  prepare(s: number, start: Float64Array): number;
  /** Attempts a step of length h from (s, start) into `end`; returns the scaled error (1 = as large as allowed), Infinity when it failed. */
  attempt(s: number, start: Float64Array, h: number): number;
  /** Length of the next step after an accepted one. */
  afterAccepted(h: number, error: number): number;
  /** Length of the next attempt after a rejected one. */
  afterRejected(h: number, error: number): number;
  /** The last attempt is now past; `end` will be the next start. */
  advance(): void;
  /** Component k of the dense output at share σ of the last attempted step, which began at `start`. */
  denseComponent(start: Float64Array, share: number, k: number): number;
  /** Whole state of the dense output. */
  denseState(start: Float64Array, share: number, out: Float64Array): void;
  /** Writes vector m of the dense output of the last attempted step: u(σ) = (1 − σ) u + σ (u_new + (1 − σ) Σ_m σ^m v_m). */
  writeDense(m: number, out: Float64Array, at: number): void;
}
