// The plated column at constant molar overflow, per mole of vapour raised (see column-system.ts):
//
//   kettle      dK/db    = r x_1 − y_0                     y_0 = y*(K/S)
//   plate j     M dx_j/db = r (x_{j+1} − x_j) + y_{j−1} − y_j
//   vapours     y_j = y_{j−1} + E (y*(x_j) − y_{j−1})      Murphree vapour efficiency E
//   condenser   M_c dx_c/db = y_N − x_c                    total condenser; the spout runs x_c
//   receiver    dE_r/db  = (1 − r) x_c
//
// with x_{N+1} = x_c. Ideal plates have y_j = y*(x_j) and a tridiagonal Jacobian; otherwise the y_j are
// algebraic unknowns and it is pentadiagonal. K + M Σ x_j + M_c x_c + E_r is a linear invariant of both
// f and its Jacobian, so the method keeps the ethanol balance to round-off.

import type { ColumnEquations } from './column-equations.js';
import type { ColumnSystem } from './column-system.js';
import { IdealPlates } from './ideal-plates.js';
import { MurphreePlates } from './murphree-plates.js';

/** The equations of a column as a stiff system, with error weights for the given tolerance. */
export function columnEquations(column: ColumnSystem, tolerance: number): ColumnEquations {
  const equations = column.layout.stride === 2 ? new MurphreePlates(column) : new IdealPlates(column);
  equations.setUp(column, tolerance);
  return equations;
}
