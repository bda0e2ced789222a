// The state of a column at the first vapour, and its flows at the beginning of a step of the run sheet.
//
// 'charge': kettle, plates and condenser all hold the charge. 'firstVapour': kettle and plates hold one liquid x and
// the condenser what its vapour condenses to, x_c = y_N(x); x follows from the ethanol charged,
//   x (S + N M) + M_c y_N(x) = n_ethanol.

import { readVapour } from '../../../equilibrium/slice-tables.js';
import { bracketedRoot } from '../../../numerics/root.js';
import type { Heat, Reflux, RunStep } from '../../problem.js';
import { type ColumnSystem, kettleAmount } from './column-system.js';

/** The state at the first vapour. */
export function startingState(column: ColumnSystem, start: 'charge' | 'firstVapour'): Float64Array {
  const { layout, flows } = column;
  const charged = column.chargeEthanol_mol / column.chargeTotal_mol;
  const liquid = start === 'charge' ? charged : liquidUnderFirstVapour(column, charged);
  const vapours = vapoursOver(column, liquid);
  const state = new Float64Array(layout.size);
  state[layout.kettleEthanol] = liquid * flows.kettleStart_mol;
  state[layout.condenser] = start === 'charge' ? charged : vapours.at(-1)!;
  for (let j = 0; j < layout.plates; j++) {
    state[layout.firstLiquid + j * layout.stride] = liquid;
    if (layout.firstVapour >= 0) state[layout.firstVapour + j * layout.stride] = vapours[j + 1]!;
  }
  return state;
}

/** Sets heat and flows of a step that begins when so much has been boiled up; the flows must be those of the step before. */
export function beginStep(column: ColumnSystem, step: RunStep, heat: Heat, boiledUp_mol: number): void {
  const { flows } = column;
  column.heat = step.heat ?? heat;
  flows.kettleStart_mol = kettleAmount(flows, boiledUp_mol);
  flows.since_mol = boiledUp_mol;
  Object.assign(flows, returnedIn(step.reflux));
}

/** What of each mole of vapour runs back in a step, r = R/(R + 1), and what is drawn. */
export function returnedIn(reflux: Reflux): { readonly returned: number; readonly drawn: number } {
  const ratio = reflux === 'total' ? Infinity : typeof reflux === 'number' ? reflux : 0;
  const returned = ratio === Infinity ? 1 : ratio / (ratio + 1);
  return { returned, drawn: 1 - returned };
}

function liquidUnderFirstVapour(column: ColumnSystem, charged: number): number {
  const { layout, flows, plateHoldUp_mol, condenserHoldUp_mol, chargeEthanol_mol } = column;
  const liquid_mol = flows.kettleStart_mol + layout.plates * plateHoldUp_mol;
  const excess = (x: number): number =>
    x * liquid_mol + condenserHoldUp_mol * vapoursOver(column, x).at(-1)! - chargeEthanol_mol;
  // At x = 0 nothing is held, at x = 1 everything is ethanol.
  return charged >= 1 ? 1 : bracketedRoot(excess, 0, 1);
}

/** Vapours of kettle and plates when all hold one liquid. */
function vapoursOver(column: ColumnSystem, liquid: number): number[] {
  const { kettleSlice, plateSlices, efficiency } = column;
  const vapours = [readVapour(kettleSlice.alpha, kettleSlice.intervals, liquid)];
  for (const { alpha, intervals } of plateSlices) {
    const below = vapours.at(-1)!;
    vapours.push(below + efficiency * (readVapour(alpha, intervals, liquid) - below));
  }
  return vapours;
}
