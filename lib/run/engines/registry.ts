// The engines, one for each model: how its equations are made ready, and what of a problem it refuses.

import type { EthanolWater } from '../../equilibrium/ethanol-water.js';
import type { Fault } from '../../errors.js';
import type { CompleteProblem } from '../complete.js';
import type { Engine } from '../engine.js';
import type { Model } from '../problem.js';
import { energyEngine } from './energy/engine.js';
import { energyFaults } from './energy/check.js';
import { equalFlowsFaults } from './equal-flows/check.js';
import { equalFlowsEngine } from './equal-flows/engine.js';
import { rayleighFaults } from './rayleigh/check.js';
import { rayleighEngine } from './rayleigh/engine.js';

/** One model. */
interface EngineKind {
  /** Equations made ready for a checked problem; `fresh` ones share nothing with a run that may be going on. */
  make(problem: CompleteProblem, system: EthanolWater, fresh: boolean): Engine;
  /** What of a problem of the right shape this model cannot run. */
  faults(problem: CompleteProblem, system: EthanolWater): Fault[];
}

const ENERGY: EngineKind = { make: energyEngine, faults: energyFaults };

const ENGINES: Readonly<Record<Model, EngineKind>> = {
  energy: ENERGY,
  equalHeats: ENERGY,
  equalFlows: { make: equalFlowsEngine, faults: equalFlowsFaults },
  rayleigh: { make: rayleighEngine, faults: rayleighFaults },
};

/** Names of the models. Source: this project, docs/theory/train.md and docs/theory/column.md. */
export const MODELS = Object.keys(ENGINES) as Model[];

/** Equations of their own for a checked problem. */
export function engineOf(problem: CompleteProblem, system: EthanolWater): Engine {
  return ENGINES[problem.model].make(problem, system, true);
}

/** Equations for a checked problem that are kept from run to run: for one run at a time, from beginning to end. */
export function sharedEngine(problem: CompleteProblem, system: EthanolWater): Engine {
  return ENGINES[problem.model].make(problem, system, false);
}

/** What of a problem its model cannot run. */
export function engineFaults(problem: CompleteProblem, system: EthanolWater): Fault[] {
  return ENGINES[problem.model].faults(problem, system);
}
