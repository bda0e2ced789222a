// From moments of a column run to the columns of its solution.

import { strengthFromMoleFraction } from '../../mixture/strength.js';
import { volumeAt20C } from '../../mixture/volume.js';
import type { RunSolution } from '../solution.js';
import type { ColumnState } from './column-state.js';

type Columns = Omit<RunSolution, 'ending' | 'statistics' | 'rows' | 'plates' | 'stepStarts'>;
type ColumnName = Exclude<keyof Columns, 'plateLiquid' | 'plateVapour'>;

/** What each column of the solution reads off a moment of the run. */
const READINGS: Readonly<Record<ColumnName, (moment: ColumnState) => number>> = {
  time_s: (moment) => moment.time_s,
  boiledUp_mol: (moment) => moment.boiledUp_mol,
  kettleAmount_mol: (moment) => moment.kettleAmount_mol,
  kettleMoleFraction: (moment) => moment.kettleMoleFraction,
  kettleStrength: (moment) => strengthFromMoleFraction(moment.kettleMoleFraction),
  kettleTemperature_K: (moment) => moment.kettleTemperature_K,
  spoutMoleFraction: (moment) => moment.spoutMoleFraction,
  spoutStrength: (moment) => strengthFromMoleFraction(moment.spoutMoleFraction),
  headTemperature_K: (moment) => moment.headTemperature_K,
  distillateRate_mol_s: (moment) => moment.distillateRate_mol_s,
  distillateRate_m3_s: (moment) =>
    moment.distillateRate_mol_s * volumeAt20C(moment.spoutMoleFraction, 1 - moment.spoutMoleFraction),
  collectedEthanol_mol: (moment) => moment.collectedEthanol_mol,
  collectedWater_mol: (moment) => moment.collectedWater_mol,
  collectedVolume_m3: (moment) => collectedVolume(moment),
  pureAlcoholCollected_m3: (moment) => volumeAt20C(Math.max(0, moment.collectedEthanol_mol), 0),
  pureAlcoholLeft_m3: (moment) => volumeAt20C(Math.max(0, moment.ethanolLeft_mol), 0),
};
const NAMES = Object.keys(READINGS) as ColumnName[];

/** Collects rows while a run goes on. */
export class ColumnRows {
  readonly #plates: number;
  readonly #columns = new Map<ColumnName, number[]>(NAMES.map((name) => [name, []]));
  readonly #plateLiquid: number[] = [];
  readonly #plateVapour: number[] = [];
  #rows = 0;

  constructor(plates: number) {
    this.#plates = plates;
  }

  get rows(): number {
    return this.#rows;
  }

  /** Time of the newest row, s. */
  get lastTime_s(): number {
    return this.#columns.get('time_s')!.at(-1)!;
  }

  /** Adds the moment as a row. */
  add(moment: ColumnState): void {
    for (const name of NAMES) this.#columns.get(name)!.push(READINGS[name](moment));
    for (let j = 1; j <= this.#plates; j++) {
      this.#plateLiquid.push(moment.plateLiquid(j));
      this.#plateVapour.push(moment.plateVapour(j));
    }
    this.#rows++;
  }

  /** The columns as arrays of their own. */
  columns(): Columns {
    const arrays = Object.fromEntries(NAMES.map((name) => [name, Float64Array.from(this.#columns.get(name)!)]));
    return {
      ...(arrays as Record<ColumnName, Float64Array>),
      plateLiquid: Float64Array.from(this.#plateLiquid),
      plateVapour: Float64Array.from(this.#plateVapour),
    };
  }
}

/** Volume collected at 20 °C as one mixture; before anything is drawn, round-off counts as nothing. */
export function collectedVolume(moment: Pick<ColumnState, 'collectedEthanol_mol' | 'collectedWater_mol'>): number {
  return volumeAt20C(Math.max(0, moment.collectedEthanol_mol), Math.max(0, moment.collectedWater_mol));
}
