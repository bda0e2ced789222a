// Refuses a column problem that cannot be run, naming every bad argument at once.

import { InputError, type InputFault } from '../../errors.js';
import { chargeAmounts } from '../charge.js';
import type { ColumnProblem, ColumnStill } from '../problem.js';
import { stopRuleFaults } from '../stop-rules.js';
import { heatFaults, rangeFault } from '../check.js';

/** Most plates a column may have. Source: this project's choice, docs/theory/column.md. */
export const MOST_PLATES = 60;
const SMALLEST_HOLD_UP = 1e-6;

/** Throws an InputError with every fault of the problem; says nothing when it can be run. */
export function checkColumnProblem(problem: ColumnProblem): void {
  const { column, heat, sheet, outputs, tolerance } = problem;
  const faults: InputFault[] = [
    ...stillFaults(column),
    ...heatFaults(heat),
    ...(outputs.kind === 'every'
      ? rangeFault('outputs.interval_s', outputs.interval_s, 1e-3, 1e9, 'an interval from 0.001 s up')
      : rangeFault('outputs.points', outputs.points, 1, 100, 'a count from 1 to 100')),
    ...rangeFault('tolerance', tolerance ?? 1e-6, 1e-12, 1e-2, 'a tolerance from 1e-12 to 0.01'),
  ];
  if (faults.length > 0) throw new InputError(...faults);
  const amounts = chargeAmounts(problem.charge);
  const hottest_Pa = column.headPressure_Pa + column.plates * column.plateDrop_Pa;
  faults.push(...holdUpFaults(column, amounts.ethanol_mol + amounts.water_mol));
  if (sheet.length === 0) faults.push({ argument: 'sheet', value: sheet, expected: 'at least one step' });
  sheet.forEach((step, i) => {
    const where = `sheet[${i}]`;
    if (step.reflux !== 'total') {
      faults.push(...rangeFault(`${where}.reflux`, step.reflux, 0, 1e6, "a reflux ratio from 0 up, or 'total'"));
    }
    if (step.until.length === 0) {
      faults.push({ argument: `${where}.until`, value: step.until, expected: 'at least one rule that ends the step' });
    }
    step.until.forEach((rule, k) => faults.push(...stopRuleFaults(`${where}.until[${k}]`, rule, amounts, hottest_Pa)));
    if (
      step.reflux === 'total' &&
      step.until.length > 0 &&
      step.until.every((rule) => rule.kind === 'collectedVolume')
    ) {
      faults.push({
        argument: `${where}.until`,
        value: step.until,
        expected: 'a rule that can be met at total reflux, where nothing is collected',
      });
    }
  });
  if (faults.length > 0) throw new InputError(...faults);
}

function stillFaults(column: ColumnStill): InputFault[] {
  return [
    ...(Number.isInteger(column.plates) && column.plates >= 0 && column.plates <= MOST_PLATES
      ? []
      : [{ argument: 'column.plates', value: column.plates, expected: `a whole number from 0 to ${MOST_PLATES}` }]),
    ...rangeFault(
      'column.efficiency',
      column.efficiency,
      0.01,
      1,
      'an efficiency from 0.01 to 1 (1 is an ideal plate)',
    ),
    ...rangeFault(
      'column.plateHoldUp_mol',
      column.plateHoldUp_mol,
      column.plates > 0 ? SMALLEST_HOLD_UP : 0,
      1e9,
      `a hold-up of ${SMALLEST_HOLD_UP} mol or more (that little is as good as none)`,
    ),
    ...rangeFault(
      'column.condenserHoldUp_mol',
      column.condenserHoldUp_mol,
      SMALLEST_HOLD_UP,
      1e9,
      `a hold-up of ${SMALLEST_HOLD_UP} mol or more (that little is as good as none)`,
    ),
    ...rangeFault('column.headPressure_Pa', column.headPressure_Pa, 1, 1e7, 'a pressure above 0 Pa'),
    ...rangeFault('column.plateDrop_Pa', column.plateDrop_Pa, 0, 1e5, 'a pressure drop of 0 Pa or more'),
  ];
}

/** Plates and condenser must leave most of the charge in the kettle. */
function holdUpFaults(column: ColumnStill, total_mol: number): InputFault[] {
  const held = column.plates * column.plateHoldUp_mol + column.condenserHoldUp_mol;
  if (held < 0.5 * total_mol) return [];
  return [
    {
      argument: 'column.plateHoldUp_mol',
      value: column.plateHoldUp_mol,
      expected: `plates and condenser that hold less than half the charge (${(0.5 * total_mol).toPrecision(3)} mol together, not ${held.toPrecision(3)})`,
    },
  ];
}
