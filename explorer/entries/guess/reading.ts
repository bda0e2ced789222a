// What a guess comes to, in numbers: where it misses most, by how much, how far it goes. What the gap means
// is each guess's own (the files beside this one).

import { gapBetween, heightAt, type Gap, type Line } from '../../components/guess/gap.js';
import { guessLine, type Point } from '../../components/guess/guess.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { fixed } from '../../text/format.js';

/** A guess that is asked for: its known point, the answer, and how its axes are shown; SI. */
export interface Asked {
  readonly start: Point;
  readonly answer: Line;
  readonly x: ShownQuantity;
  readonly y: ShownQuantity;
  /** What the answer's height is called in a sentence: 'the vapour holds'. */
  readonly says: string;
}

/** A guess beside its answer. */
export interface Reading {
  readonly guess: Line;
  readonly answer: Line;
  /** Null where nothing was drawn. */
  readonly gap: Gap | null;
}

/** Part of the way a guess must go to be judged as a whole. */
const enough = 0.75;

export function readGuess(points: readonly Point[], { start, answer }: Asked): Reading {
  const guess = guessLine(start, points);
  return { guess, answer, gap: points.length === 0 ? null : gapBetween(guess, answer) };
}

/** The gap in numbers, as one sentence or two. */
export function gapInNumbers({ guess, answer, gap }: Reading, { x, y, says }: Asked): string {
  if (gap === null)
    return 'You drew nothing, so the answer stands alone. Put it away and draw: even a wrong guess helps to remember the right one.';
  const shownGap = gapBetween(shownLine(guess, x, y), shownLine(answer, x, y))!;
  const at = x.withUnit(gap.at);
  const off = `On average it is ${difference(shownGap.meanSize)}\u00a0${y.unit} off`;
  const misses = `Your line misses most at ${at}: you drew ${y.withUnit(heightAt(guess, gap.at))}, ${says} ${y.withUnit(heightAt(answer, gap.at))}.`;
  const end =
    gap.to < endOf(answer) - (1 - enough) * (endOf(answer) - gap.from) ? `; it stops at ${x.withUnit(gap.to)}` : '';
  return `${misses} ${off}${end}.`;
}

/** Whether a guess goes far enough to judge its shape. */
export function goesFar({ answer, gap }: Reading): boolean {
  return gap !== null && gap.to - gap.from >= enough * (endOf(answer) - gap.from);
}

/** Guess minus answer at x, SI; NaN where the guess does not go. */
export function missAt({ guess, answer }: Reading, x: number): number {
  return x > endOf(guess) ? Number.NaN : heightAt(guess, x) - heightAt(answer, x);
}

/** Largest height of a line. */
export function highest({ y }: Line): number {
  return Math.max(...Array.from(y));
}

/** Last x of a line. */
export function endOf({ x }: Line): number {
  return x[x.length - 1]!;
}

function shownLine(line: Line, x: ShownQuantity, y: ShownQuantity): Line {
  return { x: Array.from(line.x, x.toShown), y: Array.from(line.y, y.toShown) };
}

/** '12', '3.4', '0.12': two digits that mean something. */
function difference(size: number): string {
  return fixed(size, size >= 10 ? 0 : size >= 1 ? 1 : 2);
}
