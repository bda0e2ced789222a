// Names right of the plot, on a wide page: in the gap at the ends of curves, and in the margin after the lines that run
// out to it. They keep the order of what they name, stay a line apart, and clear of the lines that cross the gap.

import { lineHeight } from './places.js';

export interface MarginWanted {
  readonly key: string;
  /** Where it would stand best, px. */
  readonly y: number;
  /** Lines of words: 1, or 2 with a note. */
  readonly lines: 1 | 2;
}

/** Px of the second line under the first. */
export const noteBelow = 20;
/** Px a name at the end of a curve may stand from that end; farther away it stands in the plot. */
const farthest = 20;
const clear = 10;

/** Heights in the margin column, the lower ones moved down where they would touch. */
export function spreadMargin(names: readonly MarginWanted[]): Map<string, number> {
  const heights = new Map<string, number>();
  let free = -Infinity;
  for (const name of [...names].sort((a, b) => a.y - b.y)) {
    const y = Math.max(name.y, free);
    heights.set(name.key, y);
    free = y + lineHeight + (name.lines - 1) * noteBelow;
  }
  return heights;
}

/** Heights in the gap, clear of `crossing` lines; a name that finds none near its curve's end is not in it. */
export function spreadEnds(names: readonly MarginWanted[], crossing: readonly number[]): Map<string, number> {
  const heights = new Map<string, number>();
  let free = -Infinity;
  for (const name of [...names].sort((a, b) => a.y - b.y)) {
    for (let off = 0; off <= farthest; off++) {
      const y = [name.y - off, name.y + off].find(
        (at) => at >= free && crossing.every((line) => Math.abs(line - at) >= clear),
      );
      if (y === undefined) continue;
      heights.set(name.key, y);
      free = y + lineHeight;
      break;
    }
  }
  return heights;
}
