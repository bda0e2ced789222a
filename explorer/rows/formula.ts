// Rows of a formula against a variable.

/** One quantity of the curve, in the unit shown. */
export interface FormulaColumn {
  /** Its name: 'strength', or the formula where it has none. */
  readonly name: string;
  readonly unit: string;
  /** NaN where there is no value. */
  readonly numbers: readonly number[];
}

export interface FormulaCurveRows {
  /** Rises or falls all along. */
  readonly x: FormulaColumn;
  readonly y: FormulaColumn;
  /** Where the variable stands, with the value there. */
  readonly now: { readonly x: number; readonly y: number } | null;
}
