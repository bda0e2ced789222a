// What a guess of 'time by reflux ratio' says about the reader's idea of what reflux costs. x is the ratio,
// y is a time, s.

import { heightAt } from '../../components/guess/gap.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { endOf, goesFar, type Reading } from './reading.js';

/** Less than this part of the true rise is flat. */
const flat = 0.3;
/** A bend of more than this part of the guess's own rise is a bend. */
const bent = 0.12;
/** Slope within this part of the true one is right. */
const right = 0.15;

/** One or two sentences on the gap. */
export function refluxWords(reading: Reading, time: ShownQuantity): string {
  const { guess, answer, gap } = reading;
  if (gap === null) return '';
  if (!goesFar(reading)) return 'Draw it on to the highest ratio: how it ends is the question.';
  const [first, last] = [gap.from, Math.min(endOf(answer), endOf(guess))];
  const rise = heightAt(guess, last) - heightAt(guess, first);
  const trueRise = heightAt(answer, last) - heightAt(answer, first);
  const takes = `${time.withUnit(heightAt(answer, last))} instead of ${time.withUnit(heightAt(answer, first))}`;
  if (rise < 0)
    return `Your line falls, as if sending spirit back made the run shorter. All that is sent back has to be boiled again, with the same heat: it takes ${takes}.`;
  if (rise < flat * trueRise) {
    return `Your line stays almost flat, as if reflux cost nothing. All that is sent back has to be boiled again, with the same heat: it takes ${takes}.`;
  }
  const chord = (heightAt(guess, first) + heightAt(guess, last)) / 2;
  const bend = (heightAt(guess, (first + last) / 2) - chord) / rise;
  if (bend < -bent)
    return 'Your line grows steeper and steeper. The answer is straight: each further part sent back costs one more part boiled, the tenth as much as the second.';
  if (bend > bent)
    return 'Your line levels off, as if the later parts were cheaper. The answer is straight: each further part sent back costs one more part boiled, the tenth as much as the second.';
  if (Math.abs(rise / trueRise - 1) > right) {
    const which = rise > trueRise ? 'steeper' : 'gentler';
    return `You have its shape: a straight line, for each further part sent back costs one more part boiled. Yours is ${which} than the answer.`;
  }
  return 'You have it: a straight line, for each further part sent back costs one more part boiled.';
}
