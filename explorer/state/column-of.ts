// A column in the three numbers that sentences and tables name it by.

import { numberAt } from './paths.js';
import { ratioOf } from './problems.js';
import type { Scenario } from './scenario.js';

/** A still of the reader's own, kept beside the others: the numbers that make it. */
export interface OwnStill {
  readonly plates: number;
  readonly efficiency: number;
  readonly reflux: number;
}

/** The column of the page in the same numbers. */
export function columnOf(scenario: Scenario): OwnStill {
  return {
    plates: numberAt(scenario, 'still.column.count') ?? 0,
    efficiency: numberAt(scenario, 'still.column.efficiency') ?? 1,
    reflux: ratioOf(scenario),
  };
}
