// The figure of a run as numbers: curves hold the rows, ink over pencil, the ceiling above them, and a value is read only
// where there is one.

import { describe, expect, it } from 'vitest';
import { alongClock } from '../../../explorer/figures/run/along-clock.js';
import { ofRuns } from '../../../explorer/figures/run/of-runs.js';
import { runFigure } from '../../../explorer/figures/run/run-figure.js';
import type { Drawing, FigureSize, Mark } from '../../../explorer/figures/figure.js';
import type { RunFigureRows, RunsDrawn } from '../../../explorer/rows/run.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { history, stills } from './cases.js';
import { azeotrope, inkRun, inventedRun } from './invented-rows.js';

const wide: FigureSize = { width: 608, layout: 'wide' };

/** The strength of runs alone. */
const strengthHistory = (drawn: RunsDrawn, size: FigureSize): Drawing =>
  runFigure(ofRuns({ ...drawn, panels: ['strength'] }), size);

describe('strength over a run', () => {
  const drawing = strengthHistory(history, wide);

  it('draws a point for every row that collects something', () => {
    expect(curveOf(drawing, 'run 0').x).toHaveLength(inkRun.run.rows);
  });

  it('shows litres and per cent, converted once', () => {
    const curve = curveOf(drawing, 'run 0');
    const last = inkRun.run.rows - 1;
    expect(curve.x[last]).toBeCloseTo(inkRun.run.collectedVolume_m3[last]! * 1000, 9);
    expect(curve.y[last]).toBeCloseTo(inkRun.run.spoutStrength[last]! * 100, 9);
  });

  it('paints ink over pencil, and pencil with its own weight', () => {
    const curves = drawing.panels[0]!.marks.filter((mark) => mark.kind === 'curve');
    expect(curves.map((mark) => [mark.hand, mark.weight])).toEqual([
      ['pencil', 'pencil'],
      ['ink', 'result'],
    ]);
  });

  it('hatches from the azeotrope to the top, and no curve enters the hatched region', () => {
    const hatch = drawing.panels[0]!.marks.find((mark) => mark.kind === 'hatch')!;
    expect(hatch).toMatchObject({ from: 100 * azeotrope.strength, to: drawing.panels[0]!.y.domain[1] });
    for (const mark of drawing.panels[0]!.marks) {
      if (mark.kind === 'curve') expect(Math.max(...Array.from(mark.y))).toBeLessThan(hatch.from);
    }
  });

  it('has neither line nor hatching where there is no azeotrope, and says so', () => {
    const without = strengthHistory({ ...history, azeotrope: null }, wide);
    const kinds = without.panels[0]!.marks.map((mark) => mark.kind);
    expect(kinds).not.toContain('hatch');
    expect(kinds).not.toContain('level');
    expect(without.description).toContain('no azeotrope');
  });

  it('measures from nothing to where the run first falls to the strength', () => {
    const measure = drawing.panels[0]!.marks.find((mark) => mark.kind === 'measure')!;
    const { spoutStrength: strength, collectedVolume_m3: volume } = inkRun.run;
    const after = Array.from(strength).findIndex((value) => value <= 0.9);
    expect(measure.from).toBe(0);
    expect(measure.to).toBeGreaterThan(volume[after - 1]! * 1000);
    expect(measure.to).toBeLessThanOrEqual(volume[after]! * 1000);
    expect(measure.words).toMatch(/^above 90\s%\svol for 6\.\d\sL$/u);
  });

  it('draws no measure line for a run that never reaches the strength', () => {
    const weak = { ...history, runs: [{ ...inkRun, run: inventedRun(0.85, 4) }] };
    expect(strengthHistory(weak, wide).panels[0]!.marks.map((mark) => mark.kind)).not.toContain('measure');
  });

  it('keeps the last of the rows at which nothing was collected yet', () => {
    const waiting = {
      ...inkRun.run,
      collectedVolume_m3: [0, 0, 0, 0.001, 0.002],
      spoutStrength: [0.2, 0.5, 0.95, 0.94, 0.93],
    };
    const curve = curveOf(strengthHistory({ ...history, runs: [{ ...inkRun, run: waiting }] }, wide), 'run 0');
    expect(Array.from(curve.x)).toEqual([0, 1, 2]);
    expect(curve.y[0]).toBeCloseTo(95, 9);
  });

  it('speaks proof and gallons when those are handed in, with axes that hold the rows', () => {
    const us = strengthHistory({ ...history, units: unitSystems.us }, wide);
    const panel = us.panels[0]!;
    expect([panel.y.unit, us.x.title]).toEqual(['proof', 'US gallons collected']);
    expect(panel.y.domain[1]).toBe(200);
    expect(us.x.domain[1]).toBeGreaterThanOrEqual(curveOf(us, 'run 0').x[inkRun.run.rows - 1]!);
  });
});

