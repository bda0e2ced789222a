// What runs out of the drum above the train, and what it carries; with derivatives by its two amounts.

import type { Drum, Train } from './holders.js';
import { LAMBDA0 } from './holders.js';
import { above, aboveSlope, ROUNDING } from './rounding.js';
import { NOTHING_mol } from './streams.js';
import type { TrainTables } from './tables.js';

const PER_LAMBDA = 1 / LAMBDA0;

/** What runs out of the drum, and what it carries. */
export class DrumStreams {
  liquid = 0;
  rate = 0;
  enthalpy = 0;
  rate1 = 0;
  rate2 = 0;
  enthalpy_x = 0;
  #intervals = 0;
  #boiling: Float64Array;
  #cold: Float64Array;
  #drum: Drum;
  #width = 0;

  constructor(train: Train, tables: TrainTables) {
    this.#boiling = tables.boiling.at(-1)!;
    this.#cold = tables.cold.at(-1)!;
    this.#drum = train.drum;
    this.setUp(train, tables);
  }

  /** Brim by volume, subcooling, the water's temperature, time and width of running out. */
  get constants(): readonly [number, number, number, number, number] {
    const { brim_m3, subcooling_K, water_K, weirLag_s } = this.#drum;
    return [brim_m3, subcooling_K, water_K, weirLag_s, this.#width];
  }

  /** Takes the numbers of another train. */
  setUp(train: Train, tables: TrainTables): void {
    this.#intervals = tables.intervals;
    this.#boiling = tables.boiling.at(-1)!;
    this.#cold = tables.cold.at(-1)!;
    this.#drum = train.drum;
    this.#width = ROUNDING * train.nominalVapour_mol_s * train.drum.weirLag_s;
  }

  evaluate(n1: number, n2: number): void {
    const intervals = this.#intervals;
    const boiling = this.#boiling;
    const cold = this.#cold;
    const { brim_m3, subcooling_K, water_K, weirLag_s } = this.#drum;
    const N = Math.max(NOTHING_mol, n1 + n2);
    const x = n1 / N;
    const position = x * intervals;
    const k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : position | 0;
    const s = position - k;
    const i = 16 * k;
    const c = 8 * k;
    const h = PER_LAMBDA * (boiling[i + 8]! + s * (boiling[i + 9]! + s * (boiling[i + 10]! + s * boiling[i + 11]!)));
    const c1 = PER_LAMBDA * (cold[c]! + s * (cold[c + 1]! + s * (cold[c + 2]! + s * cold[c + 3]!)));
    const c2 = PER_LAMBDA * (cold[c + 4]! + s * (cold[c + 5]! + s * (cold[c + 6]! + s * cold[c + 7]!)));
    const T = boiling[i + 4]! + s * (boiling[i + 5]! + s * (boiling[i + 6]! + s * boiling[i + 7]!));
    const most = Math.max(0, T - water_K);
    const d = Math.min(subcooling_K, most);
    const volume = boiling[i + 12]! + s * (boiling[i + 13]! + s * (boiling[i + 14]! + s * boiling[i + 15]!));
    const volume_x = (boiling[i + 13]! + s * (2 * boiling[i + 14]! + s * 3 * boiling[i + 15]!)) * intervals;
    const crest = N - brim_m3 / volume;
    this.liquid = x;
    this.rate = above(crest, this.#width) / weirLag_s;
    this.enthalpy = h - d * (c1 + c2 * d);
    const slope = aboveSlope(crest, this.#width) / weirLag_s;
    const full_x = (-brim_m3 * volume_x) / (volume * volume);
    this.rate1 = slope * (1 - (full_x * (1 - x)) / N);
    this.rate2 = slope * (1 + (full_x * x) / N);
    const h_x = (boiling[i + 9]! + s * (2 * boiling[i + 10]! + s * 3 * boiling[i + 11]!)) * (intervals * PER_LAMBDA);
    const c1_x = (cold[c + 1]! + s * (2 * cold[c + 2]! + s * 3 * cold[c + 3]!)) * (intervals * PER_LAMBDA);
    const c2_x = (cold[c + 5]! + s * (2 * cold[c + 6]! + s * 3 * cold[c + 7]!)) * (intervals * PER_LAMBDA);
    this.enthalpy_x = h_x - d * (c1_x + c2_x * d);
    if (subcooling_K <= most || most === 0) return;
    // As cold as the water: the mixture's boiling point says how far below it that is.
    const d_x = (boiling[i + 5]! + s * (2 * boiling[i + 6]! + s * 3 * boiling[i + 7]!)) * intervals;
    this.enthalpy_x -= d_x * (c1 + 2 * c2 * d);
  }
}
