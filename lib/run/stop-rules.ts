// The stop rules as one family: for each kind a margin that falls through zero when the rule is met, a check that
// refuses rules beyond any run (more than the charge holds, hotter than boiling water), and a sentence.

import { ZERO_CELSIUS, STANDARD_ATMOSPHERE } from '../constants.js';
import type { Fault } from '../errors.js';
import { moleFractionFromStrength } from '../mixture/strength.js';
import { type Amounts, volumeAt20C } from '../mixture/volume.js';
import { water } from '../substances/water.js';
import type { Kelvin, Mole, MoleFraction, Pascal, Second } from '../units/quantities.js';
import { rangeFault } from './check.js';
import type { StopRule } from './problem.js';

/** What a stop rule may ask of a run at one moment. */
export interface RunState {
  readonly time_s: Second;
  /** Time since the step of the run sheet began. */
  readonly stepTime_s: Second;
  readonly kettleMoleFraction: MoleFraction;
  readonly kettleTemperature_K: Kelvin;
  readonly spoutMoleFraction: MoleFraction;
  readonly headTemperature_K: Kelvin;
  readonly collectedEthanol_mol: Mole;
  readonly collectedWater_mol: Mole;
  /** Ethanol in kettle, plates and condenser. */
  readonly ethanolLeft_mol: Mole;
  readonly chargeEthanol_mol: Mole;
  /** Vapour that reaches the last condenser, as a share of what the heat would raise: 0 while the still warms up. */
  readonly vapourShare: number;
  /** Reflux ratio L/D; Infinity at total reflux. */
  readonly refluxRatio: number;
}

/** How far a run is from a rule: above zero before the rule is met, zero where it is met, below zero after. */
export type StopMargin = (state: RunState) => number;

interface RuleKind<Rule extends StopRule> {
  margin(rule: Rule): StopMargin;
  faults(rule: Rule, where: string, charge: Amounts, pressure_Pa: Pascal): Fault[];
  /** What happened when the rule was met; what to say when it was met already; and, of a rule that arms, when it never did. */
  words(rule: Rule): string;
  already(rule: Rule): string;
  never?(rule: Rule): string;
  /** True for what may still rise towards the rule after the start: it counts once it has stood on the far side. */
  readonly arms: boolean;
}

type RuleOf<Kind extends StopRule['kind']> = Extract<StopRule, { kind: Kind }>;

const KINDS: { readonly [Kind in StopRule['kind']]: RuleKind<RuleOf<Kind>> } = {
  duration: {
    margin: (rule) => (state) => rule.seconds - state.stepTime_s,
    faults: (rule, where) => rangeFault(`${where}.seconds`, rule.seconds, 1e-3, 1e9, 'a time from 1 ms up to 1e9 s'),
    words: (rule) => `${printed(rule.seconds / 60)} min had passed`,
    already: (rule) => `${printed(rule.seconds / 60)} min had passed already`,
    arms: false,
  },
  collectedVolume: {
    margin: (rule) => (state) =>
      rule.volume_m3 - volumeAt20C(positive(state.collectedEthanol_mol), positive(state.collectedWater_mol)),
    faults(rule, where, charge) {
      const most = volumeAt20C(charge.ethanol_mol, charge.water_mol);
      const expected = `a volume above 0 and below the charge's ${most.toPrecision(4)} m³, from 1e-9`;
      return rangeFault(`${where}.volume_m3`, rule.volume_m3, 1e-9, most, expected);
    },
    words: (rule) => `${printed(1000 * rule.volume_m3)} L were collected`,
    already: (rule) => `${printed(1000 * rule.volume_m3)} L were collected already`,
    arms: false,
  },
  spoutStrengthBelow: {
    margin(rule) {
      const least = moleFractionFromStrength(rule.strength);
      return (state) => state.spoutMoleFraction - least;
    },
    faults: (rule, where) => strengthFaults(rule, where),
    words: (rule) => `the spout fell to ${printed(100 * rule.strength)} % vol`,
    already: (rule) => `the spout was already at or below ${printed(100 * rule.strength)} % vol`,
    never: (rule) => `the spout never stood above ${printed(100 * rule.strength)} % vol`,
    arms: true,
  },
  kettleStrengthBelow: {
    margin(rule) {
      const least = moleFractionFromStrength(rule.strength);
      return (state) => state.kettleMoleFraction - least;
    },
    faults: (rule, where) => strengthFaults(rule, where),
    words: (rule) => `the kettle fell to ${printed(100 * rule.strength)} % vol`,
    already: (rule) => `the kettle was already at or below ${printed(100 * rule.strength)} % vol`,
    arms: false,
  },
  kettleTemperatureAbove: {
    margin: (rule) => (state) => rule.temperature_K - state.kettleTemperature_K,
    faults: (rule, where, _charge, pressure_Pa) => temperatureFaults(rule, where, pressure_Pa),
    words: (rule) => `the kettle reached ${printed(rule.temperature_K - ZERO_CELSIUS)} °C`,
    already: (rule) => `the kettle was already at or above ${printed(rule.temperature_K - ZERO_CELSIUS)} °C`,
    arms: false,
  },
  headTemperatureAbove: {
    margin: (rule) => (state) => rule.temperature_K - state.headTemperature_K,
    faults: (rule, where, _charge, pressure_Pa) => temperatureFaults(rule, where, pressure_Pa),
    words: (rule) => `the head reached ${printed(rule.temperature_K - ZERO_CELSIUS)} °C`,
    already: (rule) => `the head was already at or above ${printed(rule.temperature_K - ZERO_CELSIUS)} °C`,
    never: (rule) => `the head never stood below ${printed(rule.temperature_K - ZERO_CELSIUS)} °C`,
    arms: true,
  },
  alcoholLeftBelow: {
    margin: (rule) => (state) => state.ethanolLeft_mol / state.chargeEthanol_mol - rule.share,
    faults: (rule, where) => rangeFault(`${where}.share`, rule.share, 1e-5, 0.99999, 'a share from 0.00001 to 0.99999'),
    words: (rule) => `${printed(100 * rule.share)} % of the alcohol was left`,
    already: (rule) => `no more than ${printed(100 * rule.share)} % of the alcohol was left already`,
    arms: false,
  },
  firstVapour: {
    margin: () => (state) => FIRST_VAPOUR - state.vapourShare,
    faults: () => [],
    words: () => 'the first vapour reached the condenser',
    already: () => 'vapour had reached the condenser already',
    arms: false,
  },
  refluxAbove: {
    // Before there is vapour nothing runs back, whatever the ratio is set to.
    margin: (rule) => (state) =>
      state.vapourShare < FIRST_VAPOUR ? rule.ratio : rule.ratio - Math.min(1e9, state.refluxRatio),
    faults: (rule, where) => rangeFault(`${where}.ratio`, rule.ratio, 1e-3, 1e6, 'a reflux ratio above 0'),
    words: (rule) => `the reflux ratio rose to ${printed(rule.ratio)}`,
    already: (rule) => `the reflux ratio was already at or above ${printed(rule.ratio)}`,
    arms: false,
  },
};

