// What one holder is and gives at a state of its four unknowns: temperature, vapour and liquid streams, and how they
// change with the unknowns. The one place where the train's physics of a holder stands; docs/theory/train.md has the equations.

import { ZERO_CELSIUS } from '../../../constants.js';
import type { Train } from './holders.js';
import { LAMBDA0 } from './holders.js';
import { READINGS } from './readings.js';
import { above, aboveSlope, ROUNDING } from './rounding.js';
import type { TrainTables } from './tables.js';

/** Unknowns of a holder, in this order: energy / LAMBDA0 [mol], vapour mole fraction, ethanol [mol], water [mol]. */
export const UNKNOWNS = 4;
export const ENERGY = 0;
export const VAPOUR = 1;
export const ETHANOL = 2;
export const WATER = 3;

/** A holder with less than this share of its usual amount gives its vapour reluctantly, and so never runs below nothing. */
export const NEARLY_DRY = 1e-3;
/** An amount that divides, mol: keeps a mole fraction defined in an empty holder. */
export const NOTHING_mol = 1e-18;
const PER_LAMBDA = 1 / LAMBDA0;

/** Slopes of a holder, so many side by side. */
const SLOPES = 16;
/** Energies of metal count from here, K. */
export const FREEZING_K = ZERO_CELSIUS;
/** What is kept of a holder itself, so many numbers side by side. */
const CONSTANTS = 8;

/** Streams of all holders at one state, refreshed by `evaluate`, with their slopes when asked for. Energies / LAMBDA0. */
export class Streams {
  readonly count: number;
  /** READINGS a holder, as they are called above. */
  readonly readings: Float64Array;
  /** ∂/∂(energy, ethanol, water) of V, T, h; of L and y* only the two amounts; then of the depth below, and ∂H/∂y: 16 a holder. */
  readonly slopes: Float64Array;
  /** Heat that finds no liquid to boil and leaves with the vapour, and its ∂/∂(energy, ethanol, water): 4 a holder. */
  readonly spare: Float64Array;
  tables: TrainTables;
  /** Metal / LAMBDA0, brim by volume, by amount, rate and width of boiling, of running over, and what is little. */
  readonly constants: Float64Array;
  /** Energy, ethanol and water each holder was last evaluated at if it gave no vapour, and whether with slopes: 4 a holder. */
  readonly #idle: Float64Array;
  #remembers = false;

  constructor(train: Train, tables: TrainTables) {
    this.count = train.holders.length;
    this.readings = new Float64Array(READINGS * this.count);
    this.slopes = new Float64Array(SLOPES * this.count);
    this.spare = new Float64Array(4 * this.count);
    this.constants = new Float64Array(CONSTANTS * this.count);
    this.#idle = new Float64Array(4 * this.count);
    this.tables = tables;
    this.setUp(train, tables);
  }

  /** Takes the numbers of another train of as many holders. */
  setUp({ holders, nominalVapour_mol_s: vapour }: Train, tables: TrainTables): void {
    this.tables = tables;
    this.readings.fill(0);
    this.slopes.fill(0);
    this.spare.fill(0);
    this.remember(false);
    holders.forEach((holder, j) => {
      const { metal_J_K, brim_m3, brim_mol, boilLag_s, weirLag_s, scale_mol } = holder;
      const width = ROUNDING * vapour;
      const boils = [1 / boilLag_s, width * boilLag_s];
      const runs = [1 / weirLag_s, width * weirLag_s];
      const own = [metal_J_K / LAMBDA0, brim_m3 ?? 0, brim_mol, ...boils, ...runs, NEARLY_DRY * scale_mol];
      this.constants.set(own, CONSTANTS * j);
    });
  }

  /** Whether holders that stand idle are worth remembering, which are then not evaluated again: while a still warms up. */
  remember(whetherTo: boolean): void {
    this.#remembers = whetherTo;
    this.#idle.fill(NaN);
  }

