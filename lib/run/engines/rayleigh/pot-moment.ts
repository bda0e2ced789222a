// Named reading of a bare pot at one point of its path: what gauges, stop rules and rows ask for. Its state is [u, time], at s = ln(n0/n).

import { type CurveSlice, temperatureOnSlice, vapourOnSlice } from '../../../equilibrium/equilibrium-curve.js';
import { readValue } from '../../../equilibrium/slice-tables.js';
import { logistic } from '../../../numerics/logit.js';
import type { Amounts } from '../../../mixture/volume.js';
import type { Moment } from '../../engine.js';
import type { Heat } from '../../problem.js';

/** A bare pot at one moment. */
export class PotMoment implements Moment {
  readonly #slice: CurveSlice;
  readonly #charge_mol: number;
  readonly chargeEthanol_mol: number;
  /** Of the present step of the run sheet. */
  heat: Heat;
  #s = 0;
  #u = 0;
  #stepStart_s = 0;
  time_s = 0;

  constructor(slice: CurveSlice, charge: Amounts, heat: Heat) {
    this.#slice = slice;
    this.#charge_mol = charge.ethanol_mol + charge.water_mol;
    this.chargeEthanol_mol = charge.ethanol_mol;
    this.heat = heat;
  }

  look(s: number, state: Float64Array): this {
    this.#s = s;
    this.#u = state[0]!;
    this.time_s = state[1]!;
    return this;
  }

  beginStep(): void {
    this.#stepStart_s = this.time_s;
  }

  get stepTime_s(): number {
    return this.time_s - this.#stepStart_s;
  }
  get kettleMoleFraction(): number {
    return logistic(this.#u);
  }
  get kettleAmount_mol(): number {
    return this.#charge_mol * Math.exp(-this.#s);
  }
  get kettleTemperature_K(): number {
    return temperatureOnSlice(this.#slice, this.kettleMoleFraction);
  }
  get spoutMoleFraction(): number {
    return vapourOnSlice(this.#slice, this.kettleMoleFraction);
  }
  /** The vapour rises straight from the boiling liquid: its dew temperature is the kettle's. */
  get headTemperature_K(): number {
    return this.kettleTemperature_K;
  }
  get ethanolLeft_mol(): number {
    return this.#s === 0 ? this.chargeEthanol_mol : this.kettleAmount_mol * this.kettleMoleFraction;
  }
  get collectedEthanol_mol(): number {
    return Math.min(this.#boiledUp_mol, Math.max(0, this.chargeEthanol_mol - this.ethanolLeft_mol));
  }
  get collectedWater_mol(): number {
    return this.#boiledUp_mol - this.collectedEthanol_mol;
  }
  get vapourShare(): number {
    return 1;
  }
  get refluxRatio(): number {
    return 0;
  }
  get distillateRate_mol_s(): number {
    return this.heat.kind === 'boilUp' ? this.heat.rate_mol_s : this.heat.power_W / this.#latentHeat_J_mol;
  }
  get drumAmount_mol(): number {
    return 0;
  }
  get power_W(): number {
    return this.heat.kind === 'power' ? this.heat.power_W : this.heat.rate_mol_s * this.#latentHeat_J_mol;
  }
  get condenserDuty_W(): number {
    return this.power_W;
  }
  get refluxDuty_W(): number {
    return 0;
  }
  get lost_W(): number {
    return 0;
  }
  get condensed_J(): number {
    return NaN;
  }
  get collected_J(): number {
    return NaN;
  }
  get energy_J(): number {
    return NaN;
  }

  writeHolders(tables: readonly Float64Array[], at: number): void {
    tables[0]![at] = this.kettleAmount_mol;
    tables[1]![at] = this.kettleMoleFraction;
    tables[2]![at] = this.spoutMoleFraction;
    tables[3]![at] = this.kettleTemperature_K;
    tables[4]![at] = this.distillateRate_mol_s;
    tables[5]![at] = 0;
  }

  /** −expm1(−s), so that the first drop is not lost in rounding. */
  get #boiledUp_mol(): number {
    return -this.#charge_mol * Math.expm1(-this.#s);
  }
  get #latentHeat_J_mol(): number {
    return readValue(this.#slice.latentHeat, this.#slice.intervals, this.kettleMoleFraction);
  }
}
