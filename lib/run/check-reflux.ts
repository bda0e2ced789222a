// Which ways of sending liquid back go with which reflux condenser.

import type { Fault } from '../errors.js';
import type { Still } from '../still/still.js';
import { rangeFault } from './check.js';
import type { Hold, Reflux } from './problem.js';

/** Faults of a step's reflux on a still. */
export function refluxFaults(argument: string, reflux: Reflux | null, still: Still): Fault[] {
  const { refluxCondenser: condenser } = still;
  const wrong = (expected: string): Fault[] => [{ argument, value: reflux, expected }];
  if (reflux === 'none') return [];
  if (condenser.kind === 'none') return wrong("'none': this still has no reflux condenser");
  if (reflux === 'total') return [];
  if (condenser.kind === 'total') {
    if (typeof reflux === 'number') return rangeFault(argument, reflux, 0, 1e6, "a reflux ratio from 0 up, or 'total'");
    if (isHold(reflux)) return holdFaults(argument, reflux);
    return wrong("a reflux ratio, 'total', 'none' or a strength to hold: this still has a total condenser");
  }
  const { coolant } = condenser;
  if (reflux === 'asSet') return [];
  if (isHold(reflux)) {
    if (coolant.kind === 'duty') return holdFaults(argument, reflux);
    return wrong('a flow of water: a hold needs a partial condenser of set duty, or a total one');
  }
  if (typeof reflux === 'object' && reflux !== null) {
    if (reflux.kind === 'duty' && coolant.kind === 'duty') {
      return rangeFault(`${argument}.power_W`, reflux.power_W, 0, 1e8, 'a duty of 0 W or more');
    }
    if (reflux.kind === 'water' && coolant.kind === 'water') {
      return rangeFault(`${argument}.flow_kg_s`, reflux.flow_kg_s, 0, 1e4, 'a flow of 0 kg/s or more');
    }
  }
  const own = coolant.kind === 'duty' ? 'a duty' : 'a flow of water';
  return wrong(`${own}, 'asSet', 'total' or 'none': this still has a partial condenser driven by ${own}`);
}

function isHold(reflux: Reflux | null): reflux is Hold {
  return typeof reflux === 'object' && reflux !== null && reflux.kind === 'hold';
}

function holdFaults(argument: string, { strength, leastShare, mostShare }: Hold): Fault[] {
  return [
    ...rangeFault(`${argument}.strength`, strength, 0.01, 0.999, 'a strength from 0.01 to 0.999 (0.94 is 94 % vol)'),
    ...rangeFault(`${argument}.leastShare`, leastShare, 0, 1, 'a share from 0 to 1'),
    ...rangeFault(
      `${argument}.mostShare`,
      mostShare,
      typeof leastShare === 'number' ? Math.max(0, leastShare) : 0,
      1,
      'a share from leastShare to 1',
    ),
  ];
}
