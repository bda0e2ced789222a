// From the rows of a run to the columns of its solution, in three passes, each made when one of its columns is first asked for: amounts, which
// stand in the states; flows, which take the engine's physics; and what follows from those two. A fourth tells the heat supplied.

import { strengthFromMoleFraction } from '../mixture/strength.js';
import { volumeAt20C } from '../mixture/volume.js';
import type { CompleteProblem } from './complete.js';
import type { Course } from './drive.js';
import { type Engine, HOLDER_COLUMNS, type Moment } from './engine.js';
import type { Rows } from './rows.js';
import type { EnergyColumns, RunColumns } from './solution.js';

/** Pure ethanol at 20 °C, m³/mol. */
export const MOLAR_VOLUME_ETHANOL = volumeAt20C(1, 0);

type HolderColumn = (typeof HOLDER_COLUMNS)[number];
export type ColumnName = keyof RunColumns | keyof EnergyColumns;

const AMOUNTS = {
  time_s: (moment: Moment) => moment.time_s,
  kettleAmount_mol: (moment: Moment) => moment.kettleAmount_mol,
  kettleMoleFraction: (moment: Moment) => moment.kettleMoleFraction,
  spoutMoleFraction: (moment: Moment) => moment.spoutMoleFraction,
  collectedEthanol_mol: (moment: Moment) => moment.collectedEthanol_mol,
  collectedWater_mol: (moment: Moment) => moment.collectedWater_mol,
  ethanolLeft_mol: (moment: Moment) => moment.ethanolLeft_mol,
  drumAmount_mol: (moment: Moment) => moment.drumAmount_mol,
} as const;
const FLOWS = {
  kettleTemperature_K: (moment: Moment) => moment.kettleTemperature_K,
  headTemperature_K: (moment: Moment) => moment.headTemperature_K,
  distillateRate_mol_s: (moment: Moment) => moment.distillateRate_mol_s,
  refluxRatio: (moment: Moment) => moment.refluxRatio,
  power_W: (moment: Moment) => moment.power_W,
  condenserDuty_W: (moment: Moment) => moment.condenserDuty_W,
  refluxDuty_W: (moment: Moment) => moment.refluxDuty_W,
  lost_W: (moment: Moment) => moment.lost_W,
  condensed_J: (moment: Moment) => moment.condensed_J,
  collected_J: (moment: Moment) => moment.collected_J,
  stored_J: (moment: Moment) => moment.energy_J,
} as const;
const AMOUNT_NAMES = Object.keys(AMOUNTS) as (keyof typeof AMOUNTS)[];
const FLOW_NAMES = Object.keys(FLOWS) as (keyof typeof FLOWS)[];

type Kept = Partial<Record<ColumnName | 'ethanolLeft_mol', Float64Array>>;

/** The columns of one run. */
export class Columns {
  readonly #course: Course;
  readonly #engine: Engine;
  readonly #problem: CompleteProblem;
  readonly #rows: Rows;
  readonly #kept: Kept = {};

  constructor(problem: CompleteProblem, course: Course, engine: Engine, rows: Rows) {
    this.#problem = problem;
    this.#course = course;
    this.#engine = engine;
    this.#rows = rows;
  }

  /** A column by name. */
  get(name: ColumnName | 'ethanolLeft_mol'): Float64Array {
    return (this.#kept[name] ??= this.#make(name));
  }

  #make(name: ColumnName | 'ethanolLeft_mol'): Float64Array {
    if (name in AMOUNTS) return this.#pass(AMOUNT_NAMES, AMOUNTS, name);
    switch (name) {
      case 'kettleStrength':
        return this.get('kettleMoleFraction').map(strength);
      case 'spoutStrength':
        return this.get('spoutMoleFraction').map(strength);
      case 'collectedVolume_m3': {
        const water = this.get('collectedWater_mol');
        // Before anything is drawn, round-off counts as nothing.
        return this.get('collectedEthanol_mol').map((ethanol, i) =>
          volumeAt20C(Math.max(0, ethanol), Math.max(0, water[i]!)),
        );
      }
      case 'pureAlcoholCollected_m3':
        return this.get('collectedEthanol_mol').map((amount) => MOLAR_VOLUME_ETHANOL * amount);
      case 'pureAlcoholLeft_m3':
        return this.get('ethanolLeft_mol').map((amount) => MOLAR_VOLUME_ETHANOL * amount);
      case 'distillateRate_m3_s': {
        const rate = this.get('distillateRate_mol_s');
        return this.get('spoutMoleFraction').map((x, i) => rate[i]! * volumeAt20C(within(x), 1 - within(x)));
      }
      case 'plateLiquid':
        return this.#ofPlates('holderLiquid');
      case 'plateVapour':
        return this.#ofPlates('holderVapour');
      case 'supplied_J':
        return this.#supplied();
      default:
        return this.#flows(name);
    }
  }

