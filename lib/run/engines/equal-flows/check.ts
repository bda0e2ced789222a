// Refuses a column problem that cannot be run, naming every bad argument at once.

import { mostVapour_mol_s, rowFaults } from '../../row-room.js';
import type { EquilibriumCurve } from '../../../equilibrium/equilibrium-curve.js';
import type { EthanolWater } from '../../../equilibrium/ethanol-water.js';
import { InputError, type InputFault } from '../../../errors.js';
import type { Amounts } from '../../../mixture/volume.js';
import { chargeAmounts, chargeFaults, DRY_SHARE } from '../../charge.js';
import { heatFaults, rangeFault, wholeFault } from '../../check.js';
import type { ColumnProblem, ColumnStill, Outputs, StopRule } from '../../problem.js';
import { columnShapeFaults } from '../../shape.js';
import { stopRuleFaults } from '../../stop-rules.js';

/** Most plates a column may have. Source: this project's choice, docs/theory/column.md. */
export const MOST_PLATES = 60;
const SMALLEST_HOLD_UP = 1e-6;
/** Hold-ups below this share of the charge turn over faster than the solver's arithmetic can follow. */
const SMALLEST_SHARE = 1e-10;
/** Rules that are met only while something leaves the still. */
const DRAWING_RULES: readonly StopRule['kind'][] = ['collectedVolume', 'alcoholLeftBelow'];

/** Throws an InputError with every fault of the problem; says nothing when it can be run. */
export function checkColumnProblem(problem: ColumnProblem, system: EthanolWater): void {
  const faults = columnProblemFaults(problem, system);
  if (faults.length > 0) throw new InputError(...faults);
}

/** Every fault of the problem: of its shape, else of its numbers, else of its rules. */
export function columnProblemFaults(problem: ColumnProblem, system: EthanolWater): InputFault[] {
  const shape = columnShapeFaults(problem);
  if (shape.length > 0) return shape;
  const numbers = [
    ...chargeFaults(problem.charge),
    ...stillFaults(problem.column, system.curve(problem.activity).range_Pa),
    ...heatFaults(problem.heat),
    ...outputFaults(problem.outputs),
    ...rangeFault('tolerance', problem.tolerance ?? 1e-6, 1e-12, 1e-2, 'a tolerance from 1e-12 to 0.01'),
  ];
  if (numbers.length > 0) return numbers;
  const { ethanol_mol, water_mol } = chargeAmounts(problem.charge);
  const holdUps = holdUpFaults(problem.column, ethanol_mol + water_mol);
  const sheet = holdUps.length > 0 ? holdUps : sheetFaults(problem, { ethanol_mol, water_mol });
  if (sheet.length > 0) return sheet;
  const { heat } = problem;
  const boilUp_mol_s = heat.kind === 'power' ? mostVapour_mol_s(heat.power_W) : heat.rate_mol_s;
  return rowFaults(problem.outputs, problem.sheet, ethanol_mol + water_mol, () => boilUp_mol_s);
}

function outputFaults(outputs: Outputs): InputFault[] {
  if (outputs.kind === 'every') {
    return rangeFault('outputs.interval_s', outputs.interval_s, 1e-3, 1e9, 'an interval from 0.001 s up');
  }
  return wholeFault('outputs.points', outputs.points, 1, 100);
}

function sheetFaults({ sheet, column }: ColumnProblem, charge: Amounts): InputFault[] {
  if (sheet.length === 0) return [{ argument: 'sheet', value: sheet, expected: 'at least one step' }];
  const kettle_Pa = column.headPressure_Pa + column.plates * column.plateDrop_Pa;
  const mostCollected = collectable(charge, column);
  return sheet.flatMap((step, i) => {
    const where = `sheet[${String(i)}]`;
    const { reflux, until } = step;
    const faults =
      reflux === 'total' ? [] : rangeFault(`${where}.reflux`, reflux, 0, 1e6, "a reflux ratio from 0 up, or 'total'");
    if (until.length === 0) {
      faults.push({ argument: `${where}.until`, value: until, expected: 'at least one rule that ends the step' });
    } else if (reflux === 'total' && until.every((rule) => DRAWING_RULES.includes(rule.kind))) {
      const expected = 'a rule that can be met at total reflux, where nothing leaves the still';
      faults.push({ argument: `${where}.until`, value: until, expected });
    }
    const rules = until.flatMap((rule, k) => {
      const pressure_Pa = rule.kind === 'headTemperatureAbove' ? column.headPressure_Pa : kettle_Pa;
      return stopRuleFaults(`${where}.until[${String(k)}]`, rule, mostCollected, pressure_Pa);
    });
    return [...faults, ...rules];
  });
}

