// A step of a run sheet in a few words, for brackets, tables and sentences.

import type { LimitKind, Reflux, StopRule, RunStep } from '#lib/index.js';
import { trimmed } from '../../text/format.js';
import type { UnitSystem } from '../../text/unit-systems.js';
import { roundStrength } from '../words.js';

/** 'all back', '3 : 1', 'held at 94 % vol'. */
export function refluxSaid(reflux: Reflux, units: UnitSystem): string {
  if (typeof reflux === 'number') return `${trimmed(reflux, 2)}\u00a0:\u00a01`;
  if (reflux === 'total') return 'all back';
  if (reflux === 'none') return 'nothing back';
  if (reflux === 'asSet') return 'as set';
  if (reflux.kind === 'hold') return `held at ${roundStrength(reflux.strength, units)}`;
  return reflux.kind === 'duty' ? units.power.withUnit(reflux.power_W) : 'water as set';
}

/** What a step is called: heating up is called that. */
export function stepSaid({ reflux, until }: RunStep, units: UnitSystem): string {
  return until[0]?.kind === 'firstVapour' ? 'heating up' : refluxSaid(reflux, units);
}

/** 'until the spout falls to 85 % vol'. */
export function endSaid(rule: StopRule, units: UnitSystem): string {
  switch (rule.kind) {
    case 'firstVapour':
      return 'the first vapour';
    case 'duration':
      return `${trimmed(rule.seconds / 60, 1)}\u00a0min have passed`;
    case 'collectedVolume':
      return `${units.volume.withUnit(rule.volume_m3)} are collected`;
    case 'spoutStrengthBelow':
      return `the spout falls to ${roundStrength(rule.strength, units)}`;
    case 'kettleStrengthBelow':
      return `the kettle falls to ${roundStrength(rule.strength, units)}`;
    case 'headTemperatureAbove':
      return `the head rises to ${units.temperature.withUnit(rule.temperature_K)}`;
    case 'kettleTemperatureAbove':
      return `the kettle rises to ${units.temperature.withUnit(rule.temperature_K)}`;
    case 'alcoholLeftBelow':
      return `${trimmed(100 * rule.share, 1)}\u00a0% of the alcohol is left`;
    case 'refluxAbove':
      return `holding asks for ${trimmed(rule.ratio, 1)}\u00a0:\u00a01`;
  }
}

/** A limit in a word or two, for a tick on a curve. */
export const limitName: Readonly<Record<LimitKind, string>> = {
  flooding: 'plates flood',
  weeping: 'plates weep',
  heaterShort: 'heater too small',
  kettleLow: 'kettle too low',
  doublerLow: 'doubler too low',
  doublerOver: 'doubler full',
  condenserShort: 'condenser too small',
  holdLost: 'strength lost',
  refluxShort: 'too little reflux',
};
