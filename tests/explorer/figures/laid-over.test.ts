// What is laid over figures, and the azeotrope against pressure, as marks before any picture.

import { describe, expect, it } from 'vitest';
import { azeotropeDrift } from '../../../explorer/figures/plots/azeotrope-drift.js';
import { boilingDiagram } from '../../../explorer/figures/boiling-diagram.js';
import type { Drawing, FigureSize, Mark } from '../../../explorer/figures/figure.js';
import { lastCorner } from '../../../explorer/figures/last-corner.js';
import { boilingPointsOver, modelsOver, vapourPointsOver } from '../../../explorer/figures/laid-over.js';
import type { ModelRows } from '../../../explorer/rows/equilibrium.js';
import { xyDiagram } from '../../../explorer/figures/xy-diagram.js';
import { measuredAzeotropeRows, measuredRows } from '../../../explorer/state/measured-rows.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { boiling, drift, steps } from './cases.js';
import { azeotrope, curve, raoult } from './invented-rows.js';

const wide: FigureSize = { width: 432, layout: 'wide' };
const narrow: FigureSize = { width: 322, layout: 'narrow' };

function marksOf<Kind extends Mark['kind']>(drawing: Drawing, kind: Kind): Extract<Mark, { kind: Kind }>[] {
  const marks = drawing.panels.flatMap((panel) => panel.marks);
  return marks.filter((mark): mark is Extract<Mark, { kind: Kind }> => mark.kind === kind);
}

describe('measured points', () => {
  it('lie over the x-y diagram where they were published, every one', () => {
    const points = marksOf(vapourPointsOver(xyDiagram)({ under: steps, measured: measuredRows }, wide), 'points');
    expect(points.map(({ x }) => x)).toEqual(measuredRows.map((set) => set.liquidMoleFraction));
    expect(points.map(({ y }) => y)).toEqual(measuredRows.map((set) => set.vapourMoleFraction));
  });

  it('are told apart by form and by filled or open alone', () => {
    const looks = measuredRows.map(({ form, filled }) => `${form} ${String(filled)}`);
    expect(new Set(looks).size).toBe(looks.length);
  });

  it('stand at their temperatures in the boiling diagram, liquid and vapour, in the unit shown', () => {
    const under = { ...boiling, units: unitSystems.us };
    const points = marksOf(boilingPointsOver(boilingDiagram)({ under, measured: measuredRows }, wide), 'points');
    expect(points).toHaveLength(2 * measuredRows.length);
    expect(points[0]!.y[0]).toBeCloseTo(212, 6); // water boils at 212 °F: Carey and Lewis, first row
  });

  it('are named in the description and in the table, and the sentence stays one', () => {
    const drawing = vapourPointsOver(xyDiagram)({ under: steps, measured: measuredRows }, narrow);
    const table = drawing.table();
    for (const { source } of measuredRows) {
      expect(drawing.description).toContain(source);
      expect(table.rows.some((row) => row.at(-1) === source)).toBe(true);
    }
    expect(table.rows.every((row) => row.length === table.columns.length)).toBe(true);
    expect(drawing.description).toMatch(/[^.]\.$/);
  });
});

describe('models compared in the last corner', () => {
  const models: ModelRows[] = [
    { label: 'another', curve, azeotrope: { ...azeotrope, moleFraction: 0.885, strength: 0.969 } },
    { label: 'ideal', curve: raoult, azeotrope: null },
  ];
  const drawing = modelsOver(lastCorner)({ under: steps, models }, wide);

  it('are thin lines in print, each azeotrope named with its strength', () => {
    const line = marksOf(drawing, 'curve').find(({ key }) => key === 'another');
    expect(line).toMatchObject({ hand: 'print', weight: 'third' });
    const names = drawing.panels[0]!.names.map(({ text }) => text);
    expect(names).toContain('another 96.90');
    expect(names).toContain('used here 97.20');
    expect(marksOf(drawing, 'dot').find(({ key }) => key === 'another')).toMatchObject({ x: 0.885, y: 0.885 });
  });

  it('take the place of the names of steps, and say what knows no azeotrope', () => {
    expect(drawing.panels[0]!.names.some(({ key }) => key.startsWith('step '))).toBe(false);
    expect(drawing.description).toContain('another puts it at 0.8850, ideal knows none');
  });

  it('can carry measured points as well', () => {
    const both = vapourPointsOver(modelsOver(lastCorner))(
      { under: { under: steps, models }, measured: measuredRows },
      wide,
    );
    expect(marksOf(both, 'points')).toHaveLength(measuredRows.length);
    expect(marksOf(both, 'dot').some(({ key }) => key === 'another')).toBe(true);
  });
});

