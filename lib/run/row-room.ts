// Whether the rows asked for can fit into a solution, as far as a run sheet's clocks tell before the run.

import type { Fault } from '../errors.js';
import { MOST_ROWS } from './check.js';
import type { Outputs, RunStep } from './problem.js';

/** A mole takes at least so much heat to boil away, J: ethanol's, at the highest pressure, less what heats of mixing may differ. */
const LEAST_HEAT = 36e3;
/** Rows kept free for the last step of the solver, which may add a hundred; besides, one for each step of the sheet. */
const SPARE_ROWS = 101;

/** More rows than this, and a run is left: what its last step and the steps of its sheet add still fits. */
export function roomForRows(sheet: readonly unknown[]): number {
  return MOST_ROWS - SPARE_ROWS - sheet.length;
}

/** Faults of outputs that give more rows than a solution has, by the clocks of the sheet alone; `boilUp_mol_s` is a step's vapour, at most. */
export function rowFaults<Step extends Pick<RunStep, 'until' | 'reflux'>>(
  outputs: Outputs,
  sheet: readonly Step[],
  charge_mol: number,
  boilUp_mol_s: (step: Step) => number,
): Fault[] {
  if (outputs.kind !== 'every') return [];
  const surely_s = sheet.reduce((sum, step) => sum + surelyLasts_s(step, charge_mol, boilUp_mol_s(step)), 0);
  const least_s = surely_s / roomForRows(sheet);
  if (outputs.interval_s >= least_s) return [];
  const expected = `${least_s.toPrecision(3)} s or more, for at most ${String(MOST_ROWS)} rows: the run sheet lasts ${(surely_s / 3600).toPrecision(3)} h`;
  return [{ argument: 'outputs.interval_s', value: outputs.interval_s, expected }];
}

/** The vapour that so much heat raises at the most, mol/s. */
export function mostVapour_mol_s(power_W: number): number {
  return power_W / LEAST_HEAT;
}

/** A step ends when its clock has run out, unless another rule may end it, or the kettle be dry, before. */
function surelyLasts_s(
  { until, reflux }: Pick<RunStep, 'until' | 'reflux'>,
  charge_mol: number,
  boilUp_mol_s: number,
): number {
  const clocks = until.map((rule) => (rule.kind === 'duration' ? rule.seconds : 0));
  const drawn = reflux === 'total' ? 0 : typeof reflux === 'number' ? 1 / (reflux + 1) : 1;
  return Math.min(...clocks, charge_mol / (drawn * boilUp_mol_s));
}
