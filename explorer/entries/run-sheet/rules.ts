// How the ends of a step are said and set: for each kind of rule the words in the sentence, its number, and what it starts with.

import { toSI, type StopRule } from '#lib/index.js';
import type { NumberSpec } from '../../components/number/number-spec.js';
import { specOf } from '../../state/number-specs.js';
import type { Measured } from '../../state/inputs.js';
import type { UnitSystem } from '../../text/unit-systems.js';

export type RuleKind = StopRule['kind'];

interface RuleWords {
  /** As it stands in the list of choices, after 'until'. */
  readonly choice: string;
  readonly start: StopRule;
  /** Its number, SI; null for none. */
  readonly value: (rule: StopRule) => number | null;
  readonly withValue: (value: number) => StopRule;
  readonly number: Omit<Measured, 'key'> | null;
}

const grain = (
  metric: readonly [number, number, number, number],
  us: readonly [number, number, number, number] = metric,
  imperial = metric,
): Measured['grain'] => {
  const of = ([from, to, step, decimals]: typeof metric): Measured['grain']['us'] => ({ from, to, step, decimals });
  return { metric: of(metric), us: of(us), imperial: of(imperial) };
};
const limits = {
  low: 0,
  high: 1e9,
  tooHigh: 'is more than a run sheet takes',
  tooLow: 'is less than a run sheet takes',
};
const celsius = (degrees: number): number => toSI(degrees, '°C');
const temperature = {
  ...limits,
  quantity: 'temperature',
  grain: grain([40, 110, 0.5, 1], [104, 230, 1, 1]),
} as const;

/** In the order of the list of choices. */
export const rules: Readonly<Record<RuleKind, RuleWords>> = {
  firstVapour: {
    choice: 'the first vapour',
    start: { kind: 'firstVapour' },
    value: () => null,
    withValue: () => ({ kind: 'firstVapour' }),
    number: null,
  },
  duration: {
    choice: 'so long has passed:',
    start: { kind: 'duration', seconds: 1200 },
    value: (rule) => (rule.kind === 'duration' ? rule.seconds : null),
    withValue: (seconds) => ({ kind: 'duration', seconds }),
    number: { ...limits, label: 'minutes it lasts', quantity: 'minutes', grain: grain([1, 1440, 5, 1]) },
  },
  collectedVolume: {
    choice: 'so much is collected in all:',
    start: { kind: 'collectedVolume', volume_m3: 0.002 },
    value: (rule) => (rule.kind === 'collectedVolume' ? rule.volume_m3 : null),
    withValue: (volume_m3) => ({ kind: 'collectedVolume', volume_m3 }),
    number: {
      ...limits,
      label: 'volume collected in all',
      quantity: 'volume',
      grain: grain([0.1, 900, 0.5, 2], [0.02, 240, 0.1, 2], [0.02, 200, 0.1, 2]),
    },
  },
  spoutStrengthBelow: {
    choice: 'the spout falls to',
    start: { kind: 'spoutStrengthBelow', strength: 0.85 },
    value: (rule) => (rule.kind === 'spoutStrengthBelow' ? rule.strength : null),
    withValue: (strength) => ({ kind: 'spoutStrengthBelow', strength }),
    number: {
      ...limits,
      label: 'strength the spout falls to',
      quantity: 'strength',
      grain: grain([0.5, 97, 1, 1], [1, 194, 2, 1], [0.5, 97, 1, 1]),
    },
  },
  headTemperatureAbove: {
    choice: 'the head rises to',
    start: { kind: 'headTemperatureAbove', temperature_K: celsius(85) },
    value: (rule) => (rule.kind === 'headTemperatureAbove' ? rule.temperature_K : null),
    withValue: (temperature_K) => ({ kind: 'headTemperatureAbove', temperature_K }),
    number: { ...temperature, label: 'temperature the head rises to' },
  },
  kettleTemperatureAbove: {
    choice: 'the kettle rises to',
    start: { kind: 'kettleTemperatureAbove', temperature_K: celsius(98) },
    value: (rule) => (rule.kind === 'kettleTemperatureAbove' ? rule.temperature_K : null),
    withValue: (temperature_K) => ({ kind: 'kettleTemperatureAbove', temperature_K }),
    number: { ...temperature, label: 'temperature the kettle rises to' },
  },
  kettleStrengthBelow: {
    choice: 'the kettle falls to',
    start: { kind: 'kettleStrengthBelow', strength: 0.02 },
    value: (rule) => (rule.kind === 'kettleStrengthBelow' ? rule.strength : null),
    withValue: (strength) => ({ kind: 'kettleStrengthBelow', strength }),
    number: {
      ...limits,
      label: 'strength the kettle falls to',
      quantity: 'strength',
      grain: grain([0.1, 95, 0.5, 1], [0.2, 190, 1, 1], [0.1, 95, 0.5, 1]),
    },
  },
  alcoholLeftBelow: {
    choice: 'so much of the alcohol is left:',
    start: { kind: 'alcoholLeftBelow', share: 0.1 },
    value: (rule) => (rule.kind === 'alcoholLeftBelow' ? rule.share : null),
    withValue: (share) => ({ kind: 'alcoholLeftBelow', share }),
    number: { ...limits, label: 'share of the alcohol left', quantity: 'percent', grain: grain([0.1, 99, 1, 1]) },
  },
  refluxAbove: {
    choice: 'holding asks for a reflux of',
    start: { kind: 'refluxAbove', ratio: 10 },
    value: (rule) => (rule.kind === 'refluxAbove' ? rule.ratio : null),
    withValue: (ratio) => ({ kind: 'refluxAbove', ratio }),
    number: {
      ...limits,
      label: 'reflux ratio that ends the hold',
      quantity: 'ratio',
      grain: grain([0.5, 100, 0.5, 1]),
    },
  },
};

export const ruleKinds = Object.keys(rules) as RuleKind[];

/** The blank of a number of the sheet, under a key of its own. */
export function sheetSpec(key: string, number: Omit<Measured, 'key'>, units: UnitSystem): NumberSpec {
  return specOf({ ...number, key }, units);
}

/** A number of one step, called by it: no two numbers of a sheet have one name. */
export function ofStep(number: Omit<Measured, 'key'>, index: number): Omit<Measured, 'key'> {
  return { ...number, label: `step ${String(index + 1)}: ${number.label}` };
}

/** Numbers of a step besides its ends. */
export const stepNumbers = {
  ratio: { ...limits, label: 'reflux ratio', quantity: 'ratio', grain: grain([0, 60, 0.5, 2]) },
  hold: {
    ...limits,
    label: 'strength to hold at the spout',
    quantity: 'strength',
    grain: grain([10, 97, 0.5, 1], [20, 194, 1, 1], [10, 97, 0.5, 1]),
  },
  power: {
    ...limits,
    label: 'heat',
    quantity: 'power',
    grain: grain([0.2, 60, 0.25, 2], [700, 205_000, 500, 0]),
  },
  jar: {
    ...limits,
    label: 'size of a jar',
    quantity: 'volume',
    grain: grain([0.05, 60, 0.25, 2], [0.01, 16, 0.05, 2], [0.01, 14, 0.05, 2]),
  },
} as const satisfies Readonly<Record<string, Omit<Measured, 'key'>>>;
