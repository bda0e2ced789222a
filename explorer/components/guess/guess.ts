// A guess as plain data: points in SI whose x rises, so that there is one height at each place. It starts
// at a known point, which is not among them, and is drawn by strokes: a stroke replaces what it passes over.

/** A place on a figure, SI of its two axes. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where a guess may go, SI: from the known point on. */
export interface GuessField {
  /** x of the known point, and the last place that is asked for. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Two points nearer than this along x are one; above 0. */
  readonly apart: number;
}

/** A guess after a stroke, and the point of it the next stroke goes on from. */
export interface Stroke {
  readonly points: readonly Point[];
  readonly at: Point;
}

/** `point` moved into the field; never onto the known point, which is no guess. */
export function within({ x, y }: Point, field: GuessField): Point {
  return {
    x: Math.min(Math.max(x, field.x[0] + field.apart), field.x[1]),
    y: Math.min(Math.max(y, field.y[0]), field.y[1]),
  };
}

/**
 * Draws from a point of the guess (null to set a single point) to another place, forwards or backwards.
 * What lies between is replaced. A place that is hardly to the side moves the point up or down instead.
 */
export function drawTo(points: readonly Point[], from: Point | null, place: Point, field: GuessField): Stroke {
  const to = within(place, field);
  if (from !== null && Math.abs(to.x - from.x) < field.apart) {
    const at = { x: from.x, y: to.y };
    return { points: [...points.filter(({ x }) => x !== from.x), at].sort(byX), at };
  }
  const [low, high] = passedOver(from, to, field);
  const kept = points.filter(({ x }) => x === from?.x || x <= low || x >= high);
  return { points: [...kept, to].sort(byX), at: to };
}

/** The whole line, the known point first, as columns. */
export function guessLine(start: Point, points: readonly Point[]): { readonly x: number[]; readonly y: number[] } {
  const all = [start, ...points];
  return { x: all.map(({ x }) => x), y: all.map(({ y }) => y) };
}

function passedOver(from: Point | null, to: Point, { apart }: GuessField): readonly [number, number] {
  if (from === null) return [to.x - apart, to.x + apart];
  return to.x > from.x ? [from.x, to.x + apart] : [to.x - apart, from.x];
}

function byX(a: Point, b: Point): number {
  return a.x - b.x;
}