/** What can come over before the kettle is dry: all the ethanol, and water for the rest. */
function collectable({ ethanol_mol, water_mol }: Amounts, column: ColumnStill): Amounts {
  const total_mol = ethanol_mol + water_mol;
  const most_mol = (1 - DRY_SHARE) * total_mol - held(column);
  const ethanol = Math.min(ethanol_mol, most_mol);
  return { ethanol_mol: ethanol, water_mol: most_mol - ethanol };
}

function held(column: ColumnStill): number {
  return column.plates * column.plateHoldUp_mol + column.condenserHoldUp_mol;
}

function stillFaults(column: ColumnStill, [lowest_Pa, highest_Pa]: EquilibriumCurve['range_Pa']): InputFault[] {
  const { plates, headPressure_Pa, plateDrop_Pa } = column;
  const least = `a hold-up of ${String(SMALLEST_HOLD_UP)} mol or more (that little is as good as none)`;
  const pressures = `a pressure from ${String(lowest_Pa)} to ${String(highest_Pa)} Pa`;
  const faults = [
    ...wholeFault('column.plates', plates, 0, MOST_PLATES),
    ...rangeFault(
      'column.efficiency',
      column.efficiency,
      0.01,
      1,
      'an efficiency from 0.01 to 1 (1 is an ideal plate)',
    ),
    ...rangeFault('column.plateHoldUp_mol', column.plateHoldUp_mol, plates > 0 ? SMALLEST_HOLD_UP : 0, 1e9, least),
    ...rangeFault('column.condenserHoldUp_mol', column.condenserHoldUp_mol, SMALLEST_HOLD_UP, 1e9, least),
    ...rangeFault('column.headPressure_Pa', headPressure_Pa, lowest_Pa, highest_Pa, pressures),
    ...rangeFault('column.plateDrop_Pa', plateDrop_Pa, 0, 1e5, 'a pressure drop of 0 Pa or more'),
  ];
  if (faults.length === 0 && headPressure_Pa + plates * plateDrop_Pa > highest_Pa) {
    const expected = `a drop that leaves the kettle at ${String(highest_Pa)} Pa or less`;
    faults.push({ argument: 'column.plateDrop_Pa', value: plateDrop_Pa, expected });
  }
  return faults;
}

/** Plates and condenser must leave most of the charge in the kettle, and not be nothing beside it. */
function holdUpFaults(column: ColumnStill, total_mol: number): InputFault[] {
  const together = held(column);
  if (together >= 0.5 * total_mol) {
    const onPlates = column.plates * column.plateHoldUp_mol > column.condenserHoldUp_mol;
    const argument = onPlates ? 'column.plateHoldUp_mol' : 'column.condenserHoldUp_mol';
    const value = onPlates ? column.plateHoldUp_mol : column.condenserHoldUp_mol;
    const expected = `plates and condenser that hold less than half the charge (${(0.5 * total_mol).toPrecision(3)} mol together, not ${together.toPrecision(3)})`;
    return [{ argument, value, expected }];
  }
  const least = SMALLEST_SHARE * total_mol;
  const expected = `a hold-up of at least ${least.toPrecision(3)} mol for this charge (that little is as good as none)`;
  return [
    ...(column.plates > 0 ? rangeFault('column.plateHoldUp_mol', column.plateHoldUp_mol, least, 1e9, expected) : []),
    ...rangeFault('column.condenserHoldUp_mol', column.condenserHoldUp_mol, least, 1e9, expected),
  ];
}
