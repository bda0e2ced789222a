// Named reading of a train at one moment: what gauges, stop rules and the rows of a solution ask for.

import type { CurveSlice } from '../../../equilibrium/equilibrium-curve.js';
import { liquidOnSlice } from '../../../equilibrium/liquid-on-slice.js';
import { readValue } from '../../../equilibrium/slice-tables.js';
import type { RunState } from '../../stop-rules.js';
import type { TrainEquations } from './equations.js';
import { LAMBDA0, type Train } from './holders.js';
import type { DrumStreams } from './drum-streams.js';
import {
  BELOW_K,
  LIQUID,
  LIQUID_ENTHALPY,
  LIQUID_RATE,
  READINGS,
  TEMPERATURE_K,
  VAPOUR_ENTHALPY,
  VAPOUR_RATE,
} from './readings.js';
import { ENERGY, ETHANOL, UNKNOWNS, VAPOUR, WATER } from './streams.js';

/** Less than this share of the usual vapour is as good as no flow. */
const LITTLE_FLOW = 0.01;

/** A train at one moment. `look` points it at a state, whose streams are evaluated once, when a reading needs them. */
export class TrainState implements RunState {
  readonly #equations: TrainEquations;
  readonly #train: Train;
  readonly #headSlice: CurveSlice;
  #state: Float64Array;
  #shareRead = 0;
  #streamsRead = false;
  #drumRead = false;
  #stepStart_s = 0;
  time_s = 0;
  chargeEthanol_mol = 0;
  /** Energy of what stood in the drum at the start, J. */
  drumStart_J = 0;

  constructor(equations: TrainEquations, train: Train, headSlice: CurveSlice) {
    this.#equations = equations;
    this.#train = train;
    this.#headSlice = headSlice;
    this.#state = new Float64Array(equations.size);
  }

  look(time_s: number, state: Float64Array): this {
    this.time_s = time_s;
    this.#state = state;
    this.#drumRead = false;
    this.#streamsRead = false;
    return this;
  }