  /** All streams at a state, and their slopes when these are wanted too. */
  evaluate(u: Float64Array, withSlopes = false): void {
    const remembers = this.#remembers;
    for (let j = 0; j < this.count; j++) {
      if (!remembers || !this.#isIdle(j, u, withSlopes)) this.#evaluateHolder(j, u, withSlopes);
    }
  }

  /** A holder that gives no vapour and whose liquid is what it was: everything read of it still holds but for the enthalpy of that vapour. */
  #isIdle(j: number, u: Float64Array, withSlopes: boolean): boolean {
    const idle = this.#idle;
    const o = 4 * j;
    return (
      u[o] === idle[o] && u[o + 2] === idle[o + 1] && u[o + 3] === idle[o + 2] && (!withSlopes || idle[o + 3] === 1)
    );
  }

  // A function of its own, not the body of the loop: as a body it was sometimes compiled for entry in mid-loop only, and every call's
  // first holder then ran uncompiled (a run with one doubler took 2.4 times as long).
  #evaluateHolder(j: number, u: Float64Array, withSlopes: boolean): void {
    const { intervals } = this.tables;
    const { slopes, readings, spare } = this;
    const constants = this.constants;
    const boiling = this.tables.boiling[j]!;
    const vapour = this.tables.vapour[j]!;
    const perHeat = intervals * PER_LAMBDA;
    const o = 4 * j;
    const a = 16 * j;
    const b = 11 * j;
    const c = 8 * j;
    const n1 = u[o + 2]!;
    const held = n1 + u[o + 3]!;
    const N = held > NOTHING_mol ? held : NOTHING_mol;
    const perN = 1 / N;
    const x = n1 * perN;
    const position = x * intervals;
    const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
    const s = position - k;
    const i = 16 * k;
    const a1 = boiling[i + 1]!;
    const a2 = boiling[i + 2]!;
    const a3 = boiling[i + 3]!;
    const t1 = boiling[i + 5]!;
    const t2 = boiling[i + 6]!;
    const t3 = boiling[i + 7]!;
    const h1 = boiling[i + 9]!;
    const h2 = boiling[i + 10]!;
    const h3 = boiling[i + 11]!;
    const alpha = boiling[i]! + s * (a1 + s * (a2 + s * a3));
    const T = boiling[i + 4]! + s * (t1 + s * (t2 + s * t3));
    const h = PER_LAMBDA * (boiling[i + 8]! + s * (h1 + s * (h2 + s * h3)));
    const metal = constants[c]!;
    const e = u[o]! - N * h - metal * (T - FREEZING_K);
    const rate = constants[c + 3]!;
    const w = constants[c + 4]!;
    const little = constants[c + 7]!;
    const perGate = 1 / (N + little);
    // What holds nothing gives nothing.
    const gate = held > 0 ? held * perGate : 0;
    const rises = e >= w ? e : above(e, w);
    const dry = little * perGate;
    const spared = rate * dry * dry;
    const perMix = 1 / (1 + (alpha - 1) * x);
    const at = u[o + 1]! * intervals;
    const q = at <= 0 ? 0 : at >= intervals ? intervals - 1 : at | 0;
    const r = at - q;
    const v = 4 * q;
    const v1 = vapour[v + 1]!;
    const v2 = vapour[v + 2]!;
    const v3 = vapour[v + 3]!;
    // Colder than its boiling point by d: N (c₁ d + c₂ d²) + C d = what it lacks.
    let d = 0;
    let heat = 0;
    let heat_d = 0;
    let heat_x = 0;
    if (e < -w) {
      const cold = this.tables.cold[j]!;
      const f = 8 * k;
      const c1 = PER_LAMBDA * (cold[f]! + s * (cold[f + 1]! + s * (cold[f + 2]! + s * cold[f + 3]!)));
      const c2 = PER_LAMBDA * (cold[f + 4]! + s * (cold[f + 5]! + s * (cold[f + 6]! + s * cold[f + 7]!)));
      const lacks = above(-e - 2 * w, w);
      const linear = N * c1 + metal;
      d = (2 * lacks) / (linear + Math.sqrt(Math.max(0, linear * linear + 4 * N * c2 * lacks)));
      heat = d * (c1 + c2 * d);
      if (withSlopes) {
        const c1_x = (cold[f + 1]! + s * (2 * cold[f + 2]! + s * 3 * cold[f + 3]!)) * perHeat;
        const c2_x = (cold[f + 5]! + s * (2 * cold[f + 6]! + s * 3 * cold[f + 7]!)) * perHeat;
        heat_d = c1 + 2 * c2 * d;
        heat_x = d * (c1_x + c2_x * d);
      }
    }
    readings[b] = x;
    readings[b + 1] = alpha * x * perMix;
    readings[b + 2] = T - d;
    readings[b + 3] = rises * rate * gate;
    readings[b + 4] = PER_LAMBDA * (vapour[v]! + r * (v1 + r * (v2 + r * v3)));
    readings[b + 6] = h - heat;
    readings[b + 7] = d;
    spare[o] = rises * spared;
    const brim_m3 = constants[c + 1]!;
    let crest = 0;
    let perVolume = 1;
    if (brim_m3 < Infinity) {
      crest = N - constants[c + 2]!;
      if (brim_m3 > 0) {
        perVolume = 1 / (boiling[i + 12]! + s * (boiling[i + 13]! + s * (boiling[i + 14]! + s * boiling[i + 15]!)));
        crest -= brim_m3 * perVolume;
      }
      readings[b + 10] = crest;
      readings[b + 5] = above(crest, constants[c + 6]!) * constants[c + 5]!;
    }
    if (this.#remembers) {
      const idle = this.#idle;
      idle[o] = rises > 0 ? NaN : u[o]!;
      idle[o + 1] = n1;
      idle[o + 2] = u[o + 3]!;
      idle[o + 3] = withSlopes ? 1 : 0;
    }
    if (!withSlopes) return;
    const x1 = (1 - x) * perN;
    const x2 = -x * perN;
    const alpha_x = (a1 + s * (2 * a2 + s * 3 * a3)) * intervals;
    const T_x = (t1 + s * (2 * t2 + s * 3 * t3)) * intervals;
    const h_x = (h1 + s * (2 * h2 + s * 3 * h3)) * perHeat;
    const e_x = N * h_x + metal * T_x;
    const e1 = -h - e_x * x1;
    const e2 = -h - e_x * x2;
    const gate_N = rises * rate * little * perGate * perGate;
    const V_e = e >= w ? rate * gate : aboveSlope(e, w) * rate * gate;
    readings[b + 8] = x1;
    readings[b + 9] = x2;
    slopes[a] = V_e;
    slopes[a + 1] = V_e * e1 + gate_N;
    slopes[a + 2] = V_e * e2 + gate_N;
    const spare_e = e >= w ? spared : aboveSlope(e, w) * spared;
    const spare_N = -2 * rises * spared * perGate;
    spare[o + 1] = spare_e;
    spare[o + 2] = spare_e * e1 + spare_N;
    spare[o + 3] = spare_e * e2 + spare_N;
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
    const y_x = (alpha + alpha_x * x * (1 - x)) * perMix * perMix;
    slopes[a + 11] = y_x;
    slopes[a + 12] = dU;
    slopes[a + 13] = d1;
    slopes[a + 14] = d2;
    slopes[a + 15] = (v1 + r * (2 * v2 + r * 3 * v3)) * perHeat;
    if (brim_m3 === Infinity) return;
    let full_x = 0;
    if (brim_m3 > 0) {
      const volume_x = (boiling[i + 13]! + s * (2 * boiling[i + 14]! + s * 3 * boiling[i + 15]!)) * intervals;
      full_x = -brim_m3 * volume_x * perVolume * perVolume;
    }
    const over = aboveSlope(crest, constants[c + 6]!) * constants[c + 5]!;
    slopes[a + 9] = over * (1 - full_x * x1);
    slopes[a + 10] = over * (1 - full_x * x2);
  }
}
