// What a solve of the train needs besides its problem, kept between solves: equations and integrators for each number of holders, tables of
// rows for all. Kept with the system they were made for, and forgotten with it. A solve runs from beginning to end
// without handing control away, so that no two ever share a workspace.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import type { Controls } from './controls.js';
import { TrainEquations } from './equations.js';
import type { Train } from './holders.js';
import { TrainMethods } from './methods.js';
import { trainStore, type TrainStore } from './rows.js';
import type { TrainTables } from './tables.js';

/** Equations and integrators for trains of one number of holders. */
interface TrainSpace {
  readonly equations: TrainEquations;
  readonly methods: TrainMethods;
}

interface SystemSpace {
  readonly spaces: Map<number, TrainSpace>;
  readonly rows: TrainStore;
}

const systems = new WeakMap<EthanolWater, SystemSpace>();

/** Equations and integrators set up for a train at a tolerance, and the store for its rows. */
export function trainWorkspace(
  system: EthanolWater,
  train: Train,
  tables: TrainTables,
  tolerance: number,
  controls: Controls,
): TrainSpace & { readonly store: TrainStore } {
  let known = systems.get(system);
  if (known === undefined) {
    known = { spaces: new Map(), rows: trainStore() };
    systems.set(system, known);
  }
  const count = train.holders.length;
  let space = known.spaces.get(count);
  if (space === undefined) {
    const equations = new TrainEquations(train, tables, tolerance, controls);
    space = { equations, methods: new TrainMethods(equations) };
    known.spaces.set(count, space);
  } else {
    space.equations.setUp(train, tables, tolerance, controls);
  }
  space.methods.begin();
  return { ...space, store: known.rows };
}
