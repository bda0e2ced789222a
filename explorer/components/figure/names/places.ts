// Where the name of a thing may stand, with what each place costs in px: how far from where it would stand best.

import type { Box, PlotLine, Point } from './geometry.js';
import type { Around, PlacedName, WantedName } from './wanted.js';

export interface Place {
  readonly box: Box;
  readonly anchor: PlacedName['anchor'];
  readonly cost: number;
}

/** Height of a line of words with the room it needs, px: names stay this far apart. */
export const lineHeight = 16;
/** Px between words and the curve, level or point they name. */
const fromCurve = 5;
const fromLevel = 4;
const fromPoint = 9;
/** Px between tries along a curve. */
const stride = 20;
/** Px right or left of a steep curve, and up or down from it. */
const besideCurve = [8, 14, 22].flatMap((gap) => [0, -8, 8].map((dy) => [gap, dy] as const));
/** What another side than the wanted costs, and a px along the curve. */
const otherSide = 12;
const perPx = 0.2;

/** Some of the places, and what all later ones cost at least: so that not all of them need be tried. */
export interface Batch {
  readonly places: Place[];
  readonly laterCost: number;
}

export function* placesOf({ anchor, width }: WantedName, around: Around): Generator<Batch> {
  switch (anchor.kind) {
    case 'curve':
      yield* alongCurve(anchor, width, around);
      return;
    case 'level':
      yield { places: alongLevel(anchor, width, around), laterCost: Infinity };
      return;
    case 'point':
      yield { places: aboutPoint(anchor.at, anchor.side, width), laterCost: Infinity };
      return;
    case 'stretch':
      yield { places: overStretch(anchor, width, around), laterCost: Infinity };
      return;
    case 'box':
      yield { places: aboutBox(anchor.box, width), laterCost: Infinity };
  }
}

/** The place that is named: where a leader ends, and what decides which of two names is the lower. */
export function heartOf({ anchor }: WantedName): Point {
  switch (anchor.kind) {
    case 'curve': {
      const [first, last] = anchor.line.span;
      return onLine(anchor.line, Math.min(Math.max(anchor.x, first + 1), last - 3));
    }
    case 'level': {
      const [left, right] = anchor.line.span;
      return { x: anchor.side === 'left' ? left + 40 : right - 40, y: anchor.y };
    }
    case 'point':
      return anchor.at;
    case 'stretch':
      return { x: (anchor.from + anchor.to) / 2, y: anchor.y };
    case 'box':
      return { x: anchor.box.right, y: anchor.box.top };
  }
}

function* alongCurve(
  { line, x, side }: Extract<WantedName['anchor'], { kind: 'curve' }>,
  width: number,
  around: Around,
): Generator<Batch> {
  const [first, last] = line.span;
  const best = Math.min(Math.max(x, first), last);
  for (let k = 0; k * stride <= last - first + stride; k++) {
    const along = perPx * k * stride;
    const places: Place[] = [];
    for (const at of k === 0 ? [best] : [best - k * stride, best + k * stride]) {
      if (at < first || at > last) continue;
      const middle = Math.min(Math.max(at, width / 2), around.width - width / 2);
      const over = line.between(middle - width / 2 - 2, middle + width / 2 + 2);
      if (over !== undefined) {
        // Where the curve is steep, words above or below it touch it with one end only.
        const slant = along + 0.15 * (over.bottom - over.top);
        const cost = (wanted: string): number => slant + (side === wanted ? 0 : otherSide);
        places.push(
          { ...centred(middle, over.top - fromCurve - lineHeight / 2, width), cost: cost('above') },
          { ...centred(middle, over.bottom + fromCurve + lineHeight / 2, width), cost: cost('below') },
        );
      }
      const { y } = onLine(line, at);
      for (const [gap, dy] of besideCurve) {
        const cost = along + 0.3 * (gap - 8) + 0.2 * Math.abs(dy);
        places.push({ ...starting(at + gap, y + dy, width), cost: cost + (side === 'right' ? 0 : otherSide) });
        places.push({ ...ending(at - gap, y + dy, width), cost: cost + (side === 'left' ? 0 : otherSide) });
      }
    }
    yield { places, laterCost: along + perPx * stride };
  }
}

