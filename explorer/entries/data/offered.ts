// What rows come to, by name for formulas: of each column its first, last, lowest, highest and mean value.

import type { Provided } from '../entry.js';
import type { OwnColumn } from './read-rows.js';

const summaries: readonly (readonly [ending: string, words: string, of: (values: readonly number[]) => number])[] = [
  ['First', 'first', (values) => values[0]!],
  ['Last', 'last', (values) => values[values.length - 1]!],
  ['Lowest', 'lowest', (values) => Math.min(...values)],
  ['Highest', 'highest', (values) => Math.max(...values)],
  ['Mean', 'mean', (values) => values.reduce((sum, value) => sum + value, 0) / values.length],
];

export function offered(columns: readonly OwnColumn[]): readonly Provided[] {
  return columns.flatMap(({ name, unit, values }) => {
    const seen = values.filter((value) => !Number.isNaN(value));
    return summaries.map(([ending, words, of]): Provided => ({
      name: `${spelled(name)}${ending}`,
      label: `${words} ${name} of your data`,
      quantity: unit?.quantity ?? null,
      value: seen.length === 0 ? null : of(seen),
    }));
  });
}

/** 'Head, read' as a formula would write it: 'headRead'. */
export function spelled(name: string): string {
  const words =
    name
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .match(/[A-Za-z0-9]+/gu) ?? [];
  const joined = words
    .map((word, i) => (i === 0 ? word.toLowerCase() : word.charAt(0).toUpperCase() + word.slice(1)))
    .join('');
  return /^[a-z]/u.test(joined) ? joined : `column${joined}`;
}
