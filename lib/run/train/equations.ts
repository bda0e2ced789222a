// The train as a stiff system: balances of energy, ethanol and water on every holder, a drum and a receiver, with the
// vapours as algebraic unknowns, four unknowns a block (streams.ts says which). Blocks couple to their neighbours only.
//
// Drum block: [integral of the hold, heat taken out / LAMBDA0, ethanol, water]; receiver block: [enthalpy / LAMBDA0, vapour raised in the
// uppermost holder is not kept here: unused, ethanol, water]. Ethanol and water are linear invariants of f and of its Jacobian.

import { BlockTridiagonalMatrix } from '../../numerics/linear/block-tridiagonal.js';
import type { StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { askedShare, clampedShare, type Controls, holdSlopes, integralRate } from './controls.js';
import { type Holder, LAMBDA0, type Train } from './holders.js';
import { DrumStreams, ENERGY, ETHANOL, Streams, UNKNOWNS, VAPOUR, WATER } from './streams.js';
import type { TrainTables } from './tables.js';

/** A duty fades away while what it cools gets this much colder than its boiling point, K: nothing is cooled below its water. */
const FADES_FROM_K = 5;
const FADES_TO_K = 25;
const ENTRIES = 48;
const LOWER = 0;
const MIDDLE = 16;
const UPPER = 32;

export class TrainEquations implements StiffSystem {
  readonly size: number;
  readonly mass: Float64Array;
  readonly matrix: BlockTridiagonalMatrix;
  readonly streams: Streams;
  readonly drum: DrumStreams;
  /** How the present step drives the train; the solver replaces it between steps. */
  controls: Controls;
  /** Offset of the drum's block, of the receiver's. */
  readonly drumAt: number;
  readonly receiverAt: number;
  readonly #count: number;
  readonly #efficiency: Float64Array;
  readonly #loss: Float64Array;
  readonly #reference_K: Float64Array;
  readonly #over: Uint8Array;
  readonly #partial: boolean;
  readonly #weights: Float64Array;

  constructor(train: Train, tables: TrainTables, tolerance: number, controls: Controls) {
    const { holders } = train;
    const count = holders.length;
    const column = (read: (holder: Holder) => number): Float64Array => Float64Array.from(holders, read);
    this.#count = count;
    this.drumAt = UNKNOWNS * count;
    this.receiverAt = this.drumAt + UNKNOWNS;
    this.size = this.receiverAt + UNKNOWNS;
    this.mass = new Float64Array(this.size).fill(1);
    for (let j = 0; j < count; j++) this.mass[UNKNOWNS * j + VAPOUR] = 0;
    this.matrix = new BlockTridiagonalMatrix(count + 2);
    this.streams = new Streams(train, tables);
    this.drum = new DrumStreams(train, tables);
    this.controls = controls;
    this.#efficiency = column((holder) => holder.efficiency);
    this.#loss = column((holder) => holder.loss_W_K / LAMBDA0);
    this.#reference_K = column((holder) => holder.reference_K);
    this.#over = Uint8Array.from(holders, (holder) => (holder.overflow === 'over' ? 1 : 0));
    this.#partial = holders.at(-1)!.kind === 'partialCondenser';
    this.#weights = errorWeights(train, tolerance);
  }

  rightHandSide(_s: number, u: Float64Array, out: Float64Array): void {
    const { streams, drum, drumAt: d, receiverAt: r } = this;
    const { vapourRate, vapourEnthalpy, liquidRate, liquidEnthalpy, liquid, temperature_K, equilibrium } = streams;
    const top = this.#count - 1;
    streams.evaluate(u);
    drum.evaluate(u[d + ETHANOL]!, u[d + WATER]!);
    const share = this.#share(u);
    const duty = this.#duty(share) * fade(streams.below_K[top]!);
    let energy = this.controls.power_W / LAMBDA0;
    let ethanol = 0;
    let water = 0;
    let below = 0;
    for (let j = 0, o = 0; j <= top; j++, o += UNKNOWNS) {
      const V = vapourRate[j]!;
      const y = u[o + VAPOUR]!;
      const L = liquidRate[j]!;
      const x = liquid[j]!;
      const upEnergy = V * vapourEnthalpy[j]!;
      const downEnergy = L * liquidEnthalpy[j]!;
      let lost = this.#loss[j]! * (temperature_K[j]! - this.#reference_K[j]!);
      if (j === top) {
        lost += duty;
        if (this.#partial) lost += (this.controls.water_W_K / LAMBDA0) * (temperature_K[j]! - this.#reference_K[j]!);
      }
      out[o + ENERGY] = energy - upEnergy - downEnergy - lost;
      out[o + ETHANOL] = ethanol - V * y - L * x;
      out[o + WATER] = water - V * (1 - y) - L * (1 - x);
      const E = j === 0 ? 1 : this.#efficiency[j]!;
      out[o + VAPOUR] = below + E * (equilibrium[j]! - below) - y;
      energy = upEnergy;
      ethanol = V * y;
      water = V * (1 - y);
      below = y;
      if (this.#over[j] === 1) {
        energy += downEnergy;
        ethanol += L * x;
        water += L * (1 - x);
      } else if (j > 0) {
        out[o - UNKNOWNS + ENERGY]! += downEnergy;
        out[o - UNKNOWNS + ETHANOL]! += L * x;
        out[o - UNKNOWNS + WATER]! += L * (1 - x);
      }
    }
    const back = this.#partial ? 0 : share * drum.rate;
    const drawn = drum.rate - back;
    const z = drum.liquid;
    const o = UNKNOWNS * top;
    out[o + ENERGY]! += back * drum.enthalpy;
    out[o + ETHANOL]! += back * z;
    out[o + WATER]! += back * (1 - z);
    const { hold } = this.controls;
    out[d] = hold === null ? 0 : integralRate(hold, z, u[d]!);
    out[d + 1] = energy - drum.rate * drum.enthalpy;
    out[d + ETHANOL] = ethanol - drum.rate * z;
    out[d + WATER] = water - drum.rate * (1 - z);
    out[r] = drawn * drum.enthalpy;
    out[r + 1] = 0;
    out[r + ETHANOL] = drawn * z;
    out[r + WATER] = drawn * (1 - z);
  }

  linearise(_s: number, u: Float64Array, slope: Float64Array): void {
    slope.fill(0);
    const { streams, drum, drumAt: d } = this;
    streams.evaluate(u);
    streams.differentiate(u);
    drum.evaluate(u[d + ETHANOL]!, u[d + WATER]!);
    const entries = this.matrix.entries;
    entries.fill(0);
    for (let j = 0; j < this.#count; j++) this.#lineariseHolder(j, u);
    this.#lineariseDrum(u);
  }

  weights(_u: Float64Array, out: Float64Array): void {
    out.set(this.#weights);
  }

  /** Share of the drum's outflow that runs back, or of the full duty a hold on a partial condenser asks for. */
  shareAt(u: Float64Array): number {
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    return this.#share(u);
  }

  /** Duty of the partial condenser at the state last evaluated, W. */
  dutyAt(share: number): number {
    const top = this.#count - 1;
    if (!this.#partial) return 0;
    const warm = this.streams.temperature_K[top]! - this.#reference_K[top]!;
    return LAMBDA0 * this.#duty(share) * fade(this.streams.below_K[top]!) + this.controls.water_W_K * warm;
  }

  #share(u: Float64Array): number {
    const { hold, returned } = this.controls;
    return hold === null ? returned : clampedShare(hold, askedShare(hold, this.drum.liquid, u[this.drumAt]!));
  }

  #duty(share: number): number {
    if (!this.#partial) return 0;
    return ((this.controls.hold === null ? 1 : share) * this.controls.duty_W) / LAMBDA0;
  }

  #lineariseHolder(j: number, u: Float64Array): void {
    const { streams } = this;
    const entries = this.matrix.entries;
    const { slopes } = streams;
    const a = 16 * j;
    const o = UNKNOWNS * j;
    const top = this.#count - 1;
    const y = u[o + VAPOUR]!;
    const x = streams.liquid[j]!;
    const V = streams.vapourRate[j]!;
    const L = streams.liquidRate[j]!;
    const H = streams.vapourEnthalpy[j]!;
    const h = streams.liquidEnthalpy[j]!;
    const N = Math.max(1e-12, u[o + ETHANOL]! + u[o + WATER]!);
    const x1 = (1 - x) / N;
    const x2 = -x / N;
    const middle = ENTRIES * j + MIDDLE;
    const up = ENTRIES * (j + 1) + LOWER;
    // Vapour: out of this block, into the one above. At the drum the same rows, its energy row being heat taken out.
    const rise = (row: number, column: number, value: number, higher: number): void => {
      entries[middle + 4 * row + column]! -= value;
      entries[up + 4 * higher + column]! += value;
    };
    const energyAbove = j === top ? 1 : ENERGY;
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      const V_c = slopes[a + c]!;
      rise(ENERGY, column, H * V_c, energyAbove);
      rise(ETHANOL, column, y * V_c, ETHANOL);
      rise(WATER, column, (1 - y) * V_c, WATER);
    }
    rise(ENERGY, VAPOUR, V * streams.vapourEnthalpySlope[j]!, energyAbove);
    rise(ETHANOL, VAPOUR, V, ETHANOL);
    rise(WATER, VAPOUR, -V, WATER);
    // Liquid: out of this block, into the one below or over into the one above.
    if (j > 0 || this.#over[j] === 1) {
      const over = this.#over[j] === 1;
      const into = over ? up : ENTRIES * (j - 1) + UPPER;
      for (let c = 0; c < 3; c++) {
        const column = c === 0 ? ENERGY : c + 1;
        const L_c = c === 0 ? 0 : slopes[a + 8 + c]!;
        const x_c = c === 0 ? 0 : c === 1 ? x1 : x2;
        const energy = h * L_c + L * slopes[a + 6 + c]!;
        const ethanol = x * L_c + L * x_c;
        const water = (1 - x) * L_c - L * x_c;
        entries[middle + column]! -= energy;
        entries[middle + 8 + column]! -= ethanol;
        entries[middle + 12 + column]! -= water;
        entries[into + 4 * (over ? energyAbove : ENERGY) + column]! += energy;
        entries[into + 8 + column]! += ethanol;
        entries[into + 12 + column]! += water;
      }
    }
    // Losses and, in the uppermost holder, the duty.
    let conductance = this.#loss[j]!;
    let fading = 0;
    if (j === top && this.#partial) {
      conductance += this.controls.water_W_K / LAMBDA0;
      fading = this.#duty(this.#share(u)) * fadeSlope(streams.below_K[j]!);
    }
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      entries[middle + column]! -= conductance * slopes[a + 3 + c]!;
      if (fading !== 0) entries[middle + column]! -= fading * slopes[a + 12 + c]!;
    }
    const E = j === 0 ? 1 : this.#efficiency[j]!;
    const y_x = slopes[a + 11]!;
    entries[middle + 4 + VAPOUR] = -1;
    entries[middle + 4 + ETHANOL] = E * y_x * x1;
    entries[middle + 4 + WATER] = E * y_x * x2;
    if (j < top) entries[up + 4 + VAPOUR]! += 1 - this.#efficiency[j + 1]!;
  }

  #lineariseDrum(u: Float64Array): void {
    const { drum, drumAt: d, streams } = this;
    const entries = this.matrix.entries;
    const top = this.#count - 1;
    const z = drum.liquid;
    const N = Math.max(1e-12, u[d + ETHANOL]! + u[d + WATER]!);
    const share = this.#share(u);
    const { hold } = this.controls;
    const { share_x, share_I, rate_x, rate_I } =
      hold === null ? { share_x: 0, share_I: 0, rate_x: 0, rate_I: 0 } : holdSlopes(hold, z, u[d]!);
    const middle = ENTRIES * (top + 1) + MIDDLE;
    const down = ENTRIES * top + UPPER;
    const up = ENTRIES * (top + 2) + LOWER;
    entries[middle] = rate_I;
    const back = this.#partial ? 0 : share;
    for (let c = ETHANOL; c <= WATER; c++) {
      const z_c = c === ETHANOL ? (1 - z) / N : -z / N;
      const rate_c = c === ETHANOL ? drum.rate1 : drum.rate2;
      const share_c = share_x * z_c;
      entries[middle + c] = rate_x * z_c;
      const out = [
        rate_c * drum.enthalpy + drum.rate * drum.enthalpy_x * z_c,
        rate_c * z + drum.rate * z_c,
        rate_c * (1 - z) - drum.rate * z_c,
      ] as const;
      const flow = [drum.rate * drum.enthalpy, drum.rate * z, drum.rate * (1 - z)] as const;
      for (let q = 0; q < 3; q++) {
        const returned = this.#partial ? 0 : back * out[q]! + share_c * flow[q]!;
        const row = q === 0 ? 0 : q + 1;
        entries[middle + 4 * (q === 0 ? 1 : row) + c]! -= out[q]!;
        entries[down + 4 * row + c]! += returned;
        entries[up + 4 * row + c]! += out[q]! - returned;
      }
      if (this.#partial && hold !== null) {
        entries[down + c]! -= share_c * this.#fullDuty() * fade(streams.below_K[top]!);
      }
    }
    if (hold === null) return;
    if (this.#partial) {
      entries[down]! -= share_I * this.#fullDuty() * fade(streams.below_K[top]!);
      return;
    }
    const flow = [drum.rate * drum.enthalpy, drum.rate * z, drum.rate * (1 - z)] as const;
    for (let q = 0; q < 3; q++) {
      const row = q === 0 ? 0 : q + 1;
      entries[down + 4 * row]! += share_I * flow[q]!;
      entries[up + 4 * row]! -= share_I * flow[q]!;
    }
  }

  #fullDuty(): number {
    return this.controls.duty_W / LAMBDA0;
  }
}

