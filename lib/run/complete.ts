// A problem with everything that was left out filled in: the still completed, defaults in their places.

import { DEFAULT_ACTIVITY } from '../mixture/activity/registry.js';
import { drawUp } from '../still/describe.js';
import type { Still } from '../still/still.js';
import type { EnergyModel, Model, RunProblem } from './problem.js';

/** A problem in which nothing is left out but what has no default. */
export type CompleteProblem = Required<Omit<RunProblem, 'still' | 'lags' | 'chargeTemperature_K'>> &
  Pick<RunProblem, 'lags'> & { readonly still: Still; readonly chargeTemperature_K: number };

/** Rows a run reports unless it is told otherwise. */
const OUTPUTS = { kind: 'every', interval_s: 60 } as const;
const PER_STEP = { kind: 'perStep' } as const;
/** Errors that the models aim at. */
const TOLERANCE: Readonly<Record<Model, number>> = {
  energy: 1e-5,
  equalHeats: 1e-5,
  equalFlows: 1e-6,
  rayleigh: 1e-12,
};

/** Whether a model keeps account of energy, and so can begin cold. */
export function keepsEnergy(model: Model): model is EnergyModel {
  return model === 'energy' || model === 'equalHeats';
}

/** The problem with its defaults; its shape must have been checked. */
export function completeProblem(problem: RunProblem): CompleteProblem {
  const { still } = drawUp(problem.still);
  const model = problem.model ?? 'energy';
  return {
    doublerCharges: [],
    activity: DEFAULT_ACTIVITY,
    heat: { kind: 'power', power_W: still.kettle.power_W },
    outputs: OUTPUTS,
    jars: PER_STEP,
    start: keepsEnergy(model) ? 'cold' : 'firstVapour',
    tolerance: TOLERANCE[model],
    chargeTemperature_K: still.air.temperature_K,
    ...withoutUndefined(problem),
    model,
    still,
  };
}

/** A field set to undefined is one left out. */
function withoutUndefined<Rec extends object>(record: Rec): Rec {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Rec;
}
