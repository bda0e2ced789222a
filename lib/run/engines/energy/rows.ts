// From moments of a train to the columns of its solution. Two kinds of growing tables, row after row: one with all single readings side by
// side, and for each reading of the holders one of its own, which has the layout of its column.

import { strengthFromMoleFraction } from '../../../mixture/strength.js';
import { volumeAt20C } from '../../../mixture/volume.js';
import { columnOf, withRoom } from '../../row-table.js';
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
/** What stands of every holder, in the order in which TrainState.writeHolders writes them. */
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
/** Single readings of a row: heat supplied, then the others. */
const WIDTH = 1 + SCALAR_NAMES.length;

/** The tables, which grow with the longest run and are kept from run to run. */
export interface TrainStore {
  scalars: Float64Array;
  readonly holders: Float64Array[];
}

/** An empty store. */
export function trainStore(): TrainStore {
  return { scalars: new Float64Array(0), holders: HOLDER_NAMES.map(() => new Float64Array(0)) };
}

/** Collects rows while a run goes on, in a store that grows with them; `columns` copies them out. */
export class TrainRows {
  readonly #holders: number;
  readonly #room: number;
  readonly #store: TrainStore;
  #rows = 0;

  constructor(holders: number, room: number, store: TrainStore) {
    this.#holders = holders;
    this.#room = room;
    this.#store = store;
  }

  get rows(): number {
    return this.#rows;
  }

  /** Whether it is time to stop: what one step of the solver may yet add still fits. */
  get full(): boolean {
    return this.#rows >= this.#room;
  }

  /** Time of the newest row, s. */
  get lastTime_s(): number {
    return this.#store.scalars[(this.#rows - 1) * WIDTH + 1]!;
  }

  /** Writes the moment over the newest row. */
  replaceLast(moment: TrainState, supplied_J: number): void {
    this.#rows--;
    this.add(moment, supplied_J);
  }

  /** Adds the moment as a row. */
  add(moment: TrainState, supplied_J: number): void {
    const store = this.#store;
    const { holders } = store;
    store.scalars = withRoom(store.scalars, this.#rows, WIDTH);
    for (let i = 0; i < holders.length; i++) holders[i] = withRoom(holders[i]!, this.#rows, this.#holders);
    const { scalars } = store;
    let at = this.#rows * WIDTH;
    scalars[at++] = supplied_J;
    for (const read of SCALAR_READERS) scalars[at++] = read(moment);
    moment.writeHolders(holders, this.#rows * this.#holders);
    this.#rows++;
  }

  /** The columns as arrays of their own; plates stand from holder `first` on. */
  columns(first: number, plates: number): Columns {
    const scalars = Object.fromEntries(SCALAR_NAMES.map((name, i) => [name, this.#scalar(1 + i)]));
    const size = this.#rows * this.#holders;
    const arrays = Object.fromEntries(HOLDER_NAMES.map((name, i) => [name, this.#store.holders[i]!.slice(0, size)]));
    const holders = arrays as Record<HolderName, Float64Array>;
    return {
      ...(scalars as Record<ScalarName, Float64Array>),
      ...holders,
      supplied_J: this.#scalar(0),
      plateLiquid: this.#part(holders.holderLiquid, first, plates),
      plateVapour: this.#part(holders.holderVapour, first, plates),
    };
  }

  /** One single reading of every row. */
  #scalar(column: number): Float64Array {
    return columnOf(this.#store.scalars, this.#rows, WIDTH, column);
  }

  /** Neighbouring holders of every row. */
  #part(all: Float64Array, first: number, count: number): Float64Array {
    const out = new Float64Array(this.#rows * count);
    for (let row = 0, to = 0; row < this.#rows; row++) {
      const from = row * this.#holders + first;
      for (let k = 0; k < count; k++) out[to++] = all[from + k]!;
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
