// Numbers of the workings: what the reader measured or wants, typed into sentences of their own beside the run. A number
// that two workings of a page name alike is the same number. One row each, as in the table of the notebook's numbers.

import { toSI } from '#lib/index.js';
import { everywhere, grain, type Measured } from './input.js';

/** A number of a working. */
export interface WorkingNumber extends Omit<Measured, 'key'> {
  /** What it starts with, SI. Invented. */
  readonly start: number;
}

const celsius = (degrees: number): number => toSI(degrees, '°C');
const litres = (value: number): number => toSI(value, 'L');

const volume = {
  quantity: 'volume',
  low: 0.000_009,
  high: 10.1,
  grain: { metric: grain(0.01, 10_000, 0.5, 2), us: grain(0.003, 2600, 0.1, 3), imperial: grain(0.003, 2200, 0.1, 3) },
  tooHigh: 'is more than these pages work with',
  tooLow: 'is less than can be measured',
} as const;
const strength = {
  quantity: 'strength',
  low: 0,
  high: 1,
  grain: { metric: grain(0, 100, 0.5, 2), us: grain(0, 200, 1, 1), imperial: grain(0, 100, 0.5, 2) },
  tooHigh: 'is more than pure alcohol',
  tooLow: 'is less than none',
} as const;
const cool = {
  quantity: 'temperature',
  low: celsius(-0.001),
  high: celsius(40.001),
  grain: { metric: grain(0, 40, 0.5, 1), us: grain(32, 104, 1, 1), imperial: grain(0, 40, 0.5, 1) },
  tooHigh: 'is warmer than the density formula reaches: let it cool',
  tooLow: 'is colder than these pages work with',
} as const;
const boiling = {
  quantity: 'temperature',
  low: celsius(59.9),
  high: celsius(115.1),
  grain: { metric: grain(60, 115, 0.1, 2), us: grain(140, 239, 0.2, 1), imperial: grain(60, 115, 0.1, 2) },
  tooHigh: 'is hotter than a still in the open air gets',
  tooLow: 'is colder than anything boils here',
} as const;
const share = {
  quantity: 'percent',
  low: 0,
  high: 0.2,
  grain: everywhere(0, 20, 0.5, 2),
  tooHigh: 'is too unsure to say anything',
  tooLow: 'is less than none',
} as const;
const kelvins = {
  quantity: 'difference',
  low: 0,
  high: 10,
  grain: { metric: grain(0, 10, 0.1, 2), us: grain(0, 18, 0.1, 2), imperial: grain(0, 10, 0.1, 2) },
  tooHigh: 'is too unsure to say anything',
  tooLow: 'is less than none',
} as const;

