// A stiffly accurate Rosenbrock method in the form without matrix-vector products
// (E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.7, eq. 7.25):
//
//   (M/(γ h) − J) U_i = f(s + α_i h, u + Σ_j a_ij U_j) + M Σ_j (c_ij / h) U_j + h γ_i ∂f/∂s
//   u_new = u + Σ_j a_sj U_j + U_s,     error = U_s
//
// Stiffly accurate: the last two stages share their abscissa 1, so u_new meets algebraic equations.

/** Coefficients of one method. */
export interface RosenbrockTableau {
  readonly name: string;
  readonly order: number;
  readonly gamma: number;
  /** Abscissae α_i. */
  readonly alpha: readonly number[];
  /** Row sums γ_i that multiply h ∂f/∂s. */
  readonly gammaSums: readonly number[];
  /** a_ij by row, j < i. */
  readonly a: readonly (readonly number[])[];
  /** c_ij by row, j < i. */
  readonly c: readonly (readonly number[])[];
  /** Dense output u(s + σh) = (1−σ) u + σ (u_new + (1−σ) Σ_m σ^m Σ_j d_mj U_j). */
  readonly dense: readonly (readonly number[])[];
}
