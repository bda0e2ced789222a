// One row an input: what it is called, its limits in SI, where it starts, how far a step goes in each
// system of units, and the end of the sentence that corrects it. Adding an input is adding a row here.

import { toSI } from '#lib/index.js';
import { everywhere, grain, type Parameter } from './parameter.js';
import type { ParameterKey, Scenario } from './scenario.js';

export type { Grain, Measured, Parameter } from './parameter.js';

/** Limits are those of a small still and of what the models were fitted to; starting values are invented. */
export const parameters: readonly Parameter[] = [
  {
    key: 'chargeVolume',
    inAddress: 'charge',
    label: 'volume of the charge',
    quantity: 'volume',
    low: 0.000_75,
    high: 1.005,
    start: 0.12,
    grain: {
      metric: grain(1, 1000, 5, 1),
      us: grain(0.2, 265, 1, 1),
      imperial: grain(0.2, 220, 1, 1),
    },
    tooHigh: 'is more than these pages work with',
    tooLow: 'is less than a still can run on',
  },
  {
    key: 'chargeStrength',
    inAddress: 'strength',
    label: 'strength of the charge',
    quantity: 'strength',
    low: 0.0049,
    high: 0.951,
    start: 0.095,
    grain: {
      metric: grain(0.5, 95, 0.5, 2),
      us: grain(1, 190, 1, 1),
      imperial: grain(0.5, 95, 0.5, 2),
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
    grain: everywhere(0, 60, 1, 0),
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
    grain: everywhere(1, 100, 1, 1),
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
    grain: everywhere(0, 30, 0.5, 2),
    tooHigh: 'would hardly let anything out',
    tooLow: 'is less than nothing sent back',
  },
  {
    key: 'heat',
    inAddress: 'heat',
    label: 'heat into the kettle',
    quantity: 'power',
    low: 290,
    high: 60_100,
    start: 5500,
    grain: {
      metric: grain(0.3, 60, 0.25, 2),
      us: grain(1000, 205_000, 500, 0),
      imperial: grain(0.3, 60, 0.25, 2),
    },
    tooHigh: 'is more than a small still takes',
    tooLow: 'is too little to keep it boiling',
  },
  {
    key: 'pressure',
    inAddress: 'pressure',
    label: 'air pressure, or an altitude',
    quantity: 'pressure',
    low: 54_400,
    high: 109_000,
    start: toSI(1, 'atm'),
    grain: {
      metric: grain(55, 108.5, 0.5, 1),
      us: grain(7.9, 15.8, 0.1, 2),
      imperial: grain(55, 108.5, 0.5, 1),
    },
    tooHigh: 'is more than the open air has',
    tooLow: 'is less than at the highest villages',
  },
  {
    key: 'doublerVolume',
    inAddress: 'doubler-volume',
    label: 'what the doubler is charged with',
    quantity: 'volume',
    low: 0.000_075,
    high: 0.505,
    start: 0.01,
    grain: {
      metric: grain(0.1, 500, 1, 1),
      us: grain(0.02, 133, 0.2, 2),
      imperial: grain(0.02, 110, 0.2, 2),
    },
    tooHigh: 'is more than a doubler here holds',
    tooLow: 'is too little to bubble through',
  },
  {
    key: 'doublerStrength',
    inAddress: 'doubler-strength',
    label: 'strength of the doubler’s charge',
    quantity: 'strength',
    low: 0.0049,
    high: 0.951,
    start: 0.3,
    grain: {
      metric: grain(0.5, 95, 1, 2),
      us: grain(1, 190, 2, 1),
      imperial: grain(0.5, 95, 1, 2),
    },
    tooHigh: 'is stronger than a charge can be here',
    tooLow: 'is as good as water: set 0.5 for that',
  },
  {
    key: 'columnDiameter',
    inAddress: 'diameter',
    label: 'diameter of the column',
    quantity: 'across',
    low: 0.024,
    high: 1.01,
    start: 0.1,
    grain: {
      metric: grain(25, 1000, 5, 0),
      us: grain(1, 39.5, 0.25, 2),
      imperial: grain(1, 39.5, 0.25, 2),
    },
    tooHigh: 'is wider than a column here can be',
    tooLow: 'is narrower than a column here can be',
  },
  {
    key: 'plateSpacing',
    inAddress: 'spacing',
    label: 'distance from plate to plate',
    quantity: 'across',
    low: 0.049,
    high: 0.61,
    start: 0.15,
    grain: {
      metric: grain(50, 600, 10, 0),
      us: grain(2, 23.5, 0.5, 2),
      imperial: grain(2, 23.5, 0.5, 2),
    },
    tooHigh: 'is farther than plates here stand apart',
    tooLow: 'is nearer than plates here can stand',
  },
  {
    key: 'wantedStrength',
    inAddress: 'above',
    label: 'strength that counts',
    quantity: 'strength',
    low: 0.199,
    high: 0.9705,
    start: 0.8,
    grain: {
      metric: grain(20, 97, 1, 1),
      us: grain(40, 194, 2, 1),
      imperial: grain(20, 97, 1, 1),
    },
    tooHigh: 'is more than a column brings over in the open air',
    tooLow: 'is weaker than anyone keeps',
  },
  {
    key: 'ceilingPressure',
    inAddress: 'ceiling-pressure',
    label: 'pressure the ceiling is asked at',
    quantity: 'pressure',
    low: 2990,
    high: 300_100,
    start: toSI(1, 'atm'),
    grain: {
      metric: grain(3, 300, 1, 1),
      us: grain(0.5, 43.5, 0.2, 2),
      imperial: grain(3, 300, 1, 1),
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
