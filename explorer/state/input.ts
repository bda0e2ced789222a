// What there is to know of a number that can be set, of the page or of an entry of its own.

import type { Doubler, Head, Kettle, PackedSection, PlatedSection, ProductCondenser } from '#lib/index.js';
import type { UnitSystemName } from '../text/unit-systems.js';

/** Range, step and most decimals of a number as shown: round numbers in every system of units. */
export interface Grain {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly decimals: number;
}

/** A quantity in the same unit for everyone: one of it is so many SI. */
export interface PlainQuantity {
  readonly unit: string;
  readonly si: number;
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
    | 'ratio'
    | PlainQuantity;
  /** Limits in SI: no range as shown goes beyond them. */
  readonly low: number;
  readonly high: number;
  readonly grain: Readonly<Record<UnitSystemName, Grain>>;
  /** Ends 'x is ...'. */
  readonly tooHigh: string;
  readonly tooLow: string;
}

type Numbers<Part> = { [Name in keyof Part]: Part[Name] extends number ? Name : never }[keyof Part] & string;
type Filled = 'volume_m3' | 'strength';

/** Where a number stands in what the reader has set. */
export type Path =
  | `charge.${Filled}`
  | `doublerCharges[${number}].charge.${Filled}`
  | `sheet[${number}].reflux`
  | `asked.${'strength' | 'pressure_Pa'}`
  | `still.kettle.${Numbers<Kettle>}`
  | `still.doublers[${number}].${Numbers<Doubler>}`
  | `still.column.${Numbers<PlatedSection> | Numbers<PackedSection> | 'holdUp.volume_m3'}`
  | `still.head.${Numbers<Head>}`
  | `still.refluxCondenser.${'subcooling_K' | 'holdUp.volume_m3' | 'coolant.power_W' | 'coolant.flow_kg_s'}`
  | `still.productCondenser.${Numbers<ProductCondenser> | 'holdUp.volume_m3'}`
  | `still.air.${'pressure_Pa' | 'temperature_K'}`;

/** A number of what the reader has set. */
export interface Input extends Measured {
  readonly quantity: Exclude<Measured['quantity'], 'difference' | 'strengthDifference' | 'concentration' | 'count'>;
  /** Its path. */
  readonly key: Path;
  /** In the address and in a sentence as it is written; never changed once published. */
  readonly name: string;
  /** As a formula writes it; a number without is not offered to formulas. */
  readonly inFormulas?: string;
  /** Kinds that the part it stands in may be of; the first where it is none of them. */
  readonly of?: readonly string[];
}

export const grain = (from: number, to: number, step: number, decimals: number): Grain => ({
  from,
  to,
  step,
  decimals,
});

export const everywhere = (...numbers: Parameters<typeof grain>): Measured['grain'] => ({
  metric: grain(...numbers),
  us: grain(...numbers),
  imperial: grain(...numbers),
});

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}

const mm_in_inch = 25.4;

/** A length in mm; in inches by quarters or, where it is short, by twentieths. */
export function across(from: number, to: number, step: number, decimals = 0): Measured['grain'] {
  const inch = step >= 2 ? 0.25 : 0.05;
  const whole = (mm: number, round: (steps: number) => number): number =>
    rounded(round(mm / mm_in_inch / inch) * inch, 2);
  const inches = grain(Math.max(inch, whole(from, Math.ceil)), whole(to, Math.floor), inch, 2);
  return { metric: grain(from, to, step, decimals), us: inches, imperial: inches };
}

const litres_in_gallon = { us: 3.785_411_784, imperial: 4.546_09 };

/** A small volume in L, and in gallons by the same decimals. */
export function small(from: number, to: number, step: number, decimals: number): Measured['grain'] {
  const gallons = (litres: number): Grain => {
    const round = (value: number, way: (steps: number) => number): number =>
      rounded(way(value / litres / step) * step, decimals);
    return grain(Math.max(step, round(from, Math.ceil)), round(to, Math.floor), step, decimals);
  };
  return {
    metric: grain(from, to, step, decimals),
    us: gallons(litres_in_gallon.us),
    imperial: gallons(litres_in_gallon.imperial),
  };
}
