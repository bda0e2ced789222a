// The tables each holder reads: those of its pressure, the drum's last.

import type { EnthalpyCurve, EnthalpySlice } from '../../../equilibrium/enthalpy-curve.js';

/** Heat that raises a mole of any vapour when flows are taken as equal from plate to plate, J/mol. Source: water's at 100 °C. */
export const EQUAL_HEAT = 40.65e3;

/** Tables of every holder; layouts are those of EnthalpySlice. Holders at the same pressure share them. */
export interface TrainTables {
  readonly intervals: number;
  readonly boiling: readonly Float64Array[];
  readonly vapour: readonly Float64Array[];
  readonly cold: readonly Float64Array[];
}

/** Tables for these pressures; `equal` counts every liquid as 0 and every vapour as EQUAL_HEAT on its boiling line. */
export function trainTables(curve: EnthalpyCurve, pressures_Pa: readonly number[], equal: boolean): TrainTables {
  const slices = pressures_Pa.map((pressure_Pa) => {
    const slice = curve.at(pressure_Pa);
    return equal ? equalHeats(slice) : slice;
  });
  return {
    intervals: slices[0]!.intervals,
    boiling: slices.map((slice) => slice.boiling),
    vapour: slices.map((slice) => slice.vapour),
    cold: slices.map((slice) => slice.cold),
  };
}

function equalHeats(slice: EnthalpySlice): EnthalpySlice {
  const boiling = Float64Array.from(slice.boiling);
  const vapour = new Float64Array(slice.vapour.length);
  for (let k = 0; k < slice.intervals; k++) {
    boiling.fill(0, 16 * k + 8, 16 * k + 12);
    vapour[4 * k] = EQUAL_HEAT;
  }
  return { ...slice, boiling, vapour };
}
