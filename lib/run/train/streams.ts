// What one holder is and gives at a state of its four unknowns: temperature, vapour and liquid streams, and how they
// change with the unknowns. The one place where the train's physics of a holder stands; docs/theory/train.md has the equations.

import { ZERO_CELSIUS } from '../../constants.js';
import type { Train } from './holders.js';
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

/** Streams of all holders at one state, refreshed by `evaluate`, with their slopes when asked for. Energies / LAMBDA0. */
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

  #tables: TrainTables;
  readonly #metal: Float64Array;
  readonly #brim_m3: Float64Array;
  readonly #brim_mol: Float64Array;
  readonly #boilRate: Float64Array;
  readonly #boilWidth: Float64Array;
  readonly #weirRate: Float64Array;
  readonly #weirWidth: Float64Array;
  readonly #little_mol: Float64Array;

  constructor(train: Train, tables: TrainTables) {
    const count = train.holders.length;
    const zeros = (width = 1): Float64Array => new Float64Array(width * count);
    this.count = count;
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
    this.#metal = zeros();
    this.#brim_m3 = zeros();
    this.#brim_mol = zeros();
    this.#boilRate = zeros();
    this.#boilWidth = zeros();
    this.#weirRate = zeros();
    this.#weirWidth = zeros();
    this.#little_mol = zeros();
    this.#tables = tables;
    this.setUp(train, tables);
  }

  /** Takes the numbers of another train of as many holders. */
  setUp({ holders, nominalVapour_mol_s: vapour }: Train, tables: TrainTables): void {
    this.#tables = tables;
    this.liquidRate.fill(0);
    this.slopes.fill(0);
    holders.forEach((holder, j) => {
      this.#metal[j] = holder.metal_J_K / LAMBDA0;
      this.#brim_m3[j] = holder.brim_m3 ?? 0;
      this.#brim_mol[j] = holder.brim_mol;
      this.#boilRate[j] = 1 / holder.boilLag_s;
      this.#boilWidth[j] = ROUNDING * vapour * holder.boilLag_s;
      this.#weirRate[j] = 1 / holder.weirLag_s;
      this.#weirWidth[j] = ROUNDING * vapour * holder.weirLag_s;
      this.#little_mol[j] = NEARLY_DRY * holder.scale_mol;
    });
  }

  /** All streams at a state, and their slopes when these are wanted too. */
  evaluate(u: Float64Array, withSlopes = false): void {
    for (let j = 0; j < this.count; j++) this.#evaluateHolder(j, u, withSlopes);
  }

  // A function of its own, not the body of the loop: as a body it was sometimes compiled for entry in mid-loop only, and every call's
  // first holder then ran uncompiled (a run with one doubler took 2.4 times as long).
  #evaluateHolder(j: number, u: Float64Array, withSlopes: boolean): void {
    const { intervals } = this.#tables;
    const { slopes } = this;
    const perHeat = intervals * PER_LAMBDA;
    const o = UNKNOWNS * j;
    const a = 16 * j;
    const boiling = this.#tables.boiling[j]!;
    const vapour = this.#tables.vapour[j]!;
    const n1 = u[o + ETHANOL]!;
    const N = Math.max(NOTHING_mol, n1 + u[o + WATER]!);
    const x = n1 / N;
    const position = x * intervals;
    const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
    const s = position - k;
    const i = 16 * k;
    const t1 = boiling[i + 5]!;
    const t2 = boiling[i + 6]!;
    const t3 = boiling[i + 7]!;
    const h1 = boiling[i + 9]!;
    const h2 = boiling[i + 10]!;
    const h3 = boiling[i + 11]!;
    const alpha = boiling[i]! + s * (boiling[i + 1]! + s * (boiling[i + 2]! + s * boiling[i + 3]!));
    const T = boiling[i + 4]! + s * (t1 + s * (t2 + s * t3));
    const h = PER_LAMBDA * (boiling[i + 8]! + s * (h1 + s * (h2 + s * h3)));
    const metal = this.#metal[j]!;
    const e = u[o + ENERGY]! - N * h - metal * (T - ZERO_CELSIUS);
    const w = this.#boilWidth[j]!;
    const rate = this.#boilRate[j]!;
    const little = this.#little_mol[j]!;
    const gate = N / (N + little);
    const rises = above(e, w);
    const perMix = 1 / (1 + (alpha - 1) * x);
    const y = u[o + VAPOUR]!;
    const at = y * intervals;
    const q = at <= 0 ? 0 : at >= intervals ? intervals - 1 : at | 0;
    const r = at - q;
    const v = 4 * q;
    const v1 = vapour[v + 1]!;
    const v2 = vapour[v + 2]!;
    const v3 = vapour[v + 3]!;
    this.liquid[j] = x;
    this.equilibrium[j] = alpha * x * perMix;
    this.vapourRate[j] = rises * rate * gate;
    this.vapourEnthalpy[j] = PER_LAMBDA * (vapour[v]! + r * (v1 + r * (v2 + r * v3)));
    // Colder than its boiling point by d: N (c₁ d + c₂ d²) + C d = what it lacks.
    let d = 0;
    let heat = 0;
    let heat_d = 0;
    let heat_x = 0;
    if (e < -w) {
      const cold = this.#tables.cold[j]!;
      const c = 8 * k;
      const c1 = PER_LAMBDA * (cold[c]! + s * (cold[c + 1]! + s * (cold[c + 2]! + s * cold[c + 3]!)));
      const c2 = PER_LAMBDA * (cold[c + 4]! + s * (cold[c + 5]! + s * (cold[c + 6]! + s * cold[c + 7]!)));
      const lacks = above(-e - 2 * w, w);
      const b = N * c1 + metal;
      d = (2 * lacks) / (b + Math.sqrt(Math.max(0, b * b + 4 * N * c2 * lacks)));
      heat = d * (c1 + c2 * d);
      if (withSlopes) {
        const c1_x = (cold[c + 1]! + s * (2 * cold[c + 2]! + s * 3 * cold[c + 3]!)) * perHeat;
        const c2_x = (cold[c + 5]! + s * (2 * cold[c + 6]! + s * 3 * cold[c + 7]!)) * perHeat;
        heat_d = c1 + 2 * c2 * d;
        heat_x = d * (c1_x + c2_x * d);
      }
    }
    this.temperature_K[j] = T - d;
    this.below_K[j] = d;
    this.liquidEnthalpy[j] = h - heat;
    const brim_m3 = this.#brim_m3[j]!;
    let crest = 0;
    let volume = 1;
    if (brim_m3 < Infinity) {
      crest = N - this.#brim_mol[j]!;
      if (brim_m3 > 0) {
        volume = boiling[i + 12]! + s * (boiling[i + 13]! + s * (boiling[i + 14]! + s * boiling[i + 15]!));
        crest -= brim_m3 / volume;
      }
      this.liquidRate[j] = above(crest, this.#weirWidth[j]!) * this.#weirRate[j]!;
    }
    if (!withSlopes) return;
    const x1 = (1 - x) / N;
    const x2 = -x / N;
    const alpha_x = (boiling[i + 1]! + s * (2 * boiling[i + 2]! + s * 3 * boiling[i + 3]!)) * intervals;
    const T_x = (t1 + s * (2 * t2 + s * 3 * t3)) * intervals;
    const h_x = (h1 + s * (2 * h2 + s * 3 * h3)) * perHeat;
    const e_x = N * h_x + metal * T_x;
    const e1 = -h - e_x * x1;
    const e2 = -h - e_x * x2;
    const rises_e = aboveSlope(e, w);
    const gate_N = (rises * rate * little) / ((N + little) * (N + little));
    const V_e = rises_e * rate * gate;
    slopes[a] = V_e;
    slopes[a + 1] = V_e * e1 + gate_N;
    slopes[a + 2] = V_e * e2 + gate_N;
    let dU = 0;
    let d1 = 0;
    let d2 = 0;
    if (e < -w) {
      const lacks_e = -aboveSlope(-e - 2 * w, w);
      const per = 1 / (N * heat_d + metal);
      dU = lacks_e * per;
      d1 = (lacks_e * e1 - heat - N * heat_x * x1) * per;
      d2 = (lacks_e * e2 - heat - N * heat_x * x2) * per;
    }
    slopes[a + 3] = -dU;
    slopes[a + 4] = T_x * x1 - d1;
    slopes[a + 5] = T_x * x2 - d2;
    slopes[a + 6] = -heat_d * dU;
    slopes[a + 7] = (h_x - heat_x) * x1 - heat_d * d1;
    slopes[a + 8] = (h_x - heat_x) * x2 - heat_d * d2;
    slopes[a + 11] = (alpha + alpha_x * x * (1 - x)) * perMix * perMix;
    slopes[a + 12] = dU;
    slopes[a + 13] = d1;
    slopes[a + 14] = d2;
    this.vapourEnthalpySlope[j] = (v1 + r * (2 * v2 + r * 3 * v3)) * perHeat;
    if (brim_m3 === Infinity) return;
    let full_x = 0;
    if (brim_m3 > 0) {
      const volume_x = (boiling[i + 13]! + s * (2 * boiling[i + 14]! + s * 3 * boiling[i + 15]!)) * intervals;
      full_x = (-brim_m3 * volume_x) / (volume * volume);
    }
    const over = aboveSlope(crest, this.#weirWidth[j]!) * this.#weirRate[j]!;
    slopes[a + 9] = over * (1 - full_x * x1);
    slopes[a + 10] = over * (1 - full_x * x2);
  }
}
