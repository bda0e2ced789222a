// The derivative of the train's balances (balances.ts): its Jacobian, block by block. Blocks couple to their neighbours only.

import type { BothSides, StateSlopes, StiffSystem } from '../../../numerics/stiff/stiff-system.js';
import { TrainBalances } from './balances.js';
import { ByNumber } from './by-number.js';
import { tooCold } from './coldest.js';
import { type HoldSlopes, holdSlopes } from './controls.js';
import { fade, fadeSlope } from './fading.js';
import { Kept } from './kept.js';
import { LAMBDA0 } from './holders.js';
import { BELOW_K, EQUILIBRIUM, READINGS, VAPOUR_RATE } from './readings.js';
import { ETHANOL, NOTHING_mol, VAPOUR, WATER } from './streams.js';

const ENTRIES = 48;
const LOWER = 0;
const MIDDLE = 16;
const UPPER = 32;

const NO_HOLD: HoldSlopes = { share_x: 0, share_I: 0, rate_x: 0, rate_I: 0 };

/** The train as a stiff system. */
export class TrainEquations extends TrainBalances implements StiffSystem {
  readonly autonomous = true;
  readonly kept = new Kept();
  /** Nothing gets colder, K. */
  coldest_K = 0;

  linearise(_s: number, u: Float64Array, slope: Float64Array): void {
    slope.fill(0);
    this.streams.evaluate(u, true);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.#writeJacobian(u);
  }

  /** Balances and their derivative at one state, which is worth little more than either. */
  evaluate(_s: number, u: Float64Array, out: Float64Array): void {
    this.streams.evaluate(u, true);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.balance(u, out);
    this.#writeJacobian(u);
  }

  slopesBy(wide: BothSides<StiffSystem>, near: BothSides<StiffSystem>): StateSlopes | null {
    const [{ plus: a, minus: b }, { plus: c, minus: d }] = [wide, near];
    const all = a instanceof TrainEquations && b instanceof TrainEquations;
    if (!all || !(c instanceof TrainEquations && d instanceof TrainEquations)) return null;
    return new ByNumber(this, { plus: a, minus: b, apart: wide.apart }, { plus: c, minus: d, apart: near.apart });
  }

  admit(u: Float64Array): boolean {
    if (!this.kept.admit(u, this.count + 1)) return false;
    // The state last evaluated is an attempt's, and next to this one where all runs smoothly.
    if (!this.filling && !tooCold(this.streams, this.coldest_K)) return true;
    this.streams.evaluate(u);
    return !tooCold(this.streams, this.coldest_K);
  }

  /** Time to the next corner, s, at the state last evaluated with slopes. */
  corner(_u: Float64Array, f: Float64Array): number {
    return this.corners.next_s(this.streams, f, this.nominalVapour_mol_s);
  }

