// Units that the header of a column may name, with how a number in them becomes SI. Strengths are a share of volume.

import {
  proofFromStrength,
  strengthFromProof,
  toSI,
  unitsOf,
  fromSI,
  type UnitQuantity,
  type UnitSymbol,
} from '#lib/index.js';
import { plainUnit } from '../../text/parse.js';
import type { QuantityName } from '../entry.js';

export interface HeaderUnit {
  readonly unit: string;
  /** What is measured; null for what the page has no quantity for. */
  readonly quantity: QuantityName | null;
  readonly toSI: (value: number) => number;
  readonly fromSI: (si: number) => number;
  /** SI between which a number makes sense, and in words what would. */
  readonly range: { readonly from: number; readonly to: number; readonly words: string } | null;
}

const quantities: readonly UnitQuantity[] = [
  'volume',
  'temperature',
  'pressure',
  'power',
  'time',
  'length',
  'mass',
  'share',
];
const ranges: Readonly<Partial<Record<UnitQuantity | 'strength', HeaderUnit['range']>>> = {
  strength: { from: 0, to: 1, words: 'a strength from 0 to 100 % vol' },
  temperature: { from: 0, to: 2000, words: 'a temperature above absolute zero' },
  volume: { from: 0, to: 1e6, words: 'a volume that is not negative' },
  pressure: { from: 0, to: 1e9, words: 'a pressure that is not negative' },
};

const known = new Map<string, HeaderUnit>();
for (const quantity of quantities) for (const symbol of unitsOf(quantity)) add(ofTable(quantity, symbol));
const strengthOf = (unit: string, si: (value: number) => number, back: (si: number) => number): HeaderUnit => ({
  unit,
  quantity: 'strength',
  toSI: si,
  fromSI: back,
  range: ranges.strength!,
});
add(
  strengthOf(
    '% vol',
    (value) => value / 100,
    (si) => 100 * si,
  ),
  'vol%',
  'vol %',
  '%vol',
);
add(strengthOf('proof', strengthFromProof, proofFromStrength));
add({
  ...ofTable('volume', 'L'),
  unit: 'mL',
  toSI: (value) => toSI(value, 'L') / 1000,
  fromSI: (si) => 1000 * fromSI(si, 'L'),
});
add(ofTable('temperature', '°C'), 'C', 'degC');
add(ofTable('temperature', '°F'), 'F', 'degF');

/** The unit of this name; undefined where there is none. */
export function headerUnit(name: string): HeaderUnit | undefined {
  return known.get(plainUnit(name));
}

/** Names that are known, for a message. */
export const unitNames: string = [...new Set([...known.values()].map(({ unit }) => unit))].join(', ');

function add(unit: HeaderUnit, ...others: readonly string[]): void {
  for (const name of [unit.unit, ...others]) known.set(plainUnit(name), unit);
}

function ofTable(quantity: UnitQuantity, symbol: UnitSymbol): HeaderUnit {
  return {
    unit: symbol,
    quantity: quantity === 'mass' || quantity === 'share' ? null : quantity,
    toSI: (value) => toSI(value, symbol),
    fromSI: (si) => fromSI(si, symbol),
    range: ranges[quantity] ?? null,
  };
}
