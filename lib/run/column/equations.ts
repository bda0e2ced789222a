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
import { TridiagonalMatrix } from '../../numerics/linear/tridiagonal.js';
import type { ShiftedMatrix } from '../../numerics/linear/shifted-matrix.js';
import type { StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { type ColumnFlows, type ColumnSystem, kettleAmount } from './column-system.js';
import { readSlope, readValue, readVapour, readVapourFrom, vapourSlope } from '../../equilibrium/slice-tables.js';

/** Kettle amounts count in the error at this share of the whole charge for one unit of mole fraction. */
const KETTLE_WEIGHT = 0.05;

/** The equations of a column as a stiff system, with error weights for the given tolerance. */
export function columnEquations(column: ColumnSystem, tolerance: number): StiffSystem {
  return column.layout.stride === 2 ? new MurphreePlates(column, tolerance) : new IdealPlates(column, tolerance);
}

/** What both kinds of plates share: kettle, condenser, receiver, clock. Classes, so that the engine sees one method of each. */
abstract class ColumnEquations implements StiffSystem {
  readonly size: number;
  readonly mass: Float64Array;
  abstract readonly matrix: ShiftedMatrix;
  protected readonly flows: ColumnFlows;
  protected readonly condenser: number;
  protected readonly intervals: number;
  protected readonly alphas: Float64Array;
  protected readonly offsets: Int32Array;
  protected readonly slices: readonly CurveSlice[];
  readonly #kettle: CurveSlice;
  readonly #weights: Float64Array;
  readonly #power: number;
  readonly #secondsPerMole: number;

  constructor(column: ColumnSystem, tolerance: number) {
    const { layout, heat } = column;
    this.size = layout.size;
    this.mass = holdUps(column);
    this.flows = column.flows;
    this.condenser = layout.condenser;
    this.intervals = column.kettleSlice.intervals;
    const { alphas, offsets } = stackedAlphas(column.plateSlices);
    this.alphas = alphas;
    this.offsets = offsets;
    this.slices = column.plateSlices;
    this.#kettle = column.kettleSlice;
    this.#weights = errorWeights(column, tolerance);
    this.#power = heat.kind === 'power' ? heat.power_W : 0;
    this.#secondsPerMole = heat.kind === 'boilUp' ? 1 / heat.rate_mol_s : 0;
  }

  abstract rightHandSide(b: number, u: Float64Array, out: Float64Array): void;

  linearise(b: number, u: Float64Array, slope: Float64Array): void {
    slope.fill(0);
    this.matrix.entries.fill(0);
    this.#lineariseKettle(b, u, slope);
    this.linearisePlates(u);
    const { condenser } = this;
    this.set(condenser, condenser, -1);
    this.set(condenser + 1, condenser, this.flows.drawn);
  }

  weights(_u: Float64Array, out: Float64Array): void {
    out.set(this.#weights);
  }

  /** Writes J[row][column]. */
  protected abstract set(row: number, column: number, value: number): void;
  protected abstract linearisePlates(u: Float64Array): void;
  /** Writes how the kettle's vapour enters the first plate's own vapour, where that is an unknown. */
  protected abstract passOn(slope: Float64Array, vapour_K: number, vapour_b: number): void;

  /** Writes the rows of time and kettle; returns the vapour the kettle raises. */
  protected kettleSide(b: number, u: Float64Array, out: Float64Array): number {
    const kettle = this.#kettle;
    const x = u[1]! / kettleAmount(this.flows, b);
    const y = readVapour(kettle.alpha, kettle.intervals, x);
    out[0] = this.#power > 0 ? readValue(kettle.latentHeat, kettle.intervals, x) / this.#power : this.#secondsPerMole;
    out[1] = this.flows.returned * u[2]! - y;
    return y;
  }

  #lineariseKettle(b: number, u: Float64Array, slope: Float64Array): void {
    const kettle = this.#kettle;
    const { returned, drawn } = this.flows;
    const amount = kettleAmount(this.flows, b);
    const x = u[1]! / amount;
    const drift = (x * drawn) / amount; // ∂x_kettle/∂b through S(b)
    const y_x = vapourSlope(kettle, x);
    const time_x = this.#power > 0 ? readSlope(kettle.latentHeat, kettle.intervals, x) / this.#power : 0;
    this.set(0, 1, time_x / amount);
    slope[0] = time_x * drift;
    this.set(1, 1, -y_x / amount);
    this.set(1, 2, returned);
    slope[1] = -y_x * drift;
    // The vapour of the kettle enters plate 1, or the condenser of a pot without plates.
    this.set(2, 1, y_x / amount);
    slope[2] = y_x * drift;
    this.passOn(slope, y_x / amount, y_x * drift);
  }
}

/** Ideal plates: each vapour is its liquid's. Layout of the entries: lower | diagonal | upper, see tridiagonal.ts. */
class IdealPlates extends ColumnEquations {
  override readonly matrix = new TridiagonalMatrix(this.size);

  override rightHandSide(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser } = this;
    const { returned, drawn } = this.flows;
    let below = this.kettleSide(b, u, out);
    let x = u[2]!;
    for (let i = 2; i < condenser; i++) {
      const above = u[i + 1]!;
      const y = readVapourFrom(alphas, offsets[i - 2]!, intervals, x);
      out[i] = returned * (above - x) + below - y;
      below = y;
      x = above;
    }
    out[condenser] = below - x;
    out[condenser + 1] = drawn * x;
  }

  protected override set(row: number, column: number, value: number): void {
    this.matrix.entries[(column - row + 1) * this.size + row] = value;
  }

  protected override linearisePlates(u: Float64Array): void {
    const { entries } = this.matrix;
    const { size, condenser, slices } = this;
    const { returned } = this.flows;
    for (let i = 2; i < condenser; i++) {
      const y_x = vapourSlope(slices[i - 2]!, u[i]!);
      entries[size + i] = -returned - y_x;
      entries[2 * size + i] = returned;
      entries[i + 1] = y_x;
    }
  }

  protected override passOn(): void {
    // Nothing to write: the first plate's vapour is its own liquid's alone.
  }
}

