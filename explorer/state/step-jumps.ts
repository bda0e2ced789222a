// What a step of the run sheet sets jumps where the step begins. The row there has the new value; a curve straight to it
// from the row before would show a flow that begins before it is let.

/** Of a run, what is needed here. */
export interface Stepped {
  readonly time_s: ArrayLike<number>;
  /** Row at which each step begins. */
  readonly stepStarts: readonly number[];
}

/** Share of the run's length by which the old value ends before the new one begins: far less than a px. */
const apart = 1e-7;

/** A column along time that stays as it was until a step begins. */
export function withJumps(
  { time_s, stepStarts }: Stepped,
  column: ArrayLike<number>,
): { readonly along: Float64Array; readonly values: Float64Array } {
  const gap_s = apart * (time_s[time_s.length - 1] ?? 0);
  const starts = new Set(stepStarts.filter((row) => row > 0 && row < time_s.length));
  const times: number[] = [];
  const values: number[] = [];
  for (let row = 0; row < time_s.length; row++) {
    // A step of no length sets nothing: the next begins in the same moment.
    if (starts.has(row) && starts.has(row + 1) && !(time_s[row + 1]! > time_s[row]!)) continue;
    const before = time_s[row]! - gap_s;
    if (starts.has(row) && before > (times.at(-1) ?? -Infinity)) {
      times.push(before);
      values.push(values.at(-1)!);
    }
    times.push(time_s[row]!);
    values.push(column[row]!);
  }
  return { along: Float64Array.from(times), values: Float64Array.from(values) };
}
