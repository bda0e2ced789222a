// ∂f/∂p of the train's balances by a number of its problem, at a state where its streams were evaluated: what streams.ts, drum-streams.ts and balances.ts
// compute, differentiated line by line. Constants and tables are differentiated by trains on both sides of the number; no difference of large amounts is taken.

import type { BothSides, StateSlopes } from '../../../numerics/stiff/stiff-system.js';
import { clampedShare, askedShare, type Controls, integralRate } from './controls.js';
import type { TrainEquations } from './equations.js';
import { fade, fadeSlope } from './fading.js';
import { LAMBDA0 } from './holders.js';
import { above, aboveSlope, aboveWidth } from './rounding.js';
import { ETHANOL, FREEZING_K, NOTHING_mol, UNKNOWNS, VAPOUR, WATER } from './streams.js';

const PER_LAMBDA = 1 / LAMBDA0;
/** Derivatives of a holder's readings, so many side by side: vapour in equilibrium, temperature, vapour, its enthalpy, liquid, its enthalpy, depth below boiling, spare heat. */
const MOVES = 8;

/** The derivative by one number. */
export class ByNumber implements StateSlopes {
  readonly #train: TrainEquations;
  readonly #near: BothSides<TrainEquations>;
  /** Derivatives of constants, 8 a holder; of tables, null where there are none. */
  readonly #constants: Float64Array;
  readonly #tables: readonly (Tables | null)[];
  readonly #differs: readonly boolean[];
  readonly #loss: Float64Array;
  readonly #reference: Float64Array;
  readonly #none: number;
  readonly #drum: readonly number[];
  readonly #moves: Float64Array;

