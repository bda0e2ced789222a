// How a run of 'The ceiling' is called, and what is measured on it.

import { numberWithUnit } from '../components/number/number-spec.js';
import type { NumberSpecs } from '../state/number-specs.js';
import type { RunResults } from '../state/run-results.js';
import type { Scenario } from '../state/scenario.js';

/** Strength of the measure line, % vol / 100. */
export const measuredStrength = 0.9;

/** What makes a run, the more telling first. */
const keys = ['plates', 'reflux', 'efficiency', 'chargeStrength', 'chargeVolume', 'heat', 'pressure'] as const;

/** All in which an earlier run differed, as a list: '8 plates', 'reflux ratio 3 : 1'. */
export function differences(one: Scenario, now: Scenario, specs: NumberSpecs): readonly string[] {
  return keys
    .filter((key) => one[key] !== now[key])
    .map((key) => {
      const value = numberWithUnit(specs[key], one[key]);
      return key === 'plates' ? value : `${specs[key].label} ${value}`;
    });
}

/** A run is called after its plates, or after the first thing in which it differs. */
export function difference(one: Scenario, now: Scenario, hand: 'ink' | 'pencil', specs: NumberSpecs): string {
  const key = hand === 'ink' ? 'plates' : (keys.find((name) => one[name] !== now[name]) ?? 'plates');
  return numberWithUnit(specs[key], one[key]);
}

/** Above the threshold for less than can be read off. */
export function touchesOnly({ shareAbove }: RunResults): boolean {
  return shareAbove !== null && shareAbove < 0.005;
}
