// What a program can do before its first run, while it waits anyway.

import { OWN_SYSTEM } from '../equilibrium/own-system.js';
import type { ActivityModel } from '../mixture/activity/activity-model.js';
import type { ActivityName } from '../mixture/activity/registry.js';

/**
 * Compiles the tables that the first run would otherwise have to compile, so that it costs no more than the next; some fifth of a second.
 *
 * @param activity The model whose tables are wanted, by name or your own; the default one when left out.
 * @throws InputError when there is no such model.
 * @example warm() // → undefined
 * Source: this project; docs/benchmarks.md has the times.
 */
export function warm(activity?: ActivityName | ActivityModel): void {
  OWN_SYSTEM.curve(activity);
  OWN_SYSTEM.enthalpy(activity);
}
