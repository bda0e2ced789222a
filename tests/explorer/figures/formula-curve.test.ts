// The figure of a formula: pieces where there is a value, gaps where there is none, a dot where the page stands.

import { describe, expect, it } from 'vitest';
import { formulaCurve } from '../../../explorer/figures/plots/formula-curve.js';
import type { FormulaCurveRows } from '../../../explorer/rows/formula.js';
import type { Drawing, FigureSize } from '../../../explorer/figures/figure.js';

const size: FigureSize = { width: 608, layout: 'wide' };
const x = [0, 1, 2, 3, 4, 5];

function drawn(change: Partial<FormulaCurveRows> = {}, at = size): Drawing {
  const rows: FormulaCurveRows = {
    x: { name: 'volume', unit: 'L', numbers: x },
    y: { name: 'pure', unit: 'L', numbers: x.map((value) => 2 * value) },
    now: { x: 2.5, y: 5 },
    ...change,
  };
  return formulaCurve(rows, at);
}
const withY = (numbers: readonly number[]): Drawing => drawn({ y: { name: 'pure', unit: 'L', numbers } });
const curves = ({ panels }: Drawing): (readonly number[])[] =>
  panels[0]!.marks.flatMap((mark) => (mark.kind === 'curve' ? [Array.from(mark.x)] : []));

describe('a formula drawn', () => {
  it('is one curve in ink, named on its axes, with a dot where the page stands', () => {
    const drawing = drawn();
    const [panel] = drawing.panels;
    expect(curves(drawing)).toEqual([x]);
    expect(panel!.marks.every((mark) => 'hand' in mark && mark.hand === 'ink')).toBe(true);
    expect([drawing.x.title, drawing.x.unit, panel!.y.title, panel!.y.unit]).toEqual(['volume', 'L', 'pure', 'L']);
    expect(panel!.marks.at(-1)).toMatchObject({ kind: 'dot', x: 2.5, y: 5 });
    expect(panel!.names.map(({ text }) => text)).toEqual(['now 5\u00a0L']);
    expect(drawing.cursor).toMatchObject({ start: 2.5, range: [0, 5] });
  });

  it('says in one sentence from where to where, lowest, highest and now', () => {
    expect(drawn().description.replace(/\u00a0/gu, ' ')).toBe(
      'pure against volume, from 0 L at 0 L to 10 L at 5 L; lowest 0 L, highest 10 L; now 5 L at 2.5 L.',
    );
    expect(withY(x.map(() => NaN)).description).toContain('no value in that range');
  });

  it('has a gap where there is no value, and the cursor reads none there', () => {
    const drawing = withY([0, 2, NaN, NaN, 8, 10]);
    expect(curves(drawing)).toEqual([
      [0, 1],
      [4, 5],
    ]);
    const { at } = drawing.panels[0]!.cursorSeries[0]!;
    expect([at(0.5), at(2.5), at(4.5)]).toEqual([1, null, 9]);
    expect(drawing.readOut!.rows[0]!.texts(2.5)).toEqual(['–']);
  });

  it('draws a range that falls as it would one that rises', () => {
    const down = [...x].reverse();
    const drawing = drawn({
      x: { name: 'volume', unit: 'L', numbers: down },
      y: { name: 'pure', unit: 'L', numbers: down.map((value) => 2 * value) },
    });
    expect(curves(drawing)).toEqual([x]);
    expect(drawing.panels[0]!.cursorSeries[0]!.at(1.5)).toBe(3);
  });

  it('leaves the dot out where the page stands beyond the range', () => {
    const drawing = drawn({ now: { x: 50, y: 100 } });
    expect(drawing.panels[0]!.marks.some(({ kind }) => kind === 'dot')).toBe(false);
    expect(drawing.cursor!.start).toBe(2.5);
  });

  it('takes in a constant and tiny numbers', () => {
    for (const numbers of [x.map(() => 3), x.map((value) => value * 1e-9)]) {
      const { domain, ticks } = withY(numbers).panels[0]!.y;
      expect(domain[1]).toBeGreaterThan(domain[0]);
      expect(ticks.length).toBeGreaterThan(1);
    }
  });

  it('has its numbers in a table', () => {
    const { caption, columns, rows } = drawn().table();
    expect(caption).toBe('pure against volume');
    expect(columns).toEqual([
      { title: 'volume', unit: 'L' },
      { title: 'pure', unit: 'L' },
    ]);
    expect(rows).toEqual([
      ['0', '0'],
      ['5', '10'],
    ]);
  });
});
