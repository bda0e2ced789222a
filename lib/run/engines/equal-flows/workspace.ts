// What a column solve needs besides its problem, kept between solves: equations and integrator for each shape of column, tables
// of rows for all. Kept with the system they were made for, and forgotten with it. A solve runs from beginning to end
// without handing control away, so that no two ever share a workspace.

import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { createIntegrator, type StiffIntegrator } from '../../../numerics/stiff/integrate.js';
import { BDF5 } from '../../../numerics/stiff/multistep-step.js';
import type { ColumnEquations } from './column-equations.js';
import type { ColumnSystem } from './column-system.js';
import { columnEquations } from './equations.js';
import { rowStore, type RowStore } from './rows.js';

/** Equations and integrator for columns of one shape. */
interface ShapeSpace {
  readonly equations: ColumnEquations;
  readonly integrator: StiffIntegrator;
}

interface SystemSpace {
  readonly shapes: Map<number, ShapeSpace>;
  readonly rows: RowStore;
}

const spaces = new WeakMap<EthanolWater, SystemSpace>();

/** The integrator for a column, set up for it at a tolerance, and the store for its rows. */
export function workspace(
  system: EthanolWater,
  column: ColumnSystem,
  tolerance: number,
): { readonly integrator: StiffIntegrator; readonly rows: RowStore } {
  let space = spaces.get(system);
  if (space === undefined) {
    space = { shapes: new Map(), rows: rowStore() };
    spaces.set(system, space);
  }
  const { shapes, rows } = space;
  const { plates, stride } = column.layout;
  const shape = 2 * plates + stride;
  const known = shapes.get(shape);
  if (known !== undefined) {
    known.equations.setUp(column, tolerance);
    return { integrator: known.integrator, rows };
  }
  const equations = columnEquations(column, tolerance);
  const integrator = createIntegrator(equations, BDF5);
  shapes.set(shape, { equations, integrator });
  return { integrator, rows };
}
