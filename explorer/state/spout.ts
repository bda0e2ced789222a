// Strength at the spout along time, from when something has run out of it: before that, and where nothing ever does, there
// is no strength to draw or to read.

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
  const found = firstVapour_s === null ? -1 : time_s.findIndex((time) => time > firstVapour_s + rinsed_s);
  const first = found < 0 ? time_s.length : found;
  return { along: time_s.subarray(first), values: spoutStrength.subarray(first) };
}
