// What a function of the library is to a formula: its own name, what it takes and gives, one example that a test
// computes and the page shows, and the call into the library, in SI.

import { toSI } from '#lib/index.js';
import type { KindName } from '../kinds.js';

export interface Argument {
  readonly name: string;
  readonly kind: KindName;
  /** Range in SI and in words. */
  readonly low: number;
  readonly high: number;
  readonly range: string;
}

export interface OwnFunction {
  readonly name: string;
  readonly takes: readonly Argument[];
  readonly gives: KindName;
  /** One line: 'temperature at which a liquid boils'. */
  readonly says: string;
  readonly example: Example;
  /** SI in the order of `takes`; SI out, or why there is no value. */
  readonly call: (...si: number[]) => number | NoValue;
}

export interface Example {
  readonly formula: string;
  /** As it is shown in metric units. */
  readonly gives: string;
}

/** Physics that has no answer there. */
export interface NoValue {
  readonly none: string;
}

const argument = (name: string, kind: KindName, low: number, high: number, range: string): Argument => ({
  name,
  kind,
  low,
  high,
  range,
});

export const takes = {
  strength: (name = 'strength') => argument(name, 'strength', 0, 1, '0 to 100 % vol'),
  someStrength: (name = 'strength') => argument(name, 'strength', 1e-9, 1 - 1e-9, 'above 0, below 100 % vol'),
  massShare: () => argument('massFraction', 'massShare', 0, 1, '0 to 100 %'),
  moleShare: () => argument('moleFraction', 'moleShare', 0, 1, '0 to 1'),
  proof: (name = 'proof') => argument(name, 'proof', 0, 200, '0 to 200'),
  volume: (name = 'volume') => argument(name, 'volume', 0, 1e6, '0 L or more'),
  /** Pressures the models are asked for at. */
  pressure: () => argument('pressure', 'pressure', 2000, 2e6, '2 kPa to 2 MPa'),
  /** Pressures the compiled curve covers. */
  stillPressure: () => argument('pressure', 'pressure', 20_000, 300_000, '20 kPa to 300 kPa'),
  temperature: (low_C: number, high_C: number) => temperature(low_C, high_C),
  length: (name: string, low: number, high: number, range: string) => argument(name, 'length', low, high, range),
  airPressure: () => argument('pressure', 'pressure', 22_700, 108_740, '22.7 kPa to 108.7 kPa'),
} as const;

function temperature(low_C: number, high_C: number): Argument {
  const [low, high] = [toSI(low_C, '°C'), toSI(high_C, '°C')];
  const range = `${String(low_C).replace('-', '−')} °C to ${String(high_C)} °C`;
  return argument('temperature', 'temperature', low, high, range);
}
