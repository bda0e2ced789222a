// The linear algebra a linearly implicit method needs, as a contract: a structured Jacobian J and the
// solution of (σ M − J) k = b with a diagonal mass matrix M. Members differ in structure only.

/** A structured Jacobian with its shifted factorisation. */
export interface ShiftedMatrix {
  readonly size: number;
  /** Jacobian entries in the member's own layout; `clear` and write before `factor`. */
  readonly entries: Float64Array;
  /** Forms σ M − J in its own storage and factors it; false when a pivot vanishes. */
  factor(mass: Float64Array, shift: number): boolean;
  /** Both at once, where one pass can do it; false when a pivot vanishes. Need not be there. */
  factorAndSolve?(mass: Float64Array, shift: number, rightHandSide: Float64Array): boolean;
  /** Solves with the last factorisation, in place. */
  solve(rightHandSide: Float64Array): void;
  /** out = J x, with the entries as they stand. */
  multiply(x: Float64Array, out: Float64Array): void;
}
