// How a run of 'The ceiling' is called, and what is measured on it.

import { numberWithUnit } from '../../components/number/number-spec.js';
import { inputs, type Path } from '../../state/inputs.js';
import type { NumberSpecs } from '../../state/number-specs.js';
import { numberAt } from '../../state/paths.js';
import type { RunResults } from '../../state/run-results.js';
import type { Scenario } from '../../state/scenario.js';

/** Strength of the measure line, % vol / 100. */
export const measuredStrength = 0.9;

const plates = 'still.column.count';

/** What makes a run, the more telling first. */
const keys: readonly Path[] = [
  plates,
  'sheet[2].reflux',
  'still.column.efficiency',
  'charge.strength',
  'charge.volume_m3',
  'still.kettle.volume_m3',
  'still.kettle.power_W',
  'still.air.pressure_Pa',
];

/** All numbers, the telling ones first. */
const all: readonly Path[] = [...keys, ...inputs.map(({ key }) => key).filter((key) => !keys.includes(key))];

function differing(one: Scenario, now: Scenario): readonly Path[] {
  return all.filter((key) => {
    const value = numberAt(one, key);
    return value !== undefined && value !== numberAt(now, key);
  });
}

/** All in which an earlier run differed, as a list: '8 plates', 'reflux ratio 3 : 1'. */
export function differences(one: Scenario, now: Scenario, specs: NumberSpecs): readonly string[] {
  return differing(one, now).map((key) => {
    const value = numberWithUnit(specs(key), numberAt(one, key)!);
    return key === plates ? value : `${specs(key).label} ${value}`;
  });
}

/** A run is called after its plates, or after the first thing in which it differs. */
export function difference(one: Scenario, now: Scenario, hand: 'ink' | 'pencil', specs: NumberSpecs): string {
  const key = hand === 'ink' ? plates : (differing(one, now)[0] ?? plates);
  const value = numberAt(one, key);
  return value === undefined ? 'still' : numberWithUnit(specs(key), value);
}

/** Above the threshold for less than can be read off. */
export function touchesOnly({ shareAbove }: RunResults): boolean {
  return shareAbove !== null && shareAbove < 0.005;
}
