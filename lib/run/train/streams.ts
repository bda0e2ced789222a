// What one holder is and gives at a state of its four unknowns: temperature, vapour and liquid streams, and how they
// change with the unknowns. The one place where the train's physics of a holder stands; docs/theory/train.md has the equations.

import { ZERO_CELSIUS } from '../../constants.js';
import type { Holder, Train } from './holders.js';
import { LAMBDA0 } from './holders.js';
import { above, aboveSlope, ROUNDING } from './rounding.js';
import type { TrainTables } from './tables.js';

/** Unknowns of a holder, in this order: energy / LAMBDA0 [mol], vapour mole fraction, ethanol [mol], water [mol]. */
export const UNKNOWNS = 4;
export const ENERGY = 0;
export const VAPOUR = 1;
export const ETHANOL = 2;
export const WATER = 3;

/** A holder with less than this share of its usual amount gives its vapour reluctantly, and so never runs below nothing. */
const NEARLY_DRY = 1e-3;
/** An amount that divides, mol: keeps a mole fraction defined in an empty holder. */
export const NOTHING_mol = 1e-12;
const PER_LAMBDA = 1 / LAMBDA0;

/** Streams of all holders at one state, refreshed by `evaluate`; with derivatives after `differentiate`. Energies / LAMBDA0. */
export class Streams {
  readonly count: number;
  readonly liquid: Float64Array;
  readonly temperature_K: Float64Array;
  /** Mole fraction in equilibrium with the liquid. */
  readonly equilibrium: Float64Array;
  readonly vapourRate: Float64Array;
  readonly vapourEnthalpy: Float64Array;
  readonly liquidRate: Float64Array;
  readonly liquidEnthalpy: Float64Array;
  /** How far below its boiling point the liquid is, K. */
  readonly below_K: Float64Array;
  /** ∂/∂(energy, ethanol, water) of V, T, h; of L and y* only the two amounts; then of the depth below: 16 a holder. */
  readonly slopes: Float64Array;
  readonly vapourEnthalpySlope: Float64Array;

  readonly #tables: TrainTables;
  readonly #metal: Float64Array;
  readonly #brim_m3: Float64Array;
  readonly #brim_mol: Float64Array;
  readonly #boilRate: Float64Array;
  readonly #boilWidth: Float64Array;
  readonly #weirRate: Float64Array;
  readonly #weirWidth: Float64Array;
  readonly #little_mol: Float64Array;

  constructor(train: Train, tables: TrainTables) {
    const { holders, nominalVapour_mol_s: vapour } = train;
    const column = (read: (holder: Holder) => number): Float64Array => Float64Array.from(holders, read);
    this.count = holders.length;
    const zeros = (width = 1): Float64Array => new Float64Array(width * holders.length);
    this.liquid = zeros();
    this.temperature_K = zeros();
    this.equilibrium = zeros();
    this.vapourRate = zeros();
    this.vapourEnthalpy = zeros();
    this.liquidRate = zeros();
    this.liquidEnthalpy = zeros();
    this.below_K = zeros();
    this.slopes = zeros(16);
    this.vapourEnthalpySlope = zeros();
    this.#tables = tables;
    this.#metal = column((holder) => holder.metal_J_K / LAMBDA0);
    this.#brim_m3 = column((holder) => holder.brim_m3 ?? 0);
    this.#brim_mol = column((holder) => holder.brim_mol);
    this.#boilRate = column((holder) => 1 / holder.boilLag_s);
    this.#boilWidth = column((holder) => ROUNDING * vapour * holder.boilLag_s);
    this.#weirRate = column((holder) => 1 / holder.weirLag_s);
    this.#weirWidth = column((holder) => ROUNDING * vapour * holder.weirLag_s);
    this.#little_mol = column((holder) => NEARLY_DRY * holder.scale_mol);
  }

