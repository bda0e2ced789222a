// Which integrator suits which stretch of a run. While a still warms up and fills, its equations have many corners, one for every
// holder that begins to boil or to run over: a one-step method takes them best, one after the other (corners.ts). As soon as everything boils
// and runs, a run is smooth for hours, and a multistep method needs less work for the same error: of order 5, which leaves that order by
// itself where liquid that runs from plate to plate makes modes that swing. Measured in docs/benchmarks.md.

import {
  createIntegrator,
  type IntegrationEnd,
  type IntegrationTask,
  type StiffIntegrator,
} from '../../../numerics/stiff/integrate.js';
import { BDF5 } from '../../../numerics/stiff/multistep-step.js';
import { RODAS4 } from '../../../numerics/stiff/rodas4.js';
import type { StiffMethod } from '../../../numerics/stiff/stiff-method.js';
import type { Recording } from '../../../numerics/stiff/recording.js';
import type { SolveStatistics } from '../../solution.js';
import type { TrainEquations } from './equations.js';
import { UNKNOWNS } from './streams.js';
import type { TrainState } from './train-state.js';

type Work = Omit<SolveStatistics, 'events'>;

/** How steps are marked in the recording: those taken while a still warms up and fills, and those after. */
export const FILLING = 1;
const RUNNING = 0;

/**
 * What a run may cost: sides and factorisations, for each block of the matrix. Some second and a quarter on the machine of docs/benchmarks.md,
 * and the same steps on every machine. Source: this project's choice.
 */
const MOST_WORK = 12e6;
/** Sides and factorisations of an attempt, at the least. */
const OF_RODAS4 = 7;
const OF_BDF5 = 2;

const NO_WORK = { acceptedSteps: 0, rejectedSteps: 0, rightHandSides: 0, jacobians: 0, factorisations: 0 };

/** The integrators of one system, made when first needed and kept from run to run. */
export class TrainMethods {
  readonly #equations: TrainEquations;
  readonly #made = new Map<StiffMethod, StiffIntegrator>();
  readonly #recording: Recording;
  #before = NO_WORK;
  /** What is integrated, and by which method. */
  #task: IntegrationTask | undefined;
  #moment: TrainState | undefined;
  #present: StiffIntegrator | undefined;

  constructor(equations: TrainEquations, recording: Recording) {
    this.#equations = equations;
    this.#recording = recording;
  }

  /** Integrates from this moment on: by the method for corners until everything boils and runs, then by the one for smooth stretches. */
  run(moment: TrainState, task: IntegrationTask): IntegrationEnd {
    this.#task = task;
    this.#moment = moment;
    if (moment.settled) return this.#runSettled(task.from, task.start);
    this.#equations.filling = true;
    const asked = task.leave;
    const leave: IntegrationTask['leave'] = (step) => asked?.(step) === true || moment.look(step.to, step.end).settled;
    this.#present = this.#integrator(RODAS4);
    const recording = this.#recording;
    const maxSteps = this.#attemptsLeft(OF_RODAS4);
    return this.#settle(this.#present.run({ ...task, leave, maxSteps, recording, mark: FILLING }));
  }

  /** Goes on with what was paused. */
  resume(): IntegrationEnd {
    const end = this.#present!.resume();
    return this.#equations.filling ? this.#settle(end) : end;
  }

  /** What follows a stretch of filling: the rest by the other method, unless it ended or pauses. */
  #settle(end: IntegrationEnd): IntegrationEnd {
    if (end.kind !== 'reachedEnd' || end.s >= this.#task!.to) return end;
    return this.#moment!.look(end.s, end.state).settled ? this.#runSettled(end.s, end.state) : end;
  }

  #runSettled(from: number, start: Float64Array): IntegrationEnd {
    this.#equations.filling = false;
    this.#present = this.#integrator(BDF5);
    const maxSteps = this.#attemptsLeft(OF_BDF5);
    return this.#present.run({ ...this.#task!, from, start, maxSteps, recording: this.#recording, mark: RUNNING });
  }

  /** Attempts a run may still make, each of which costs so much. */
  #attemptsLeft(each: number): number {
    const { rightHandSides, factorisations } = this.counts();
    const blocks = this.#equations.size / UNKNOWNS;
    return Math.max(0, Math.ceil((MOST_WORK / blocks - rightHandSides - factorisations) / each));
  }

  #integrator(method: StiffMethod): StiffIntegrator {
    const made = this.#made.get(method) ?? createIntegrator(this.#equations, method);
    this.#made.set(method, made);
    return made;
  }

  /** A run begins: work is counted from here. */
  begin(): void {
    this.#before = this.#all();
  }

  /** Work of all of them together since the run began. */
  counts(): Work {
    const now = this.#all();
    const before = this.#before;
    return {
      acceptedSteps: now.acceptedSteps - before.acceptedSteps,
      rejectedSteps: now.rejectedSteps - before.rejectedSteps,
      rightHandSides: now.rightHandSides - before.rightHandSides,
      jacobians: now.jacobians - before.jacobians,
      factorisations: now.factorisations - before.factorisations,
    };
  }

  #all(): Work {
    const sums = { ...NO_WORK };
    for (const { counts } of this.#made.values()) {
      sums.acceptedSteps += counts.accepted;
      sums.rejectedSteps += counts.rejected;
      sums.rightHandSides += counts.rightHandSides;
      sums.jacobians += counts.jacobians;
      sums.factorisations += counts.factorisations;
    }
    return sums;
  }
}
