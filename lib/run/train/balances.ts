// The train as a stiff system: balances of energy, ethanol and water on every holder, a drum and a receiver, with the
// vapours as algebraic unknowns, four unknowns a block (streams.ts says which). Blocks couple to their neighbours only.
//
// Drum block: [integral of the hold, heat taken out / LAMBDA0, ethanol, water]; receiver block: [enthalpy / LAMBDA0, vapour raised in the
// uppermost holder is not kept here: unused, ethanol, water]. Ethanol and water are linear invariants of f and of its Jacobian.

import { BlockTridiagonalMatrix } from '../../numerics/linear/block-tridiagonal.js';
import { askedShare, clampedShare, type Controls, integralRate } from './controls.js';
import { fade } from './fading.js';
import { LAMBDA0, type Train } from './holders.js';
import { DrumStreams } from './drum-streams.js';
import { ENERGY, ETHANOL, Streams, UNKNOWNS, VAPOUR, WATER } from './streams.js';
import type { TrainTables } from './tables.js';

/** Errors of these are allowed to be so many times larger: amounts above the kettle, vapours. Not energies: those of a film of liquid are small. */
const PLATES_COUNT = 3;
const VAPOUR_COUNTS = 10;
/** The drum feeds the spout, by which a run is judged: its errors count so many times. */
const SPOUT_COUNTS = 4;
/** Vapour that flows less than this share of the usual counts as this. */
const LEAST_FLOW = 0.01;
/**
 * A plate that raises more than so many times the vapour from below boils by itself. Source: this project's choice, above what heats that
 * differ from plate to plate and plates that fill make of equal flows (some 15 %).
 */
