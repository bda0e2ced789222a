// The one rule of names, on random panels, by exact geometry: no name overlaps another, a curve or the frame; it is
// nearest to what it names; the lower one gives way.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadEnds, spreadMargin } from '../../../explorer/components/figure/names/margin-names.js';
import { namesOfPanel, type NamesOfPanel } from '../../../explorer/components/figure/names/in-plot.js';
import { placeNames } from '../../../explorer/components/figure/names/place-names.js';
import { lineHeight } from '../../../explorer/components/figure/names/places.js';
import type { Point } from '../../../explorer/components/figure/names/geometry.js';
import { axis, measure, panels, type Drawn } from './random-panels.js';
import { away, crosses, distance, overlap } from './exact-geometry.js';
import type { PlacedName } from '../../../explorer/components/figure/names/wanted.js';
import type { MarkContext } from '../../../explorer/components/figure/marks.js';
import { toPixels } from '../../../explorer/components/figure/pixels.js';
import type { Mark, Panel, PlotName } from '../../../explorer/figures/figure.js';

describe('names in a plot', () => {
  it('overlap no other name and never the frame', () => {
    forAll(({ placed, width, panel }) => {
      placed.forEach(({ box }, i) => {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(width);
        expect(box.top).toBeGreaterThanOrEqual(0);
        expect(box.bottom).toBeLessThanOrEqual(panel.height);
        for (const other of placed.slice(i + 1)) expect(overlap(box, other.box)).toBe(false);
      });
    });
  });

  it('cross no curve, no level and no point', () => {
    forAll(({ placed, lines, points }) => {
      for (const { box } of placed) {
        for (const line of lines.values()) expect(crosses(line, box)).toBe(false);
        for (const point of points) expect(away(box, point)).toBeGreaterThan(4);
      }
    });
  });

  it('are nearest to what they name, or have a line to it', () => {
    forAll(({ placed, lines, points }) => {
      for (const { name, box, leader } of placed) {
        const own = lines.get(name.key);
        if (leader !== null) {
          const end = leader[1];
          if (own !== undefined)
            expect(distance(own, { left: end.x, right: end.x, top: end.y, bottom: end.y })).toBeLessThan(6);
          continue;
        }
        if (own === undefined) {
          const nearest = Math.min(...points.map((point) => away(box, point)));
          expect(away(box, points[Number(name.key.slice(1))]!)).toBeLessThanOrEqual(nearest + 1e-9);
          continue;
        }
        for (const [key, line] of lines)
          if (key !== name.key) expect(distance(own, box)).toBeLessThanOrEqual(distance(line, box));
      }
    });
  });

  it('stand as if alone where they are the highest: the lower one gives way', () => {
    forAll(({ named, placed }) => {
      const first = placed.find(({ name }) => named.plot.some(({ key, optional }) => key === name.key && !optional));
      if (first === undefined) return;
      const wanted = named.plot.filter(({ key }) => key === first.name.key);
      expect(placeNames(wanted, named.around)[0]).toEqual(first);
    });
  });

  it('are never left out where two curves have the plot to themselves', () => {
    const lines = [0.2, 0.8].map((y, i): Mark => ({
      kind: 'curve',
      key: `c${String(i)}`,
      hand: 'ink',
      weight: 'result',
      shape: 'straight',
      x: [0, 1],
      y: [y, 1 - y],
    }));
    const named = lines.map(({ key }): PlotName => ({
      key,
      text: 'into the kettle',
      note: '',
      hand: 'ink',
      bold: false,
      optional: false,
      of: { kind: 'curve', mark: key, at: 0.5, side: 'above' },
    }));
    const panel: Panel = {
      key: 'p',
      height: 92,
      y: axis,
      marks: lines,
      names: named,
      cursorSeries: [],
      framed: false,
      rightScale: null,
    };
    expect(place({ panel, width: 294 }).placed).toHaveLength(2);
  });
});

describe('names beside the plot', () => {
  const one = (key: string, y: number) => ({ key, y, lines: 1 as const });

  it('keep their height in the margin when they are apart and move down when they are not', () => {
    const heights = spreadMargin([one('kettle', 40), one('head', 45), one('far', 200)]);
    expect([...heights.values()]).toEqual([40, 40 + lineHeight, 200]);
  });

  it('keep the order of their curves in the gap, a line apart, clear of lines that run out', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 5 }),
        fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 2 }),
        (ends, crossing) => {
          const heights = [
            ...spreadEnds(
              ends.map((y, i) => one(String(i), y)),
              crossing,
            ).entries(),
          ];
          const sorted = heights.map(([key, y]) => ({ y, end: ends[Number(key)]! })).sort((a, b) => a.y - b.y);
          sorted.forEach(({ y, end }, i) => {
            expect(Math.abs(y - end)).toBeLessThanOrEqual(20);
            for (const line of crossing) expect(Math.abs(line - y)).toBeGreaterThanOrEqual(10);
            if (i === 0) return;
            expect(y - sorted[i - 1]!.y).toBeGreaterThanOrEqual(lineHeight);
            expect(end).toBeGreaterThanOrEqual(sorted[i - 1]!.end);
          });
        },
      ),
    );
  });
});

interface Placed {
  readonly named: NamesOfPanel;
  readonly placed: readonly PlacedName[];
  readonly lines: ReadonlyMap<string, readonly Point[]>;
  readonly points: readonly Point[];
  readonly panel: Panel;
  readonly width: number;
}

function forAll(check: (placed: Placed) => void): void {
  fc.assert(
    fc.property(panels, (drawn) => check(place(drawn))),
    { numRuns: 80 },
  );
}

function place({ panel, width }: Drawn): Placed {
  const x = toPixels(axis, width, 'right');
  const y = toPixels(axis, panel.height, 'up');
  const context: MarkContext = { x, y, width, height: panel.height, clip: '', hatch: '', wide: false };
  const named = namesOfPanel(panel, context, null, measure);
  const lines = new Map<string, readonly Point[]>();
  const points: Point[] = [];
  for (const mark of panel.marks) {
    if (mark.kind === 'curve')
      lines.set(
        mark.key,
        Array.from(mark.x, (at, i) => ({ x: x(at), y: y(mark.y[i]!) })),
      );
    if (mark.kind === 'level')
      lines.set(
        mark.key,
        [0, width].map((at) => ({ x: at, y: y(mark.y) })),
      );
    if (mark.kind === 'dot') points.push({ x: x(mark.x), y: y(mark.y) });
  }
  return { named, placed: placeNames(named.plot, named.around), lines, points, panel, width };
}
