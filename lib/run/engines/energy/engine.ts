// The still with its energy as an engine: balances of ethanol, water and energy on kettle, doublers, plates, head and condensers
// (docs/theory/train.md), from lighting up or from the first vapour. Its independent variable is time.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { IntegrationEnd } from '../../../numerics/stiff/integrate.js';
import type { StepView } from '../../../numerics/stiff/path.js';
import type { FallingEvent } from '../../../numerics/stiff/stiff-system.js';
import { allCharged, DRY_SHARE } from '../../charge.js';
import type { CompleteProblem } from '../../complete.js';
import type { Engine, RunHolder, StepEnd, StepTask, Unmet } from '../../engine.js';
import { Between } from './between.js';
import { coldest_K } from './coldest.js';
import { controlsOf } from './controls.js';
import type { TrainEquations } from './equations.js';
import { LAMBDA0, type Train, trainOf } from './holders.js';
import type { TrainMethods } from './methods.js';
import { startingState } from './start.js';
import { type TrainTables, trainTables } from './tables.js';
import { TrainState } from './train-state.js';
import { type RatedPlates, ratedPlates } from './wet-efficiency.js';
import { freshWorkspace, trainWorkspace } from './workspace.js';

/** A step ends as one that goes on without end when its heat could have boiled the charge up so many times. */
const LONGEST_STEP = 5;
const FIRST_STEP_s = 0.05;
/** A doubler that runs over at so many times the most vapour there is runs in circles: what enters it is vapour, and reflux of it. Source: this project's choice. */
const CIRCLES = 10;
/** An event lies on the far side of its margin by less than this share. */
const ROUND_OFF = 1e-6;

/** The engine of a checked problem. */
export function energyEngine(problem: CompleteProblem, system: EthanolWater, fresh: boolean): Engine {
  return new EnergyEngine(problem, system, fresh);
}

class EnergyEngine implements Engine {
  readonly holders: readonly RunHolder[];
  readonly moment: TrainState;
  readonly clock = null;
  readonly climbs = true;
  readonly path: Engine['path'];
  readonly #problem: CompleteProblem;
  readonly #train: Train;
  readonly #tables: TrainTables;
  readonly equations: TrainEquations;
  readonly ownEvents: readonly FallingEvent[];
  readonly #methods: TrainMethods;
  readonly #plates: RatedPlates | null;
  readonly #between: Between;
  readonly #dry_mol: number;
  readonly #charge_mol: number;
  /** Doublers that run over into a part that drains back into them. */
  readonly #circling: readonly number[];
  #task: StepTask | undefined;
  #falling: readonly FallingEvent[] = [];

