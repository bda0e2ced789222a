// In which order lines are computed: each after those it uses. Lines that need each other go in a circle.

/** What order needs to know of a line. */
export interface Dependent {
  readonly id: string;
  /** Lines it uses, by id. */
  readonly needs: readonly string[];
}

export interface Order {
  /** Ids, each after those it needs; those in or behind a circle are left out. */
  readonly order: readonly string[];
  /** By id of a line in a circle: the ids of the circle, from that line on. */
  readonly circles: ReadonlyMap<string, readonly string[]>;
}

export function orderOf(lines: readonly Dependent[]): Order {
  const needs = new Map(lines.map((line) => [line.id, line.needs]));
  const order: string[] = [];
  const circles = new Map<string, readonly string[]>();
  const done = new Map<string, boolean>(); // whether it can be computed
  const path: string[] = [];

  // Recursion is as deep as the longest chain of lines, of which there are few hundred.
  const visit = (id: string): boolean => {
    const known = done.get(id);
    if (known !== undefined) return known;
    const start = path.indexOf(id);
    if (start >= 0) {
      const circle = path.slice(start);
      circle.forEach((member, k) => {
        if (!circles.has(member)) circles.set(member, [...circle.slice(k), ...circle.slice(0, k)]);
      });
      return false;
    }
    path.push(id);
    const able = (needs.get(id) ?? []).map(visit).every(Boolean);
    path.pop();
    // One met again on the way round is settled by the line that began the circle.
    done.set(id, able && !circles.has(id));
    if (able && !circles.has(id)) order.push(id);
    return able && !circles.has(id);
  };
  lines.forEach(({ id }) => visit(id));
  return { order, circles };
}
