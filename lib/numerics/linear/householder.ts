// Linear least squares by Householder reflections, for small dense matrices stored row by row.
// Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. 2013, section 5.2.

/** d that minimises |J d − r|² + |weight D d|², D diagonal. The arguments are left as they are. */
export function solveLeastSquares(
  jacobian: Float64Array,
  residuals: Float64Array,
  scale: Float64Array,
  weight: number,
  rows: number,
  columns: number,
): Float64Array {
  const all = rows + columns;
  const matrix = new Float64Array(all * columns);
  matrix.set(jacobian.subarray(0, rows * columns));
  for (let j = 0; j < columns; j++) matrix[(rows + j) * columns + j] = weight * scale[j]!;
  const right = new Float64Array(all);
  right.set(residuals.subarray(0, rows));
  triangularise(matrix, right, all, columns);
  return backSubstitute(matrix, right, columns);
}

/** (JᵀJ)⁻¹, row by row, from the triangular factor of J. */
export function inverseOfNormalMatrix(jacobian: Float64Array, rows: number, columns: number): Float64Array {
  const matrix = Float64Array.from(jacobian.subarray(0, rows * columns));
  triangularise(matrix, new Float64Array(rows), rows, columns);
  // R⁻¹ column by column; then (JᵀJ)⁻¹ = R⁻¹ R⁻ᵀ.
  const inverse = new Float64Array(columns * columns);
  for (let k = 0; k < columns; k++) {
    const unit = new Float64Array(columns);
    unit[k] = 1;
    const column = backSubstitute(matrix, unit, columns);
    for (let i = 0; i < columns; i++) inverse[i * columns + k] = column[i]!;
  }
  const out = new Float64Array(columns * columns);
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < columns; j++) {
      let sum = 0;
      for (let k = Math.max(i, j); k < columns; k++) sum += inverse[i * columns + k]! * inverse[j * columns + k]!;
      out[i * columns + j] = sum;
    }
  }
  return out;
}

/** Turns the matrix into its triangular factor in place and applies the same reflections to the right side. */
function triangularise(matrix: Float64Array, right: Float64Array, rows: number, columns: number): void {
  for (let k = 0; k < columns; k++) {
    let norm = 0;
    for (let i = k; i < rows; i++) norm = Math.hypot(norm, matrix[i * columns + k]!);
    if (norm === 0) continue;
    const pivot = matrix[k * columns + k]!;
    const alpha = pivot > 0 ? -norm : norm;
    const first = pivot - alpha;
    const factor = 1 / (alpha * first); // −2/|v|²
    const reflect = (at: (i: number) => number, put: (i: number, value: number) => void): void => {
      let product = first * at(k);
      for (let i = k + 1; i < rows; i++) product += matrix[i * columns + k]! * at(i);
      product *= factor;
      put(k, at(k) + product * first);
      for (let i = k + 1; i < rows; i++) put(i, at(i) + product * matrix[i * columns + k]!);
    };
    for (let j = k + 1; j < columns; j++) {
      reflect(
        (i) => matrix[i * columns + j]!,
        (i, value) => (matrix[i * columns + j] = value),
      );
    }
    reflect(
      (i) => right[i]!,
      (i, value) => (right[i] = value),
    );
    matrix[k * columns + k] = alpha;
  }
}

function backSubstitute(matrix: Float64Array, right: Float64Array, columns: number): Float64Array {
  const out = new Float64Array(columns);
  for (let i = columns - 1; i >= 0; i--) {
    let sum = right[i]!;
    for (let j = i + 1; j < columns; j++) sum -= matrix[i * columns + j]! * out[j]!;
    const pivot = matrix[i * columns + i]!;
    out[i] = pivot === 0 ? 0 : sum / pivot;
  }
  return out;
}
