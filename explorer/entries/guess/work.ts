// What has been drawn, as it stands in a notebook: read without trust, since it may come from a file.

import { isRecord } from '../../state/plain-record.js';
import type { GuessState } from '../../components/guess/kp-guess.js';
import type { Point } from '../../components/guess/guess.js';

/** Nothing drawn, the answer kept back. */
export const untouched: GuessState = { points: [], answered: false };

/** The work on a guess; untouched where it is none. */
export function guessWork(work: unknown): GuessState {
  if (!isRecord(work) || !Array.isArray(work.points) || !work.points.every(isPlace)) return untouched;
  const points: readonly Point[] = work.points;
  const rises = points.every(({ x }, k) => k === 0 || x > points[k - 1]!.x);
  return rises ? { points, answered: work.answered === true } : untouched;
}

function isPlace(value: unknown): value is Point {
  return isRecord(value) && Number.isFinite(value.x) && Number.isFinite(value.y);
}
