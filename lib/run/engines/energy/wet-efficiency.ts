// Plates driven close to flooding work worse: liquid carried up with the vapour undoes part of what a plate has done. Rated at the beginning of
// each step of the run sheet, with the vapour its heat raises, and again whenever what the plates hold has changed so much that an efficiency
// would: rich vapour is heavy and floods sooner than the weak vapour a run begins with.

import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { liquidOnSlice } from '../../../equilibrium/liquid-on-slice.js';
import { readValue } from '../../../equilibrium/slice-tables.js';
import { loadOfPlate } from '../../../still/plate-load.js';
import type { PlatedSection, Still } from '../../../still/still.js';
import type { Kelvin, MoleFraction, Pascal } from '../../../units/quantities.js';
import type { Controls } from './controls.js';
import { LAMBDA0, type Train } from './holders.js';
import type { TrainState } from './train-state.js';

/** About where rich vapour condenses, K: a plate that is still cold is rated as if it were as warm. */
const HEAD_K = 351;
/** Plates are rated anew when a factor on their efficiency is off by this. */
const OFF = 0.03;
/** Least time from one rating to the next, each time so much longer than the last: each costs the solver some fifteen steps. */
const LEAST_WAIT_s = 60;
const LONGER = 1.3;
const MOST_WAIT_s = 600;
/** Or this share of a run that goes on for days. */
const OF_RUN = 0.01;

/** Vapours for which a factor is known without a plate, from 0 to 1 by this. */
const EVERY = 1 / 24;

/** The plates of a train and how they were rated last. */
export class RatedPlates {
  readonly #section: PlatedSection;
  readonly #train: Train;
  readonly #slice: CurveSlice;
  /** Vapour of each plate when it was rated. */
  readonly #vapours: Float64Array;
  /** Factors of a plate in equilibrium, by its vapour, EVERY apart: they tell how far a rating is off. */
  readonly #factors = new Float64Array(Math.round(1 / EVERY) + 1);
  #wait_s = LEAST_WAIT_s;
  #next_s = 0;
  #vapour_mol_s = 0;
  #liquid_mol_s = 0;

  constructor(section: PlatedSection, train: Train, slice: CurveSlice) {
    this.#section = section;
    this.#train = train;
    this.#slice = slice;
    this.#vapours = new Float64Array(train.holders.length);
  }

  /** Murphree efficiency of every holder at the load of a step and what its plates hold now. */
  rate(moment: TrainState, controls: Controls): Float64Array {
    const begins = moment.stepTime_s === 0;
    const longest_s = Math.max(MOST_WAIT_s, OF_RUN * moment.time_s);
    this.#wait_s = begins ? LEAST_WAIT_s : Math.min(longest_s, LONGER * this.#wait_s);
    this.#next_s = moment.time_s + this.#wait_s;
    if (begins) this.#load(controls);
    return Float64Array.from(this.#train.holders, ({ kind, efficiency, pressure_Pa }, j) => {
      if (kind !== 'plate') return efficiency;
      const y = within(moment.vapour(j));
      this.#vapours[j] = y;
      const temperature_K = moment.vapourRate_mol_s(j) > 0 ? moment.temperature_K(j) : HEAD_K;
      return efficiency * this.#factor(y, within(moment.liquid(j)), temperature_K, pressure_Pa);
    });
  }

  /** Falls through zero when a factor is off by too much and has been kept for long enough. */
  margin(moment: TrainState): number {
    const wait = (this.#next_s - moment.time_s) / LEAST_WAIT_s;
    if (wait > OFF) return wait;
    const { holders } = this.#train;
    let worst = 0;
    for (let j = 1; j < holders.length; j++) {
      if (holders[j]!.kind !== 'plate') continue;
      worst = Math.max(worst, Math.abs(this.#along(moment.vapour(j)) - this.#along(this.#vapours[j]!)));
    }
    return Math.max(wait, OFF - worst);
  }

  /** Takes the load of a step. */
  #load(controls: Controls): void {
    this.#vapour_mol_s = controls.power_W / LAMBDA0;
    this.#liquid_mol_s = returnedShare(this.#train, controls) * this.#vapour_mol_s;
    const { temperature, intervals, pressure_Pa } = this.#slice;
    for (let k = 0; k < this.#factors.length; k++) {
      const y = k * EVERY;
      const x = liquidOnSlice(this.#slice, y);
      this.#factors[k] = this.#factor(y, x, readValue(temperature, intervals, x), pressure_Pa);
    }
  }

  #along(vapour: MoleFraction): number {
    const place = within(vapour) / EVERY;
    const k = Math.min(this.#factors.length - 2, Math.floor(place));
    return this.#factors[k]! + (place - k) * (this.#factors[k + 1]! - this.#factors[k]!);
  }

  #factor(vapourMoleFraction: number, liquidMoleFraction: number, temperature_K: Kelvin, pressure_Pa: Pascal): number {
    const vapour_mol_s = this.#vapour_mol_s;
    const liquid_mol_s = this.#liquid_mol_s;
    return loadOfPlate(this.#section, {
      vapour_mol_s,
      liquid_mol_s,
      vapourMoleFraction,
      liquidMoleFraction,
      temperature_K,
      pressure_Pa,
    }).efficiencyFactor;
  }
}

/** The plates of a still whose efficiency falls; null for any other. The slice is the equilibrium about where they are. */
export function ratedPlates({ column }: Still, train: Train, slice: CurveSlice): RatedPlates | null {
  return column.kind === 'plates' && column.efficiencyFalls ? new RatedPlates(column, train, slice) : null;
}

/** What runs back for each mole of vapour: what is set, the middle of a hold's limits, or what a partial condenser can condense. */
function returnedShare({ holders }: Train, { power_W, returned, duty_W, water_W_K, hold }: Controls): number {
  const asked = hold === null ? 1 : 0.5 * (hold.least + hold.most);
  const top = holders.at(-1)!;
  if (top.kind !== 'partialCondenser') return hold === null ? returned : asked;
  const duty = asked * duty_W + water_W_K * Math.max(0, HEAD_K - top.reference_K);
  return Math.min(1, duty / Math.max(1, power_W));
}

function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
