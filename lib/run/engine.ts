// What the driver asks of an engine, and nothing more. An engine is the equations of one model made ready for one problem: how a run begins,
// what a step of the run sheet sets, how it is integrated, and what can be read of a moment of it.

import type { Path, StepView } from '../numerics/stiff/path.js';
import type { StepCompanion } from '../numerics/stiff/companion.js';
import type { FallingEvent, StiffSystem } from '../numerics/stiff/stiff-system.js';
import type { Pascal } from '../units/quantities.js';
import type { SolveStatistics } from './solution.js';
import type { RunState } from './stop-rules.js';

/** What a vessel of the train is. */
export type HolderKind = 'kettle' | 'doubler' | 'plate' | 'packing' | 'head' | 'partialCondenser';

/** A vessel of the train, from the kettle up. */
export interface RunHolder {
  readonly kind: HolderKind;
  /** Number among its kind, from 1. */
  readonly number: number;
  readonly pressure_Pa: Pascal;
}

/** Columns that stand for every vessel, in the order in which a moment writes them. */
export const HOLDER_COLUMNS = [
  'holderAmount_mol',
  'holderLiquid',
  'holderVapour',
  'holderTemperature_K',
  'holderVapourRate_mol_s',
  'holderLiquidRate_mol_s',
] as const;

/** A still at one moment: what rules, gauges, rows and jars ask for. `look` points it at a state. */
export interface Moment extends RunState {
  look(s: number, state: Float64Array): this;
  /** Marks the present moment as the beginning of a step of the run sheet. */
  beginStep(): void;
  readonly kettleAmount_mol: number;
  /** Distillate, mol/s. */
  readonly distillateRate_mol_s: number;
  /** Liquid in the reflux condenser and on its way to the spout, mol. */
  readonly drumAmount_mol: number;
  /** Heat into the kettle; out at the total or product condenser; out at a partial condenser; lost to the air, W. */
  readonly power_W: number;
  readonly condenserDuty_W: number;
  readonly refluxDuty_W: number;
  readonly lost_W: number;
  /** Taken out at the total or product condenser, carried off by the distillate, since the start; in the still now, J. NaN without an account of energy. */
  readonly condensed_J: number;
  readonly collected_J: number;
  readonly energy_J: number;
  /** Writes the holder columns of all vessels, each to its table from a place on. */
  writeHolders(tables: readonly Float64Array[], at: number): void;
}

/** What to integrate: one step of the run sheet, from a moment on. */
export interface StepTask {
  readonly step: number;
  readonly from: number;
  readonly to: number;
  readonly start: Float64Array;
  /** The rules that end it, and whether one can be met by now. */
  readonly rules: readonly FallingEvent[];
  readonly armed: (rule: number) => boolean;
  readonly onStep: (step: StepView) => void;
  /** Asked after every step: whether to leave off there. */
  readonly leave: () => boolean;
  /** Accepted steps after which the integration pauses. */
  readonly pauseAfter?: number;
  /** What goes along with it. */
  readonly companion?: TaskCompanion;
}

/** Goes along with the integration of a step of the sheet, steps of the solver and what the engine does between them. */
export interface TaskCompanion extends StepCompanion {
  /** An event of the engine's own (their list follows that of the rules) was met: it goes on from another state, with other equations. */
  jumped(event: number, s: number, before: Float64Array, after: Float64Array): void;
}

/** How the integration of a step ended. `state` is the engine's own storage. */
export interface StepEnd {
  readonly kind: 'rule' | 'kettleDry' | 'reachedEnd' | 'stepLimit' | 'stepTooSmall' | 'paused';
  readonly s: number;
  readonly state: Float64Array;
  /** Index of the rule that was met, −1 otherwise. */
  readonly rule: number;
  /** Index of the engine's own event that ended it, where one did. */
  readonly own?: number;
}

/** What it means that a step came to its end with none of its rules met; `words` go on from 'step 2 …'. */
export interface Unmet {
  readonly kind: 'kettleDry' | 'neverMet';
  readonly words: string;
}

/** Equations made ready for one problem. */
export interface Engine {
  readonly holders: readonly RunHolder[];
  readonly moment: Moment;
  /** What was integrated so far, step by step. */
  readonly path: Path & { copy(): Path };
  /** The component of the state that is the time, s; null where s is the time itself. */
  readonly clock: number | null;
  /** Whether the spout may still climb after the start, so that rules about it count once it has stood beyond them. */
  readonly climbs: boolean;
  /** The state at the beginning, s = 0. */
  start(): Float64Array;
  /** Sets what a step of the sheet sets, and returns the state it begins with. */
  beginStep(step: number, s: number, state: Float64Array): Float64Array;
  /** What is integrated; null where a run is no integration of equations. */
  readonly equations: StiffSystem | null;
  /** What is watched besides the rules of a step. */
  readonly ownEvents: readonly FallingEvent[];
  /** What the engine makes of a state at an event of its own after which it goes on. */
  rework(s: number, state: Float64Array): Float64Array;
  /** How far a step may go. */
  reach(step: number, s: number, state: Float64Array): number;
  integrate(task: StepTask): StepEnd;
  /** Goes on with an integration that was paused. */
  resume(): StepEnd;
  /** What it means that a step came to its reach with none of its rules met. */
  unmet(step: number, end: StepEnd): Unmet;
  /** A state inside a recorded step, as rows show it. */
  between(view: StepView, mark: number, s: number, out: Float64Array): void;
  /** How far the run has come at s, for rows that are spread evenly over it, and the s of a progress inside a recorded step. */
  progress(s: number): number;
  atProgress(progress: number): number;
  /** Work since the engine was made ready. */
  counts(): Omit<SolveStatistics, 'events'>;
}
