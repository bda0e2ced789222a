// A guess as data: whatever the hand does, there is one height at each place and nothing leaves the field.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawTo, guessLine, within, type GuessField, type Point } from '../../../../explorer/components/guess/guess.js';

const field: GuessField = { x: [12, 60], y: [0.8, 1], apart: 0.5 };
const anywhere = fc.record({
  x: fc.double({ min: -100, max: 200, noNaN: true }),
  y: fc.double({ min: -1, max: 3, noNaN: true }),
});
/** Strokes: each a list of places the hand passes. */
const strokes = fc.array(fc.array(anywhere, { minLength: 1, maxLength: 12 }), { maxLength: 8 });

function drawn(hands: readonly (readonly Point[])[]): readonly Point[] {
  let points: readonly Point[] = [];
  for (const hand of hands) {
    let at: Point | null = null;
    for (const place of hand) ({ points, at } = drawTo(points, at, place, field));
  }
  return points;
}

describe('a guess', () => {
  it('has one height at each place, stays in its field and off the known point, whatever the hand does', () => {
    fc.assert(
      fc.property(strokes, (hands) => {
        const points = drawn(hands);
        points.forEach(({ x, y }, k) => {
          expect(x).toBeGreaterThanOrEqual(k === 0 ? field.x[0] + field.apart : points[k - 1]!.x + field.apart * 0.999);
          expect(x).toBeLessThanOrEqual(field.x[1]);
          expect(y).toBeGreaterThanOrEqual(field.y[0]);
          expect(y).toBeLessThanOrEqual(field.y[1]);
        });
      }),
    );
  });

  it('passes through the last place the hand was at, or right above it', () => {
    fc.assert(
      fc.property(strokes, fc.array(anywhere, { minLength: 1 }), (before, hand) => {
        const points = drawn([...before, hand]);
        const last = within(hand.at(-1)!, field);
        const nearest = points.find(({ x, y }) => y === last.y && Math.abs(x - last.x) < field.apart);
        expect(nearest).toBeDefined();
      }),
    );
  });

  it('is replaced where a second stroke passes over it, and kept elsewhere', () => {
    const first = drawn([[20, 30, 40, 50].map((x) => ({ x, y: 0.9 }))]);
    let stroke = drawTo(first, null, { x: 25, y: 0.95 }, field);
    stroke = drawTo(stroke.points, stroke.at, { x: 45, y: 0.96 }, field);
    expect(stroke.points).toEqual([
      { x: 20, y: 0.9 },
      { x: 25, y: 0.95 },
      { x: 45, y: 0.96 },
      { x: 50, y: 0.9 },
    ]);
  });

  it('is replaced in the same way when the hand goes back', () => {
    const first = drawn([[20, 30, 40, 50].map((x) => ({ x, y: 0.9 }))]);
    let stroke = drawTo(first, null, { x: 45, y: 0.96 }, field);
    stroke = drawTo(stroke.points, stroke.at, { x: 25, y: 0.95 }, field);
    expect(stroke.points.map(({ x }) => x)).toEqual([20, 25, 45, 50]);
  });

  it('leaves a trail when the hand moves in steps smaller than two points may be apart', () => {
    const slow = Array.from({ length: 81 }, (_, k) => ({ x: 20 + k * 0.1, y: 0.9 }));
    expect(drawn([slow]).length).toBeGreaterThan(12);
  });

  it('begins its line at the known point', () => {
    const start = { x: 12, y: 0.936 };
    expect(guessLine(start, [{ x: 20, y: 0.95 }])).toEqual({ x: [12, 20], y: [0.936, 0.95] });
  });
});
