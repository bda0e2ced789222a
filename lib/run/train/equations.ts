// The derivative of the train's balances (balances.ts): its Jacobian, block by block. Blocks couple to their neighbours only.

import type { StiffSystem } from '../../numerics/stiff/stiff-system.js';
import { TrainBalances } from './balances.js';
import { holdSlopes } from './controls.js';
import { fade, fadeSlope } from './fading.js';
import { LAMBDA0 } from './holders.js';
import { ENERGY, ETHANOL, NOTHING_mol, UNKNOWNS, VAPOUR, WATER } from './streams.js';

const ENTRIES = 48;
const LOWER = 0;
const MIDDLE = 16;
const UPPER = 32;

/** The train as a stiff system. */
export class TrainEquations extends TrainBalances implements StiffSystem {
  linearise(_s: number, u: Float64Array, slope: Float64Array): void {
    slope.fill(0);
    this.streams.evaluate(u);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.#writeJacobian(u);
  }

  /** Balances and their derivative at one state, which is worth little more than either. */
  evaluate(_s: number, u: Float64Array, out: Float64Array): void {
    this.streams.evaluate(u);
    this.drum.evaluate(u[this.drumAt + ETHANOL]!, u[this.drumAt + WATER]!);
    this.balance(u, out);
    this.#writeJacobian(u);
  }

  #writeJacobian(u: Float64Array): void {
    this.streams.differentiate(u);
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
    const top = this.count - 1;
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
    // Vapour: out of this block, into the one above. At the drum the same rows, its energy row being heat taken out.
    const over = this.over[j] === 1;
    const energyAbove = up + (j === top ? 4 : 0);
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      const V_c = slopes[a + c]!;
      entries[middle + column] = -H * V_c;
      entries[middle + 8 + column] = -y * V_c;
      entries[middle + 12 + column] = (y - 1) * V_c;
      entries[energyAbove + column] = H * V_c;
      entries[up + 8 + column] = y * V_c;
      entries[up + 12 + column] = (1 - y) * V_c;
    }
    const H_y = V * streams.vapourEnthalpySlope[j]!;
    entries[middle + VAPOUR] = -H_y;
    entries[middle + 8 + VAPOUR] = -V;
    entries[middle + 12 + VAPOUR] = V;
    entries[energyAbove + VAPOUR] = H_y;
    entries[up + 8 + VAPOUR] = V;
    entries[up + 12 + VAPOUR] = -V;
    // Liquid: out of this block, into the one below or over into the one above.
    if (j > 0 || over) {
      const into = over ? up : ENTRIES * (j - 1) + UPPER;
      const energyInto = over ? energyAbove : into;
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
        entries[energyInto + column]! += energy;
        entries[into + 8 + column]! += ethanol;
        entries[into + 12 + column]! += water;
      }
    }
    // Losses and, in the uppermost holder, the duty.
    let conductance = this.loss[j]!;
    let fading = 0;
    if (j === top && this.partial) {
      conductance += this.controls.water_W_K / LAMBDA0;
      fading = this.duty(this.share(u)) * fadeSlope(streams.below_K[j]!);
    }
    for (let c = 0; c < 3; c++) {
      const column = c === 0 ? ENERGY : c + 1;
      entries[middle + column]! -= conductance * slopes[a + 3 + c]!;
      if (fading !== 0) entries[middle + column]! -= fading * slopes[a + 12 + c]!;
    }
    const E = j === 0 ? 1 : this.efficiency[j]!;
    const y_x = slopes[a + 11]!;
    entries[middle + 4 + VAPOUR] = -1;
    entries[middle + 4 + ETHANOL] = E * y_x * x1;
    entries[middle + 4 + WATER] = E * y_x * x2;
    if (j < top) entries[up + 4 + VAPOUR]! += 1 - this.efficiency[j + 1]!;
  }

  #lineariseDrum(u: Float64Array): void {
    const { drum, drumAt: d, streams } = this;
    const entries = this.matrix.entries;
    const top = this.count - 1;
    const z = drum.liquid;
    const N = Math.max(NOTHING_mol, u[d + ETHANOL]! + u[d + WATER]!);
    const share = this.share(u);
    const { hold } = this.controls;
    const { share_x, share_I, rate_x, rate_I } =
      hold === null ? { share_x: 0, share_I: 0, rate_x: 0, rate_I: 0 } : holdSlopes(hold, z, u[d]!);
    const middle = ENTRIES * (top + 1) + MIDDLE;
    const down = ENTRIES * top + UPPER;
    const up = ENTRIES * (top + 2) + LOWER;
    entries[middle] = rate_I;
    const back = this.partial ? 0 : share;
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
        const returned = this.partial ? 0 : back * out[q]! + share_c * flow[q]!;
        const row = q === 0 ? 0 : q + 1;
        entries[middle + 4 * (q === 0 ? 1 : row) + c]! -= out[q]!;
        entries[down + 4 * row + c]! += returned;
        entries[up + 4 * row + c]! += out[q]! - returned;
      }
      if (this.partial && hold !== null) {
        entries[down + c]! -= share_c * this.#fullDuty() * fade(streams.below_K[top]!);
      }
    }
    if (hold === null) return;
    if (this.partial) {
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