  /** Every entry that is ever anything but 0 is written every time. */
  #writeJacobian(u: Float64Array): void {
    for (let j = 0; j < this.count; j++) this.#lineariseHolder(j, u);
    if (this.partial) this.#lineariseDuty(u);
    this.#lineariseDrum(u);
  }

  /** What a holder gives, by its own unknowns: taken from its own block, added to the blocks above and below. Columns: energy, ethanol, water. */
  #lineariseHolder(j: number, u: Float64Array): void {
    const { entries } = this.matrix;
    const { slopes, readings, spare } = this.streams;
    const a = 16 * j;
    const at = 11 * j;
    const o = 4 * j;
    const middle = ENTRIES * j + MIDDLE;
    const up = ENTRIES * (j + 1) + LOWER;
    const top = this.count - 1;
    // At the drum the energy row is heat taken out.
    const energyAbove = j === top ? up + 4 : up;
    // Vapour.
    const y = u[o + 1]!;
    const V = readings[at + 3]!;
    const H = readings[at + 4]!;
    const V0 = slopes[a]!;
    const V1 = slopes[a + 1]!;
    const V2 = slopes[a + 2]!;
    const yV0 = y * V0;
    const yV1 = y * V1;
    const yV2 = y * V2;
    const HV0 = H * V0 + spare[o + 1]!;
    const HV1 = H * V1 + spare[o + 2]!;
    const HV2 = H * V2 + spare[o + 3]!;
    const H_y = V * slopes[a + 15]!;
    // Liquid.
    const x = readings[at]!;
    const L = readings[at + 5]!;
    const h = readings[at + 6]!;
    const x1 = readings[at + 8]!;
    const x2 = readings[at + 9]!;
    const L1 = slopes[a + 9]!;
    const L2 = slopes[a + 10]!;
    const hL0 = L * slopes[a + 6]!;
    const hL1 = h * L1 + L * slopes[a + 7]!;
    const hL2 = h * L2 + L * slopes[a + 8]!;
    const xL1 = x * L1 + L * x1;
    const xL2 = x * L2 + L * x2;
    const loss = this.loss[j]!;
    const E = j === 0 ? 1 : this.efficiencyNow(j);
    const gain = E * slopes[a + 11]!;
    entries[middle] = -HV0 - hL0 - loss * slopes[a + 3]!;
    entries[middle + 1] = -H_y;
    entries[middle + 2] = -HV1 - hL1 - loss * slopes[a + 4]!;
    entries[middle + 3] = -HV2 - hL2 - loss * slopes[a + 5]!;
    entries[middle + 4] = 0;
    entries[middle + 5] = -1;
    entries[middle + 6] = gain * x1;
    entries[middle + 7] = gain * x2;
    entries[middle + 8] = -yV0;
    entries[middle + 9] = -V;
    entries[middle + 10] = -yV1 - xL1;
    entries[middle + 11] = -yV2 - xL2;
    entries[middle + 12] = yV0 - V0;
    entries[middle + 13] = V;
    entries[middle + 14] = yV1 - V1 + xL1 - L1;
    entries[middle + 15] = yV2 - V2 + xL2 - L2;
    entries[energyAbove] = HV0;
    entries[energyAbove + 1] = H_y;
    entries[energyAbove + 2] = HV1;
    entries[energyAbove + 3] = HV2;
    if (j < top) {
      entries[up + 4] = 0;
      entries[up + 5] = 1 - this.efficiencyNow(j + 1);
      entries[up + 6] = 0;
      entries[up + 7] = 0;
    }
    entries[up + 8] = yV0;
    entries[up + 9] = V;
    entries[up + 10] = yV1;
    entries[up + 11] = yV2;
    entries[up + 12] = V0 - yV0;
    entries[up + 13] = -V;
    entries[up + 14] = V1 - yV1;
    entries[up + 15] = V2 - yV2;
    if (this.over[j] === 1) {
      entries[energyAbove] += hL0;
      entries[energyAbove + 2]! += hL1;
      entries[energyAbove + 3]! += hL2;
      entries[up + 10]! += xL1;
      entries[up + 11]! += xL2;
      entries[up + 14]! += L1 - xL1;
      entries[up + 15]! += L2 - xL2;
    } else if (j > 0) {
      const down = ENTRIES * (j - 1) + UPPER;
      entries[down] = hL0;
      entries[down + 2] = hL1;
      entries[down + 3] = hL2;
      entries[down + 10] = xL1;
      entries[down + 11] = xL2;
      entries[down + 14] = L1 - xL1;
      entries[down + 15] = L2 - xL2;
    }
    if (j > 0 && E !== this.efficiency[j]!) this.#lineariseLift(j, u);
  }

  /** A plate that boils by itself: its efficiency depends on the vapours below and above its liquid. */
  #lineariseLift(j: number, u: Float64Array): void {
    const { entries } = this.matrix;
    const { slopes, readings } = this.streams;
    const at = READINGS * j;
    const V = readings[at + VAPOUR_RATE]!;
    const own = readings[at + EQUILIBRIUM]! - u[4 * (j - 1) + VAPOUR]!;
    const lifts = ((1 - this.efficiency[j]!) * own) / V;
    const below = at - READINGS + VAPOUR_RATE;
    const byOwn = (lifts * (this.byItself[j]! * readings[below]! + this.none_mol_s)) / V;
    const byBelow = this.byItself[j]! * lifts;
    const lower = ENTRIES * j + LOWER + 4;
    const middle = ENTRIES * j + MIDDLE + 4;
    const a = 16 * j;
    entries[middle] = byOwn * slopes[a]!;
    entries[middle + 2]! += byOwn * slopes[a + 1]!;
    entries[middle + 3]! += byOwn * slopes[a + 2]!;
    entries[lower] = -byBelow * slopes[a - 16]!;
    entries[lower + 2] = -byBelow * slopes[a - 15]!;
    entries[lower + 3] = -byBelow * slopes[a - 14]!;
  }

  /** What a partial condenser takes out, by the unknowns of its own liquid. */
  #lineariseDuty(u: Float64Array): void {
    const { entries } = this.matrix;
    const { slopes, readings } = this.streams;
    const top = this.count - 1;
    const a = 16 * top;
    const middle = ENTRIES * top + MIDDLE;
    const water = this.controls.water_W_K / LAMBDA0;
    const fading = this.duty(this.share(u)) * fadeSlope(readings[READINGS * top + BELOW_K]!);
    entries[middle]! -= water * slopes[a + 3]! + fading * slopes[a + 12]!;
    entries[middle + 2]! -= water * slopes[a + 4]! + fading * slopes[a + 13]!;
    entries[middle + 3]! -= water * slopes[a + 5]! + fading * slopes[a + 14]!;
  }

  #lineariseDrum(u: Float64Array): void {
    const { drum, drumAt: d } = this;
    const entries = this.matrix.entries;
    const top = this.count - 1;
    const z = drum.liquid;
    const N = Math.max(NOTHING_mol, u[d + ETHANOL]! + u[d + WATER]!);
    const share = this.share(u);
    const { hold } = this.controls;
    const { share_x, share_I, rate_x, rate_I } = hold === null ? NO_HOLD : holdSlopes(hold, z, u[d]!);
    const middle = ENTRIES * (top + 1) + MIDDLE;
    const down = ENTRIES * top + UPPER;
    const up = ENTRIES * (top + 2) + LOWER;
    // Of a full duty what a hold does not ask for is missing.
    const fullDuty = this.partial ? this.#fullDuty() : 0;
    entries[middle] = rate_I;
    const { rate, enthalpy } = drum;
    const back = this.partial ? 0 : share;
    for (let c = ETHANOL; c <= WATER; c++) {
      const z_c = c === ETHANOL ? (1 - z) / N : -z / N;
      const rate_c = c === ETHANOL ? drum.rate1 : drum.rate2;
      // What runs out, and what of it runs back, by this amount.
      const share_c = this.partial ? 0 : share_x * z_c;
      const energy = rate_c * enthalpy + rate * drum.enthalpy_x * z_c;
      const ethanol = rate_c * z + rate * z_c;
      const water = rate_c - ethanol;
      const energyBack = back * energy + share_c * rate * enthalpy;
      const ethanolBack = back * ethanol + share_c * rate * z;
      const waterBack = back * water + share_c * rate * (1 - z);
      entries[middle + c] = rate_x * z_c;
      entries[middle + 4 + c] = -energy;
      entries[middle + 8 + c] = -ethanol;
      entries[middle + 12 + c] = -water;
      entries[down + c] = energyBack - share_x * z_c * fullDuty;
      entries[down + 8 + c] = ethanolBack;
      entries[down + 12 + c] = waterBack;
      entries[up + c] = energy - energyBack;
      entries[up + 8 + c] = ethanol - ethanolBack;
      entries[up + 12 + c] = water - waterBack;
    }
    const sent = this.partial ? 0 : share_I * rate;
    entries[down] = sent * enthalpy - share_I * fullDuty;
    entries[down + 8] = sent * z;
    entries[down + 12] = sent * (1 - z);
    entries[up] = -sent * enthalpy;
    entries[up + 8] = -sent * z;
    entries[up + 12] = -sent * (1 - z);
  }

  /** Duty of the partial condenser that a share of 1 stands for. */
  #fullDuty(): number {
    const below_K = this.streams.readings[READINGS * (this.count - 1) + BELOW_K]!;
    return (this.controls.duty_W / LAMBDA0) * fade(below_K);
  }
}
