// A name that was probably meant, among those that are known.

/** The nearest of `known` to `name`, if it is near enough to be meant. */
export function nearestName(name: string, known: Iterable<string>): string | null {
  const lower = name.toLowerCase();
  let best: string | null = null;
  let least = Infinity;
  for (const candidate of known) {
    const other = candidate.toLowerCase();
    const distance = other === lower ? 0.1 : apart(lower, other);
    const allowed = Math.min(3, Math.floor(Math.max(lower.length, other.length) / 3));
    // A name that was begun and not finished is meant too, if it is long enough to say anything.
    const begun = lower.length >= 4 && other.startsWith(lower) ? 0.5 + (other.length - lower.length) / 100 : Infinity;
    const near = Math.min(distance <= allowed ? distance : Infinity, begun);
    if (near < least) {
      best = candidate;
      least = near;
    }
  }
  return best;
}

/** Letters to change, add, leave out or swap with their neighbour to get from one word to the other. */
function apart(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}