describe('the azeotrope against pressure', () => {
  const drawing = azeotropeDrift(drift, wide);

  it('runs on a logarithmic axis: ten times the pressure is as far everywhere', () => {
    const [from, to] = drawing.x.domain;
    expect([from, to]).toEqual([3, 3000]); // kPa
    expect(drawing.x.scale).toBe('log');
    const x = marksOf(drawing, 'curve').find(({ weight }) => weight === 'equilibrium')!.x;
    expect(x[0]).toBeCloseTo(12, 12);
    expect(drawing.x.ticks.map(drawing.x.tickText)).toEqual(['3', '10', '30', '100', '300', '1000', '3000']);
  });

  it('has round ticks in pounds a square inch too', () => {
    const { x } = azeotropeDrift({ ...drift, pressure: unitSystems.us.pressure, units: unitSystems.us }, wide);
    expect(x.ticks.map(x.tickText)).toEqual(['1', '3', '10', '30', '100', '300']);
  });

  it('is whole where the model was fitted and dashed beyond, without a gap', () => {
    const curves = marksOf(drawing, 'curve');
    const whole = curves.find(({ weight }) => weight === 'equilibrium')!;
    const dashed = curves.find(({ weight }) => weight === 'extrapolated')!;
    expect(dashed.x[0]).toBe(whole.x[whole.x.length - 1]);
    expect(dashed.x.length).toBe(1 + drift.line.filter((row) => row.extrapolated).length);
    const names = drawing.panels[0]!.names.map(({ text }) => text);
    expect(names).toContain('extrapolated');
    expect(names).toContain('ends at 12.0\u00a0kPa');
  });

  it('says extrapolated in its numbers, row by row', () => {
    const said = drawing.table().rows.filter((row) => row.at(-1) === 'the model, extrapolated');
    expect(said).toHaveLength(drift.line.filter((row) => row.extrapolated).length);
  });

  it('has a band of two standard errors either way that never passes pure alcohol', () => {
    const [band] = marksOf(drawing, 'band');
    drift.line.forEach((row, i) => {
      expect(band!.low[i]).toBeCloseTo(row.moleFraction - 2 * row.error, 12);
      expect(band!.high[i]).toBeLessThanOrEqual(1);
    });
  });

  it('has every published point, open where it is from memory', () => {
    const points = marksOf(drawing, 'points');
    expect(points.reduce((sum, { x }) => sum + x.length, 0)).toBe(measuredAzeotropeRows.length);
    for (const { key, filled } of points) expect(filled).toBe(key !== 'from memory');
    const shown = points.flatMap(({ x }) => Array.from(x));
    expect(shown.every((at) => at >= drawing.x.domain[0] && at <= drawing.x.domain[1])).toBe(true);
  });

  it('carries the reader’s pressure, with a dot on the line where there is an azeotrope', () => {
    const at = (pressure_Pa: number) => azeotropeDrift({ ...drift, at: pressure_Pa }, wide);
    const dot = marksOf(at(1e5), 'dot').find(({ hand }) => hand === 'ink')!;
    expect(dot.x).toBeCloseTo(100, 12);
    expect(dot.y).toBeCloseTo(0.9, 2);
    expect(marksOf(at(7000), 'dot').some(({ hand }) => hand === 'ink')).toBe(false);
    expect(at(7000).panels[0]!.names.find(({ key }) => key === 'reader')?.text).toBe('7.0\u00a0kPa');
  });
});