function alongLevel(
  { line, y, side }: Extract<WantedName['anchor'], { kind: 'level' }>,
  width: number,
  around: Around,
): Place[] {
  const [first, last] = line.span;
  const [left, right] = [Math.max(first, 0) + 6, Math.min(last, around.width)];
  const places: Place[] = [];
  for (const dy of [-fromLevel - lineHeight / 2, fromLevel + lineHeight / 2]) {
    const under = dy > 0 ? 6 : 0;
    for (let k = 0; left + k * stride + width <= right; k++) {
      const away = k * stride;
      const cost = under + perPx * away;
      places.push(
        side === 'left'
          ? { ...starting(left + away, y + dy, width), cost }
          : { ...ending(right - away, y + dy, width), cost },
      );
    }
  }
  return places;
}

function aboutPoint({ x, y }: Point, side: 'left' | 'right' | 'above' | 'below', width: number): Place[] {
  const places: Place[] = [];
  const cost = (wanted: string, extra: number): number => (side === wanted ? 0 : otherSide) + extra;
  for (const gap of [fromPoint, fromPoint + 6]) {
    const far = gap - fromPoint;
    for (const dy of [0, -6, 6, -12, 12]) {
      const off = far + 0.4 * Math.abs(dy);
      places.push({ ...starting(x + gap, y + dy, width), cost: cost('right', off) });
      places.push({ ...ending(x - gap, y + dy, width), cost: cost('left', off) });
    }
    for (const share of [0, 0.25, -0.25, 0.5, -0.5]) {
      const off = far + 12 * Math.abs(share);
      const middle = x + share * width;
      places.push({ ...centred(middle, y - gap - lineHeight / 2, width), cost: cost('above', off) });
      places.push({ ...centred(middle, y + gap + lineHeight / 2, width), cost: cost('below', off) });
    }
  }
  return places;
}

/** Over a bracket or a measure line: in its middle, then pushed along it, then higher. */
function overStretch(
  { from, to, y }: Extract<WantedName['anchor'], { kind: 'stretch' }>,
  width: number,
  around: Around,
): Place[] {
  const places: Place[] = [];
  const middle = (from + to) / 2;
  for (const side of [-1, 1]) {
    for (let row = 0; row < 2; row++) {
      const at = y + side * (4 + lineHeight / 2 + row * lineHeight);
      for (const push of [0, 0.25, -0.25, 0.5, -0.5]) {
        const x = Math.min(Math.max(middle + push * width, width / 2), around.width - width / 2);
        places.push({ ...centred(x, at, width), cost: 20 * row + Math.abs(x - middle) + (side > 0 ? 15 : 0) });
      }
    }
  }
  places.push({ ...starting(to + 8, y - 2, width), cost: to - from < 0.6 * width ? 1 : 25 });
  return places;
}

function aboutBox(box: Box, width: number): Place[] {
  const above = box.top - fromLevel - lineHeight / 2;
  const below = box.bottom + fromLevel + lineHeight / 2;
  return [
    { ...ending(box.right, above, width), cost: 0 },
    { ...starting(box.left, above, width), cost: 2 },
    { ...starting(box.left, below, width), cost: 6 },
    { ...ending(box.right, below, width), cost: 6 },
    { ...ending(box.left - 8, box.top + 6, width), cost: 8 },
    { ...ending(box.left - 8, box.bottom - 6, width), cost: 9 },
    { ...starting(box.right + 8, box.top + 6, width), cost: 9 },
  ];
}

function onLine(line: PlotLine, x: number): Point {
  const at = line.between(x - 1, x + 1) ?? line.between(x - 8, x + 8) ?? line.between(-Infinity, Infinity);
  return { x, y: at === undefined ? 0 : (at.top + at.bottom) / 2 };
}

function centred(x: number, y: number, width: number): Omit<Place, 'cost'> {
  return { anchor: 'middle', box: boxAt(x - width / 2, y, width) };
}

function starting(x: number, y: number, width: number): Omit<Place, 'cost'> {
  return { anchor: 'start', box: boxAt(x, y, width) };
}

function ending(x: number, y: number, width: number): Omit<Place, 'cost'> {
  return { anchor: 'end', box: boxAt(x - width, y, width) };
}

export function boxAt(left: number, middle: number, width: number): Box {
  return { left, right: left + width, top: middle - lineHeight / 2, bottom: middle + lineHeight / 2 };
}