/** Plates of an efficiency: each vapour is an algebraic unknown, blended of the one below and its liquid's. */
class MurphreePlates extends ColumnEquations {
  override readonly matrix = pentadiagonalMatrix(this.size);
  readonly #efficiency: number;

  constructor(column: ColumnSystem, tolerance: number) {
    super(column, tolerance);
    this.#efficiency = column.efficiency;
  }

  override rightHandSide(b: number, u: Float64Array, out: Float64Array): void {
    const { alphas, offsets, intervals, condenser } = this;
    const { returned, drawn } = this.flows;
    const efficiency = this.#efficiency;
    let below = this.kettleSide(b, u, out);
    for (let j = 0, i = 2; i < condenser; j++, i += 2) {
      const x = u[i]!;
      const y = u[i + 1]!;
      out[i] = returned * (u[i + 2]! - x) + below - y;
      out[i + 1] = below + efficiency * (readVapourFrom(alphas, offsets[j]!, intervals, x) - below) - y;
      below = y;
    }
    out[condenser] = below - u[condenser]!;
    out[condenser + 1] = drawn * u[condenser]!;
  }

  protected override set(row: number, column: number, value: number): void {
    this.matrix.entries[row * 5 + (column - row + 2)] = value;
  }

  protected override linearisePlates(u: Float64Array): void {
    const { condenser, slices } = this;
    const { returned } = this.flows;
    const efficiency = this.#efficiency;
    for (let j = 0, i = 2; i < condenser; j++, i += 2) {
      const y_x = vapourSlope(slices[j]!, u[i]!);
      this.set(i, i, -returned);
      this.set(i, i + 1, -1);
      this.set(i, i + 2, returned);
      this.set(i + 1, i, efficiency * y_x);
      this.set(i + 1, i + 1, -1);
      this.set(i + 2, i + 1, 1);
      if (i + 2 < condenser) this.set(i + 3, i + 1, 1 - efficiency);
    }
  }

  protected override passOn(slope: Float64Array, vapour_K: number, vapour_b: number): void {
    const passed = 1 - this.#efficiency;
    this.set(3, 1, passed * vapour_K);
    slope[3] = passed * vapour_b;
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