  /** `wide` sides tell what stays through a run, `near` ones, which follow it, what its steps set. */
  constructor(train: TrainEquations, wide: BothSides<TrainEquations>, near: BothSides<TrainEquations>) {
    const { plus, minus, apart } = wide;
    const slope = (a: Float64Array, b: Float64Array): Float64Array =>
      a.map((value, i) => (value === b[i] ? 0 : (value - b[i]!) / apart));
    this.#train = train;
    this.#near = near;
    this.#constants = slope(plus.streams.constants, minus.streams.constants);
    const tables = new Map<Float64Array, Tables | null>();
    const count = train.count;
    this.#tables = Array.from({ length: count + 1 }, (_none, j) => {
      const [a, b] = [plus.streams.tables, minus.streams.tables];
      const key = a.boiling[j]!;
      // At the same pressure both sides read the same tables.
      if (key === b.boiling[j] && a.vapour[j] === b.vapour[j] && a.cold[j] === b.cold[j]) return null;
      let made = tables.get(key);
      if (made === undefined) {
        const boiling = slope(key, b.boiling[j]!);
        const vapour = slope(a.vapour[j]!, b.vapour[j]!);
        const cold = slope(a.cold[j]!, b.cold[j]!);
        const none = [boiling, vapour, cold].every((table) => table.every((value) => value === 0));
        made = none ? null : { boiling, vapour, cold };
        tables.set(key, made);
      }
      return made;
    });
    this.#differs = Array.from(
      { length: count },
      (_none, j) => this.#tables[j] !== null || this.#constants.subarray(8 * j, 8 * j + 8).some((value) => value !== 0),
    );
    this.#loss = slope(plus.loss, minus.loss);
    this.#reference = slope(plus.reference_K, minus.reference_K);
    this.#none = (plus.none_mol_s - minus.none_mol_s) / apart;
    const [one, other] = [plus.drum.constants, minus.drum.constants];
    this.#drum = one.map((value, i) => (value === other[i] ? 0 : (value - other[i]!) / apart));
    this.#moves = new Float64Array(MOVES * count);
  }

  /** out = ∂f/∂p at u, where the train's streams and drum were evaluated. */
  write(u: Float64Array, out: Float64Array): void {
    const train = this.#train;
    const { streams, drum, drumAt: d, receiverAt: r, loss, reference_K, over, count } = train;
    const { readings } = streams;
    const moves = this.#moves;
    const { plus, minus, apart } = this.#near;
    const per = 1 / apart;
    const top = count - 1;
    let energy = (plus.controls.power_W - minus.controls.power_W) * per * PER_LAMBDA;
    let ethanol = 0;
    let water = 0;
    let below = 0;
    for (let j = 0, o = 0, at = 0; j <= top; j++, o += UNKNOWNS, at += 11) {
      const m = MOVES * j;
      if (this.#differs[j]!) this.#moveHolder(j, u);
      const V = readings[at + 3]!;
      const L = readings[at + 5]!;
      const x = readings[at]!;
      const y = u[o + VAPOUR]!;
      const V_p = moves[m + 2]!;
      const L_p = moves[m + 4]!;
      const upEnergy = V_p * readings[at + 4]! + V * moves[m + 3]! + moves[m + 7]!;
      const upEthanol = V_p * y;
      const downEnergy = L_p * readings[at + 6]! + L * moves[m + 5]!;
      const downEthanol = L_p * x;
      const lost =
        this.#loss[j]! * (readings[at + 2]! - reference_K[j]!) + loss[j]! * (moves[m + 1]! - this.#reference[j]!);
      out[o] = energy - upEnergy - downEnergy - lost;
      if (j === 0) out[o + VAPOUR] = moves[m]!;
      else {
        const E_p = this.#efficiency(j, per);
        out[o + VAPOUR] = E_p * (readings[at + 1]! - below) + train.efficiencyNow(j) * moves[m]!;
      }
      out[o + ETHANOL] = ethanol - upEthanol - downEthanol;
      out[o + WATER] = water - (V_p - upEthanol) - (L_p - downEthanol);
      energy = upEnergy;
      ethanol = upEthanol;
      water = V_p - upEthanol;
      below = y;
      if (over[j] === 1) {
        energy += downEnergy;
        ethanol += downEthanol;
        water += L_p - downEthanol;
      } else if (j > 0) {
        out[o - 4]! += downEnergy;
        out[o - 2]! += downEthanol;
        out[o - 1]! += L_p - downEthanol;
      }
    }
    const z = drum.liquid;
    const integral = u[d]!;
    const share = shareOf(train.controls, z, integral);
    const share_p = (shareOf(plus.controls, z, integral) - shareOf(minus.controls, z, integral)) * per;
    const { rate, enthalpy } = this.#moveDrum(u[d + ETHANOL]!, u[d + WATER]!);
    const o = UNKNOWNS * top;
    if (train.partial) out[o]! -= this.#duty(share, share_p, per);
    const back = train.partial ? 0 : share * drum.rate;
    const back_p = train.partial ? 0 : share_p * drum.rate + share * rate;
    const drawn = drum.rate - back;
    const drawn_p = rate - back_p;
    out[o]! += back_p * drum.enthalpy + back * enthalpy;
    out[o + ETHANOL]! += back_p * z;
    out[o + WATER]! += back_p * (1 - z);
    out[d] = (holdRate(plus.controls, z, integral) - holdRate(minus.controls, z, integral)) * per;
    out[d + 1] = energy - rate * drum.enthalpy - drum.rate * enthalpy;
    out[d + ETHANOL] = ethanol - rate * z;
    out[d + WATER] = water - rate * (1 - z);
    out[r] = drawn_p * drum.enthalpy + drawn * enthalpy;
    out[r + 1] = 0;
    out[r + ETHANOL] = drawn_p * z;
    out[r + WATER] = drawn_p * (1 - z);
  }

  /** Of the efficiency of a plate now, which may boil by itself. */
  #efficiency(j: number, per: number): number {
    const train = this.#train;
    const { plus, minus } = this.#near;
    const { readings } = train.streams;
    const own = (plus.efficiency[j]! - minus.efficiency[j]!) * per;
    const V = readings[11 * j + 3]!;
    const from = readings[11 * j - 8]!;
    const met = train.byItself[j]! * from + train.none_mol_s;
    if (V <= met) return own;
    const byItself = (plus.byItself[j]! - minus.byItself[j]!) * per;
    const met_p = byItself * from + train.byItself[j]! * this.#moves[MOVES * (j - 1) + 2]! + this.#none;
    return (own * met) / V - (1 - train.efficiency[j]!) * (met_p / V - (met * this.#moves[MOVES * j + 2]!) / (V * V));
  }

  /** Of what a partial condenser takes out, over LAMBDA0. */
  #duty(share: number, share_p: number, per: number): number {
    const train = this.#train;
    const { plus, minus } = this.#near;
    const { controls, reference_K, count } = train;
    const { readings } = train.streams;
    const top = count - 1;
    const [at, m] = [11 * top, MOVES * top];
    const duty_p = (plus.controls.duty_W - minus.controls.duty_W) * per;
    const [asked, asked_p] = controls.hold === null ? [1, 0] : [share, share_p];
    const below = readings[at + 7]!;
    const set = asked * controls.duty_W * fadeSlope(below) * this.#moves[m + 6]!;
    const faded = (asked_p * controls.duty_W + asked * duty_p) * fade(below);
    const water_p = (plus.controls.water_W_K - minus.controls.water_W_K) * per;
    const warm = readings[at + 2]! - reference_K[top]!;
    const cooled = water_p * warm + controls.water_W_K * (this.#moves[m + 1]! - this.#reference[top]!);
    return (set + faded + cooled) * PER_LAMBDA;
  }

  /** Of a holder's readings. */
  #moveHolder(j: number, u: Float64Array): void {
    const { streams } = this.#train;
    const { constants, tables } = streams;
    const { intervals } = tables;
    const moves = this.#moves;
    const own = this.#tables[j] ?? null;
    const moved = this.#constants;
    const o = UNKNOWNS * j;
    const c = 8 * j;
    const m = MOVES * j;
    const boiling = tables.boiling[j]!;
    const n1 = u[o + ETHANOL]!;
    const N = Math.max(NOTHING_mol, n1 + u[o + WATER]!);
    const x = n1 / N;
    const [k, s] = place(x, intervals);
    const i = 16 * k;
    const alpha = cubic(boiling, i, s);
    const T = cubic(boiling, i + 4, s);
    const h = PER_LAMBDA * cubic(boiling, i + 8, s);
    const alpha_p = own === null ? 0 : cubic(own.boiling, i, s);
    const T_p = own === null ? 0 : cubic(own.boiling, i + 4, s);
    const h_p = own === null ? 0 : PER_LAMBDA * cubic(own.boiling, i + 8, s);
    const metal = constants[c]!;
    const rate = constants[c + 3]!;
    const w = constants[c + 4]!;
    const little = constants[c + 7]!;
    const [metal_p, rate_p, w_p, little_p] = [moved[c]!, moved[c + 3]!, moved[c + 4]!, moved[c + 7]!];
    const e = u[o]! - N * h - metal * (T - FREEZING_K);
    const e_p = -N * h_p - metal * T_p - metal_p * (T - FREEZING_K);
    const rises = above(e, w);
    const rises_p = aboveSlope(e, w) * e_p + aboveWidth(e, w) * w_p;
    const perGate = 1 / (N + little);
    const gate = N * perGate;
    const gate_p = -N * perGate * perGate * little_p;
    const dry = little * perGate;
    const dry_p = -gate_p;
    const perMix = 1 / (1 + (alpha - 1) * x);
    moves[m] = x * (1 - x) * perMix * perMix * alpha_p;
    moves[m + 2] = rises_p * rate * gate + rises * (rate_p * gate + rate * gate_p);
    const [q, t] = place(u[o + VAPOUR]!, intervals);
    moves[m + 3] = own === null ? 0 : PER_LAMBDA * cubic(own.vapour, 4 * q, t);
    moves[m + 7] = rises_p * rate * dry * dry + rises * (rate_p * dry * dry + 2 * rate * dry * dry_p);
    let depth_p = 0;
    let heat_p = 0;
    if (e < -w) {
      const cold = tables.cold[j]!;
      const f = 8 * k;
      const c1 = PER_LAMBDA * cubic(cold, f, s);
      const c2 = PER_LAMBDA * cubic(cold, f + 4, s);
      const c1_p = own === null ? 0 : PER_LAMBDA * cubic(own.cold, f, s);
      const c2_p = own === null ? 0 : PER_LAMBDA * cubic(own.cold, f + 4, s);
      const d = streams.readings[11 * j + 7]!;
      const lack = -e - 2 * w;
      const lacks_p = aboveSlope(lack, w) * (-e_p - 2 * w_p) + aboveWidth(lack, w) * w_p;
      depth_p = (lacks_p - N * d * (c1_p + c2_p * d) - metal_p * d) / (N * (c1 + 2 * c2 * d) + metal);
      heat_p = depth_p * (c1 + 2 * c2 * d) + d * (c1_p + c2_p * d);
    }
    moves[m + 1] = T_p - depth_p;
    moves[m + 5] = h_p - heat_p;
    moves[m + 6] = depth_p;
    moves[m + 4] = 0;
    const brim_m3 = constants[c + 1]!;
    if (brim_m3 === Infinity) return;
    let crest = N - constants[c + 2]!;
    let crest_p = -moved[c + 2]!;
    if (brim_m3 > 0) {
      const perVolume = 1 / cubic(boiling, i + 12, s);
      crest -= brim_m3 * perVolume;
      crest_p -= moved[c + 1]! * perVolume;
      if (own !== null) crest_p += brim_m3 * perVolume * perVolume * cubic(own.boiling, i + 12, s);
    }
    const width = constants[c + 6]!;
    const runs_p = aboveSlope(crest, width) * crest_p + aboveWidth(crest, width) * moved[c + 6]!;
    moves[m + 4] = runs_p * constants[c + 5]! + above(crest, width) * moved[c + 5]!;
  }

  /** Of what runs out of the drum, and of its enthalpy. */
  #moveDrum(n1: number, n2: number): { rate: number; enthalpy: number } {
    const train = this.#train;
    const { tables } = train.streams;
    const own = this.#tables[train.count] ?? null;
    const [brim_m3, subcooling_K, water_K, lag_s, width] = train.drum.constants;
    const [brim_p, subcooling_p, water_p, lag_p, width_p] = this.#drum as [number, number, number, number, number];
    const [boiling, cold] = [tables.boiling[train.count]!, tables.cold[train.count]!];
    const N = Math.max(NOTHING_mol, n1 + n2);
    const [k, s] = place(n1 / N, tables.intervals);
    const [i, f] = [16 * k, 8 * k];
    const perVolume = 1 / cubic(boiling, i + 12, s);
    const crest = N - brim_m3 * perVolume;
    let crest_p = -brim_p * perVolume;
    if (own !== null) crest_p += brim_m3 * perVolume * perVolume * cubic(own.boiling, i + 12, s);
    const runs = above(crest, width);
    const runs_p = aboveSlope(crest, width) * crest_p + aboveWidth(crest, width) * width_p;
    const T = cubic(boiling, i + 4, s);
    const most = Math.max(0, T - water_K);
    const d = Math.min(subcooling_K, most);
    const T_p = own === null ? 0 : cubic(own.boiling, i + 4, s);
    const d_p = subcooling_K <= most ? subcooling_p : most > 0 ? T_p - water_p : 0;
    const c1 = PER_LAMBDA * cubic(cold, f, s);
    const c2 = PER_LAMBDA * cubic(cold, f + 4, s);
    let enthalpy = -d_p * (c1 + 2 * c2 * d);
    if (own !== null) {
      enthalpy +=
        PER_LAMBDA * (cubic(own.boiling, i + 8, s) - d * (cubic(own.cold, f, s) + cubic(own.cold, f + 4, s) * d));
    }
    return { rate: runs_p / lag_s - (runs * lag_p) / (lag_s * lag_s), enthalpy };
  }
}

interface Tables {
  readonly boiling: Float64Array;
  readonly vapour: Float64Array;
  readonly cold: Float64Array;
}

function place(x: number, intervals: number): readonly [number, number] {
  const position = x * intervals;
  const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
  return [k, position - k];
}

function cubic(table: Float64Array, i: number, s: number): number {
  return table[i]! + s * (table[i + 1]! + s * (table[i + 2]! + s * table[i + 3]!));
}

function shareOf({ hold, returned }: Controls, z: number, integral: number): number {
  return hold === null ? returned : clampedShare(hold, askedShare(hold, z, integral));
}

function holdRate({ hold }: Controls, z: number, integral: number): number {
  return hold === null ? 0 : integralRate(hold, z, integral);
}