export const BY_ITSELF = 1.25;
/** Vapour below this share of the usual is none. */
const NO_VAPOUR = 1e-8;

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
  protected readonly count: number;
  protected readonly efficiency: Float64Array;
  /** Vapour below this is none, mol/s. */
  protected none_mol_s = 0;
  protected readonly loss: Float64Array;
  protected readonly reference_K: Float64Array;
  protected readonly over: Uint8Array;
  protected partial = false;
  readonly #weights: Float64Array;
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
    this.efficiency = new Float64Array(count);
    this.loss = new Float64Array(count);
    this.reference_K = new Float64Array(count);
    this.over = new Uint8Array(count);
    this.#weights = new Float64Array(this.size);
    this.setUp(train, tables, tolerance, controls);
  }

  /** Takes the numbers of another train of as many holders. */
  setUp(train: Train, tables: TrainTables, tolerance: number, controls: Controls): void {
    const { holders } = train;
    this.streams.setUp(train, tables);
    this.drum.setUp(train, tables);
    this.controls = controls;
    holders.forEach((holder, j) => {
      this.efficiency[j] = holder.efficiency;
      this.loss[j] = holder.loss_W_K / LAMBDA0;
      this.reference_K[j] = holder.reference_K;
      this.over[j] = holder.overflow === 'over' ? 1 : 0;
    });
    this.partial = holders.at(-1)!.kind === 'partialCondenser';
    this.#perNominal = 1 / train.nominalVapour_mol_s;
    this.none_mol_s = NO_VAPOUR * train.nominalVapour_mol_s;
    writeWeights(train, tolerance, this.#weights);
  }

  /** Changes the plates' efficiencies, and the vapours of a state with them, which build on each other from the kettle up. */
  workWith(efficiency: Float64Array, state: Float64Array): void {
    this.efficiency.set(efficiency);
    this.streams.evaluate(state);
    for (let j = 1; j < this.count; j++) {
      const below = state[UNKNOWNS * (j - 1) + VAPOUR]!;
      const own = this.streams.equilibrium[j]!;
      state[UNKNOWNS * j + VAPOUR] = below + this.efficiencyNow(j) * (own - below);
    }
  }

  /** Efficiency of a plate at the streams last evaluated: what it raises by itself, with no vapour from below, is in equilibrium with its liquid. */
  protected efficiencyNow(j: number): number {
    const { vapourRate } = this.streams;
    const V = vapourRate[j]!;
    const met = BY_ITSELF * vapourRate[j - 1]! + this.none_mol_s;
    return V <= met ? this.efficiency[j]! : 1 - ((1 - this.efficiency[j]!) * met) / V;
  }

  rightHandSide(_s: number, u: Float64Array, out: Float64Array): void {
    this.streams.evaluate(u);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.balance(u, out);
  }

  /** The balances at the state whose streams were last evaluated. */
  protected balance(u: Float64Array, out: Float64Array): void {
    const { streams, drum, drumAt: d, receiverAt: r } = this;
    const { vapourRate, vapourEnthalpy, liquidRate, liquidEnthalpy, liquid, temperature_K, equilibrium } = streams;
    const top = this.count - 1;
    const share = this.share(u);
    const duty = this.duty(share) * fade(streams.below_K[top]!);
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
      let lost = this.loss[j]! * (temperature_K[j]! - this.reference_K[j]!);
      if (j === top) {
        lost += duty;
        if (this.partial) lost += (this.controls.water_W_K / LAMBDA0) * (temperature_K[j]! - this.reference_K[j]!);
      }
      out[o + ENERGY] = energy - upEnergy - downEnergy - lost;
      out[o + ETHANOL] = ethanol - V * y - L * x;
      out[o + WATER] = water - V * (1 - y) - L * (1 - x);
      const E = j === 0 ? 1 : this.efficiencyNow(j);
      out[o + VAPOUR] = below + E * (equilibrium[j]! - below) - y;
      energy = upEnergy;
      ethanol = V * y;
      water = V * (1 - y);
      below = y;
      if (this.over[j] === 1) {
        energy += downEnergy;
        ethanol += L * x;
        water += L * (1 - x);
      } else if (j > 0) {
        out[o - UNKNOWNS + ENERGY]! += downEnergy;
        out[o - UNKNOWNS + ETHANOL]! += L * x;
        out[o - UNKNOWNS + WATER]! += L * (1 - x);
      }
    }
    const back = this.partial ? 0 : share * drum.rate;
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

  /** A vapour counts by how much of it flows at the state last evaluated: what hardly flows carries hardly anything. */
  weights(_u: Float64Array, out: Float64Array): void {
    const { vapourRate } = this.streams;
    const weights = this.#weights;
    for (let k = 0; k < out.length; k++) out[k] = weights[k]!;
    for (let j = 0, k = VAPOUR; j < this.count; j++, k += UNKNOWNS) {
      const flows = vapourRate[j]! * this.#perNominal;
      if (flows < 1) out[k]! *= flows > LEAST_FLOW ? 1 / flows : 1 / LEAST_FLOW;
    }
  }

  /** Share of the drum's outflow that runs back, or of the full duty a hold on a partial condenser asks for. */
  shareAt(u: Float64Array): number {
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    return this.share(u);
  }

  /** Duty of the partial condenser at the state last evaluated, W. */
  dutyAt(share: number): number {
    const top = this.count - 1;
    if (!this.partial) return 0;
    const warm = this.streams.temperature_K[top]! - this.reference_K[top]!;
    return LAMBDA0 * this.duty(share) * fade(this.streams.below_K[top]!) + this.controls.water_W_K * warm;
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

/** How errors count, docs/decisions/0023-error-weights-of-the-train.md: those of plates less, those at the spout more than those of other parts. */
function writeWeights(train: Train, tolerance: number, weights: Float64Array): void {
  const { holders, drum } = train;
  holders.forEach(({ scale_mol }, j) => {
    const amount = tolerance * scale_mol * (j === 0 ? 1 : PLATES_COUNT);
    weights.fill(amount, UNKNOWNS * j, UNKNOWNS * (j + 1));
    weights[UNKNOWNS * j + ENERGY] = tolerance * scale_mol;
    weights[UNKNOWNS * j + VAPOUR] = tolerance * VAPOUR_COUNTS;
  });
  const kettle = tolerance * holders[0]!.scale_mol;
  const d = UNKNOWNS * holders.length;
  weights.fill((tolerance * drum.scale_mol) / SPOUT_COUNTS, d, d + UNKNOWNS);
  weights[d] = tolerance;
  weights[d + 1] = kettle;
  weights.fill(kettle, d + UNKNOWNS);
}
