// The train as a stiff system: balances of energy, ethanol and water on every holder, a drum and a receiver, with the
// vapours as algebraic unknowns, four unknowns a block (streams.ts says which). Blocks couple to their neighbours only.
//
// Drum block: [integral of the hold, heat taken out / LAMBDA0, ethanol, water]; receiver block: [enthalpy / LAMBDA0, vapour raised in the
// uppermost holder is not kept here: unused, ethanol, water]. Ethanol and water are linear invariants of f and of its Jacobian.

import { BlockTridiagonalMatrix } from '../../../numerics/linear/block-tridiagonal.js';
import { askedShare, clampedShare, type Controls, integralRate } from './controls.js';
import { Corners } from './corners.js';
import { fade } from './fading.js';
import { LAMBDA0, type Train } from './holders.js';
import { DrumStreams } from './drum-streams.js';
import { BELOW_K, EQUILIBRIUM, READINGS, TEMPERATURE_K, VAPOUR_RATE } from './readings.js';
import { ENERGY, ETHANOL, Streams, UNKNOWNS, VAPOUR, WATER } from './streams.js';
import type { TrainTables } from './tables.js';
import { writeWeights } from './error-weights.js';

/** Vapour that flows less than this share of the usual counts as this. */
const LEAST_FLOW = 0.01;
/**
 * A plate that raises more than so many times the vapour from below boils by itself. Source: this project's choice, above what heats that
 * differ from plate to plate and plates that fill make of equal flows (some 15 %).
 */
export const BY_ITSELF = 1.25;
/** Vapour below this share of the usual is none. */
export const NO_VAPOUR = 1e-8;

export abstract class TrainBalances {
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
  readonly count: number;
  readonly efficiency: Float64Array;
  /** How many times the vapour from below a plate must raise to boil by itself: BY_ITSELF, or less, so that it gives off no more than it gets and has. */
  readonly byItself: Float64Array;
  /** Vapour below this is none, mol/s. */
  none_mol_s = 0;
  readonly loss: Float64Array;
  readonly reference_K: Float64Array;
  readonly over: Uint8Array;
  partial = false;
  protected readonly corners: Corners;
  protected nominalVapour_mol_s = 1;
  #filling = false;
  readonly #weights: Float64Array;
  readonly #weightsFilling: Float64Array;
  #perNominal = 1;

  constructor(train: Train, tables: TrainTables, tolerance: number, controls: Controls) {
    const count = train.holders.length;
    this.count = count;
    this.drumAt = UNKNOWNS * count;
    this.receiverAt = this.drumAt + UNKNOWNS;
    this.size = this.receiverAt + UNKNOWNS;
    this.mass = new Float64Array(this.size).fill(1);
    for (let j = 0; j < count; j++) this.mass[UNKNOWNS * j + VAPOUR] = 0;
    this.matrix = new BlockTridiagonalMatrix(count + 2);
    this.streams = new Streams(train, tables);
    this.drum = new DrumStreams(train, tables);
    this.controls = controls;
    this.corners = new Corners(count);
    this.efficiency = new Float64Array(count);
    this.byItself = new Float64Array(count);
    this.loss = new Float64Array(count);
    this.reference_K = new Float64Array(count);
    this.over = new Uint8Array(count);
    this.#weights = new Float64Array(this.size);
    this.#weightsFilling = new Float64Array(this.size);
    this.setUp(train, tables, tolerance, controls);
  }

  /** Takes the numbers of another train of as many holders. */
  setUp(train: Train, tables: TrainTables, tolerance: number, controls: Controls): void {
    const { holders } = train;
    this.streams.setUp(train, tables);
    this.drum.setUp(train, tables);
    this.controls = controls;
    this.#workAt(Float64Array.from(holders, (holder) => holder.efficiency));
    holders.forEach((holder, j) => {
      this.loss[j] = holder.loss_W_K / LAMBDA0;
      this.reference_K[j] = holder.reference_K;
      this.over[j] = holder.overflow === 'over' ? 1 : 0;
    });
    this.partial = holders.at(-1)!.kind === 'partialCondenser';
    this.corners.setUp(train);
    this.nominalVapour_mol_s = train.nominalVapour_mol_s;
    this.#perNominal = 1 / train.nominalVapour_mol_s;
    this.none_mol_s = NO_VAPOUR * train.nominalVapour_mol_s;
    this.matrix.entries.fill(0);
    writeWeights(train, tolerance, this.#weights, this.#weightsFilling);
  }

  /** Whether the train is still warming up and filling. */
  get filling(): boolean {
    return this.#filling;
  }

  set filling(whether: boolean) {
    this.#filling = whether;
    this.streams.remember(whether);
  }

  /** Changes the plates' efficiencies, and the vapours of a state with them, which build on each other from the kettle up. */
  workWith(efficiency: Float64Array, state: Float64Array): void {
    this.#workAt(efficiency);
    this.streams.evaluate(state);
    for (let j = 1; j < this.count; j++) {
      const below = state[UNKNOWNS * (j - 1) + VAPOUR]!;
      const own = this.streams.readings[READINGS * j + EQUILIBRIUM]!;
      state[UNKNOWNS * j + VAPOUR] = below + this.efficiencyNow(j) * (own - below);
    }
  }

  /** A plate without ethanol, or without water, that met 1/(1 − E) times the vapour from below with its efficiency would give off what came with it, and no more. */
  #workAt(efficiency: Float64Array): void {
    this.efficiency.set(efficiency);
    for (let j = 0; j < this.count; j++) this.byItself[j] = Math.min(BY_ITSELF, 1 / Math.max(0, 1 - efficiency[j]!));
  }

