// Which integrator suits which stretch of a run. While a still warms up and fills, its equations have many corners, one for every
// holder that begins to boil or to run over: a one-step method takes them best. Once everything boils and runs, a run is smooth
// for hours, and a multistep method needs less work for the same error: of order 5, which leaves that order by itself where liquid that runs
// from plate to plate makes modes that swing. Measured in docs/benchmarks.md.

import { createIntegrator, type StiffIntegrator } from '../../numerics/stiff/integrate.js';
import { BDF5 } from '../../numerics/stiff/multistep-step.js';
import { RODAS4 } from '../../numerics/stiff/rodas4.js';
import type { StiffMethod } from '../../numerics/stiff/stiff-method.js';
import type { SolveStatistics } from '../solution.js';
import type { TrainEquations } from './equations.js';
import type { TrainState } from './train-state.js';

type Work = Omit<SolveStatistics, 'events'>;

const NO_WORK = { acceptedSteps: 0, rejectedSteps: 0, rightHandSides: 0, jacobians: 0, factorisations: 0 };

/** The integrators of one system, made when first needed and kept from run to run. */
export class TrainMethods {
  readonly #equations: TrainEquations;
  readonly #made = new Map<StiffMethod, StiffIntegrator>();
  #before = NO_WORK;

  constructor(equations: TrainEquations) {
    this.#equations = equations;
  }

  /** The integrator for a stretch that begins at this moment. */
  suiting(moment: TrainState): StiffIntegrator {
    const method = moment.settled ? BDF5 : RODAS4;
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
