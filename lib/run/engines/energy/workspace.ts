// What a solve of the train needs besides its problem, kept between solves: equations, integrators and recording for each number of holders. Kept with the system they were made for, and forgotten with it. A solve runs from beginning to end
// without handing control away, so that no two ever share a workspace.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { Recording } from '../../../numerics/stiff/recording.js';
import type { Controls } from './controls.js';
import { TrainEquations } from './equations.js';
import type { Train } from './holders.js';
import { TrainMethods } from './methods.js';
import type { TrainTables } from './tables.js';

/** Equations and integrators for trains of one number of holders. */
interface TrainSpace {
  readonly equations: TrainEquations;
  readonly methods: TrainMethods;
  readonly recording: Recording;
}

const systems = new WeakMap<EthanolWater, Map<number, TrainSpace>>();

/** Equations and integrators that share nothing. */
export function freshWorkspace(train: Train, tables: TrainTables, tolerance: number, controls: Controls): TrainSpace {
  const equations = new TrainEquations(train, tables, tolerance, controls);
  const recording = new Recording(equations.size);
  return { equations, recording, methods: new TrainMethods(equations, recording) };
}

/** Equations and integrators set up for a train at a tolerance, kept for the next run of as many vessels. */
export function trainWorkspace(
  system: EthanolWater,
  train: Train,
  tables: TrainTables,
  tolerance: number,
  controls: Controls,
): TrainSpace {
  let spaces = systems.get(system);
  if (spaces === undefined) {
    spaces = new Map();
    systems.set(system, spaces);
  }
  const count = train.holders.length;
  let space = spaces.get(count);
  if (space === undefined) {
    space = freshWorkspace(train, tables, tolerance, controls);
    spaces.set(count, space);
  } else {
    space.equations.setUp(train, tables, tolerance, controls);
  }
  space.recording.clear();
  space.methods.begin();
  return space;
}
