// Chebyshev interpolation on [−1, 1]: nodes of the first kind, coefficients from values, basis with slopes.
//
//   f(u) ≈ Σ c[j] T[j](u),  T[0] = 1, T[1] = u, T[j+1] = 2 u T[j] − T[j−1]
// The derivative used is the exact derivative of the sum, by the recurrence differentiated term by term.

/**
 * Chebyshev nodes of the first kind on [−1, 1], from the left.
 *
 * Equation: u[i] = −cos((i + 1/2) π / n).
 * @param count Number of nodes n, 1 or more.
 * @returns The nodes.
 * @example chebyshevNodes(2)[1] // → 0.70710678
 * Source: L. N. Trefethen, Approximation Theory and Approximation Practice, SIAM 2013, chapter 3.
 */
export function chebyshevNodes(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => -Math.cos(((i + 0.5) * Math.PI) / count));
}

/**
 * The matrix that turns values at the nodes into Chebyshev coefficients, row-major.
 *
 * Equation: c[j] = (2 − δ[j,0])/n Σ f(u[i]) T[j](u[i]).
 * @param count Number of nodes n, 1 or more.
 * @returns n × n weights; row j gives coefficient j.
 * @example chebyshevTransform(2)[0] // → 0.5
 * Source: discrete orthogonality of Chebyshev polynomials; Trefethen 2013, chapter 3.
 */
export function chebyshevTransform(count: number): Float64Array {
  const matrix = new Float64Array(count * count);
  for (let j = 0; j < count; j++) {
    for (let i = 0; i < count; i++) {
      const angle = ((i + 0.5) * Math.PI) / count;
      const value = Math.cos(j * (Math.PI - angle));
      matrix[j * count + i] = ((j === 0 ? 1 : 2) / count) * value;
    }
  }
  return matrix;
}

/**
 * Fills two arrays with the Chebyshev polynomials and their derivatives at one point.
 *
 * Equation: T[j+1] = 2 u T[j] − T[j−1];  T′[j+1] = 2 T[j] + 2 u T′[j] − T′[j−1].
 * @param u Point in [−1, 1].
 * @param values Receives T[0..n−1].
 * @param slopes Receives T′[0..n−1]; same length as `values`.
 * @example chebyshevBasis(0.5, new Float64Array(3), new Float64Array(3)) // → undefined
 * Source: definition.
 */
export function chebyshevBasis(u: number, values: Float64Array, slopes: Float64Array): void {
  values[0] = 1;
  slopes[0] = 0;
  if (values.length > 1) {
    values[1] = u;
    slopes[1] = 1;
  }
  for (let j = 1; j + 1 < values.length; j++) {
    values[j + 1] = 2 * u * values[j]! - values[j - 1]!;
    slopes[j + 1] = 2 * values[j]! + 2 * u * slopes[j]! - slopes[j - 1]!;
  }
}
