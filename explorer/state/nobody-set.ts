// 'What nobody set' of a still: each value the library completes, with its reason; and what was set that it would complete.

import { completions } from '#lib/index.js';
import { inputAt, inputs, type Input } from './inputs.js';
import { remembered } from './memo.js';
import { saidAt, stillAsRun, withoutValue } from './paths.js';
import type { Scenario } from './scenario.js';

export interface NobodySet {
  /** Path in what a page runs on: 'still.column.efficiency'. */
  readonly path: string;
  readonly value: unknown;
  readonly reason: string;
  /** Undefined where it is no number that blanks set. */
  readonly input: Input | undefined;
}

/** From the kettle up. */
export const nobodySet = remembered((still: Scenario['still']): readonly NobodySet[] =>
  completions(stillAsRun(still)).map(({ path, value, reason }) => {
    const whole = `still.${path}`;
    const held = typeof value === 'object' && value !== null && 'volume_m3' in value;
    const at = held ? `${whole}.volume_m3` : whole;
    return { path: at, value: held ? value.volume_m3 : value, reason, input: inputAt(at) };
  }),
);

/** Numbers of the still that were set and may be left to the library: all but what makes it this still. */
export function setByHand(scenario: Scenario): readonly Input[] {
  return inputs.filter(({ key }) => {
    if (!key.startsWith('still.') || needed.includes(key) || typeof saidAt(scenario, key) !== 'number') return false;
    // A part that stands there for this number alone goes with it.
    return withoutValue(scenario, key) !== scenario;
  });
}

const needed: readonly string[] = [
  'still.kettle.volume_m3',
  'still.column.count',
  'still.column.height_m',
  'still.refluxCondenser.coolant.flow_kg_s',
];
