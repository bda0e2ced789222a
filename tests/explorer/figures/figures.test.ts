// Figures as numbers, before any picture: marks hold the rows, axes name units, descriptions hold numbers.

import { describe, expect, it } from 'vitest';
import { boilingDiagram } from '../../../explorer/figures/boiling-diagram.js';
import type { Drawing, FigureSize, Mark } from '../../../explorer/figures/figure.js';
import { lastCorner } from '../../../explorer/figures/last-corner.js';
import { xyDiagram } from '../../../explorer/figures/xy-diagram.js';
import { boiling, cases, steps, stepsAtReflux } from './cases.js';
import { azeotrope } from './invented-rows.js';

const wide: FigureSize = { width: 608, layout: 'wide' };
const narrow: FigureSize = { width: 322, layout: 'narrow' };

describe.each(cases)('$name', ({ figure, rows }) => {
  for (const size of [wide, narrow]) {
    const drawing = figure(rows as never, size);
    const marks = drawing.panels.flatMap((panel) => panel.marks);

    it(`names a unit on every axis, ${size.layout}`, () => {
      expect(drawing.x.unit).not.toBe('');
      for (const panel of drawing.panels) expect(panel.y.unit).not.toBe('');
    });

    it(`is described in one sentence a panel, with numbers and without gaps, ${size.layout}`, () => {
      expect(drawing.description).toMatch(/\d/);
      expect(drawing.description).not.toMatch(/NaN|undefined|null/);
      expect(drawing.description.match(/\.( |$)/g)).toHaveLength(drawing.panels.length);
    });

    it(`has a key of its own for each mark of a panel, ${size.layout}`, () => {
      for (const panel of drawing.panels) {
        const keys = panel.marks.map((mark) => `${mark.kind} ${mark.key}`);
        expect(new Set(keys).size).toBe(keys.length);
      }
    });

    it(`draws only finite numbers, ${size.layout}`, () => {
      for (const mark of marks) {
        if (mark.kind !== 'curve') continue;
        expect(mark.x.length).toBe(mark.y.length);
        expect([...Array.from(mark.x), ...Array.from(mark.y)].every(Number.isFinite)).toBe(true);
      }
    });

    it(`has a table whose rows are as long as its head, ${size.layout}`, () => {
      const table = drawing.table();
      expect(table.rows.length).toBeGreaterThan(0);
      for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
    });
  }

  it('names only what it draws', () => {
    for (const panel of figure(rows as never, narrow).panels) {
      for (const { of } of panel.names) {
        if (of.kind === 'point') expect([of.x, of.y].every(Number.isFinite)).toBe(true);
        else expect(panel.marks.map((mark) => `${mark.kind} ${mark.key}`)).toContain(`${of.kind} ${of.mark}`);
      }
    }
  });
});

describe('the x-y diagram', () => {
  it('draws two corners a step and the one in which the last ends', () => {
    const staircase = curveOf(xyDiagram(steps, wide), 'staircase');
    expect(staircase.x).toHaveLength(2 * steps.staircase.strength.length + 1);
  });

  it('ends the operating line where it meets the diagonal', () => {
    const line = curveOf(xyDiagram(stepsAtReflux, wide), 'operating');
    expect(line.y[1]).toBeCloseTo(line.x[1]!, 12);
    expect(line.x[1]).toBeCloseTo(0.21 / 0.25, 12);
  });

  it('shows the curve by Raoult only when asked', () => {
    expect(xyDiagram(steps, wide).panels[0]!.marks.map((mark) => mark.key)).not.toContain('raoult');
    expect(xyDiagram(stepsAtReflux, wide).panels[0]!.marks.map((mark) => mark.key)).toContain('raoult');
  });

  it('is square, and boxes the corner that the second figure enlarges', () => {
    const panel = xyDiagram(steps, wide).panels[0]!;
    const box = panel.marks.find((mark) => mark.kind === 'box')!;
    expect(panel.height).toBe(wide.width);
    expect(box.x).toEqual(lastCorner(steps, wide).x.domain);
  });
});

describe('the last corner', () => {
  it('is square on a phone too, with room for its second scale', () => {
    const corner = lastCorner(steps, narrow);
    expect(corner.panels[0]!.height).toBe(narrow.width - corner.rightRoom);
  });

  it('names the last step with its strength, from the rows', () => {
    const { names } = lastCorner(steps, wide).panels[0]!;
    const { strength } = steps.staircase;
    const last = strength.length - 1;
    const text = `step ${String(last + 1)} at ${(100 * strength[last]!).toFixed(2)}`;
    expect(names.map((name) => name.text)).toContain(text);
  });

  it('moves with the azeotrope and stays inside the diagram', () => {
    const high = lastCorner({ ...steps, azeotrope: { ...azeotrope, moleFraction: 0.99 } }, wide);
    const none = lastCorner({ ...steps, azeotrope: null }, wide);
    for (const { x } of [high, none]) expect(x.domain).toEqual([expect.closeTo(0.88, 9), expect.closeTo(1, 9)]);
  });
});

describe('the boiling diagram', () => {
  it('joins the liquid and the vapour of each point at one temperature', () => {
    const { marks } = boilingDiagram(boiling, wide).panels[0]!;
    boiling.points.forEach((point, index) => {
      const tie = marks.find((mark) => mark.kind === 'curve' && mark.key === `point ${String(index)}`);
      expect(tie).toMatchObject({ x: [point.liquidMoleFraction, point.vapourMoleFraction] });
    });
  });
});

function curveOf(drawing: Drawing, key: string): Extract<Mark, { kind: 'curve' }> {
  for (const panel of drawing.panels) {
    for (const mark of panel.marks) if (mark.kind === 'curve' && mark.key === key) return mark;
  }
  throw new Error(`no curve '${key}'`);
}
