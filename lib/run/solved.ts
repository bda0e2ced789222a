// The solution of a run: its course, and columns that are worked out when first asked for. It has equations of its own to read them with: those
// that ran it belong to another run by then.

import type { EthanolWater } from '../equilibrium/ethanol-water.js';
import { type ColumnName, Columns, platesOf } from './columns.js';
import type { CompleteProblem } from './complete.js';
import { keepsEnergy } from './complete.js';
import type { Course } from './drive.js';
import type { Engine } from './engine.js';
import { engineOf } from './engines/registry.js';
import { jarsOf } from './jars.js';
import { Rows } from './rows.js';
import type { EnergyColumns, EnergySolution, Jar, PlainSolution, RunColumns, RunFacts } from './solution.js';

/** Names of the columns every run has. */
export const RUN_COLUMNS = [
  'time_s',
  'kettleAmount_mol',
  'kettleMoleFraction',
  'kettleStrength',
  'kettleTemperature_K',
  'spoutMoleFraction',
  'spoutStrength',
  'headTemperature_K',
  'distillateRate_mol_s',
  'distillateRate_m3_s',
  'collectedEthanol_mol',
  'collectedWater_mol',
  'collectedVolume_m3',
  'pureAlcoholCollected_m3',
  'pureAlcoholLeft_m3',
  'drumAmount_mol',
  'refluxRatio',
  'power_W',
  'condenserDuty_W',
  'refluxDuty_W',
  'lost_W',
  'holderAmount_mol',
  'holderLiquid',
  'holderVapour',
  'holderTemperature_K',
  'holderVapourRate_mol_s',
  'holderLiquidRate_mol_s',
  'plateLiquid',
  'plateVapour',
] as const satisfies readonly (keyof RunColumns)[];
/** Names of the columns of the account of energy. */
export const ENERGY_COLUMNS = [
  'supplied_J',
  'condensed_J',
  'collected_J',
  'stored_J',
] as const satisfies readonly (keyof EnergyColumns)[];

/** A solution with its course. */
export class Solved implements RunFacts {
  readonly problem: CompleteProblem;
  readonly ending: RunFacts['ending'];
  readonly statistics: RunFacts['statistics'];
  readonly firstVapour_s: number | null;
  readonly holders: RunFacts['holders'];
  readonly plates: number;
  readonly course: Course;
  readonly #system: EthanolWater;
  #engine: Engine | undefined;
  #rows: Rows | undefined;
  #columns: Columns | undefined;
  #jars: readonly Jar[] | undefined;

  constructor(problem: CompleteProblem, system: EthanolWater, course: Course, holders: Engine['holders']) {
    this.problem = problem;
    this.ending = course.ending;
    this.statistics = course.statistics;
    this.firstVapour_s = course.firstVapour_s;
    this.holders = holders;
    this.plates = platesOf(holders).count;
    this.course = course;
    this.#system = system;
  }

  get rows(): number {
    return this.#moments.count;
  }

  get stepStarts(): readonly number[] {
    return this.#moments.stepStarts;
  }

  get jars(): readonly Jar[] {
    return (this.#jars ??= jarsOf(this.problem, this.course, this.engine));
  }

  /** A column by name. */
  column(name: ColumnName): Float64Array {
    this.#columns ??= new Columns(this.problem, this.course, this.engine, this.#moments);
    return this.#columns.get(name);
  }

  plain(): PlainSolution {
    const names = keepsEnergy(this.problem.model) ? [...RUN_COLUMNS, ...ENERGY_COLUMNS] : RUN_COLUMNS;
    const columns = Object.fromEntries(names.map((name) => [name, this.column(name)]));
    const { problem, ending, statistics, firstVapour_s, holders, plates, rows, stepStarts, jars } = this;
    const facts: RunFacts = { problem, ending, statistics, firstVapour_s, holders, plates, rows, stepStarts, jars };
    return { ...facts, ...(columns as unknown as RunColumns) };
  }

  /** Equations to read this run with. */
  get engine(): Engine {
    if (this.#engine === undefined) {
      const engine = engineOf(this.problem, this.#system);
      this.course.stretches.forEach(({ from, start }, k) => engine.beginStep(k, from, start));
      this.#engine = engine;
    }
    return this.#engine;
  }

  get #moments(): Rows {
    return (this.#rows ??= new Rows(this.course, this.engine, this.problem));
  }
}

for (const name of [...RUN_COLUMNS, ...ENERGY_COLUMNS]) {
  Object.defineProperty(Solved.prototype, name, {
    enumerable: true,
    get(this: Solved) {
      return this.column(name);
    },
  });
}

/** The solution of a course. */
export function solutionOf(
  problem: CompleteProblem,
  system: EthanolWater,
  course: Course,
  holders: Engine['holders'],
): EnergySolution {
  return new Solved(problem, system, course, holders) as unknown as EnergySolution;
}
