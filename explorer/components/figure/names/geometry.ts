// Points, boxes and lines in px, y downwards; and a line as the columns of the plot know it, so that asking whether
// words touch it costs a few comparisons.

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Px of one column. */
const columnWidth = 4;

/** Whether boxes come nearer than this to each other, sideways and up and down. */
export function meet(a: Box, b: Box, beside: number, over: number): boolean {
  return a.left < b.right + beside && b.left < a.right + beside && a.top < b.bottom + over && b.top < a.bottom + over;
}

/** Px from a box to a point; 0 inside. */
export function distanceToPoint(box: Box, { x, y }: Point): number {
  const dx = Math.max(box.left - x, 0, x - box.right);
  const dy = Math.max(box.top - y, 0, y - box.bottom);
  return Math.hypot(dx, dy);
}

/** A line in a plot: for each column of px the lowest and highest y it has there; NaN breaks it. */
export class PlotLine {
  readonly #top: Float64Array;
  readonly #bottom: Float64Array;
  readonly #left: number;
  readonly #right: number;

  /** Only what stands inside the frame counts. */
  constructor(points: readonly Point[], width: number, height: number) {
    const count = Math.max(1, Math.ceil(width / columnWidth) + 1);
    this.#top = new Float64Array(count).fill(Infinity);
    this.#bottom = new Float64Array(count).fill(-Infinity);
    let [left, right] = [Infinity, -Infinity];
    for (let i = 0; i < points.length; i++) {
      const a = points[Math.max(0, i - 1)]!;
      const b = points[i]!;
      if (Number.isNaN(b.y) || Number.isNaN(b.x)) continue;
      this.#mark(Number.isNaN(a.y) || Number.isNaN(a.x) ? b : a, b, width, height);
    }
    for (let c = 0; c < count; c++) {
      if (this.#top[c]! > this.#bottom[c]!) continue;
      left = Math.min(left, c * columnWidth);
      right = Math.max(right, Math.min(width, (c + 1) * columnWidth));
    }
    this.#left = left;
    this.#right = right;
  }

  /** Columns it runs over, px; empty where nothing of it is seen. */
  get span(): readonly [number, number] {
    return [this.#left, this.#right];
  }

  /** Its highest and lowest place between two x; undefined where it has none. */
  between(left: number, right: number): { readonly top: number; readonly bottom: number } | undefined {
    let [top, bottom] = [Infinity, -Infinity];
    const [from, to] = this.#columns(left, right);
    for (let c = from; c <= to; c++) {
      if (this.#top[c]! < top) top = this.#top[c]!;
      if (this.#bottom[c]! > bottom) bottom = this.#bottom[c]!;
    }
    return top > bottom ? undefined : { top, bottom };
  }

  /** Whether it comes nearer to a box than `clear`, px. */
  touches(box: Box, clear: number): boolean {
    const [from, to] = this.#columns(box.left - clear, box.right + clear);
    for (let c = from; c <= to; c++) {
      if (this.#top[c]! <= box.bottom + clear && this.#bottom[c]! >= box.top - clear) return true;
    }
    return false;
  }

  /** Px from a box, at most a column too little; Infinity where nothing of it is seen. */
  distance(box: Box): number {
    let nearest = Infinity;
    for (let c = 0; c < this.#top.length; c++) {
      if (this.#top[c]! > this.#bottom[c]!) continue;
      const dx = Math.max(box.left - (c + 1) * columnWidth, 0, c * columnWidth - box.right);
      if (dx >= nearest) continue;
      const dy = Math.max(box.top - this.#bottom[c]!, 0, this.#top[c]! - box.bottom);
      nearest = Math.min(nearest, Math.hypot(dx, dy));
    }
    return nearest;
  }

  #columns(left: number, right: number): [number, number] {
    const from = Math.max(0, Math.floor(left / columnWidth));
    return [from, Math.min(this.#top.length - 1, Math.floor(right / columnWidth))];
  }

  #mark(a: Point, b: Point, width: number, height: number): void {
    const [p, q] = a.x <= b.x ? [a, b] : [b, a];
    if (q.x < 0 || p.x > width) return;
    const slope = q.x > p.x ? (q.y - p.y) / (q.x - p.x) : 0;
    const [from, to] = this.#columns(Math.max(0, p.x), Math.min(width, q.x));
    for (let c = from; c <= to; c++) {
      const y0 = p.x < q.x ? p.y + slope * (Math.max(p.x, c * columnWidth) - p.x) : p.y;
      const y1 = p.x < q.x ? p.y + slope * (Math.min(q.x, (c + 1) * columnWidth) - p.x) : q.y;
      const [top, bottom] = y0 < y1 ? [y0, y1] : [y1, y0];
      if (bottom < -1 || top > height + 1) continue;
      if (top < this.#top[c]!) this.#top[c] = Math.max(top, -1);
      if (bottom > this.#bottom[c]!) this.#bottom[c] = Math.min(bottom, height + 1);
    }
  }
}
