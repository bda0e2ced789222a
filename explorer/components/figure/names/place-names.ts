// The one rule of where words stand in a plot. A name overlaps no other name, no curve, no point and not the frame; it
// is nearer to the curve it names than to any other. Of the places that are so, the one nearest to where it would stand
// best is taken. Names are placed from the top down, so that the lower one gives way; where no place beside its curve is
// free, a name stands in the nearest free place with a thin line to what it names.

import { distanceToPoint, meet, type Box, type PlotLine, type Point } from './geometry.js';
import { boxAt, heartOf, lineHeight, placesOf, type Place } from './places.js';
import type { Around, PlacedName, WantedName } from './wanted.js';

/** Px kept free between words side by side, to curves, and to the middle of points. */
const besideApart = 8;
const clear = 2;
const clearOfPoint = 5.5;
/** Px by which a name is nearer to its own curve than to any other. */
const nearer = 4;
/** Px between the places tried for a name on a leader, and how far it may stand. */
const raster = { across: 16, down: 8 };
const longestLeader = 150;

export function placeNames(names: readonly WantedName[], around: Around): PlacedName[] {
  const order = [...names].sort(
    (a, b) => Number(a.optional) - Number(b.optional) || heartOf(a).y - heartOf(b).y || (a.key < b.key ? -1 : 1),
  );
  const placed: PlacedName[] = [];
  for (const name of order) {
    const taken = placed.map(({ box }) => box);
    const place = beside(name, around, taken) ?? (name.optional ? undefined : onLeader(name, around, taken));
    if (place !== undefined) placed.push(place);
  }
  return placed;
}

/** The cheapest free place beside what is named; where the cursor takes them all, as if it were not there. */
function beside(name: WantedName, around: Around, taken: readonly Box[]): PlacedName | undefined {
  let best: Place | undefined;
  let behindCursor: Place | undefined;
  for (const { places, laterCost } of placesOf(name, around)) {
    for (const place of places.sort((a, b) => a.cost - b.cost)) {
      if (place.cost >= (best?.cost ?? Infinity)) break;
      if (!isFree(place.box, name, around, taken)) continue;
      if (around.passing.some((line) => line.touches(place.box, clear))) behindCursor ??= place;
      else best = place;
    }
    if (best !== undefined && best.cost <= laterCost) break;
  }
  const place = best ?? behindCursor;
  return place && standing(name, place, null);
}

function isFree(box: Box, name: WantedName, around: Around, taken: readonly Box[]): boolean {
  return isEmpty(box, around, taken) && belongs(box, name, around);
}

/** Whether nothing stands there. */
function isEmpty(box: Box, { width, height, lines, strokes, points }: Around, taken: readonly Box[]): boolean {
  if (box.left < 0 || box.right > width || box.top < 0 || box.bottom > height) return false;
  if (taken.some((other) => meet(box, other, besideApart, 0))) return false;
  if (lines.some((line) => line.touches(box, clear)) || strokes.some((line) => line.touches(box, clear))) return false;
  return points.every((point) => distanceToPoint(box, point) >= clearOfPoint);
}

/** Whether the reader will take it for the name of what it names. */
function belongs(box: Box, { anchor }: WantedName, { lines, points }: Around): boolean {
  if (anchor.kind === 'curve' || anchor.kind === 'level') {
    const own = anchor.line.distance(box) + nearer;
    return lines.every((line) => line === anchor.line || line.distance(box) >= own);
  }
  if (anchor.kind === 'point') {
    const own = distanceToPoint(box, anchor.at);
    return points.every(
      (point) => (point.x === anchor.at.x && point.y === anchor.at.y) || distanceToPoint(box, point) >= own,
    );
  }
  return true;
}

/** The nearest free place whose leader crosses neither words nor another curve. */
function onLeader(name: WantedName, around: Around, taken: readonly Box[]): PlacedName | undefined {
  const heart = heartOf(name);
  const own = name.anchor.kind === 'curve' || name.anchor.kind === 'level' ? name.anchor.line : null;
  const tries: Place[] = [];
  for (let top = 0; top + lineHeight <= around.height; top += raster.down) {
    for (let left = 0; left + name.width <= around.width; left += raster.across) {
      const box = boxAt(left, top + lineHeight / 2, name.width);
      const cost = distanceToPoint(box, heart);
      if (cost > clearOfPoint && cost < longestLeader) tries.push({ box, anchor: 'start', cost });
    }
  }
  tries.sort((a, b) => a.cost - b.cost);
  for (const place of tries) {
    if (!isEmpty(place.box, around, taken)) continue;
    const leader = leaderTo(place.box, heart);
    if (taken.some((box) => crossesBox(leader, box)) || crossesLine(leader, around.lines, own)) continue;
    return standing(name, place, leader);
  }
  return undefined;
}

function leaderTo(box: Box, heart: Point): readonly [Point, Point] {
  const from = {
    x: Math.min(Math.max(heart.x, box.left), box.right),
    y: heart.y > box.bottom ? box.bottom - 2 : heart.y < box.top ? box.top + 2 : (box.top + box.bottom) / 2,
  };
  return [from, heart];
}

function along([a, b]: readonly [Point, Point], most: number): Box[] {
  const steps = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 4));
  return Array.from({ length: steps }, (_, k) => {
    const share = (most * k) / steps;
    const [x, y] = [a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)];
    return { left: x, right: x, top: y, bottom: y };
  });
}

function crossesBox(leader: readonly [Point, Point], box: Box): boolean {
  return along(leader, 1).some((point) => meet(point, box, 1, 1));
}

function crossesLine(leader: readonly [Point, Point], lines: readonly PlotLine[], own: PlotLine | null): boolean {
  return along(leader, 0.97).some((point) => lines.some((line) => line !== own && line.touches(point, 1)));
}

function standing(name: WantedName, { box, anchor }: Place, leader: PlacedName['leader']): PlacedName {
  const x = anchor === 'start' ? box.left : anchor === 'end' ? box.right : (box.left + box.right) / 2;
  return { name, x, y: (box.top + box.bottom) / 2, anchor, box, leader };
}
