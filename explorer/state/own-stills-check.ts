// Whether a value from outside is the stills of the reader's own that stand beside the others.

import { inputNamed } from './inputs.js';

export const mostOwnStills = 3;
/** Where a page keeps them among what its entries share. */
export const ownStillsName = 'own-stills';

const stillNumbers = ['plates', 'efficiency', 'reflux'] as const;

/** What is wrong with a value from outside that should be such stills, and what would be right. */
export function faultInOwnStills(value: unknown): string | undefined {
  if (!Array.isArray(value) || value.length > mostOwnStills) {
    return `own stills are a list of at most ${String(mostOwnStills)}`;
  }
  for (const still of value as readonly unknown[]) {
    const numbers = (typeof still === 'object' && still !== null ? still : {}) as Readonly<Record<string, unknown>>;
    for (const key of stillNumbers) {
      const { low, high, quantity } = inputNamed(key)!;
      const number = numbers[key];
      const whole = quantity !== 'plates' || Number.isInteger(number);
      if (typeof number === 'number' && number >= low && number <= high && whole) continue;
      return `an own still needs \`${key}\`, ${String(low)} to ${String(high)}`;
    }
  }
  return undefined;
}
