// Every activity model by name. A new one costs one file, one parameter file and one line here; the laws
// matrix in tests/laws then tests it.

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
 * @param name One of `ACTIVITY_NAMES`; anything else throws.
 * @returns The model.
 * @throws InputError when there is no model of that name.
 * @example activityModel('redlich-kister').excessGibbs(0.5, 351.15) // → 0.3057
 * Source: this project, docs/theory/equilibrium.md.
 */
export function activityModel(name: ActivityName): ActivityModel {
  if (!Object.hasOwn(MODELS, name)) {
    throw new InputError({ argument: 'activity', value: name, expected: `one of ${ACTIVITY_NAMES.join(', ')}` });
  }
  return MODELS[name];
}
