// The numbers of a page under the names formulas use: what is set, and what other entries offer.

import { kinds, type KindName } from '../../formula/kinds.js';
import type { PageQuantity } from '../../formula/sheet.js';
import { parameters, type Parameter } from '../../state/parameters.js';
import type { ParameterKey, Scenario } from '../../state/scenario.js';
import type { PageResult } from '../entry.js';

/** A number of the page as the list shows it. */
export interface NamedNumber extends PageQuantity {
  readonly label: string;
}

/** Shorter than the keys; a key that is not here is its own name. */
const shorter: Partial<Record<ParameterKey, string>> = { chargeVolume: 'volume', chargeStrength: 'strength' };

const kindOf: Readonly<Record<Parameter['quantity'], KindName>> = {
  volume: 'volume',
  strength: 'strength',
  power: 'power',
  pressure: 'pressure',
  percent: 'percent',
  plates: 'number',
  ratio: 'number',
  across: 'length',
  temperature: 'temperature',
  minutes: 'time',
};

/** All of them, each name once: what is set goes before what entries offer. */
export function numbersOf(scenario: Scenario, results: readonly PageResult[]): readonly NamedNumber[] {
  const numbers = new Map<string, NamedNumber>();
  for (const { key, label, quantity } of parameters) {
    const name = nameOf(key);
    numbers.set(name, { name, label, kind: kindOf[quantity], si: scenario[key] });
  }
  for (const { name, label, quantity, value } of results) {
    const kind = quantity === null ? 'number' : quantity === 'across' ? 'length' : quantity;
    if (value === null || !Number.isFinite(value) || numbers.has(name) || !isKind(kind)) continue;
    numbers.set(name, { name, label, kind, si: value });
  }
  return [...numbers.values()];
}

export function nameOf(key: ParameterKey): string {
  return shorter[key] ?? key;
}

function isKind(name: string): name is KindName {
  return Object.hasOwn(kinds, name);
}
