// The plated column at constant molar flows as an engine (docs/theory/column.md): a named simplification without heat-up, losses and doublers,
// with hold-ups of fixed amount. Its independent variable is the vapour raised from the kettle, mol (column-system.ts).

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { IntegrationEnd, StiffIntegrator } from '../../../numerics/stiff/integrate.js';
import type { StepView } from '../../../numerics/stiff/path.js';
import { DRY_SHARE } from '../../charge.js';
import type { CompleteProblem } from '../../complete.js';
import type { Engine, RunHolder, StepEnd, StepTask, Unmet } from '../../engine.js';
import type { ColumnEquations } from './column-equations.js';
import { ColumnState } from './column-state.js';
import { type ColumnFlows, columnSystem, type ColumnSystem } from './column-system.js';
import { beginStep, returnedIn, startingState } from './start.js';
import type { Recording } from '../../../numerics/stiff/recording.js';
import { freshWorkspace, workspace } from './workspace.js';

/** A step that draws nothing has settled before the charge has been boiled up so many times. */
const LONGEST_HOLD = 10;
/** Attempts a run may cost, for each unknown: some second on the machine of docs/benchmarks.md, and the same steps on every machine. Source: this project's choice. */
const MOST_WORK = 20e6;

/** The engine of a checked problem. */
export function equalFlowsEngine(problem: CompleteProblem, system: EthanolWater, fresh: boolean): Engine {
  return new EqualFlowsEngine(problem, system, fresh);
}

class EqualFlowsEngine implements Engine {
  readonly holders: readonly RunHolder[];
  readonly moment: ColumnState;
  readonly clock: number;
  readonly climbs: boolean;
  readonly path: Recording;
  readonly #problem: CompleteProblem;
  readonly #column: ColumnSystem;
  readonly equations: ColumnEquations;
  readonly ownEvents = [];
  readonly #integrator: StiffIntegrator;
  readonly #before: StiffIntegrator['counts'];
  /** Flows before the first step. */
  readonly #atStart: Readonly<ColumnFlows>;
  /** Where each step of the sheet began: vapour raised, and the kettle's amount. */
  readonly #begun: { readonly since_mol: number; readonly kettleStart_mol: number }[] = [];

  constructor(problem: CompleteProblem, system: EthanolWater, fresh: boolean) {
    const column = columnSystem(problem, system.curve(problem.activity));
    const space = fresh ? freshWorkspace(column, problem.tolerance) : workspace(system, column, problem.tolerance);
    this.#problem = problem;
    this.#column = column;
    this.#atStart = { ...column.flows };
    this.equations = space.equations;
    this.#integrator = space.integrator;
    this.#before = space.integrator.counts;
    this.path = space.recording;
    this.clock = column.layout.time;
    this.climbs = column.layout.plates > 0;
    this.moment = new ColumnState(column);
    this.holders = [
      { kind: 'kettle', number: 1, pressure_Pa: column.kettleSlice.pressure_Pa },
      ...column.plateSlices.map(({ pressure_Pa }, i): RunHolder => ({ kind: 'plate', number: i + 1, pressure_Pa })),
    ];
  }

  start(): Float64Array {
    return startingState(this.#column, this.#problem.start === 'charge' ? 'charge' : 'firstVapour');
  }

  beginStep(step: number, s: number, state: Float64Array): Float64Array {
    const { flows } = this.#column;
    Object.assign(flows, step > 0 ? { ...this.#begun[step - 1], ...this.#returnedIn(step - 1) } : this.#atStart);
    beginStep(this.#column, this.#problem.sheet[step]!, this.#problem.heat, s);
    this.#begun[step] = { since_mol: flows.since_mol, kettleStart_mol: flows.kettleStart_mol };
    this.equations.drive(this.#column);
    return state;
  }

  rework(_s: number, state: Float64Array): Float64Array {
    return state;
  }

  /** Vapour that can be raised before the kettle is dry, or before a hold has settled and its clock has run out, mol. */
  reach(step: number, s: number): number {
    const { flows, chargeTotal_mol, heat, kettleSlice } = this.#column;
    if (flows.drawn > 0) {
      return s + Math.max(0, flows.kettleStart_mol - DRY_SHARE * chargeTotal_mol) / flows.drawn;
    }
    const leastHeat = kettleSlice.latentHeat.reduce((least, value, i) =>
      i % 4 === 0 ? Math.min(least, value) : least,
    );
    const quickest = heat.kind === 'power' ? heat.power_W / leastHeat : heat.rate_mol_s;
    const clocks = this.#problem.sheet[step]!.until.map((rule) =>
      rule.kind === 'duration' ? 1.01 * rule.seconds * quickest : 0,
    );
    return s + Math.max(LONGEST_HOLD * chargeTotal_mol, ...clocks);
  }

  integrate({ from, to, start, rules, onStep, leave, pauseAfter, companion }: StepTask): StepEnd {
    const end = this.#integrator.run({
      from,
      to,
      start,
      firstStep: firstStep(this.#column),
      events: rules,
      onStep,
      leave,
      maxSteps: this.#attemptsLeft(),
      recording: this.path,
      ...(pauseAfter === undefined ? {} : { pauseAfter }),
      ...(companion === undefined ? {} : { companion }),
    });
    return ended(end);
  }

  resume(): StepEnd {
    return ended(this.#integrator.resume());
  }

  unmet(): Unmet {
    return this.#column.flows.drawn > 0
      ? { kind: 'kettleDry', words: '' }
      : { kind: 'neverMet', words: 'settled at total reflux' };
  }

  between(view: StepView, _mark: number, s: number, out: Float64Array): void {
    view.state(s, out);
    // Where the step's polynomial swings beyond all mole fractions, a straight line between its ends does not.
    if (this.equations.admit(out)) return;
    const share = (s - view.from) / (view.to - view.from);
    for (let k = 0; k < out.length; k++) out[k] = view.start[k]! + share * (view.end[k]! - view.start[k]!);
  }

  progress(s: number): number {
    return s;
  }

  atProgress(progress: number): number {
    return progress;
  }

  counts(): ReturnType<Engine['counts']> {
    const { counts } = this.#integrator;
    const before = this.#before;
    return {
      acceptedSteps: counts.accepted - before.accepted,
      rejectedSteps: counts.rejected - before.rejected,
      rightHandSides: counts.rightHandSides - before.rightHandSides,
      jacobians: counts.jacobians - before.jacobians,
      factorisations: counts.factorisations - before.factorisations,
    };
  }

  /** Attempts the run may still make. */
  #attemptsLeft(): number {
    const { acceptedSteps, rejectedSteps } = this.counts();
    return Math.max(0, Math.ceil(MOST_WORK / this.#column.layout.size) - acceptedSteps - rejectedSteps);
  }

  #returnedIn(step: number): { returned: number; drawn: number } {
    return returnedIn(this.#problem.sheet[step]!.reflux);
  }
}

/** Some fraction of the vapour that renews the fastest holder. */
function firstStep(column: ColumnSystem): number {
  const held = column.layout.plates > 0 ? [column.plateHoldUp_mol] : [];
  return 0.02 * Math.min(column.condenserHoldUp_mol, ...held);
}

function ended({ kind, s, state, event }: IntegrationEnd): StepEnd {
  return { kind: kind === 'event' ? 'rule' : kind, s, state, rule: event };
}
