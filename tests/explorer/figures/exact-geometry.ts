// Boxes, points and lines as they are, against which the rule of names is checked.

import type { Box, Point } from '../../../explorer/components/figure/names/geometry.js';

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function away(box: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
}

export function crosses(line: readonly Point[], box: Box): boolean {
  return distance(line, box) === 0;
}

/** Px from a line to a box; 0 where they meet. */
export function distance(line: readonly Point[], box: Box): number {
  let least = Infinity;
  for (let i = 1; i < line.length; i++) least = Math.min(least, segmentToBox(line[i - 1]!, line[i]!, box));
  return least;
}

function segmentToBox(a: Point, b: Point, box: Box): number {
  // Part of the segment within the box, by Liang and Barsky; else the nearest of ends to box and corners to segment.
  let [from, to] = [0, 1];
  let outside = false;
  for (const [p, q] of [
    [a.x - b.x, a.x - box.left],
    [b.x - a.x, box.right - a.x],
    [a.y - b.y, a.y - box.top],
    [b.y - a.y, box.bottom - a.y],
  ] as const) {
    if (p === 0) outside ||= q < 0;
    else if (p < 0) from = Math.max(from, q / p);
    else to = Math.min(to, q / p);
  }
  if (!outside && from <= to) return 0;
  const corners = [box.left, box.right].flatMap((x) => [box.top, box.bottom].map((y) => ({ x, y })));
  return Math.min(away(box, a), away(box, b), ...corners.map((corner) => toSegment(corner, a, b)));
}

function toSegment(p: Point, a: Point, b: Point): number {
  const length = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const t =
    length === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length));
  return Math.hypot(p.x - a.x - t * (b.x - a.x), p.y - a.y - t * (b.y - a.y));
}
