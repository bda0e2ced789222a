// Named reading of a column's state vector at one moment: what gauges and stop rules ask for.

import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { liquidOnSlice } from '../../../equilibrium/liquid-on-slice.js';
import { readValue, readVapour } from '../../../equilibrium/slice-tables.js';
import type { Moment } from '../../engine.js';
import { type ColumnSystem, kettleAmount } from './column-system.js';

/**
 * A column at one moment. `look` points it at a state; the getters compute only what is asked. Mole fractions are the
 * solver's own, so that balances close: in an exhausted still they may lie below 0 by the tolerance.
 */
export class ColumnState implements Moment {
  readonly #column: ColumnSystem;
  readonly #kettleAtStart_mol: number;
  #state: Float64Array;
  #boiledUp_mol = 0;
  #stepStart_s = 0;

  constructor(column: ColumnSystem) {
    this.#column = column;
    this.#kettleAtStart_mol = column.flows.kettleStart_mol;
    this.#state = new Float64Array(column.layout.size);
  }

  look(boiledUp_mol: number, state: Float64Array): this {
    this.#boiledUp_mol = boiledUp_mol;
    this.#state = state;
    return this;
  }

  /** Marks the present moment as the beginning of a step of the run sheet. */
  beginStep(): void {
    this.#stepStart_s = this.time_s;
  }

  get time_s(): number {
    return this.#state[this.#column.layout.time]!;
  }
  get stepTime_s(): number {
    return this.time_s - this.#stepStart_s;
  }
  get boiledUp_mol(): number {
    return this.#boiledUp_mol;
  }
  get kettleAmount_mol(): number {
    return kettleAmount(this.#column.flows, this.#boiledUp_mol);
  }
  get kettleMoleFraction(): number {
    return this.#state[this.#column.layout.kettleEthanol]! / this.kettleAmount_mol;
  }
  get kettleTemperature_K(): number {
    return temperatureAt(this.#column.kettleSlice, this.kettleMoleFraction);
  }
  get spoutMoleFraction(): number {
    return this.#state[this.#column.layout.condenser]!;
  }
  /** Dew temperature of the vapour that leaves the uppermost stage. */
  get headTemperature_K(): number {
    const { headSlice, layout } = this.#column;
    if (layout.plates === 0) return this.kettleTemperature_K;
    const liquid = layout.stride === 1 ? this.plateLiquid(layout.plates) : liquidOnSlice(headSlice, this.headVapour);
    return temperatureAt(headSlice, liquid);
  }
  /** Mole fraction in the vapour that leaves the uppermost stage. */
  get headVapour(): number {
    return this.plateVapour(this.#column.layout.plates);
  }
  get collectedEthanol_mol(): number {
    return this.#state[this.#column.layout.receiverEthanol]!;
  }
  get collectedWater_mol(): number {
    return this.#kettleAtStart_mol - this.kettleAmount_mol - this.collectedEthanol_mol;
  }
  /** Ethanol in kettle, plates and condenser. */
  get ethanolLeft_mol(): number {
    const { layout, plateHoldUp_mol, condenserHoldUp_mol } = this.#column;
    let sum = this.#state[layout.kettleEthanol]! + condenserHoldUp_mol * this.#state[layout.condenser]!;
    for (let j = 1; j <= layout.plates; j++) sum += plateHoldUp_mol * this.plateLiquid(j);
    return sum;
  }
  get chargeEthanol_mol(): number {
    return this.#column.chargeEthanol_mol;
  }
  /** A column begins with its vapour at the condenser. */
  get vapourShare(): number {
    return 1;
  }
  get refluxRatio(): number {
    const { returned, drawn } = this.#column.flows;
    return drawn > 0 ? returned / drawn : Infinity;
  }
  /** Distillate, mol/s. */
  get distillateRate_mol_s(): number {
    return this.#column.flows.drawn * this.#boilUp_mol_s;
  }
  get drumAmount_mol(): number {
    return this.#column.condenserHoldUp_mol;
  }
  /** Heat into the kettle: only the latent heat counts. */
  get power_W(): number {
    const { heat } = this.#column;
    return heat.kind === 'power' ? heat.power_W : heat.rate_mol_s * this.#latentHeat_J_mol;
  }
  /** All that is raised is condensed, at the same heat. */
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
  /** Vapour raised, the same from every holder, mol/s. */
  get #boilUp_mol_s(): number {
    const { heat } = this.#column;
    return heat.kind === 'boilUp' ? heat.rate_mol_s : heat.power_W / this.#latentHeat_J_mol;
  }
  get #latentHeat_J_mol(): number {
    const { kettleSlice } = this.#column;
    return readValue(kettleSlice.latentHeat, kettleSlice.intervals, this.kettleMoleFraction);
  }
  /** Writes amounts, liquids, vapours, temperatures, vapour rates and liquid rates of kettle and plates. */
  writeHolders(tables: readonly Float64Array[], at: number): void {
    const { layout, plateSlices, plateHoldUp_mol, flows } = this.#column;
    const boilUp = this.#boilUp_mol_s;
    for (let j = 0; j <= layout.plates; j++) {
      const x = j === 0 ? this.kettleMoleFraction : this.plateLiquid(j);
      tables[0]![at + j] = j === 0 ? this.kettleAmount_mol : plateHoldUp_mol;
      tables[1]![at + j] = x;
      tables[2]![at + j] = this.plateVapour(j);
      tables[3]![at + j] = j === 0 ? this.kettleTemperature_K : temperatureAt(plateSlices[j - 1]!, x);
      tables[4]![at + j] = boilUp;
      tables[5]![at + j] = j === 0 ? 0 : flows.returned * boilUp;
    }
  }
  /** Mole fraction in the liquid of plate j, 1 … N. */
  plateLiquid(j: number): number {
    const { layout } = this.#column;
    return this.#state[layout.firstLiquid + (j - 1) * layout.stride]!;
  }
  /** Mole fraction in the vapour leaving plate j, 1 … N; 0 is the kettle. */
  plateVapour(j: number): number {
    const { layout, kettleSlice, plateSlices } = this.#column;
    if (j === 0) return readVapour(kettleSlice.alpha, kettleSlice.intervals, this.kettleMoleFraction);
    if (layout.stride === 2) return this.#state[layout.firstVapour + (j - 1) * 2]!;
    const slice = plateSlices[j - 1]!;
    return readVapour(slice.alpha, slice.intervals, this.plateLiquid(j));
  }
}

function temperatureAt(slice: CurveSlice, moleFraction: number): number {
  return readValue(slice.temperature, slice.intervals, moleFraction);
}
