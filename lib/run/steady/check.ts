// Checks that the questions of this folder share; each returns the faults it finds.

import { fieldFaults, isRecord } from '../../arguments.js';
import { sliceFault } from '../../equilibrium/equilibrium-curve.js';
import type { Fault } from '../../errors.js';
import { rangeFault } from '../check.js';

const MOST_PLATES = 1000;

/** Faults of a question's shape: a record with a slice and no unknown fields. */
export function questionFaults(where: string, question: unknown, fields: readonly string[]): Fault[] {
  const faults = fieldFaults(where, question, fields);
  if (faults.length > 0 || !isRecord(question)) return faults;
  return sliceFault(`${where}.slice`, question['slice']);
}

/** Faults of a number of plates and their efficiency. */
export function plateFaults({ plates, efficiency }: { plates: number; efficiency: number }): Fault[] {
  const whole = Number.isInteger(plates) && plates >= 0 && plates <= MOST_PLATES;
  return [
    ...(whole
      ? []
      : [{ argument: 'plates', value: plates, expected: `a whole number of plates, 0 to ${MOST_PLATES}` }]),
    ...rangeFault('efficiency', efficiency, 1e-6, 1, 'an efficiency above 0, up to 1 (1 is an ideal plate)'),
  ];
}

/** A fault of a reflux ratio. */
export function refluxFault(reflux: number | 'total'): Fault[] {
  return reflux === 'total' ? [] : rangeFault('reflux', reflux, 0, 1e9, "a reflux ratio from 0 up, or 'total'");
}