  /** A reading of a holder's streams, which are evaluated when first asked for. */
  #reading(j: number, kind: number): number {
    return this.#readings[READINGS * j + kind]!;
  }

  get #readings(): Float64Array {
    const { streams } = this.#equations;
    if (!this.#streamsRead) {
      streams.evaluate(this.#state);
      this.#streamsRead = true;
    }
    return streams.readings;
  }

  /** What runs out of the drum, evaluated when first asked for. */
  get #drum(): DrumStreams {
    this.#readDrum();
    return this.#equations.drum;
  }

  /** Share that runs back. */
  get #share(): number {
    this.#readDrum();
    return this.#shareRead;
  }

  #readDrum(): void {
    if (this.#drumRead) return;
    this.#shareRead = this.#equations.shareAt(this.#state);
    this.#drumRead = true;
  }

  /** Marks the present moment as the beginning of a step of the run sheet. */
  beginStep(): void {
    this.#stepStart_s = this.time_s;
  }

  get stepTime_s(): number {
    return this.time_s - this.#stepStart_s;
  }
  get kettleAmount_mol(): number {
    return this.amount_mol(0);
  }
  get kettleMoleFraction(): number {
    return this.liquid(0);
  }
  get kettleTemperature_K(): number {
    return this.temperature_K(0);
  }
  get spoutMoleFraction(): number {
    return this.#drum.liquid;
  }
  /** Dew temperature of the vapour that leaves the last holder; the holder's own temperature while it is cold. */
  get headTemperature_K(): number {
    const top = this.#train.holders.length - 1;
    if (this.#reading(top, BELOW_K) > 0) return this.temperature_K(top);
    const { temperature, intervals } = this.#headSlice;
    return readValue(temperature, intervals, liquidOnSlice(this.#headSlice, this.headVapour));
  }
  get headVapour(): number {
    return this.vapour(this.#train.holders.length - 1);
  }
  /** Vapour that reaches a condenser, as a share of what the heat would raise. */
  get vapourShare(): number {
    const top = this.#train.holders.length - 1;
    const reaches = this.#train.holders[top]!.kind === 'partialCondenser' ? top - 1 : top;
    return this.vapourRate_mol_s(reaches) / this.#train.nominalVapour_mol_s;
  }
  /** Reflux ratio L/D of the drum; of a partial condenser or a bare head what runs back over what leaves. */
  get refluxRatio(): number {
    const top = this.#train.holders.length - 1;
    const kind = this.#train.holders[top]!.kind;
    const natural =
      kind === 'head' && this.#equations.controls.returned === 0 && this.#equations.controls.hold === null;
    if (kind === 'partialCondenser' || natural) {
      return this.liquidRate_mol_s(top) / Math.max(1e-12, this.vapourRate_mol_s(top));
    }
    const share = this.#share;
    return share < 1 ? share / (1 - share) : Infinity;
  }
  get drumAmount_mol(): number {
    const { drumAt } = this.#equations;
    return this.#state[drumAt + ETHANOL]! + this.#state[drumAt + WATER]!;
  }
  get collectedEthanol_mol(): number {
    return this.#state[this.#equations.receiverAt + ETHANOL]!;
  }
  get collectedWater_mol(): number {
    return this.#state[this.#equations.receiverAt + WATER]!;
  }
  /** Ethanol in every holder and the drum. */
  get ethanolLeft_mol(): number {
    let sum = this.#state[this.#equations.drumAt + ETHANOL]!;
    for (let j = 0; j < this.#train.holders.length; j++) sum += this.#state[UNKNOWNS * j + ETHANOL]!;
    return sum;
  }
  /** Distillate, mol/s. */
  get distillateRate_mol_s(): number {
    const { controls } = this.#equations;
    const drum = this.#drum;
    const partial = this.#train.holders.at(-1)!.kind === 'partialCondenser';
    return drum.rate * (1 - (partial ? 0 : controls.hold === null ? controls.returned : this.#share));
  }
  get power_W(): number {
    return this.#equations.controls.power_W;
  }
  /** Heat taken out by the total or product condenser now, W: what comes as vapour becomes liquid of the drum. */
  get condenserDuty_W(): number {
    const { enthalpy, enthalpy_x, liquid: z } = this.#drum;
    const top = this.#train.holders.length - 1;
    const V = this.vapourRate_mol_s(top);
    // What runs over from a full doubler without a head comes with the vapour.
    const L = this.#train.holders[top]!.overflow === 'over' ? this.liquidRate_mol_s(top) : 0;
    const ethanol = V * this.headVapour + L * this.liquid(top);
    const water = V + L - ethanol;
    const kept = ethanol * (enthalpy + (1 - z) * enthalpy_x) + water * (enthalpy - z * enthalpy_x);
    const vapour = V * this.#reading(top, VAPOUR_ENTHALPY) + this.#equations.streams.spare[UNKNOWNS * top]!;
    return LAMBDA0 * (vapour + L * this.#reading(top, LIQUID_ENTHALPY) - kept);
  }
  /** Heat taken out by a partial reflux condenser now, W. */
  get refluxDuty_W(): number {
    return this.#equations.dutyAt(this.#share, this.#readings);
  }
  /** Heat lost to the air now, W. */
  get lost_W(): number {
    return this.#equations.lostAt(this.#readings);
  }
  /** Energy of what stands in the drum, J. */
  get drumEnergy_J(): number {
    return LAMBDA0 * this.drumAmount_mol * this.#drum.enthalpy;
  }
  /** Energy of everything in the still, J. */
  get energy_J(): number {
    let sum = this.drumEnergy_J / LAMBDA0;
    for (let j = 0; j < this.#train.holders.length; j++) sum += this.#state[UNKNOWNS * j + ENERGY]!;
    return LAMBDA0 * sum;
  }
  /** Heat taken out by the total or product condenser since the start, J. */
  get condensed_J(): number {
    // The equations count what came into the drum less what left it.
    return LAMBDA0 * this.#state[this.#equations.drumAt + 1]! - (this.drumEnergy_J - this.drumStart_J);
  }
  /** Heat that left with the distillate since the start, J. */
  get collected_J(): number {
    return LAMBDA0 * this.#state[this.#equations.receiverAt]!;
  }

  /** Whether every holder boils and every plate is full enough to run over. */
  get settled(): boolean {
    const { holders, nominalVapour_mol_s } = this.#train;
    const flows = (rate: number): boolean => rate > LITTLE_FLOW * nominalVapour_mol_s;
    return holders.every(
      ({ kind }, j) =>
        flows(this.vapourRate_mol_s(j)) && (kind === 'kettle' || kind === 'doubler' || flows(this.liquidRate_mol_s(j))),
    );
  }

  /** Writes amounts, liquids, vapours, temperatures, vapour rates and liquid rates of all holders, each kind to its table from a place on. */
  writeHolders(tables: readonly Float64Array[], at: number): void {
    const readings = this.#readings;
    const state = this.#state;
    const [amounts, liquids, vapours] = [tables[0]!, tables[1]!, tables[2]!];
    const [temperatures, vapourRates, liquidRates] = [tables[3]!, tables[4]!, tables[5]!];
    let vapour = 0; // as the liquids give it: the solver's own is as exact as what flows of it matters
    for (let j = 0, o = 0, from = 0, to = at; j < this.#equations.count; j++, o += 4, from += 11, to++) {
      amounts[to] = state[o + 2]! + state[o + 3]!;
      liquids[to] = readings[from]!;
      const works = j === 0 ? 1 : this.#equations.efficiencyNow(j);
      vapour = Math.min(1, Math.max(0, vapour + works * (readings[from + 1]! - vapour)));
      vapours[to] = vapour;
      temperatures[to] = readings[from + 2]!;
      vapourRates[to] = readings[from + 3]!;
      liquidRates[to] = readings[from + 5]!;
    }
  }

  amount_mol(j: number): number {
    return this.#state[UNKNOWNS * j + ETHANOL]! + this.#state[UNKNOWNS * j + WATER]!;
  }
  liquid(j: number): number {
    return this.#reading(j, LIQUID);
  }
  vapour(j: number): number {
    return this.#state[UNKNOWNS * j + VAPOUR]!;
  }
  temperature_K(j: number): number {
    return this.#reading(j, TEMPERATURE_K);
  }
  vapourRate_mol_s(j: number): number {
    return this.#reading(j, VAPOUR_RATE);
  }
  liquidRate_mol_s(j: number): number {
    return this.#reading(j, LIQUID_RATE);
  }
}
