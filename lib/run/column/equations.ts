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

import type { CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { pentadiagonalMatrix } from '../../numerics/linear/pentadiagonal.js';
import { tridiagonalMatrix } from '../../numerics/linear/tridiagonal.js';
import type { ShiftedMatrix } from '../../numerics/linear/shifted-matrix.js';
import type { StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { type ColumnSystem, kettleAmount } from './column-system.js';
import { readSlope, readValue, readVapour, readVapourFrom, vapourSlope } from '../../equilibrium/slice-tables.js';

/** Kettle amounts count in the error at this share of the whole charge for one unit of mole fraction. */
const KETTLE_WEIGHT = 0.05;

/** The equations of a column as a stiff system, with error weights for the given tolerance. */
export function columnEquations(column: ColumnSystem, tolerance: number): StiffSystem {
  const { layout, flows } = column;
  const { size, plates } = layout;
  const murphree = layout.stride === 2;
  const matrix = murphree ? pentadiagonalMatrix(size) : tridiagonalMatrix(size);
  const jacobian = jacobianWriter(matrix, murphree);
  const { condenser, receiverEthanol } = layout;
  const weights = errorWeights(column, tolerance);
  const kettle = column.kettleSlice;
  const power = column.heat.kind === 'power' ? column.heat.power_W : 0;
  const secondsPerMole = column.heat.kind === 'boilUp' ? 1 / column.heat.rate_mol_s : 0;
  const { intervals } = kettle;
  const { alphas, offsets } = stackedAlphas(column.plateSlices);

  return {
    size,
    mass: holdUps(column),
    matrix,
    rightHandSide: murphree ? murphreeSide : idealSide,
    linearise: (b, u, slope) => {
      slope.fill(0);
      matrix.entries.fill(0);
      lineariseKettle(b, u, slope);
      if (murphree) lineariseMurphree(u);
      else lineariseIdeal(u);
      jacobian(condenser, condenser, -1);
      jacobian(receiverEthanol, condenser, flows.drawn);
    },
    weights: (_u, out) => out.set(weights),
  };

  function idealSide(b: number, u: Float64Array, out: Float64Array): void {
    // Copied out of the closure: the loop then runs on locals, whichever column this is.
    const table = alphas;
    const starts = offsets;
    const count = intervals;
    const end = condenser;
    const returned = flows.returned;
    let below = kettleSide(b, u, out);
    let x = u[2]!;
    for (let i = 2; i < end; i++) {
      const above = u[i + 1]!;
      const y = readVapourFrom(table, starts[i - 2]!, count, x);
      out[i] = returned * (above - x) + below - y;
      below = y;
      x = above;
    }
    out[condenser] = below - x;
    out[receiverEthanol] = flows.drawn * x;
  }

  function murphreeSide(b: number, u: Float64Array, out: Float64Array): void {
    let below = kettleSide(b, u, out);
    for (let j = 0, i = 2; j < plates; j++, i += 2) {
      const x = u[i]!;
      const y = u[i + 1]!;
      out[i] = flows.returned * (u[i + 2]! - x) + below - y;
      out[i + 1] = below + column.efficiency * (readVapourFrom(alphas, offsets[j]!, intervals, x) - below) - y;
      below = y;
    }
    out[condenser] = below - u[condenser]!;
    out[receiverEthanol] = flows.drawn * u[condenser]!;
  }

  /** Writes the rows of time and kettle; returns the vapour the kettle raises. */
  function kettleSide(b: number, u: Float64Array, out: Float64Array): number {
    const x = u[1]! / kettleAmount(flows, b);
    const y = readVapour(kettle.alpha, intervals, x);
    out[0] = power > 0 ? readValue(kettle.latentHeat, kettle.intervals, x) / power : secondsPerMole;
    out[1] = flows.returned * u[2]! - y;
    return y;
  }

  function lineariseKettle(b: number, u: Float64Array, slope: Float64Array): void {
    const amount = kettleAmount(flows, b);
    const x = u[1]! / amount;
    const drift = (x * flows.drawn) / amount; // ∂x_kettle/∂b through S(b)
    const y_x = vapourSlope(kettle, x);
    const time_x = power > 0 ? readSlope(kettle.latentHeat, kettle.intervals, x) / power : 0;
    jacobian(0, 1, time_x / amount);
    slope[0] = time_x * drift;
    jacobian(1, 1, -y_x / amount);
    jacobian(1, 2, flows.returned);
    slope[1] = -y_x * drift;
    // The vapour of the kettle enters plate 1, or the condenser of a pot without plates.
    jacobian(2, 1, y_x / amount);
    slope[2] = y_x * drift;
    if (murphree) {
      const passed = 1 - column.efficiency;
      jacobian(3, 1, (passed * y_x) / amount);
      slope[3] = passed * y_x * drift;
    }
  }

  function lineariseIdeal(u: Float64Array): void {
    const { entries } = matrix;
    const { returned } = flows;
    // Layout of tridiagonal entries: lower | diagonal | upper, see tridiagonal.ts.
    for (let i = 2; i < condenser; i++) {
      const y_x = vapourSlope(column.plateSlices[i - 2]!, u[i]!);
      entries[size + i] = -returned - y_x;
      entries[2 * size + i] = returned;
      entries[i + 1] = y_x;
    }
  }

  function lineariseMurphree(u: Float64Array): void {
    const { efficiency } = column;
    for (let j = 0, i = 2; j < plates; j++, i += 2) {
      const y_x = vapourSlope(column.plateSlices[j]!, u[i]!);
      jacobian(i, i, -flows.returned);
      jacobian(i, i + 1, -1);
      jacobian(i, i + 2, flows.returned);
      jacobian(i + 1, i, efficiency * y_x);
      jacobian(i + 1, i + 1, -1);
      jacobian(i + 2, i + 1, 1);
      if (j + 1 < plates) jacobian(i + 3, i + 1, 1 - efficiency);
    }
  }
}

/** The plates' tables of relative volatility in one array; plates at the same pressure share one. */
function stackedAlphas(slices: readonly CurveSlice[]): { alphas: Float64Array; offsets: Int32Array } {
  const distinct = [...new Set(slices)];
  const length = distinct[0]?.alpha.length ?? 0;
  const alphas = new Float64Array(distinct.length * length);
  distinct.forEach((slice, i) => alphas.set(slice.alpha, i * length));
  return { alphas, offsets: Int32Array.from(slices, (slice) => distinct.indexOf(slice) * length) };
}

/** Diagonal of the mass matrix: hold-ups, and 0 for algebraic vapours. */
function holdUps(column: ColumnSystem): Float64Array {
  const { layout } = column;
  const mass = new Float64Array(layout.size).fill(1);
  for (let i = 0; i < layout.plates; i++) {
    mass[layout.firstLiquid + i * layout.stride] = column.plateHoldUp_mol;
    if (layout.firstVapour >= 0) mass[layout.firstVapour + i * layout.stride] = 0;
  }
  mass[layout.condenser] = column.condenserHoldUp_mol;
  return mass;
}

function errorWeights(column: ColumnSystem, tolerance: number): Float64Array {
  const { layout, chargeTotal_mol, heat, kettleSlice } = column;
  const weights = new Float64Array(layout.size).fill(tolerance);
  const amount = tolerance * chargeTotal_mol * KETTLE_WEIGHT;
  weights[layout.kettleEthanol] = amount;
  weights[layout.receiverEthanol] = amount;
  const secondsPerMole = heat.kind === 'power' ? kettleSlice.latentHeat[0]! / heat.power_W : 1 / heat.rate_mol_s;
  weights[layout.time] = tolerance * chargeTotal_mol * secondsPerMole;
  return weights;
}

function jacobianWriter(matrix: ShiftedMatrix, banded: boolean): (row: number, column: number, value: number) => void {
  const { entries, size } = matrix;
  return banded
    ? (row, column, value) => void (entries[row * 5 + (column - row + 2)] = value)
    : (row, column, value) => void (entries[(column - row + 1) * size + row] = value);
}