  /** Efficiency of a plate at the streams last evaluated: what it raises by itself, with no vapour from below, is in equilibrium with its liquid. */
  efficiencyNow(j: number): number {
    const { readings } = this.streams;
    const at = READINGS * j + VAPOUR_RATE;
    const V = readings[at]!;
    const met = this.byItself[j]! * readings[at - READINGS]! + this.none_mol_s;
    return V <= met ? this.efficiency[j]! : 1 - ((1 - this.efficiency[j]!) * met) / V;
  }

  rightHandSide(_s: number, u: Float64Array, out: Float64Array): void {
    this.streams.evaluate(u);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.balance(u, out);
  }

  /** The balances at the state whose streams were last evaluated. */
  protected balance(u: Float64Array, out: Float64Array): void {
    const { drum, drumAt: d, receiverAt: r, loss, reference_K, over } = this;
    const { readings, spare } = this.streams;
    const top = this.count - 1;
    const share = this.share(u);
    let energy = this.controls.power_W / LAMBDA0;
    let ethanol = 0;
    let water = 0;
    let below = 0;
    for (let j = 0, o = 0, at = 0; j <= top; j++, o += 4, at += 11) {
      const V = readings[at + 3]!;
      const y = u[o + 1]!;
      const L = readings[at + 5]!;
      const upEnergy = V * readings[at + 4]! + spare[o]!;
      const upEthanol = V * y;
      const downEnergy = L * readings[at + 6]!;
      const downEthanol = L * readings[at]!;
      const lost = loss[j]! * (readings[at + 2]! - reference_K[j]!);
      const E = j === 0 ? 1 : this.efficiencyNow(j);
      out[o] = energy - upEnergy - downEnergy - lost;
      out[o + 1] = below + E * (readings[at + 1]! - below) - y;
      out[o + 2] = ethanol - upEthanol - downEthanol;
      out[o + 3] = water - (V - upEthanol) - (L - downEthanol);
      energy = upEnergy;
      ethanol = upEthanol;
      water = V - upEthanol;
      below = y;
      if (over[j] === 1) {
        energy += downEnergy;
        ethanol += downEthanol;
        water += L - downEthanol;
      } else if (j > 0) {
        out[o - 4]! += downEnergy;
        out[o - 2]! += downEthanol;
        out[o - 1]! += L - downEthanol;
      }
    }
    const o = UNKNOWNS * top;
    if (this.partial) out[o + ENERGY]! -= this.dutyAt(share, readings) / LAMBDA0;
    const back = this.partial ? 0 : share * drum.rate;
    const drawn = drum.rate - back;
    const z = drum.liquid;
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

  /** A vapour counts by how much of it flows: what hardly flows carries hardly anything. While a still fills, at the state last evaluated, which is an attempt's. */
  weights(u: Float64Array, out: Float64Array): void {
    const { readings } = this.streams;
    // Rows may have been read in between, and what is read must not steer the steps.
    if (!this.#filling) this.streams.evaluate(u);
    const weights = this.#filling ? this.#weightsFilling : this.#weights;
    for (let k = 0; k < out.length; k++) out[k] = weights[k]!;
    for (let j = 0, k = VAPOUR; j < this.count; j++, k += UNKNOWNS) {
      const flows = readings[READINGS * j + VAPOUR_RATE]! * this.#perNominal;
      if (flows < 1) out[k]! *= flows > LEAST_FLOW ? 1 / flows : 1 / LEAST_FLOW;
    }
  }

  /** Share of the drum's outflow that runs back, or of the full duty a hold on a partial condenser asks for. */
  shareAt(u: Float64Array): number {
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    return this.share(u);
  }

  /** Duty of the partial condenser at the state last evaluated, W. */
  dutyAt(share: number, readings: Float64Array): number {
    if (!this.partial) return 0;
    const top = this.count - 1;
    const at = READINGS * top;
    const warm = readings[at + TEMPERATURE_K]! - this.reference_K[top]!;
    return LAMBDA0 * this.duty(share) * fade(readings[at + BELOW_K]!) + this.controls.water_W_K * warm;
  }

  /** Heat lost to the air at the state last evaluated, W. */
  lostAt(readings: Float64Array): number {
    let sum = 0;
    for (let j = 0, at = TEMPERATURE_K; j < this.count; j++, at += READINGS) {
      sum += this.loss[j]! * (readings[at]! - this.reference_K[j]!);
    }
    return LAMBDA0 * sum;
  }

  protected share(u: Float64Array): number {
    const { hold, returned } = this.controls;
    return hold === null ? returned : clampedShare(hold, askedShare(hold, this.drum.liquid, u[this.drumAt]!));
  }

  protected duty(share: number): number {
    if (!this.partial) return 0;
    return ((this.controls.hold === null ? 1 : share) * this.controls.duty_W) / LAMBDA0;
  }
}
