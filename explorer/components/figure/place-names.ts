// Words at curves: each name takes the first of its places that crosses no curve and no other name;
// names stay at least 16 px apart, and where nothing is free the lower one gives way.

import type { CurveName, Mark, MarginName, NamePlace } from '../../figures/figure.js';

/** Least distance of two lines of words, px. */
export const nameApart = 16;
const besideApart = 8;
const clearance = 2;
/** Points of a smooth curve that names are tried against. */
const curvePoints = 60;

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
export interface PlacedName {
  readonly name: CurveName;
  readonly x: number;
  readonly y: number;
  readonly anchor: NamePlace['anchor'];
}
export interface Surroundings {
  readonly width: number;
  readonly height: number;
  /** Lines to keep clear of, in px. */
  readonly lines: readonly (readonly Point[])[];
  /** Words that stand already. */
  readonly taken: readonly Box[];
  readonly toPx: (place: Point) => Point;
  readonly measure: (text: string, bold: boolean) => number;
}

export function placeNames(names: readonly CurveName[], around: Surroundings): PlacedName[] {
  const taken: Box[] = [...around.taken];
  const placed: PlacedName[] = [];
  for (const name of names) {
    const width = around.measure(name.text, name.bold);
    let best: { box: Box; place: NamePlace; hits: number } | null = null;
    for (const place of name.places) {
      const box = boxOf(around.toPx(place), place, width);
      const hits = countHits(box, around, taken);
      if (best === null || hits < best.hits) best = { box, place, hits };
      if (hits === 0) break;
    }
    if (best === null || (name.optional && best.hits > 0)) continue;
    const box = giveWay(best.box, taken);
    taken.push(box);
    const { anchor } = best.place;
    const x = anchor === 'start' ? box.left : anchor === 'end' ? box.right : (box.left + box.right) / 2;
    placed.push({ name, x, y: (box.top + box.bottom) / 2, anchor });
  }
  return placed;
}

/** Heights of names in one margin column, from top to bottom, the lower ones moved down where they would touch. */
export function spreadMargin(names: readonly MarginName[], toPx: (y: number) => number): Map<string, number> {
  const heights = new Map<string, number>();
  for (const at of ['margin', 'end'] as const) {
    let free = -Infinity;
    const column = names.filter((name) => name.at === at).sort((a, b) => toPx(a.y) - toPx(b.y));
    for (const name of column) {
      const y = Math.max(toPx(name.y), free);
      heights.set(name.key, y);
      free = y + nameApart + (name.note === '' ? 0 : 20);
    }
  }
  return heights;
}

/** Lines of a mark that names keep clear of. */
export function linesOf(mark: Mark, toPx: (place: Point) => Point, width: number): Point[][] {
  switch (mark.kind) {
    case 'curve':
      return [sampled(mark.x, mark.y, mark.shape === 'straight' ? Infinity : curvePoints).map(toPx)];
    case 'level': {
      const { y } = toPx({ x: 0, y: mark.y });
      return [
        [
          { x: 0, y },
          { x: width, y },
        ],
      ];
    }
    case 'measure':
      return [[toPx({ x: mark.to, y: mark.dropFrom }), toPx({ x: mark.to, y: mark.at })]];
    case 'box': {
      const corner = (i: 0 | 1, j: 0 | 1): Point => toPx({ x: mark.x[i], y: mark.y[j] });
      return [[corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1), corner(0, 0)]];
    }
    case 'points':
      return Array.from(mark.x, (x, i) => toPx({ x, y: mark.y[i]! })).map((at) => [at, at]);
    case 'warning': {
      const at = toPx(mark);
      return [[at, at]];
    }
    case 'band':
    case 'bracket':
    case 'dot':
    case 'hatch':
      return [];
  }
}

function sampled(x: ArrayLike<number>, y: ArrayLike<number>, most: number): Point[] {
  const step = Math.max(1, Math.floor(x.length / most));
  const points: Point[] = [];
  for (let i = 0; i < x.length; i += step) points.push({ x: x[i]!, y: y[i]! });
  const last = x.length - 1;
  if (last >= 0 && last % step !== 0) points.push({ x: x[last]!, y: y[last]! });
  return points;
}

function boxOf(at: Point, place: NamePlace, width: number): Box {
  const x = at.x + place.dx;
  const y = at.y + place.dy;
  const left = place.anchor === 'start' ? x : place.anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - nameApart / 2, bottom: y + nameApart / 2 };
}

function countHits(box: Box, around: Surroundings, taken: readonly Box[]): number {
  let hits = 0;
  if (box.left < -1 || box.right > around.width + 1 || box.top < 0 || box.bottom > around.height) hits += 3;
  for (const other of taken) if (overlap(box, other)) hits += 2;
  for (const line of around.lines) if (crosses(line, box)) hits += 1;
  return hits;
}

function giveWay(box: Box, taken: readonly Box[]): Box {
  let moved = box;
  for (let again = true, turns = 0; again && turns < taken.length; turns++) {
    again = false;
    for (const other of taken) {
      if (!overlap(moved, other)) continue;
      const down = other.bottom - moved.top;
      moved = { ...moved, top: moved.top + down, bottom: moved.bottom + down };
      again = true;
    }
  }
  return moved;
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right + besideApart && b.left < a.right + besideApart && a.top < b.bottom && b.top < a.bottom;
}

function crosses(line: readonly Point[], box: Box): boolean {
  const left = box.left - clearance;
  const right = box.right + clearance;
  const top = box.top - clearance;
  const bottom = box.bottom + clearance;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1]!;
    const b = line[i]!;
    if ((a.x < left && b.x < left) || (a.x > right && b.x > right)) continue;
    if ((a.y < top && b.y < top) || (a.y > bottom && b.y > bottom)) continue;
    // The part of the segment within the box's width; its heights decide.
    const dx = b.x - a.x;
    const from = dx === 0 ? 0 : clamp01(((dx > 0 ? left : right) - a.x) / dx);
    const to = dx === 0 ? 1 : clamp01(((dx > 0 ? right : left) - a.x) / dx);
    const y0 = a.y + from * (b.y - a.y);
    const y1 = a.y + to * (b.y - a.y);
    if (Math.max(y0, y1) >= top && Math.min(y0, y1) <= bottom) return true;
  }
  return false;
}

function clamp01(value: number): number {
  return Math.min(1, Math.max(0, value));
}
