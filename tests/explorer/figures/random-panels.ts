// Random panels: curves that wander, levels and dots, each with a name.

import fc from 'fast-check';
import type { Axis, CurveSide, Mark, Panel, PlotName } from '../../../explorer/figures/figure.js';

export const axis: Axis = { title: 'x', unit: '', domain: [0, 1], ticks: [], tickText: String };
export const measure = (text: string): number => 7.5 * text.length;

export interface Drawn {
  readonly panel: Panel;
  readonly width: number;
}

const side = fc.constantFrom<CurveSide>('above', 'below', 'left', 'right', 'bend', 'end');
const words = fc.integer({ min: 3, max: 24 }).map((length) => 'n'.repeat(length));
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** A curve that wanders from left to right, perhaps not all the way, perhaps with a jump. */
const curve = fc
  .record({
    start: share,
    steps: fc.array(fc.double({ min: -0.12, max: 0.12, noNaN: true }), { minLength: 8, maxLength: 60 }),
    end: fc.double({ min: 0.3, max: 1, noNaN: true }),
  })
  .map(({ start, steps, end }) => {
    let y = start;
    const ys = [start, ...steps.map((step) => (y = Math.min(1, Math.max(0, y + step))))];
    return { x: ys.map((_, i) => (end * i) / steps.length), y: ys };
  });

export const panels: fc.Arbitrary<Drawn> = fc
  .record({
    width: fc.constantFrom(294, 432, 608),
    height: fc.integer({ min: 92, max: 330 }),
    curves: fc.array(fc.record({ curve, side, at: share, words, optional: fc.boolean() }), {
      minLength: 1,
      maxLength: 4,
    }),
    levels: fc.array(fc.record({ y: share, words }), { maxLength: 2 }),
    dots: fc.array(fc.record({ x: share, y: share, words }), { maxLength: 3 }),
  })
  .map(({ width, height, curves, levels, dots }) => {
    const marks: Mark[] = [
      ...curves.map((one, i): Mark => ({
        kind: 'curve',
        key: `c${String(i)}`,
        hand: 'ink',
        weight: 'result',
        shape: 'straight',
        ...one.curve,
      })),
      ...levels.map(({ y }, i): Mark => ({
        kind: 'level',
        key: `l${String(i)}`,
        hand: 'print',
        weight: 'minor',
        y,
        reach: 'plot',
      })),
      ...dots.map(({ x, y }, i): Mark => ({ kind: 'dot', key: `d${String(i)}`, hand: 'ink', x, y })),
    ];
    const name = (key: string, text: string, optional: boolean, of: PlotName['of']): PlotName => ({
      key,
      text,
      note: '',
      hand: 'ink',
      bold: false,
      optional,
      of,
    });
    const names = [
      ...curves.map((one, i) =>
        name(`c${String(i)}`, one.words, one.optional, {
          kind: 'curve',
          mark: `c${String(i)}`,
          at: one.at,
          side: one.side,
        }),
      ),
      ...levels.map((one, i) =>
        name(`l${String(i)}`, one.words, false, { kind: 'level', mark: `l${String(i)}`, side: 'right' }),
      ),
      ...dots.map(({ x, y, words: text }, i) =>
        name(`d${String(i)}`, text, false, { kind: 'point', x, y, side: 'right' }),
      ),
    ];
    const panel: Panel = { key: 'p', height, y: axis, marks, names, cursorSeries: [], framed: false, rightScale: null };
    return { panel, width };
  });
