// What a guess of 'what rises from which liquid' says about the reader's idea of boiling. x and y are
// strengths, % vol / 100.

import { heightAt } from '../../components/guess/gap.js';
import type { ShownQuantity } from '../../rows/shown.js';
import { goesFar, type Reading } from './reading.js';

/** How far under the diagonal counts as under it, and where it is looked for. */
const under = 0.02;
const lookedAt = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
/** A mean gain less than this is no gain. */
const noGain = 0.08;
/** As good as pure alcohol, from a liquid this weak. */
const [nearlyPure, weak] = [0.85, 0.1];
/** How far off is off, at the weak end and near the top. */
const offWeak = 0.12;
const offTop = 0.03;

/** One or two sentences on the gap. */
export function vapourWords(reading: Reading, strength: ShownQuantity): string {
  const { guess, answer } = reading;
  if (reading.gap === null) return '';
  if (!goesFar(reading)) return 'Draw it as far as pure alcohol: how it ends is half of the answer.';
  const at = (x: number): string => strength.withUnit(x);
  const gains = lookedAt.map((x) => heightAt(guess, x) - x);
  if (gains.some((gain) => gain < -under)) {
    return 'Where your line runs under the thin diagonal the vapour would be weaker than the liquid it left, and boiling would make the kettle stronger. Below the azeotrope it never does.';
  }
  if (gains.reduce((sum, gain) => sum + gain, 0) / gains.length < noGain) {
    return 'Your line keeps to the diagonal, as if vapour were as strong as the liquid. Then no still could part the two. Alcohol leaves more readily than water, so what rises is stronger than what stays.';
  }
  if (heightAt(guess, weak) > nearlyPure) {
    return `Your line begins near pure alcohol, as if the alcohol boiled off alone and the water waited for its turn. A mixture boils as one: over a liquid of ${at(weak)} the vapour is ${at(heightAt(answer, weak))}, and the rest of it is water.`;
  }
  if (heightAt(guess, weak) < heightAt(answer, weak) - offWeak) {
    return `You expected less of the weak end. That is where one boil does most: from ${at(weak)} it makes ${at(heightAt(answer, weak))}, for water pushes alcohol out where there is little of it.`;
  }
  if (heightAt(guess, 0.9) > heightAt(answer, 0.9) + offTop) {
    return `You expected more of the strong end. From ${at(0.9)} only ${at(heightAt(answer, 0.9))} rises, and a little further the gain is nothing.`;
  }
  return 'You have its shape: steep where alcohol is scarce, nearly flat in the middle, and no gain left at the top.';
}