  /** Reads several readings of every row in one pass, and keeps them all. */
  #pass<Name extends ColumnName | 'ethanolLeft_mol'>(
    names: readonly Name[],
    readers: Readonly<Record<Name, (moment: Moment) => number>>,
    wanted: string,
    each?: (row: number, moment: Moment) => void,
  ): Float64Array {
    const { states, count } = this.#rows;
    const { moment, path } = this.#engine;
    const columns = names.map(() => new Float64Array(count));
    const read = names.map((name) => readers[name]);
    let present = -1;
    for (let row = 0, at = 0; row < count; row++, at += path.size) {
      const sheet = this.#rows.sheetStep(row);
      if (sheet !== present) this.#turnTo(sheet);
      present = sheet;
      moment.look(this.#rows.s(row), states.subarray(at, at + path.size));
      for (let i = 0; i < read.length; i++) columns[i]![row] = read[i]!(moment);
      each?.(row, moment);
    }
    names.forEach((name, i) => (this.#kept[name] = columns[i]!));
    return this.#kept[wanted as Name]!;
  }

  #flows(wanted: ColumnName | 'ethanolLeft_mol'): Float64Array {
    const width = this.#engine.holders.length;
    const tables = HOLDER_COLUMNS.map(() => new Float64Array(this.#rows.count * width));
    const found = this.#pass(FLOW_NAMES, FLOWS, wanted, (row, moment) => {
      moment.writeHolders(tables, row * width);
    });
    HOLDER_COLUMNS.forEach((name, i) => (this.#kept[name] = tables[i]!));
    return wanted in FLOWS ? found : this.#kept[wanted]!;
  }

  /** Sets the engine to what a step of the sheet set, to read moments of it. */
  #turnTo(sheet: number): void {
    const { from, start } = this.#course.stretches[sheet]!;
    this.#engine.beginStep(sheet, from, start);
  }

  #ofPlates(name: HolderColumn): Float64Array {
    const { holders } = this.#engine;
    const { first, count } = platesOf(holders);
    const all = this.get(name);
    const out = new Float64Array(this.#rows.count * count);
    for (let row = 0, to = 0; row < this.#rows.count; row++) {
      const from = row * holders.length + first;
      for (let k = 0; k < count; k++) out[to++] = all[from + k]!;
    }
    return out;
  }

  /** Heat put in since the start: power is constant within a step of the sheet. */
  #supplied(): Float64Array {
    const { sheet, heat } = this.#problem;
    const power = sheet.map((step) => {
      const own = step.heat ?? heat;
      return own.kind === 'power' ? own.power_W : NaN;
    });
    const time = this.get('time_s');
    const { stepStarts } = this.#rows;
    const out = new Float64Array(this.#rows.count);
    let before_J = 0;
    stepStarts.forEach((begins, k) => {
      const ends = stepStarts[k + 1] ?? this.#rows.count - 1;
      for (let row = begins; row <= ends; row++) out[row] = before_J + power[k]! * (time[row]! - time[begins]!);
      before_J = out[ends]!;
    });
    return out;
  }
}

/** Where plates, or the stages of a packing, stand among the vessels. */
export function platesOf(holders: Engine['holders']): { readonly first: number; readonly count: number } {
  const isStage = ({ kind }: Engine['holders'][number]): boolean => kind === 'plate' || kind === 'packing';
  return { first: Math.max(0, holders.findIndex(isStage)), count: holders.filter(isStage).length };
}

function strength(moleFraction: number): number {
  return strengthFromMoleFraction(within(moleFraction));
}

/** A mole fraction that solver error may have carried a hair outside 0..1. */
function within(moleFraction: number): number {
  return Math.min(1, Math.max(0, moleFraction));
}
