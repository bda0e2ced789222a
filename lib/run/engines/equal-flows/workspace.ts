// What a column solve needs besides its problem, kept between solves: equations, integrator and recording for each shape of column. Kept with the system they were made for, and forgotten with it. A solve runs from beginning to end
// without handing control away, so that no two ever share a workspace.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { createIntegrator, type StiffIntegrator } from '../../../numerics/stiff/integrate.js';
import { BDF5 } from '../../../numerics/stiff/multistep-step.js';
import { Recording } from '../../../numerics/stiff/recording.js';
import type { ColumnEquations } from './column-equations.js';
import type { ColumnSystem } from './column-system.js';
import { columnEquations } from './equations.js';

/** Equations and integrator for columns of one shape. */
interface ShapeSpace {
  readonly equations: ColumnEquations;
  readonly integrator: StiffIntegrator;
  readonly recording: Recording;
}

const spaces = new WeakMap<EthanolWater, Map<number, ShapeSpace>>();

/** Equations and integrator that share nothing. */
export function freshWorkspace(column: ColumnSystem, tolerance: number): ShapeSpace {
  const equations = columnEquations(column, tolerance);
  return {
    equations,
    integrator: createIntegrator(equations, BDF5),
    recording: new Recording(equations.size),
  };
}

/** Equations and integrator set up for a column at a tolerance, kept for the next run of the same shape. */
export function workspace(system: EthanolWater, column: ColumnSystem, tolerance: number): ShapeSpace {
  let shapes = spaces.get(system);
  if (shapes === undefined) {
    shapes = new Map();
    spaces.set(system, shapes);
  }
  const { plates, stride } = column.layout;
  const shape = 2 * plates + stride;
  let space = shapes.get(shape);
  if (space === undefined) {
    space = freshWorkspace(column, tolerance);
    shapes.set(shape, space);
  } else {
    space.equations.setUp(column, tolerance);
  }
  space.recording.clear();
  return space;
}