describe('the read-out', () => {
  const { readOut, cursor } = runFigure(ofRuns(history), wide);

  it('says what the rows hold at the cursor, a column a run', () => {
    expect(readOut!.columns.map(({ label, hand }) => [label, hand])).toEqual([
      ['12 plates', 'ink'],
      ['4 before', 'pencil'],
    ]);
    const row = 100; // half way
    const x = inkRun.run.collectedVolume_m3[row]!;
    expect(readOut!.rows[0]!.texts(x)[0]).toBe((100 * inkRun.run.spoutStrength[row]!).toFixed(1));
    expect(readOut!.at(x)).toMatch(/^6\.0\sL$/u);
  });

  it('says that a run has ended rather than reading past its last row', () => {
    const short = { ...inkRun, run: inventedRun(0.9, 4, 5) };
    const both = runFigure(ofRuns({ ...history, runs: [inkRun, short] }), wide);
    expect(both.readOut!.rows[0]!.texts(0.008)[1]).toBe('ended');
    expect(both.panels[0]!.cursorSeries.map(({ at }) => at(8))).toContain(null);
  });

  it('has a dash and no dot where a curve has not begun yet', () => {
    const late: RunFigureRows = alongClock({
      since: 'since lighting up',
      panels: [
        {
          key: 'strength',
          title: 'Strength',
          quantity: unitSystems.metric.strength,
          height: 190,
          takesIn: [0],
          curves: [
            { key: 'spout', label: 'spout', weight: 'result', along: [3600, 7200], values: [0.9, 0.8] },
            { key: 'kettle', label: 'kettle', weight: 'second', along: [0, 7200], values: [0.1, 0.05] },
          ],
          levels: [],
        },
      ],
      phases: [],
      phasesIn: { panel: '', along: 'top' },
      warnings: [],
      units: unitSystems.metric,
    });
    const drawing = runFigure(late, wide);
    expect(drawing.readOut!.rows.map(({ texts }) => texts(1800))).toEqual([['–'], ['8.8']]);
    expect(drawing.panels[0]!.cursorSeries.map(({ at }) => at(0.5))).toEqual([null, expect.closeTo(8.75, 9)]);
    expect(drawing.table(true).rows[0]).toEqual(['0.00', '–', '10.0']);
  });

  it('starts inside the run', () => {
    expect(cursor!.start).toBeGreaterThan(cursor!.range[0]);
    expect(cursor!.start).toBeLessThan(cursor!.range[1]);
  });
});

describe('strength by still', () => {
  it('tells stills apart by weight, all in the same ink', () => {
    const curves = runFigure(ofRuns(stills), wide).panels[0]!.marks.filter((mark) => mark.kind === 'curve');
    expect(new Set(curves.map((mark) => mark.hand))).toEqual(new Set(['ink']));
    expect(new Set(curves.map((mark) => mark.weight)).size).toBe(curves.length);
  });
});

function curveOf(drawing: Drawing, key: string): Extract<Mark, { kind: 'curve' }> {
  for (const panel of drawing.panels) {
    for (const mark of panel.marks) if (mark.kind === 'curve' && mark.key === key) return mark;
  }
  throw new Error(`no curve '${key}'`);
}
