// From moments of a column run to the columns of its solution. Single readings stand side by side in one table; liquids and vapours of the
// plates have tables of their own, laid out as their columns.

import { strengthFromMoleFraction } from '../../../mixture/strength.js';
import { volumeAt20C } from '../../../mixture/volume.js';
import { columnOf, withRoom } from '../../row-table.js';
import type { RunSolution } from '../../solution.js';
import type { ColumnState } from './column-state.js';

type Columns = Omit<RunSolution, 'ending' | 'statistics' | 'rows' | 'plates' | 'stepStarts'>;
type ColumnName = Exclude<keyof Columns, 'plateLiquid' | 'plateVapour'>;

/** Pure ethanol at 20 °C, m³/mol. */
const MOLAR_VOLUME_ETHANOL = volumeAt20C(1, 0);

/** What each column of the solution reads off a moment of the run. */
const READINGS: Readonly<Record<ColumnName, (moment: ColumnState) => number>> = {
  time_s: (moment) => moment.time_s,
  boiledUp_mol: (moment) => moment.boiledUp_mol,
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
  collectedVolume_m3: (moment) => collectedVolume(moment),
  pureAlcoholCollected_m3: (moment) => MOLAR_VOLUME_ETHANOL * moment.collectedEthanol_mol,
  pureAlcoholLeft_m3: (moment) => MOLAR_VOLUME_ETHANOL * moment.ethanolLeft_mol,
};
const NAMES = Object.keys(READINGS) as ColumnName[];

const READERS = NAMES.map((name) => READINGS[name]);
const TIME = NAMES.indexOf('time_s');
const WIDTH = NAMES.length;

/** The tables, which grow with the longest run. */
export interface RowStore {
  readings: Float64Array;
  liquids: Float64Array;
  vapours: Float64Array;
}

/** An empty store. */
export function rowStore(): RowStore {
  return { readings: new Float64Array(0), liquids: new Float64Array(0), vapours: new Float64Array(0) };
}

/** Collects rows while a run goes on. */
export class ColumnRows {
  readonly #room: number;
  readonly #plates: number;
  readonly #store: RowStore;
  #rows = 0;

  /** Rows are written to the store, which grows with them; `columns` copies them out. More than `room` are too many. */
  constructor(plates: number, room: number, store: RowStore) {
    this.#room = room;
    this.#plates = plates;
    this.#store = store;
  }

  get rows(): number {
    return this.#rows;
  }

  /** Time of the newest row, s. */
  get lastTime_s(): number {
    return this.#store.readings[(this.#rows - 1) * WIDTH + TIME]!;
  }

  /** Whether it is time to stop: what one step of the solver may yet add still fits. */
  get full(): boolean {
    return this.#rows >= this.#room;
  }

  /** Writes the moment over the newest row. */
  replaceLast(moment: ColumnState): void {
    this.#rows--;
    this.add(moment);
  }

  /** Adds the moment as a row. */
  add(moment: ColumnState): void {
    const store = this.#store;
    const plates = this.#plates;
    const readings = (store.readings = withRoom(store.readings, this.#rows, WIDTH));
    const liquids = (store.liquids = withRoom(store.liquids, this.#rows, plates));
    const vapours = (store.vapours = withRoom(store.vapours, this.#rows, plates));
    let at = this.#rows * WIDTH;
    for (const read of READERS) readings[at++] = read(moment);
    for (let j = 1, to = this.#rows * plates; j <= plates; j++, to++) {
      liquids[to] = moment.plateLiquid(j);
      vapours[to] = moment.plateVapour(j);
    }
    this.#rows++;
  }

  /** The columns as arrays of their own. */
  columns(): Columns {
    const { readings, liquids, vapours } = this.#store;
    const rows = this.#rows;
    const arrays = Object.fromEntries(NAMES.map((name, i) => [name, columnOf(readings, rows, WIDTH, i)]));
    return {
      ...(arrays as Record<ColumnName, Float64Array>),
      plateLiquid: liquids.slice(0, rows * this.#plates),
      plateVapour: vapours.slice(0, rows * this.#plates),
    };
  }
}

/** Volume collected at 20 °C as one mixture; before anything is drawn, round-off counts as nothing. */
export function collectedVolume(moment: Pick<ColumnState, 'collectedEthanol_mol' | 'collectedWater_mol'>): number {
  return volumeAt20C(Math.max(0, moment.collectedEthanol_mol), Math.max(0, moment.collectedWater_mol));
}

function molarVolume(moleFraction: number): number {
  return volumeAt20C(moleFraction, 1 - moleFraction);
}

/** A mole fraction that solver error may have carried a hair outside 0..1. */
function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
