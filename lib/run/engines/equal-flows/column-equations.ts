// What both kinds of plates share: kettle, condenser, receiver and clock of the equations in equations.ts, and how errors count.
// Classes, so that the engine sees one method of each kind. Nothing is allocated once the equations stand; `setUp` fits them to another
// problem of the same shape.

import type { ShiftedMatrix } from '../../../numerics/linear/shifted-matrix.js';
import type { StiffSystem } from '../../../numerics/stiff/stiff-system.js';
import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { readSlope, readValue, readVapour, vapourSlope } from '../../../equilibrium/slice-tables.js';
import { type ColumnFlows, type ColumnSystem, kettleAmount } from './column-system.js';
import { loosest } from './error-gain.js';

/**
 * Amounts, and the clock, count in the error at this share of the whole charge, and of the time to boil it up, for one unit of mole
 * fraction: what is left in the kettle near the end of a run decides when the front arrives at the head.
 */
const AMOUNT_WEIGHT = 0.001;

/** A mole fraction may pass 0 and 1 by this trace. */
const TRACE = 5e-4;

/** Whether a mole fraction is one, but for a trace. */
export function isFraction(x: number): boolean {
  return x >= -TRACE && x <= 1 + TRACE;
}

/** The spout is what a run is judged by: its error counts so many times. */
const SPOUT_COUNTS = 4;

/** A column as a stiff system, with error weights for a tolerance. */
export abstract class ColumnEquations implements StiffSystem {
  readonly size: number;
  readonly mass: Float64Array;
  abstract readonly matrix: ShiftedMatrix;
  protected readonly condenser: number;
  protected flows: ColumnFlows;
  protected intervals: number;
  /** Tables of the plates' relative volatility one after the other, and where each plate's begins. */
  protected alphas: Float64Array;
  protected readonly offsets: Int32Array;
  /** ∂y/∂K of the kettle's vapour and ∂(dt/db)/∂K where the equations were last linearised. */
  protected kettleSlope = 0;
  protected time_K = 0;
  /** Error weights of plates are loosened by no more than this. */
  protected loosest = 1;
  #kettleDrift = 0;
  #timeDrift = 0;
  #kettle: CurveSlice;
  #power = 0;
  #secondsPerMole = 0;
  #slices: readonly CurveSlice[] = [];
  readonly #fixedWeights: Float64Array;
  readonly #unused: Float64Array;

  constructor(column: ColumnSystem) {
    const { size, plates, condenser } = column.layout;
    this.size = size;
    this.mass = new Float64Array(size);
    this.condenser = condenser;
    this.flows = column.flows;
    this.intervals = column.kettleSlice.intervals;
    this.alphas = column.kettleSlice.alpha;
    this.offsets = new Int32Array(plates);
    this.#kettle = column.kettleSlice;
    this.#fixedWeights = new Float64Array(size);
    this.#unused = new Float64Array(size);
  }

