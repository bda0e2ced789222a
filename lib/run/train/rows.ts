// From moments of a train to the columns of its solution: one growing table, row after row.

import { strengthFromMoleFraction } from '../../mixture/strength.js';
import { volumeAt20C } from '../../mixture/volume.js';
import { InputError } from '../../errors.js';
import { MOST_ROWS } from '../check.js';
import type { RowStore } from '../column/rows.js';
import type { TrainSolution } from './solution.js';
import type { TrainState } from './train-state.js';

type Columns = Omit<
  TrainSolution,
  'ending' | 'statistics' | 'rows' | 'plates' | 'stepStarts' | 'holders' | 'jars' | 'firstVapour_s'
>;
type HolderName = Extract<keyof Columns, `holder${string}`>;
type ScalarName = Exclude<keyof Columns, HolderName | 'plateLiquid' | 'plateVapour' | 'supplied_J'>;

/** Pure ethanol at 20 °C, m³/mol. */
const MOLAR_VOLUME_ETHANOL = volumeAt20C(1, 0);

const SCALARS: Readonly<Record<ScalarName, (moment: TrainState) => number>> = {
  time_s: (moment) => moment.time_s,
  kettleAmount_mol: (moment) => moment.kettleAmount_mol,
  kettleMoleFraction: (moment) => moment.kettleMoleFraction,
  kettleStrength: (moment) => strengthFromMoleFraction(within(moment.kettleMoleFraction)),
  kettleTemperature_K: (moment) => moment.kettleTemperature_K,
  spoutMoleFraction: (moment) => moment.spoutMoleFraction,
  spoutStrength: (moment) => strengthFromMoleFraction(within(moment.spoutMoleFraction)),
  headTemperature_K: (moment) => moment.headTemperature_K,
  distillateRate_mol_s: (moment) => moment.distillateRate_mol_s,
  distillateRate_m3_s: (moment) => moment.distillateRate_mol_s * molarVolume(within(moment.spoutMoleFraction)),
  collectedEthanol_mol: (moment) => moment.collectedEthanol_mol,
  collectedWater_mol: (moment) => moment.collectedWater_mol,
  collectedVolume_m3: (moment) => collected(moment),
  pureAlcoholCollected_m3: (moment) => MOLAR_VOLUME_ETHANOL * moment.collectedEthanol_mol,
  pureAlcoholLeft_m3: (moment) => MOLAR_VOLUME_ETHANOL * moment.ethanolLeft_mol,
  drumAmount_mol: (moment) => moment.drumAmount_mol,
  refluxRatio: (moment) => moment.refluxRatio,
  power_W: (moment) => moment.power_W,
  condenserDuty_W: (moment) => moment.condenserDuty_W,
  refluxDuty_W: (moment) => moment.refluxDuty_W,
  lost_W: (moment) => moment.lost_W,
  condensed_J: (moment) => moment.condensed_J,
  collected_J: (moment) => moment.collected_J,
  stored_J: (moment) => moment.energy_J,
};
/** What stands of every holder, in the order in which TrainState.writeHolders writes it. */
const HOLDER_NAMES: readonly HolderName[] = [
  'holderAmount_mol',
  'holderLiquid',
  'holderVapour',
  'holderTemperature_K',
  'holderVapourRate_mol_s',
  'holderLiquidRate_mol_s',
];
const SCALAR_NAMES = Object.keys(SCALARS) as ScalarName[];
const SCALAR_READERS = SCALAR_NAMES.map((name) => SCALARS[name]);
const FIRST_CAPACITY = 256;

/** Collects rows while a run goes on, in a store that grows with them; `columns` copies them out. */
export class TrainRows {
  readonly #holders: number;
  readonly #width: number;
  readonly #store: RowStore;
  #table: Float64Array;
  #rows = 0;

  constructor(holders: number, store: RowStore) {
    this.#holders = holders;
    this.#width = 1 + SCALAR_NAMES.length + HOLDER_NAMES.length * holders;
    this.#store = store;
    this.#table = store.table;
  }

  get rows(): number {
    return this.#rows;
  }

  /** Time of the newest row, s. */
  get lastTime_s(): number {
    return this.#table[(this.#rows - 1) * this.#width + 1]!;
  }

  /** Writes the moment over the newest row. */
  replaceLast(moment: TrainState, supplied_J: number): void {
    this.#rows--;
    this.add(moment, supplied_J);
  }

  /** Adds the moment as a row. */
  add(moment: TrainState, supplied_J: number): void {
    if (this.#rows >= MOST_ROWS) {
      const expected = `fewer points a step: this run has more than ${String(MOST_ROWS)} rows`;
      throw new InputError({ argument: 'outputs', value: this.#rows, expected });
    }
    let at = this.#rows * this.#width;
    if (at + this.#width > this.#table.length) {
      const larger = new Float64Array(Math.max(FIRST_CAPACITY * this.#width, 2 * this.#table.length));
      larger.set(this.#table);
      this.#table = larger;
      this.#store.table = larger;
    }
    const table = this.#table;
    table[at++] = supplied_J;
    for (const read of SCALAR_READERS) table[at++] = read(moment);
    moment.writeHolders(table, at);
    this.#rows++;
  }

  /** The columns as arrays of their own; plates stand from holder `first` on. */
  columns(first: number, plates: number): Columns {
    const scalars = Object.fromEntries(SCALAR_NAMES.map((name, i) => [name, this.#block(1 + i, 1)]));
    const from = 1 + SCALAR_NAMES.length;
    const start = (name: HolderName): number => from + HOLDER_NAMES.indexOf(name) * this.#holders;
    const arrays = Object.fromEntries(HOLDER_NAMES.map((name) => [name, this.#block(start(name), this.#holders)]));
    return {
      ...(scalars as Record<ScalarName, Float64Array>),
      ...(arrays as Record<HolderName, Float64Array>),
      supplied_J: this.#block(0, 1),
      plateLiquid: this.#block(start('holderLiquid') + first, plates),
      plateVapour: this.#block(start('holderVapour') + first, plates),
    };
  }

  /** `count` neighbouring numbers of every row, row after row. */
  #block(first: number, count: number): Float64Array {
    const out = new Float64Array(this.#rows * count);
    for (let row = 0, to = 0; row < this.#rows; row++) {
      const from = row * this.#width + first;
      for (let k = 0; k < count; k++) out[to++] = this.#table[from + k]!;
    }
    return out;
  }
}

/** Volume collected at 20 °C as one mixture; before anything is drawn, round-off counts as nothing. */
function collected(moment: TrainState): number {
  return volumeAt20C(Math.max(0, moment.collectedEthanol_mol), Math.max(0, moment.collectedWater_mol));
}

function molarVolume(moleFraction: number): number {
  return volumeAt20C(moleFraction, 1 - moleFraction);
}

/** A mole fraction that solver error may have carried a hair outside 0..1. */
function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