/** Share of a set duty that is left when its holder is this far below its boiling point. */
function fade(below_K: number): number {
  if (below_K <= FADES_FROM_K) return 1;
  if (below_K >= FADES_TO_K) return 0;
  const s = (below_K - FADES_FROM_K) / (FADES_TO_K - FADES_FROM_K);
  return 1 - s * s * (3 - 2 * s);
}

function fadeSlope(below_K: number): number {
  if (below_K <= FADES_FROM_K || below_K >= FADES_TO_K) return 0;
  const s = (below_K - FADES_FROM_K) / (FADES_TO_K - FADES_FROM_K);
  return (-6 * s * (1 - s)) / (FADES_TO_K - FADES_FROM_K);
}

function errorWeights(train: Train, tolerance: number): Float64Array {
  const { holders, drum } = train;
  const weights = new Float64Array(UNKNOWNS * (holders.length + 2));
  holders.forEach(({ scale_mol }, j) => {
    weights.fill(tolerance * scale_mol, UNKNOWNS * j, UNKNOWNS * (j + 1));
    weights[UNKNOWNS * j + VAPOUR] = tolerance;
  });
  const kettle = tolerance * holders[0]!.scale_mol;
  const d = UNKNOWNS * holders.length;
  weights.fill(tolerance * drum.scale_mol, d, d + UNKNOWNS);
  weights[d] = tolerance;
  weights[d + 1] = kettle;
  weights.fill(kettle, d + UNKNOWNS);
  return weights;
}
