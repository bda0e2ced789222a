// Where the ± of an answer comes from: the input that contributes most, in words.

import type { Carried } from '#lib/index.js';

/** 'Most of the ± comes from the hydrometer.'; '' where nothing is uncertain. */
export function mostOfIt(carried: Carried, words: Readonly<Record<string, string>>): string {
  const parts = Object.entries(carried.from).sort(([, one], [, other]) => Math.abs(other) - Math.abs(one));
  const first = parts[0];
  if (first === undefined || first[1] === 0 || carried.uncertainty === 0) return '';
  const share = (first[1] / carried.uncertainty) ** 2;
  const name = words[first[0]] ?? first[0];
  const second = parts[1];
  if (share > 0.6 || second === undefined || second[1] === 0) return `Most of the ± comes from ${name}.`;
  return `The ± comes from ${name} and from ${words[second[0]] ?? second[0]}.`;
}

/** What ± means on these pages, for the margin. */
export const plusMinusMeans =
  '± is what a reading is sure to, and the answer with it: some 95 of 100 lie within. Readings are taken as independent.';
