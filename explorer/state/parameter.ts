// What there is to know of a number that can be set, of the page or of an entry of its own.

import type { UnitSystemName } from '../text/unit-systems.js';
import type { ParameterKey } from './scenario.js';

/** Range, step and most decimals of a number as shown: round numbers in every system of units. */
export interface Grain {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly decimals: number;
}

export interface Parameter extends Measured {
  readonly key: ParameterKey;
  readonly quantity: Exclude<Measured['quantity'], 'difference' | 'strengthDifference' | 'concentration' | 'count'>;
  /** Name in the address; never changed once published. */
  readonly inAddress: string;
  readonly start: number;
}

/** A number that can be set, of the page or of an entry of its own. */
export interface Measured {
  readonly key: string;
  /** Name for those who hear it. */
  readonly label: string;
  readonly quantity:
    | 'volume'
    | 'strength'
    | 'power'
    | 'pressure'
    | 'temperature'
    | 'across'
    | 'minutes'
    | 'percent'
    | 'difference'
    | 'strengthDifference'
    | 'concentration'
    | 'count'
    | 'plates'
    | 'ratio';
  /** Limits in SI: no range as shown goes beyond them. */
  readonly low: number;
  readonly high: number;
  readonly grain: Readonly<Record<UnitSystemName, Grain>>;
  /** Ends 'x is ...'. */
  readonly tooHigh: string;
  readonly tooLow: string;
}

export const grain = (from: number, to: number, step: number, decimals: number): Grain => ({
  from,
  to,
  step,
  decimals,
});

export const everywhere = (...numbers: Parameters<typeof grain>): Parameter['grain'] => ({
  metric: grain(...numbers),
  us: grain(...numbers),
  imperial: grain(...numbers),
});
