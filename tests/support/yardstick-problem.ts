// The yardstick problem as plain data; the same as in tests/bench/yardstick.mjs, which runs on the built library.

import { type ColumnProblem, flatStill } from './column-problems.js';

/** 20 ideal plates at constant molar overflow: 5 241 mol at x = 0.0405, reflux 3, three hours. */
export function yardstickProblem(tolerance: number, outputEvery_s = 60): ColumnProblem {
  return {
    model: 'equalFlows',
    charge: { kind: 'amount', amount_mol: 5241, moleFraction: 0.0405 },
    still: flatStill({
      plates: 20,
      efficiency: 1,
      plateHoldUp_mol: 2,
      condenserHoldUp_mol: 1,
      headPressure_Pa: 101325,
      plateDrop_Pa: 0,
    }),
    activity: 'redlich-kister',
    heat: { kind: 'boilUp', rate_mol_s: 0.13 },
    sheet: [{ reflux: 3, until: [{ kind: 'duration', seconds: 10800 }] }],
    outputs: { kind: 'every', interval_s: outputEvery_s },
    start: 'charge',
    tolerance,
  };
}