  /** Takes the numbers of a problem of the same shape. */
  setUp(column: ColumnSystem, tolerance: number): void {
    writeHoldUps(column, this.mass);
    writeWeights(column, tolerance, this.#fixedWeights);
    this.loosest = loosest(tolerance);
    this.flows = column.flows;
    this.intervals = column.kettleSlice.intervals;
    this.#kettle = column.kettleSlice;
    this.#timeDrift = 0;
    this.time_K = 0;
    this.drive(column);
    if (!sameSlices(this.#slices, column.plateSlices)) {
      this.#slices = column.plateSlices;
      this.alphas = stackedAlphas(column.plateSlices, this.offsets) ?? column.kettleSlice.alpha;
    }
  }

  /** Takes the heat of a step of the run sheet. */
  drive({ heat }: ColumnSystem): void {
    this.#power = heat.kind === 'power' ? heat.power_W : 0;
    this.#secondsPerMole = heat.kind === 'boilUp' ? 1 / heat.rate_mol_s : 0;
  }

  abstract rightHandSide(b: number, u: Float64Array, out: Float64Array): void;
  abstract evaluate(b: number, u: Float64Array, out: Float64Array): void;
  /** Writes ∂f/∂b of the plates, where the kettle's vapour enters their rows. */
  protected abstract passOn(slope: Float64Array, vapour_b: number): void;
  /** Loosens the weights of plates whose errors the spout feels less than its own. */
  protected abstract loosen(weights: Float64Array): void;

  linearise(b: number, u: Float64Array, slope: Float64Array): void {
    this.evaluate(b, u, this.#unused);
    slope.fill(0);
    slope[0] = this.#timeDrift;
    slope[1] = -this.#kettleDrift;
    // The vapour of the kettle enters plate 1, or the condenser of a pot without plates.
    slope[2] = this.#kettleDrift;
    this.passOn(slope, this.#kettleDrift);
  }

  /** Whether a state can be: no mole fraction passes 0 or 1 by more than a trace. */
  admit(u: Float64Array): boolean {
    for (let k = 2; k <= this.condenser; k++) if (!isFraction(u[k]!)) return false;
    return true;
  }

  weights(_u: Float64Array, out: Float64Array): void {
    const fixed = this.#fixedWeights;
    for (let k = 0; k < out.length; k++) out[k] = fixed[k]!;
    this.loosen(out);
  }

  /** Writes the rows of time and kettle; returns the vapour the kettle raises. */
  protected kettleSide(b: number, u: Float64Array, out: Float64Array): number {
    const kettle = this.#kettle;
    const x = u[1]! / kettleAmount(this.flows, b);
    const y = readVapour(kettle.alpha, kettle.intervals, x);
    out[0] = this.#power > 0 ? readValue(kettle.latentHeat, kettle.intervals, x) / this.#power : this.#secondsPerMole;
    out[1] = this.flows.returned * u[2]! - y;
    return y;
  }

  /** The same with the slopes of the kettle's vapour and of the clock, which are kept. */
  protected lineariseKettle(b: number, u: Float64Array, out: Float64Array): number {
    const kettle = this.#kettle;
    const { returned, drawn } = this.flows;
    const perAmount = 1 / kettleAmount(this.flows, b);
    const x = u[1]! * perAmount;
    const drift = x * drawn * perAmount; // ∂x_kettle/∂b through S(b)
    const y = readVapour(kettle.alpha, kettle.intervals, x);
    const y_x = vapourSlope(kettle, x);
    this.kettleSlope = y_x * perAmount;
    this.#kettleDrift = y_x * drift;
    if (this.#power > 0) {
      const time_x = readSlope(kettle.latentHeat, kettle.intervals, x) / this.#power;
      out[0] = readValue(kettle.latentHeat, kettle.intervals, x) / this.#power;
      this.time_K = time_x * perAmount;
      this.#timeDrift = time_x * drift;
    } else {
      out[0] = this.#secondsPerMole;
    }
    out[1] = returned * u[2]! - y;
    return y;
  }
}

function sameSlices(a: readonly CurveSlice[], b: readonly CurveSlice[]): boolean {
  return a.length === b.length && a.every((slice, i) => slice === b[i]);
}

/** The plates' tables of relative volatility in one array, and where each begins; plates at the same pressure share one. */
function stackedAlphas(slices: readonly CurveSlice[], offsets: Int32Array): Float64Array | undefined {
  const distinct = [...new Set(slices)];
  if (distinct.length <= 1) {
    offsets.fill(0);
    return distinct[0]?.alpha;
  }
  const length = distinct[0]!.alpha.length;
  const alphas = new Float64Array(distinct.length * length);
  distinct.forEach((slice, i) => alphas.set(slice.alpha, i * length));
  slices.forEach((slice, i) => (offsets[i] = distinct.indexOf(slice) * length));
  return alphas;
}

/** Diagonal of the mass matrix: hold-ups, and 0 for algebraic vapours. */
function writeHoldUps(column: ColumnSystem, mass: Float64Array): void {
  const { layout } = column;
  mass.fill(1);
  for (let i = 0; i < layout.plates; i++) {
    mass[layout.firstLiquid + i * layout.stride] = column.plateHoldUp_mol;
    if (layout.firstVapour >= 0) mass[layout.firstVapour + i * layout.stride] = 0;
  }
  mass[layout.condenser] = column.condenserHoldUp_mol;
}

function writeWeights(column: ColumnSystem, tolerance: number, weights: Float64Array): void {
  const { layout, chargeTotal_mol, heat, kettleSlice } = column;
  const amount = tolerance * chargeTotal_mol * AMOUNT_WEIGHT;
  const secondsPerMole = heat.kind === 'power' ? kettleSlice.latentHeat[0]! / heat.power_W : 1 / heat.rate_mol_s;
  weights.fill(tolerance);
  weights[layout.condenser] = tolerance / SPOUT_COUNTS;
  weights[layout.kettleEthanol] = amount;
  weights[layout.receiverEthanol] = amount;
  weights[layout.time] = amount * secondsPerMole;
}
