// Named reading of a train at one moment: what gauges, stop rules and the rows of a solution ask for.

import type { CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { liquidOnSlice } from '../../equilibrium/liquid-on-slice.js';
import { readValue } from '../../equilibrium/slice-tables.js';
import type { RunState } from '../stop-rules.js';
import type { TrainEquations } from './equations.js';
import { LAMBDA0, type Train } from './holders.js';
import { ENERGY, ETHANOL, UNKNOWNS, VAPOUR, WATER } from './streams.js';

/** Less than this share of the usual vapour is as good as no flow. */
const LITTLE_FLOW = 0.01;

/** A train at one moment. `look` points it at a state and evaluates its streams once. */
export class TrainState implements RunState {
  readonly #equations: TrainEquations;
  readonly #train: Train;
  readonly #headSlice: CurveSlice;
  #state: Float64Array;
  #share = 0;
  #stepStart_s = 0;
  time_s = 0;
  chargeEthanol_mol = 0;

  constructor(equations: TrainEquations, train: Train, headSlice: CurveSlice) {
    this.#equations = equations;
    this.#train = train;
    this.#headSlice = headSlice;
    this.#state = new Float64Array(equations.size);
  }

  look(time_s: number, state: Float64Array): this {
    this.time_s = time_s;
    this.#state = state;
    this.#equations.streams.evaluate(state);
    this.#share = this.#equations.shareAt(state);
    return this;
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
    return this.#equations.drum.liquid;
  }
  /** Dew temperature of the vapour that leaves the last holder; the holder's own temperature while it is cold. */
  get headTemperature_K(): number {
    const top = this.#train.holders.length - 1;
    const { below_K, temperature_K } = this.#equations.streams;
    if (below_K[top]! > 0) return temperature_K[top]!;
    return readValue(
      this.#headSlice.temperature,
      this.#headSlice.intervals,
      liquidOnSlice(this.#headSlice, this.headVapour),
    );
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
      return this.#equations.streams.liquidRate[top]! / Math.max(1e-12, this.vapourRate_mol_s(top));
    }
    return this.#share < 1 ? this.#share / (1 - this.#share) : Infinity;
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
    const { drum, controls } = this.#equations;
    const partial = this.#train.holders.at(-1)!.kind === 'partialCondenser';
    return drum.rate * (1 - (partial ? 0 : controls.hold === null ? controls.returned : this.#share));
  }
  get power_W(): number {
    return this.#equations.controls.power_W;
  }
  /** Heat taken out by the total or product condenser now, W. */
  get condenserDuty_W(): number {
    const { streams, drum } = this.#equations;
    const top = this.#train.holders.length - 1;
    return LAMBDA0 * (streams.vapourRate[top]! * streams.vapourEnthalpy[top]! - drum.rate * drum.enthalpy);
  }
  /** Heat taken out by a partial reflux condenser now, W. */
  get refluxDuty_W(): number {
    return this.#equations.dutyAt(this.#share);
  }
  /** Heat lost to the air now, W. */
  get lost_W(): number {
    return this.#train.holders.reduce(
      (sum, holder, j) =>
        holder.kind === 'partialCondenser' ? sum : sum + holder.loss_W_K * (this.temperature_K(j) - holder.reference_K),
      0,
    );
  }
  /** Energy of everything in the still, J. */
  get energy_J(): number {
    let sum = 0;
    for (let j = 0; j < this.#train.holders.length; j++) sum += this.#state[UNKNOWNS * j + ENERGY]!;
    return LAMBDA0 * sum;
  }
  /** Heat taken out by the total or product condenser since the start, J. */
  get condensed_J(): number {
    return LAMBDA0 * this.#state[this.#equations.drumAt + 1]!;
  }

  /** Whether every holder boils and every plate is full enough to run over. */
  get settled(): boolean {
    const { vapourRate, liquidRate } = this.#equations.streams;
    const { holders, nominalVapour_mol_s } = this.#train;
    const flows = (rate: number): boolean => rate > LITTLE_FLOW * nominalVapour_mol_s;
    return holders.every(
      ({ kind }, j) => flows(vapourRate[j]!) && (kind === 'kettle' || kind === 'doubler' || flows(liquidRate[j]!)),
    );
  }

  amount_mol(j: number): number {
    return this.#state[UNKNOWNS * j + ETHANOL]! + this.#state[UNKNOWNS * j + WATER]!;
  }
  liquid(j: number): number {
    return this.#equations.streams.liquid[j]!;
  }
  vapour(j: number): number {
    return this.#state[UNKNOWNS * j + VAPOUR]!;
  }
  temperature_K(j: number): number {
    return this.#equations.streams.temperature_K[j]!;
  }
  vapourRate_mol_s(j: number): number {
    return this.#equations.streams.vapourRate[j]!;
  }
  liquidRate_mol_s(j: number): number {
    return this.#equations.streams.liquidRate[j]!;
  }
}
