// The numbers of a page under the names formulas use: what is set, and what other entries offer.

import { kinds, type KindName } from '../../formula/kinds.js';
import type { PageQuantity } from '../../formula/sheet.js';
import { inputs, type Input } from '../../state/inputs.js';
import { numberAt } from '../../state/paths.js';
import type { Scenario } from '../../state/scenario.js';
import type { PageResult } from '../entry.js';

/** A number of the page as the list shows it. */
export interface NamedNumber extends PageQuantity {
  readonly label: string;
}

const kindOf: Readonly<Record<Exclude<Input['quantity'], object>, KindName>> = {
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
  for (const { key, label, quantity, inFormulas: name } of inputs) {
    const si = name === undefined ? undefined : numberAt(scenario, key);
    if (name === undefined || si === undefined || typeof quantity === 'object') continue;
    numbers.set(name, { name, label, kind: kindOf[quantity], si });
  }
  for (const { name, label, quantity, value } of results) {
    const kind = quantity === null ? 'number' : quantity === 'across' ? 'length' : quantity;
    if (value === null || !Number.isFinite(value) || numbers.has(name) || !isKind(kind)) continue;
    numbers.set(name, { name, label, kind, si: value });
  }
  return [...numbers.values()];
}

function isKind(name: string): name is KindName {
  return Object.hasOwn(kinds, name);
}
