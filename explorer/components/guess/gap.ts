// How far a guess lies from the answer: the largest gap and where it is, the area between the two lines,
// and the mean. Exact for lines that are straight between their points.

/** A line as columns, x rising. */
export interface Line {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

/** Guess minus answer over the part of the way that both cover; in the units of the lines. */
export interface Gap {
  readonly from: number;
  readonly to: number;
  /** The largest gap, with its sign: above 0 where the guess is higher; and the x it is at. */
  readonly largest: number;
  readonly at: number;
  /** Between the lines, whichever is higher. */
  readonly area: number;
  /** Mean gap with its sign, and mean size of the gap. */
  readonly mean: number;
  readonly meanSize: number;
}

/** The gap between a guess and the answer; null where they share no part of the way. */
export function gapBetween(guess: Line, answer: Line): Gap | null {
  const from = Math.max(guess.x[0] ?? Infinity, answer.x[0] ?? Infinity);
  const to = Math.min(guess.x[guess.x.length - 1] ?? -Infinity, answer.x[answer.x.length - 1] ?? -Infinity);
  if (!(to > from)) return null;
  const places = [...new Set([from, ...inside(guess, from, to), ...inside(answer, from, to), to])].sort(
    (a, b) => a - b,
  );
  const gaps = places.map((x) => heightAt(guess, x) - heightAt(answer, x));
  let [largest, at] = [gaps[0]!, from];
  let [signed, area] = [0, 0];
  for (let k = 1; k < places.length; k++) {
    const [before, here] = [gaps[k - 1]!, gaps[k]!];
    const width = places[k]! - places[k - 1]!;
    if (Math.abs(here) > Math.abs(largest)) [largest, at] = [here, places[k]!];
    signed += (width * (before + here)) / 2;
    area += width * meanSizeOf(before, here);
  }
  return { from, to, largest, at, area, mean: signed / (to - from), meanSize: area / (to - from) };
}

/** Height of a line at x, straight between its points; the ends hold outside. */
export function heightAt({ x, y }: Line, at: number): number {
  const last = x.length - 1;
  if (last < 0) return Number.NaN;
  if (at <= x[0]!) return y[0]!;
  if (at >= x[last]!) return y[last]!;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! <= at) low = middle;
    else high = middle;
  }
  return y[low]! + ((at - x[low]!) / (x[high]! - x[low]!)) * (y[high]! - y[low]!);
}

function inside({ x }: Line, from: number, to: number): number[] {
  return Array.from(x).filter((place) => place > from && place < to);
}

/** Mean size along a straight piece from one gap to another, which may change sign on the way. */
function meanSizeOf(before: number, here: number): number {
  const sum = Math.abs(before) + Math.abs(here);
  if (before * here >= 0) return sum / 2;
  return (before ** 2 + here ** 2) / (2 * sum);
}