  constructor(problem: CompleteProblem, system: EthanolWater, fresh: boolean) {
    const { still, sheet, activity, model, tolerance } = problem;
    const train = trainOf(problem);
    const { holders } = train;
    const pressures = [...holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
    const tables = trainTables(system.enthalpy(activity), pressures, model === 'equalHeats');
    const controls = controlsOf(sheet[0]!, problem);
    const space = fresh
      ? freshWorkspace(train, tables, tolerance, controls)
      : trainWorkspace(system, train, tables, tolerance, controls);
    const headSlice = system.curve(activity).at(holders.at(-1)!.pressure_Pa);
    const charged = allCharged(problem);
    this.#problem = problem;
    this.#train = train;
    this.#tables = tables;
    this.equations = space.equations;
    this.#methods = space.methods;
    this.path = space.recording;
    this.holders = holders.map(({ kind, number, pressure_Pa }) => ({ kind, number, pressure_Pa }));
    this.moment = new TrainState(space.equations, train, headSlice);
    this.moment.chargeEthanol_mol = charged.ethanol_mol;
    this.#charge_mol = charged.kettle_mol;
    this.#dry_mol = DRY_SHARE * charged.kettle_mol;
    this.#plates = ratedPlates(still, train, headSlice);
    space.equations.coldest_K = coldest_K(problem, tables);
    this.#between = new Between(space.equations.streams);
    this.#circling = holders.flatMap(({ overflow }, j) => {
      const above = holders[j + 1];
      return overflow === 'over' && above !== undefined && above.overflow === 'back' ? [j] : [];
    });
    this.ownEvents = this.#ownEvents();
    this.moment.drumStart_J = this.moment.look(0, this.start()).drumEnergy_J;
  }

  start(): Float64Array {
    const state = startingState(this.#problem, this.#train, this.#tables);
    this.equations.kept.begin(state);
    return state;
  }

  /** A hold begins with its integral at nothing, unless the step before was one too. */
  beginStep(step: number, s: number, state: Float64Array): Float64Array {
    const equations = this.equations;
    equations.controls = controlsOf(this.#problem.sheet[step]!, this.#problem);
    const begun = Float64Array.from(state);
    if (equations.controls.hold === null) begun[equations.drumAt] = 0;
    this.moment.look(s, begun).beginStep();
    this.#ratePlates(s, begun);
    return begun;
  }

  reach(step: number, s: number): number {
    return s + this.#longest_s(step);
  }

  integrate(task: StepTask): StepEnd {
    this.#task = task;
    this.#falling = [...task.rules, ...this.ownEvents];
    return this.#goOn(this.#run(task.from, task.start));
  }

  resume(): StepEnd {
    return this.#goOn(this.#methods.resume());
  }

  unmet(_step: number, { s, state }: StepEnd): Unmet {
    const full = this.#circling.find((j) => this.moment.look(s, state).liquidRate_mol_s(j) >= this.#circles_mol_s);
    if (full === undefined) return { kind: 'neverMet', words: 'went on without end' };
    const { kind, number } = this.holders[full]!;
    const words = `was left after ${(s / 60).toFixed(1)} min: ${kind} ${String(number)} is full, and what runs over from it comes back to it from the parts above`;
    return { kind: 'neverMet', words };
  }

  /** Liquid that runs over at so much more than all vapour there is runs in circles. */
  get #circles_mol_s(): number {
    return CIRCLES * this.#train.nominalVapour_mol_s;
  }

  #roomToRun(s: number, state: Float64Array): number {
    this.moment.look(s, state);
    const most = this.#circling.reduce((sum, j) => Math.max(sum, this.moment.liquidRate_mol_s(j)), 0);
    return this.#circles_mol_s * (1 + ROUND_OFF) - most;
  }

  between(view: StepView, _mark: number, s: number, out: Float64Array): void {
    this.#between.state(view, s, out);
  }

  progress(s: number): number {
    return s;
  }

  atProgress(progress: number): number {
    return progress;
  }

  counts(): ReturnType<Engine['counts']> {
    return this.#methods.counts();
  }

  rework(s: number, state: Float64Array): Float64Array {
    const reworked = Float64Array.from(state);
    this.#ratePlates(s, reworked);
    return reworked;
  }

  /** The kettle runs dry; liquid runs in circles; plates want to be rated anew. */
  #ownEvents(): readonly FallingEvent[] {
    const { moment } = this;
    const plates = this.#plates;
    return [
      { value: (_s, u) => u[2]! + u[3]! - this.#dry_mol },
      ...(this.#circling.length === 0 ? [] : [{ value: (s: number, u: Float64Array) => this.#roomToRun(s, u) }]),
      ...(plates === null ? [] : [{ value: (s: number, u: Float64Array) => plates.margin(moment.look(s, u)) }]),
    ];
  }

  #run(from: number, start: Float64Array): IntegrationEnd {
    const { to, onStep, leave, pauseAfter, companion } = this.#task!;
    return this.#methods.run(this.moment.look(from, start), {
      from,
      to,
      start,
      firstStep: FIRST_STEP_s,
      events: this.#falling,
      onStep,
      leave,
      ...(pauseAfter === undefined ? {} : { pauseAfter }),
      ...(companion === undefined ? {} : { companion }),
    });
  }

  /** Goes on where nothing but the rating of plates has changed; says how the step ended. */
  #goOn(reached: IntegrationEnd): StepEnd {
    const { rules, to, armed } = this.#task!;
    const dry = rules.length;
    const rated = dry + (this.#circling.length === 0 ? 1 : 2);
    let end = reached;
    while (end.kind === 'event' && end.event === rated && end.s < to) {
      const state = Float64Array.from(end.state);
      const tied = this.#falling.findIndex(
        (event, i) => (i < dry ? armed(i) : i === dry) && event.value(end.s, state) <= 0,
      );
      if (tied >= 0) return ended(end, tied, dry);
      const reworked = this.rework(end.s, state);
      this.#task!.companion?.jumped(end.event, end.s, state, reworked);
      end = this.#run(end.s, reworked);
    }
    if (end.kind === 'event' && end.event <= dry) return ended(end, end.event, dry);
    if (end.kind === 'event') return { kind: 'reachedEnd', s: end.s, state: end.state, rule: -1, own: end.event - dry };
    return { kind: end.kind, s: end.s, state: end.state, rule: -1 };
  }

  /** Plates work as well as what they hold and the heat of the step let them. */
  #ratePlates(s: number, state: Float64Array): void {
    if (this.#plates === null) return;
    this.equations.workWith(this.#plates.rate(this.moment.look(s, state), this.equations.controls), state);
    this.moment.look(s, state);
  }

  #longest_s(step: number): number {
    const { power_W } = this.equations.controls;
    const clocks = this.#problem.sheet[step]!.until.map((rule) => (rule.kind === 'duration' ? 1.01 * rule.seconds : 0));
    return Math.max((LONGEST_STEP * this.#charge_mol * LAMBDA0) / Math.max(power_W, 1), ...clocks);
  }
}

function ended(end: IntegrationEnd, event: number, dry: number): StepEnd {
  const { s, state } = end;
  return event === dry ? { kind: 'kettleDry', s, state, rule: -1, own: 0 } : { kind: 'rule', s, state, rule: event };
}