export const workingNumbers = {
  // spirit as it was measured, and what is wanted of it
  spiritReading: { ...strength, label: 'what the hydrometer shows', start: 0.68 },
  spiritVolume: { ...volume, label: 'volume of the spirit', start: litres(10) },
  spiritTemperature: { ...cool, label: 'temperature of the spirit', start: celsius(18) },
  wantedStrength: { ...strength, label: 'strength that is wanted', start: 0.43 },
  waterTemperature: { ...cool, label: 'temperature of the water', start: celsius(15) },
  steps: {
    quantity: 'count',
    low: 1,
    high: 20,
    grain: everywhere(1, 20, 1, 0),
    tooHigh: 'is more steps than anyone takes',
    tooLow: 'is no step at all',
    label: 'number of portions of water',
    start: 4,
  },
  bottles: {
    quantity: 'count',
    low: 1,
    high: 100_000,
    grain: everywhere(1, 100_000, 1, 0),
    tooHigh: 'is more bottles than these pages count',
    tooLow: 'is no bottle at all',
    label: 'number of bottles',
    start: 22,
  },
  bottleVolume: {
    ...volume,
    grain: { metric: grain(0.02, 30, 0.05, 3), us: grain(0.005, 8, 0.01, 4), imperial: grain(0.005, 7, 0.01, 4) },
    label: 'size of a bottle',
    start: litres(0.7),
  },
  strongerStrength: { ...strength, label: 'strength of the stronger', start: 0.7 },
  weakerStrength: { ...strength, label: 'strength of the weaker', start: 0.2 },
  madeVolume: { ...volume, label: 'volume that is wanted', start: litres(20) },
  madeStrength: { ...strength, label: 'strength of what is made', start: 0.43 },
  solids: {
    quantity: 'concentration',
    low: 0,
    high: 300,
    grain: everywhere(0, 300, 0.5, 2),
    tooHigh: 'is a syrup',
    tooLow: 'is less than none',
    label: 'solids in the spirit',
    start: 4,
  },
  jarVolume: { ...volume, label: 'volume of the spirit', start: litres(1) },
  jarStrength: { ...strength, label: 'strength of the spirit', start: 0.7 },
  jarTemperature: { ...cool, label: 'how warm it was measured', start: celsius(20) },
  // how sure a reading is
  sureStrength: {
    quantity: 'strengthDifference',
    low: 0,
    high: 0.05,
    grain: { metric: grain(0, 5, 0.1, 2), us: grain(0, 10, 0.1, 2), imperial: grain(0, 5, 0.1, 2) },
    tooHigh: 'is too unsure to say anything',
    tooLow: 'is less than none',
    label: 'how sure the hydrometer is',
    start: 0.003,
  },
  sureVolume: { ...share, label: 'how sure the volume is', start: 0.01 },
  sureTemperature: { ...kelvins, label: 'how sure the thermometer is', start: 0.5 },
  sureBoiling: { ...kelvins, label: 'how sure the thermometer in the still is', start: 0.2 },
  surePressure: {
    quantity: 'pressure',
    low: 0,
    high: 5100,
    grain: { metric: grain(0, 5, 0.1, 2), us: grain(0, 0.7, 0.01, 3), imperial: grain(0, 5, 0.1, 2) },
    tooHigh: 'is too unsure to say anything',
    tooLow: 'is less than none',
    label: 'how sure the barometer is',
    start: 300,
  },
  // gauges of the still
  kettleReading: { ...boiling, label: 'what the kettle’s thermometer shows', start: celsius(95) },
  headReading: { ...boiling, label: 'what the head’s thermometer shows', start: celsius(78.8) },
  waterReading: { ...boiling, label: 'what the thermometer shows in boiling water', start: celsius(100) },
  airPressure: {
    quantity: 'pressure',
    low: 54_400,
    high: 109_000,
    grain: { metric: grain(55, 108.5, 0.1, 2), us: grain(7.9, 15.8, 0.02, 3), imperial: grain(55, 108.5, 0.1, 2) },
    tooHigh: 'is more than the open air has',
    tooLow: 'is less than at the highest villages',
    label: 'air pressure, or an altitude',
    start: toSI(1, 'atm'),
  },
  overPressure: {
    quantity: 'pressure',
    low: 0,
    high: 30_100,
    grain: { metric: grain(0, 30, 0.1, 2), us: grain(0, 4.3, 0.02, 3), imperial: grain(0, 30, 0.1, 2) },
    tooHigh: 'is more than plates and doublers put on a kettle',
    tooLow: 'is less than none',
    label: 'what plates or doublers put on it',
    start: 1500,
  },
  kettleVolume: { ...volume, label: 'what is left in the kettle', start: litres(100) },
  parrotVolume: {
    ...volume,
    grain: { metric: grain(0.01, 10, 0.05, 3), us: grain(0.003, 2.6, 0.01, 3), imperial: grain(0.003, 2.2, 0.01, 3) },
    label: 'what the parrot holds',
    start: litres(0.3),
  },
  parrotFall: {
    quantity: 'strengthDifference',
    low: 0,
    high: 0.5,
    grain: { metric: grain(0, 50, 0.5, 2), us: grain(0, 100, 1, 2), imperial: grain(0, 50, 0.5, 2) },
    tooHigh: 'is a faster fall than a still makes',
    tooLow: 'is less than none',
    label: 'how far the reading falls in a litre',
    start: 0.03,
  },
  spoutReading: { ...strength, label: 'what the hydrometer at the spout shows', start: 0.62 },
  spoutTemperature: { ...cool, label: 'temperature of the spirit at the spout', start: celsius(26) },
  // the balance of a run
  filledVolume: { ...volume, label: 'volume of the charge', start: litres(110) },
  filledStrength: { ...strength, label: 'strength of the charge', start: 0.1 },
  drawnVolume: { ...volume, label: 'volume that has come over', start: litres(8) },
  drawnStrength: { ...strength, label: 'strength of what has come over', start: 0.7 },
} as const satisfies Readonly<Record<string, WorkingNumber>>;

export type WorkingNumberName = keyof typeof workingNumbers;
export type WorkingValues = Readonly<Record<WorkingNumberName, number>>;