  /** All streams at a state. */
  evaluate(u: Float64Array): void {
    const { intervals } = this.#tables;
    for (let j = 0, o = 0; j < this.count; j++, o += UNKNOWNS) {
      const boiling = this.#tables.boiling[j]!;
      const vapour = this.#tables.vapour[j]!;
      const n1 = u[o + ETHANOL]!;
      const N = Math.max(NOTHING_mol, n1 + u[o + WATER]!);
      const x = n1 / N;
      const position = x * intervals;
      const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
      const s = position - k;
      const i = 16 * k;
      const alpha = boiling[i]! + s * (boiling[i + 1]! + s * (boiling[i + 2]! + s * boiling[i + 3]!));
      const T = boiling[i + 4]! + s * (boiling[i + 5]! + s * (boiling[i + 6]! + s * boiling[i + 7]!));
      const h = PER_LAMBDA * (boiling[i + 8]! + s * (boiling[i + 9]! + s * (boiling[i + 10]! + s * boiling[i + 11]!)));
      const metal = this.#metal[j]!;
      const e = u[o + ENERGY]! - N * h - metal * (T - ZERO_CELSIUS);
      const w = this.#boilWidth[j]!;
      let below = 0;
      let belowHeat = 0;
      if (e < -w) {
        const m = e <= -3 * w ? -e - 2 * w : ((e + w) * (e + w)) / (4 * w);
        const cold = this.#tables.cold[j]!;
        const c = 8 * k;
        const c1 = PER_LAMBDA * (cold[c]! + s * (cold[c + 1]! + s * (cold[c + 2]! + s * cold[c + 3]!)));
        const c2 = PER_LAMBDA * (cold[c + 4]! + s * (cold[c + 5]! + s * (cold[c + 6]! + s * cold[c + 7]!)));
        const b = N * c1 + metal;
        below = (2 * m) / (b + Math.sqrt(Math.max(0, b * b + 4 * N * c2 * m)));
        belowHeat = below * (c1 + c2 * below);
        this.vapourRate[j] = 0;
      } else {
        const p = e >= w ? e : ((e + w) * (e + w)) / (4 * w);
        this.vapourRate[j] = (p * this.#boilRate[j]! * N) / (N + this.#little_mol[j]!);
      }
      this.liquid[j] = x;
      this.equilibrium[j] = (alpha * x) / (1 + (alpha - 1) * x);
      this.temperature_K[j] = T - below;
      this.below_K[j] = below;
      this.liquidEnthalpy[j] = h - belowHeat;
      const y = u[o + VAPOUR]!;
      const at = y * intervals;
      const q = at <= 0 ? 0 : at >= intervals ? intervals - 1 : at | 0;
      const r = at - q;
      const v = 4 * q;
      this.vapourEnthalpy[j] =
        PER_LAMBDA * (vapour[v]! + r * (vapour[v + 1]! + r * (vapour[v + 2]! + r * vapour[v + 3]!)));
      const brim_m3 = this.#brim_m3[j]!;
      if (brim_m3 === Infinity) continue;
      let crest = N - this.#brim_mol[j]!;
      if (brim_m3 > 0) {
        crest -= brim_m3 / (boiling[i + 12]! + s * (boiling[i + 13]! + s * (boiling[i + 14]! + s * boiling[i + 15]!)));
      }
      this.liquidRate[j] = above(crest, this.#weirWidth[j]!) * this.#weirRate[j]!;
    }
  }

  /** All slopes at the state last evaluated. */
  differentiate(u: Float64Array): void {
    const { intervals } = this.#tables;
    for (let j = 0, o = 0, a = 0; j < this.count; j++, o += UNKNOWNS, a += 16) {
      const boiling = this.#tables.boiling[j]!;
      const vapour = this.#tables.vapour[j]!;
      const slopes = this.slopes;
      const N = Math.max(NOTHING_mol, u[o + ETHANOL]! + u[o + WATER]!);
      const x = this.liquid[j]!;
      const position = x * intervals;
      const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
      const s = position - k;
      const i = 16 * k;
      const alpha = boiling[i]! + s * (boiling[i + 1]! + s * (boiling[i + 2]! + s * boiling[i + 3]!));
      const alpha_x = (boiling[i + 1]! + s * (2 * boiling[i + 2]! + s * 3 * boiling[i + 3]!)) * intervals;
      const T_x = (boiling[i + 5]! + s * (2 * boiling[i + 6]! + s * 3 * boiling[i + 7]!)) * intervals;
      const h = PER_LAMBDA * (boiling[i + 8]! + s * (boiling[i + 9]! + s * (boiling[i + 10]! + s * boiling[i + 11]!)));
      const h_x = (boiling[i + 9]! + s * (2 * boiling[i + 10]! + s * 3 * boiling[i + 11]!)) * (intervals * PER_LAMBDA);
      const T = boiling[i + 4]! + s * (boiling[i + 5]! + s * (boiling[i + 6]! + s * boiling[i + 7]!));
      const metal = this.#metal[j]!;
      const x1 = (1 - x) / N;
      const x2 = -x / N;
      const e = u[o + ENERGY]! - N * h - metal * (T - ZERO_CELSIUS);
      const e1 = -h - (N * h_x + metal * T_x) * x1;
      const e2 = -h - (N * h_x + metal * T_x) * x2;
      const w = this.#boilWidth[j]!;
      let [dU, d1, d2] = [0, 0, 0];
      let heat_d = 0;
      let heat_x = 0;
      if (e < -w) {
        const m_e = e <= -3 * w ? -1 : (e + w) / (2 * w);
        const cold = this.#tables.cold[j]!;
        const c = 8 * k;
        const c1 = PER_LAMBDA * (cold[c]! + s * (cold[c + 1]! + s * (cold[c + 2]! + s * cold[c + 3]!)));
        const c2 = PER_LAMBDA * (cold[c + 4]! + s * (cold[c + 5]! + s * (cold[c + 6]! + s * cold[c + 7]!)));
        const c1_x = (cold[c + 1]! + s * (2 * cold[c + 2]! + s * 3 * cold[c + 3]!)) * (intervals * PER_LAMBDA);
        const c2_x = (cold[c + 5]! + s * (2 * cold[c + 6]! + s * 3 * cold[c + 7]!)) * (intervals * PER_LAMBDA);
        const d = this.below_K[j]!;
        const heat = d * (c1 + c2 * d);
        heat_d = c1 + 2 * c2 * d;
        heat_x = d * (c1_x + c2_x * d);
        const per = 1 / (N * heat_d + metal);
        dU = m_e * per;
        d1 = (m_e * e1 - heat - N * heat_x * x1) * per;
        d2 = (m_e * e2 - heat - N * heat_x * x2) * per;
        slopes[a] = 0;
        slopes[a + 1] = 0;
        slopes[a + 2] = 0;
      } else {
        const p = e >= w ? e : ((e + w) * (e + w)) / (4 * w);
        const p_e = e >= w ? 1 : (e + w) / (2 * w);
        const little = this.#little_mol[j]!;
        const gate = N / (N + little);
        const gate_N = little / ((N + little) * (N + little));
        const rate = this.#boilRate[j]!;
        slopes[a] = p_e * rate * gate;
        slopes[a + 1] = rate * (p_e * e1 * gate + p * gate_N);
        slopes[a + 2] = rate * (p_e * e2 * gate + p * gate_N);
      }
      slopes[a + 3] = -dU;
      slopes[a + 4] = T_x * x1 - d1;
      slopes[a + 5] = T_x * x2 - d2;
      slopes[a + 6] = -heat_d * dU;
      slopes[a + 7] = (h_x - heat_x) * x1 - heat_d * d1;
      slopes[a + 8] = (h_x - heat_x) * x2 - heat_d * d2;
      slopes[a + 12] = dU;
      slopes[a + 13] = d1;
      slopes[a + 14] = d2;
      const denominator = 1 + (alpha - 1) * x;
      slopes[a + 11] = (alpha + alpha_x * x * (1 - x)) / (denominator * denominator);
      const at = u[o + VAPOUR]! * intervals;
      const q = at <= 0 ? 0 : at >= intervals ? intervals - 1 : at | 0;
      const r = at - q;
      const v = 4 * q;
      this.vapourEnthalpySlope[j] =
        (vapour[v + 1]! + r * (2 * vapour[v + 2]! + r * 3 * vapour[v + 3]!)) * (intervals * PER_LAMBDA);
      const brim_m3 = this.#brim_m3[j]!;
      if (brim_m3 === Infinity) continue;
      let crest = N - this.#brim_mol[j]!;
      let full_x = 0;
      if (brim_m3 > 0) {
        const volume = boiling[i + 12]! + s * (boiling[i + 13]! + s * (boiling[i + 14]! + s * boiling[i + 15]!));
        const volume_x = (boiling[i + 13]! + s * (2 * boiling[i + 14]! + s * 3 * boiling[i + 15]!)) * intervals;
        crest -= brim_m3 / volume;
        full_x = (-brim_m3 * volume_x) / (volume * volume);
      }
      const rate = aboveSlope(crest, this.#weirWidth[j]!) * this.#weirRate[j]!;
      slopes[a + 9] = rate * (1 - full_x * x1);
      slopes[a + 10] = rate * (1 - full_x * x2);
    }
  }
}
