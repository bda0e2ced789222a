// What a named formula offers to the other entries of its page.

import type { KindName } from '../../formula/kinds.js';
import type { FormulaResult } from '../../formula/sheet.js';
import type { Provided, QuantityName } from '../entry.js';

/** Kinds of formula values that pages have a quantity for. */
const quantities: Partial<Record<KindName, QuantityName>> = {
  strength: 'strength',
  volume: 'volume',
  temperature: 'temperature',
  pressure: 'pressure',
  power: 'power',
  time: 'time',
  length: 'length',
};

const bare: readonly (KindName | null)[] = [null, 'number', 'percent', 'massShare', 'moleShare', 'proof'];

/** One result for a line with a name and a number, none for others. */
export function offeredFrom({ name, outcome }: FormulaResult): readonly Provided[] {
  if (name === null || 'fault' in outcome || outcome.value.is !== 'number') return [];
  const { kind, si, unit } = outcome.value;
  const quantity = kind === null ? undefined : quantities[kind];
  if (quantity !== undefined) return [{ name, label: name, quantity, value: si }];
  // A number with a unit that pages do not know would lose it.
  if (!bare.includes(kind) || (kind === null && unit !== '')) return [];
  return [{ name, label: name, quantity: null, value: si }];
}
