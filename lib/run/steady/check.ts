// Checks that the questions of this folder share; each returns the faults it finds.

import type { InputFault } from '../../errors.js';
import { rangeFault } from '../check.js';

const MOST_PLATES = 1000;

/** Faults of a number of plates and their efficiency. */
export function plateFaults({ plates, efficiency }: { plates: number; efficiency: number }): InputFault[] {
  const whole = Number.isInteger(plates) && plates >= 0 && plates <= MOST_PLATES;
  return [
    ...(whole
      ? []
      : [{ argument: 'plates', value: plates, expected: `a whole number of plates, 0 to ${MOST_PLATES}` }]),
    ...rangeFault('efficiency', efficiency, 1e-6, 1, 'an efficiency above 0, up to 1 (1 is an ideal plate)'),
  ];
}

/** A fault of a reflux ratio. */
export function refluxFault(reflux: number | 'total'): InputFault[] {
  return reflux === 'total' ? [] : rangeFault('reflux', reflux, 0, 1e9, "a reflux ratio from 0 up, or 'total'");
}
