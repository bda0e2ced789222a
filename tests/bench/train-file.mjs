// A train as a file of doubles for the peers (peers/train.h reads it): holders, drum, run sheet, start and tables, as the library itself has them.

import { Buffer } from 'node:buffer';
import { completeProblem } from '../../dist/lib/run/complete.js';
import { controlsOf } from '../../dist/lib/run/engines/energy/controls.js';
import { LAMBDA0, trainOf } from '../../dist/lib/run/engines/energy/holders.js';
import { ROUNDING } from '../../dist/lib/run/engines/energy/rounding.js';
import { startingState } from '../../dist/lib/run/engines/energy/start.js';
import { trainTables } from '../../dist/lib/run/engines/energy/tables.js';

const NEARLY_DRY = 1e-3; // lib/run/engines/energy/streams.ts

/** The bytes of a train of plates under a total condenser. */
export function trainFile(asked, system) {
  const problem = completeProblem(asked);
  const train = trainOf(problem);
  const { holders, drum, nominalVapour_mol_s: vapour } = train;
  const pressures = [...holders.map((holder) => holder.pressure_Pa), drum.pressure_Pa];
  const tables = trainTables(system.enthalpy(problem.activity), pressures, false);
  const state = startingState(problem, train, tables);
  const d = 4 * holders.length;
  const numbers = [holders.length, tables.intervals, problem.heat.power_W];
  numbers.push(drum.brim_m3, 1 / drum.weirLag_s, ROUNDING * vapour * drum.weirLag_s, drum.scale_mol, drum.subcooling_K);
  numbers.push(problem.sheet.length);
  for (const step of problem.sheet) {
    numbers.push(step.until[0].seconds, controlsOf(step, problem).returned);
  }
  for (const holder of holders) {
    numbers.push(holder.efficiency, holder.loss_W_K / LAMBDA0, holder.reference_K, holder.metal_J_K / LAMBDA0);
    numbers.push(holder.brim_m3, 1 / holder.boilLag_s, ROUNDING * vapour * holder.boilLag_s);
    numbers.push(1 / holder.weirLag_s, ROUNDING * vapour * holder.weirLag_s);
    numbers.push(NEARLY_DRY * holder.scale_mol, holder.scale_mol);
  }
  numbers.push(...state.slice(0, d), state[d + 2], state[d + 3]);
  const parts = [Float64Array.from(numbers)];
  pressures.forEach((_pressure, j) => parts.push(tables.boiling[j], tables.cold[j], tables.vapour[j]));
  return Buffer.concat(parts.map((part) => Buffer.from(part.buffer, part.byteOffset, part.byteLength)));
}
