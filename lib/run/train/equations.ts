// The derivative of the train's balances (balances.ts): its Jacobian, block by block. Blocks couple to their neighbours only.

import type { StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { BY_ITSELF, TrainBalances } from './balances.js';
import { type HoldSlopes, holdSlopes } from './controls.js';
import { fade, fadeSlope } from './fading.js';
import { LAMBDA0 } from './holders.js';
import { ENERGY, ETHANOL, NOTHING_mol, UNKNOWNS, VAPOUR, WATER } from './streams.js';

const ENTRIES = 48;
const LOWER = 0;
const MIDDLE = 16;
const UPPER = 32;

const NO_HOLD: HoldSlopes = { share_x: 0, share_I: 0, rate_x: 0, rate_I: 0 };

/** The train as a stiff system. */
export class TrainEquations extends TrainBalances implements StiffSystem {
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

  #writeJacobian(u: Float64Array): void {
    const entries = this.matrix.entries;
    entries.fill(0);
    for (let j = 0; j < this.count; j++) this.#lineariseHolder(j, u);
    this.#lineariseDrum(u);
  }

  #lineariseHolder(j: number, u: Float64Array): void {
    const { streams } = this;
    const entries = this.matrix.entries;
    const { slopes } = streams;
    const a = 16 * j;
    const o = UNKNOWNS * j;
    const y = u[o + VAPOUR]!;
    const x = streams.liquid[j]!;
    const V = streams.vapourRate[j]!;
    const L = streams.liquidRate[j]!;
    const H = streams.vapourEnthalpy[j]!;
    const h = streams.liquidEnthalpy[j]!;
    const N = Math.max(NOTHING_mol, u[o + ETHANOL]! + u[o + WATER]!);
    const x1 = (1 - x) / N;
    const x2 = -x / N;
    const middle = ENTRIES * j + MIDDLE;
    const up = ENTRIES * (j + 1) + LOWER;
    const top = this.count - 1;
    const over = this.over[j] === 1;
    // At the drum the energy row is heat taken out.
    const energyAbove = up + (j === top ? 4 : 0);
    const into = over ? up : ENTRIES * (j - 1) + UPPER;
    const energyInto = over ? energyAbove : into;
    const runs = j > 0 || over;
    let conductance = this.loss[j]!;
    let fading = 0;
    if (j === top && this.partial) {
      conductance += this.controls.water_W_K / LAMBDA0;
      fading = this.duty(this.share(u)) * fadeSlope(streams.below_K[j]!);
    }
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      // Vapour, into the block above.
      const V_c = slopes[a + c]!;
      const upEnergy = H * V_c;
      const upEthanol = y * V_c;
      const upWater = V_c - upEthanol;
      entries[energyAbove + column] = upEnergy;
      entries[up + 8 + column] = upEthanol;
      entries[up + 12 + column] = upWater;
      const lost = conductance * slopes[a + 3 + c]! + fading * slopes[a + 12 + c]!;
      if (!runs) {
        entries[middle + column] = -upEnergy - lost;
        entries[middle + 8 + column] = -upEthanol;
        entries[middle + 12 + column] = -upWater;
        continue;
      }
      // Liquid, into the block below or over into the one above.
      const L_c = c === 0 ? 0 : slopes[a + 8 + c]!;
      const x_c = c === 0 ? 0 : c === 1 ? x1 : x2;
      const energy = h * L_c + L * slopes[a + 6 + c]!;
      const ethanol = x * L_c + L * x_c;
      const water = L_c - ethanol;
      entries[middle + column] = -upEnergy - energy - lost;
      entries[middle + 8 + column] = -upEthanol - ethanol;
      entries[middle + 12 + column] = -upWater - water;
      entries[energyInto + column]! += energy;
      entries[into + 8 + column]! += ethanol;
      entries[into + 12 + column]! += water;
    }
    const H_y = V * streams.vapourEnthalpySlope[j]!;
    entries[middle + VAPOUR] = -H_y;
    entries[middle + 8 + VAPOUR] = -V;
    entries[middle + 12 + VAPOUR] = V;
    entries[energyAbove + VAPOUR] = H_y;
    entries[up + 8 + VAPOUR] = V;
    entries[up + 12 + VAPOUR] = -V;
    const E = j === 0 ? 1 : this.efficiencyNow(j);
    const y_x = slopes[a + 11]!;
    entries[middle + 4 + VAPOUR] = -1;
    entries[middle + 4 + ETHANOL] = E * y_x * x1;
    entries[middle + 4 + WATER] = E * y_x * x2;
    if (j < top) entries[up + 4 + VAPOUR]! += 1 - this.efficiencyNow(j + 1);
    if (j > 0 && E !== this.efficiency[j]!) this.#lineariseLift(j, u);
  }

  /** A plate that boils by itself: its efficiency depends on the vapours below and above its liquid. */
  #lineariseLift(j: number, u: Float64Array): void {
    const entries = this.matrix.entries;
    const { slopes, vapourRate, equilibrium } = this.streams;
    const V = vapourRate[j]!;
    const lifts = ((1 - this.efficiency[j]!) * (equilibrium[j]! - u[UNKNOWNS * (j - 1) + VAPOUR]!)) / V;
    const byOwn = (lifts * (BY_ITSELF * vapourRate[j - 1]! + this.none_mol_s)) / V;
    const middle = ENTRIES * j + MIDDLE + 4;
    const lower = ENTRIES * j + LOWER + 4;
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      entries[middle + column]! += byOwn * slopes[16 * j + c]!;
      entries[lower + column]! -= BY_ITSELF * lifts * slopes[16 * (j - 1) + c]!;
    }
  }

  #lineariseDrum(u: Float64Array): void {
    const { drum, drumAt: d, streams } = this;
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
      entries[middle + 4 + c]! -= energy;
      entries[middle + 8 + c]! -= ethanol;
      entries[middle + 12 + c]! -= water;
      entries[down + c]! += energyBack;
      entries[down + 8 + c]! += ethanolBack;
      entries[down + 12 + c]! += waterBack;
      entries[up + c]! += energy - energyBack;
      entries[up + 8 + c]! += ethanol - ethanolBack;
      entries[up + 12 + c]! += water - waterBack;
      if (this.partial) entries[down + c]! -= share_x * z_c * this.#fullDuty() * fade(streams.below_K[top]!);
    }
    if (hold === null) return;
    if (this.partial) {
      entries[down]! -= share_I * this.#fullDuty() * fade(streams.below_K[top]!);
      return;
    }
    entries[down]! += share_I * rate * enthalpy;
    entries[down + 8]! += share_I * rate * z;
    entries[down + 12]! += share_I * rate * (1 - z);
    entries[up]! -= share_I * rate * enthalpy;
    entries[up + 8]! -= share_I * rate * z;
    entries[up + 12]! -= share_I * rate * (1 - z);
  }

  #fullDuty(): number {
    return this.controls.duty_W / LAMBDA0;
  }
}
