// One row an input: what it is called, its limits in SI, where it starts, how far a step goes in each
// system of units, and the end of the sentence that corrects it. Adding an input is adding a row here.

import { toSI } from '#lib/index.js';
import type { UnitSystemName } from '../text/unit-systems.js';
import type { ParameterKey, Scenario } from './scenario.js';

/** Step and most decimals of a number as shown. */
export interface Grain {
  readonly step: number;
  readonly decimals: number;
}

export interface Parameter {
  readonly key: ParameterKey;
  /** Name in the address; never changed once published. */
  readonly inAddress: string;
  /** Name for those who hear it. */
  readonly label: string;
  readonly quantity: 'volume' | 'strength' | 'power' | 'pressure' | 'percent' | 'plates' | 'ratio';
  readonly low: number;
  readonly high: number;
  readonly start: number;
  readonly grain: Readonly<Record<UnitSystemName, Grain>>;
  /** Ends 'x is ...'. */
  readonly tooHigh: string;
  readonly tooLow: string;
}

const everywhere = (step: number, decimals: number): Parameter['grain'] => ({
  metric: { step, decimals },
  us: { step, decimals },
  imperial: { step, decimals },
});

/** Limits are those of a small still and of what the models were fitted to; starting values are invented. */
export const parameters: readonly Parameter[] = [
  {
    key: 'chargeVolume',
    inAddress: 'charge',
    label: 'volume of the charge',
    quantity: 'volume',
    low: 0.001,
    high: 1,
    start: 0.12,
    grain: {
      metric: { step: 5, decimals: 1 },
      us: { step: 1, decimals: 1 },
      imperial: { step: 1, decimals: 1 },
    },
    tooHigh: 'is more than these pages work with',
    tooLow: 'is less than a still can run on',
  },
  {
    key: 'chargeStrength',
    inAddress: 'strength',
    label: 'strength of the charge',
    quantity: 'strength',
    low: 0.005,
    high: 0.95,
    start: 0.095,
    grain: {
      metric: { step: 0.5, decimals: 2 },
      us: { step: 1, decimals: 1 },
      imperial: { step: 0.5, decimals: 2 },
    },
    tooHigh: 'is stronger than a charge can be here',
    tooLow: 'is too weak to distil',
  },
  {
    key: 'plates',
    inAddress: 'plates',
    label: 'plates',
    quantity: 'plates',
    low: 0,
    high: 60,
    start: 12,
    grain: everywhere(1, 0),
    tooHigh: 'is more than a column here can have',
    tooLow: 'is fewer than none',
  },
  {
    key: 'efficiency',
    inAddress: 'efficiency',
    label: 'efficiency of each plate',
    quantity: 'percent',
    low: 0.01,
    high: 1,
    start: 0.65,
    grain: everywhere(1, 1),
    tooHigh: 'is more than a plate can do',
    tooLow: 'is less than a plate does',
  },
  {
    key: 'reflux',
    inAddress: 'reflux',
    label: 'reflux ratio',
    quantity: 'ratio',
    low: 0,
    high: 30,
    start: 3,
    grain: everywhere(0.5, 2),
    tooHigh: 'would hardly let anything out',
    tooLow: 'is less than nothing sent back',
  },
  {
    key: 'heat',
    inAddress: 'heat',
    label: 'heat into the kettle',
    quantity: 'power',
    low: 300,
    high: 60_000,
    start: 5500,
    grain: {
      metric: { step: 0.25, decimals: 2 },
      us: { step: 500, decimals: 0 },
      imperial: { step: 0.25, decimals: 2 },
    },
    tooHigh: 'is more than a small still takes',
    tooLow: 'is too little to keep it boiling',
  },
  {
    key: 'pressure',
    inAddress: 'pressure',
    label: 'air pressure, or an altitude',
    quantity: 'pressure',
    low: 55_000,
    high: 108_500,
    start: toSI(1, 'atm'),
    grain: {
      metric: { step: 0.5, decimals: 1 },
      us: { step: 0.1, decimals: 2 },
      imperial: { step: 0.5, decimals: 1 },
    },
    tooHigh: 'is more than the open air has',
    tooLow: 'is less than at the highest villages',
  },
  {
    key: 'doublerReflux',
    inAddress: 'doubler-reflux',
    label: 'reflux ratio of the doubler',
    quantity: 'ratio',
    low: 0,
    high: 30,
    start: 1,
    grain: everywhere(0.25, 2),
    tooHigh: 'would hardly let anything out',
    tooLow: 'is less than nothing sent back',
  },
  {
    key: 'wantedStrength',
    inAddress: 'above',
    label: 'strength that counts',
    quantity: 'strength',
    low: 0.2,
    high: 0.97,
    start: 0.8,
    grain: {
      metric: { step: 1, decimals: 1 },
      us: { step: 2, decimals: 1 },
      imperial: { step: 1, decimals: 1 },
    },
    tooHigh: 'is more than a column brings over in the open air',
    tooLow: 'is weaker than anyone keeps',
  },
  {
    key: 'ceilingPressure',
    inAddress: 'ceiling-pressure',
    label: 'pressure the ceiling is asked at',
    quantity: 'pressure',
    low: 3000,
    high: 300_000,
    start: toSI(1, 'atm'),
    grain: {
      metric: { step: 1, decimals: 1 },
      us: { step: 0.2, decimals: 2 },
      imperial: { step: 1, decimals: 1 },
    },
    tooHigh: 'is more than these pages look at',
    tooLow: 'is less than the model can be asked for',
  },
];

/** The settings a page starts with. */
export const startingScenario: Scenario = Object.freeze(
  Object.fromEntries(parameters.map(({ key, start }) => [key, start])) as Record<ParameterKey, number>,
);

/** The row of a key. */
export function parameterOf(key: ParameterKey): Parameter {
  return parameters.find((parameter) => parameter.key === key)!;
}
