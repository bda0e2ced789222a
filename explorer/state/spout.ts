// Strength at the spout along time, from when something has run out of it: before that, and where nothing ever does, there
// is no strength to draw or to read.

import { positionIn, readAt } from './run-results.js';

/** Of a run, what is needed here. */
export interface SpoutOfRun {
  readonly time_s: Float64Array;
  readonly spoutStrength: Float64Array;
  /** Null where no vapour ever reaches the condenser. */
  readonly firstVapour_s: number | null;
}

/** What stood in the condenser is washed out by then, s. */
const rinsed_s = 60;

export function spoutAlongTime({ time_s, spoutStrength, firstVapour_s }: SpoutOfRun): {
  readonly along: Float64Array;
  readonly values: Float64Array;
} {
  const from_s = firstVapour_s === null ? Infinity : firstVapour_s + rinsed_s;
  const found = time_s.findIndex((time) => time > from_s);
  if (found < 0) return { along: new Float64Array(), values: new Float64Array() };
  // It begins at that moment, not at the row that happens to follow.
  const begins = readAt(spoutStrength, positionIn(time_s, from_s));
  return {
    along: Float64Array.of(from_s, ...time_s.subarray(found)),
    values: Float64Array.of(begins, ...spoutStrength.subarray(found)),
  };
}
