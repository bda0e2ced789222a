// The tables of every holder's pressure in one stretch of memory, energies in units of LAMBDA0 per mole.

import type { EnthalpyCurve, EnthalpySlice } from '../../equilibrium/enthalpy-curve.js';
import { LAMBDA0 } from './holders.js';

/** Heat that raises a mole of any vapour when flows are taken as equal from plate to plate, J/mol. Source: water's at 100 °C. */
export const EQUAL_HEAT = 40.65e3;

/** Tables of several pressures, one after the other; layouts are those of EnthalpySlice. */
export interface TrainTables {
  readonly intervals: number;
  readonly boiling: Float64Array;
  readonly vapour: Float64Array;
  readonly cold: Float64Array;
  /** Which of the pressures each holder has, the drum last. */
  readonly which: Int32Array;
}

/** Tables for these pressures; `equal` counts every liquid as 0 and every vapour as EQUAL_HEAT on its boiling line. */
export function trainTables(curve: EnthalpyCurve, pressures_Pa: readonly number[], equal: boolean): TrainTables {
  const distinct = [...new Set(pressures_Pa)];
  const slices = distinct.map((pressure_Pa) => scaled(curve.at(pressure_Pa), equal));
  return {
    intervals: slices[0]!.intervals,
    boiling: joined(slices.map((slice) => slice.boiling)),
    vapour: joined(slices.map((slice) => slice.vapour)),
    cold: joined(slices.map((slice) => slice.cold)),
    which: Int32Array.from(pressures_Pa, (pressure_Pa) => distinct.indexOf(pressure_Pa)),
  };
}

function scaled(slice: EnthalpySlice, equal: boolean): EnthalpySlice {
  const boiling = Float64Array.from(slice.boiling);
  const vapour = Float64Array.from(slice.vapour, (value) => (equal ? 0 : value / LAMBDA0));
  for (let k = 0; k < slice.intervals; k++) {
    for (let c = 8; c < 12; c++) boiling[16 * k + c]! *= equal ? 0 : 1 / LAMBDA0;
    if (equal) vapour[4 * k] = EQUAL_HEAT / LAMBDA0;
  }
  return { ...slice, boiling, vapour, cold: Float64Array.from(slice.cold, (value) => value / LAMBDA0) };
}

function joined(tables: readonly Float64Array[]): Float64Array {
  const length = tables[0]!.length;
  const out = new Float64Array(length * tables.length);
  tables.forEach((table, i) => out.set(table, i * length));
  return out;
}
