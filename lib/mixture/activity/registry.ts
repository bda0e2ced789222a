// Every activity model by name. A new one costs one file, one parameter file and one line here; the laws
// matrix in tests/laws then tests it.

import { choiceFault, refuse } from '../../arguments.js';
import { InputError } from '../../errors.js';
import type { ActivityModel } from './activity-model.js';
import { nrtl } from './nrtl.js';
import { raoult } from './raoult.js';
import { redlichKister } from './redlich-kister.js';
import { wilson } from './wilson.js';

const MODELS = Object.freeze({ raoult, wilson, nrtl, 'redlich-kister': redlichKister });

/** Names of the activity models there are. */
export type ActivityName = keyof typeof MODELS;

/** Names of the activity models, in the order in which they are told. Source: this project's registry. */
export const ACTIVITY_NAMES: readonly ActivityName[] = Object.freeze(Object.keys(MODELS) as ActivityName[]);

/** Name of the activity model used where none is named. Source: this project, docs/theory/equilibrium.md. */
export const DEFAULT_ACTIVITY: ActivityName = 'redlich-kister';

/**
 * The activity model that belongs to a name.
 *
 * Equation: a table of names.
 * @param activity One of `ACTIVITY_NAMES`; anything else throws.
 * @returns The model.
 * @throws InputError when there is no model of that name.
 * @example activityModel('redlich-kister').excessGibbs(0.5, 351.15) // → 0.3057
 * Source: this project, docs/theory/equilibrium.md.
 */
export function activityModel(activity: ActivityName): ActivityModel {
  refuse(choiceFault('activity', activity, ACTIVITY_NAMES));
  return MODELS[activity];
}

/** An activity model by its name or as it is; the default one where none is said. What is neither throws. */
export function modelOf(activity: ActivityName | ActivityModel = DEFAULT_ACTIVITY): ActivityModel {
  if (typeof activity === 'string') return activityModel(activity);
  if (!isModel(activity)) {
    const expected = `one of ${ACTIVITY_NAMES.join(', ')}, or a model with name, range_K, excessGibbs and activity`;
    throw new InputError({ argument: 'activity', value: activity, expected });
  }
  return activity;
}

/** Whether something has what the contract of an activity model asks for. */
export function isModel(value: unknown): value is ActivityModel {
  if (typeof value !== 'object' || value === null) return false;
  const { name, range_K, excessGibbs, activity } = value as Partial<Record<keyof ActivityModel, unknown>>;
  const functions = typeof excessGibbs === 'function' && typeof activity === 'function';
  return typeof name === 'string' && Array.isArray(range_K) && functions;
}
