// What a guess of 'strength by plates at one reflux' says about the reader's idea of the ceiling. x counts
// plates, y is strength, % vol / 100.

import { heightAt } from '../../components/guess/gap.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { endOf, goesFar, highest, type Reading } from './reading.js';

/** How far off is off, at the end and on the way. */
const off = 0.004;
const near = 0.004;

/** To a line that passes the azeotrope. */
export function overTheCeiling(azeotrope: number, strength: ShownQuantity): string {
  return `Your line goes over the azeotrope at ${strength.withUnit(azeotrope)}. No column does that: there the vapour is as strong as the liquid it rises from, so one plate more, or a hundred, has nothing left to add.`;
}

/** One or two sentences on the gap; `reflux` is the ratio in words, '3 : 1'. */
export function ceilingWords(
  reading: Reading,
  azeotrope: number | null,
  reflux: string,
  strength: ShownQuantity,
): string {
  const { guess, answer, gap } = reading;
  if (gap === null) return '';
  if (azeotrope !== null && highest(guess) > azeotrope) return overTheCeiling(azeotrope, strength);
  if (!goesFar(reading)) return 'Draw it on to the last plate: how it ends is the question.';
  const [first, last] = [gap.from, endOf(answer)];
  const miss = heightAt(guess, last) - heightAt(answer, last);
  if (heightAt(guess, last) < heightAt(guess, first) - off) {
    return 'Your line falls. A plate that adds nothing takes nothing away either: at the same reflux the spout does not get weaker.';
  }
  if (miss > off) {
    return `You kept under the ceiling, but let the last plates go on adding. At ${reflux} they do not: somewhere in the column liquid and vapour already agree, and beyond that only more reflux lifts the spout, to the azeotrope at most.`;
  }
  if (miss < -off) {
    return `You expected the plates to give up earlier. At ${reflux} they carry on to ${strength.withUnit(heightAt(answer, last))}, and then stop for good.`;
  }
  return gap.meanSize <= near
    ? 'You have it: a little more from each, and then nothing more, well under pure alcohol.'
    : 'You have where it ends. On the way there the answer bends sooner or later than your line, but it stops where you said.';
}
