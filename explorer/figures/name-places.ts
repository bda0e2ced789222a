// Where the name of a curve may stand, best place first: right of the bend where a curve falls
// steeply, above or below it where it is shallow.

import { pixelsPerUnit } from './axes.js';
import type { Axis, NamePlace } from './figure.js';
import type { Column } from '../rows/shown.js';

/** Px of fall per px of run from which a curve counts as steep. */
const steep = 0.45;

/** A curve in shown units inside its plot rectangle. */
export interface PlacedCurve {
  readonly x: Column;
  readonly y: Column;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  readonly width: number;
  readonly height: number;
}

/** Places for the name of a curve; `prefer` says which side of a shallow curve comes first. */
export function curvePlaces(curve: PlacedCurve, prefer: 'bend' | 'above' | 'below'): NamePlace[] {
  const bend = bendOf(curve);
  const atBend = bend === null ? [] : [rightOf(curve, bend), rightOf(curve, bend + (curve.x.length - bend) / 4)];
  const above = [0.3, 0.45, 0.15, 0.6, 0.75, 0.88].map((share) => beside(curve, share, -16));
  const below = [0.2, 0.35, 0.5, 0.65, 0.8, 0.9].map((share) => beside(curve, share, 18));
  if (prefer === 'bend') return [...atBend, ...above, ...below];
  return prefer === 'above' ? [...above, ...atBend, ...below] : [...below, ...above, ...atBend];
}

/** Words that end at the right end of a level line, `dy` px below it. */
export function rightEnd(axis: Axis, y: number, dy: number): NamePlace {
  return { x: axis.domain[1], y, dx: 0, dy, anchor: 'end' };
}

/** Words over the left, middle or right part of a level line. */
export function overLine(axis: Axis, y: number): NamePlace[] {
  const [low, high] = axis.domain;
  return [
    { x: low, y, dx: 6, dy: -12, anchor: 'start' },
    { x: low + (high - low) * 0.35, y, dx: 0, dy: -12, anchor: 'start' },
    { x: high, y, dx: 0, dy: -12, anchor: 'end' },
  ];
}

// The first row from which the curve falls more than it runs on, in px; null for a shallow curve.
function bendOf(curve: PlacedCurve): number | null {
  const across = pixelsPerUnit(curve.xAxis, curve.width);
  const down = pixelsPerUnit(curve.yAxis, curve.height);
  const reach = curve.width / 24;
  for (let i = 0, j = 0; i < curve.x.length; i++) {
    while (j < curve.x.length - 1 && (curve.x[j]! - curve.x[i]!) * across < reach) j++;
    const run = (curve.x[j]! - curve.x[i]!) * across;
    if (run < reach * 0.8 || curve.y[j]! < curve.yAxis.domain[0]) return null;
    if ((curve.x[i]! - curve.xAxis.domain[0]) * across > reach && (curve.y[i]! - curve.y[j]!) * down > steep * run)
      return i;
  }
  return null;
}

function rightOf(curve: PlacedCurve, row: number): NamePlace {
  const i = Math.min(Math.round(row), curve.x.length - 1);
  return { x: curve.x[i]!, y: curve.y[i]!, dx: 10, dy: -8, anchor: 'start' };
}

function beside(curve: PlacedCurve, share: number, dy: number): NamePlace {
  const [low, high] = curve.xAxis.domain;
  const x = low + share * (high - low);
  let i = 0;
  while (i < curve.x.length - 1 && curve.x[i]! < x) i++;
  return { x: curve.x[i]!, y: curve.y[i]!, dx: 0, dy, anchor: 'middle' };
}