/** The kinds of rules, and the fields of each. */
export const RULE_KINDS: Readonly<Record<StopRule['kind'], readonly string[]>> = {
  duration: ['seconds'],
  collectedVolume: ['volume_m3'],
  spoutStrengthBelow: ['strength'],
  kettleStrengthBelow: ['strength'],
  kettleTemperatureAbove: ['temperature_K'],
  headTemperatureAbove: ['temperature_K'],
  alcoholLeftBelow: ['share'],
  firstVapour: [],
  refluxAbove: ['ratio'],
};

/** Vapour at the condenser counts from this share of the full boil-up on. Source: this project's choice. */
export const FIRST_VAPOUR = 0.01;

/** The margin of a rule: a function of the run's state that falls through zero when the rule is met. */
export function stopMargin(rule: StopRule): StopMargin {
  return kindOf(rule).margin(rule);
}

/** Whether a rule on plates counts only after its margin has once been above zero in the run. */
export function armsFirst(rule: StopRule): boolean {
  return kindOf(rule).arms;
}

/** What is wrong with a rule: not a number, or never to be met by this charge at this (highest) pressure. */
export function stopRuleFaults(
  where: string,
  rule: StopRule,
  charge: Amounts,
  pressure_Pa: Pascal = STANDARD_ATMOSPHERE * 3,
): Fault[] {
  if (typeof rule.kind !== 'string' || !Object.hasOwn(KINDS, rule.kind)) {
    return [{ argument: `${where}.kind`, value: rule.kind, expected: `one of ${Object.keys(KINDS).join(', ')}` }];
  }
  return kindOf(rule).faults(rule, where, charge, pressure_Pa);
}

/** What happened when the rule was met, as the end of a sentence. */
export function describeRule(rule: StopRule): string {
  return kindOf(rule).words(rule);
}

/** What to say of a rule that was met before its step began, as the end of a sentence. */
export function describeMetRule(rule: StopRule): string {
  return kindOf(rule).already(rule);
}

/** What to say of a rule that was waited for in vain because the run never stood on its far side; empty for others. */
export function describeUnarmedRule(rule: StopRule): string {
  return kindOf(rule).never?.(rule) ?? '';
}

function kindOf(rule: StopRule): RuleKind<StopRule> {
  return KINDS[rule.kind];
}

function strengthFaults(rule: { readonly strength: number }, where: string): Fault[] {
  return rangeFault(`${where}.strength`, rule.strength, 1e-6, 1, 'a strength above 0, up to 1 (0.40 is 40 % vol)');
}

/** Nothing in the still gets hotter than boiling water at the pressure; below 0 °C nothing boils there. */
function temperatureFaults(rule: { readonly temperature_K: Kelvin }, where: string, pressure_Pa: Pascal): Fault[] {
  const hottest = water.boilingTemperature(pressure_Pa);
  const expected = `a temperature below boiling water's ${hottest.toFixed(2)} K, above ${String(ZERO_CELSIUS)} K`;
  return rangeFault(`${where}.temperature_K`, rule.temperature_K, ZERO_CELSIUS, hottest, expected);
}

function positive(amount_mol: Mole): Mole {
  return Math.max(0, amount_mol);
}

function printed(value: number): string {
  return String(Number(value.toPrecision(4)));
}
