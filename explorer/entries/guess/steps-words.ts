// What a guess of 'strength plate by plate' says about the reader's idea of a plate. x counts ideal plates,
// y is strength, % vol / 100.

import { heightAt } from '../../components/guess/gap.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { overTheCeiling } from './ceiling-words.js';
import { endOf, goesFar, highest, type Reading } from './reading.js';

/** The second half adds at least this part of what the first adds: equal steps, or nearly. */
const nearlyEqual = 0.5;
/** How far off is off. */
const off = 0.05;
const near = 0.012;

/** One or two sentences on the gap. `azeotrope` is its strength, or null. */
export function stepsWords(reading: Reading, azeotrope: number | null, strength: ShownQuantity): string {
  const { guess, answer, gap } = reading;
  if (gap === null) return '';
  const at = (x: number): string => strength.withUnit(heightAt(answer, x));
  if (azeotrope !== null && highest(guess) > azeotrope) return overTheCeiling(azeotrope, strength);
  if (!goesFar(reading)) return 'Draw it on to the last plate: how it ends is half of the answer.';
  const [first, last] = [gap.from, endOf(answer)];
  const middle = (first + last) / 2;
  const [early, late] = [
    heightAt(guess, middle) - heightAt(guess, first),
    heightAt(guess, last) - heightAt(guess, middle),
  ];
  if (late > nearlyEqual * Math.max(early, 0) && late > 0) {
    return `Your plates add nearly equal steps. But a plate can only do what one boil does from where it stands: the first lifts ${at(first)} to ${at(first + 1)}, the last ${at(last - 1)} to ${at(last)}.`;
  }
  if (heightAt(guess, first + 1) < heightAt(answer, first + 1) - off) {
    return `You expected less of the first plate. It boils what the kettle has already made strong, and lifts ${at(first)} to ${at(first + 1)} in one go.`;
  }
  if (gap.meanSize <= near) return 'You have it: a great step first, and then less and less.';
  return gap.mean > 0
    ? 'You gave the plates more than they can do. Each starts where the last one ended, on the flatter part of the curve, and has less to gain.'
    : 'You gave the plates less than they do. They do slow down, but higher up than you drew.';
}
