// Records of real runs (reference/runs) and the page that compares them with the library: the page is what the command writes with the code as it is.
// Source: R package MPV 1.56, data sets oldwash and Juliet.

import { format } from 'prettier';
import { describe, expect, it } from 'vitest';
import * as lib from '#lib/index.js';
import { heatUps, measuredPage, oneHeat, products, rowsOf } from '../../reference/runs/measured-page.mjs';
import { read } from '../support/tree.js';

const spirits = products(lib);
const { activityModel, azeotrope, strengthFromMoleFraction } = lib;

describe('the page of measured runs', () => {
  it('is what `npm run measured` writes', async () => {
    expect(read('docs/theory/measured-runs.md')).toBe(await format(measuredPage(lib), { parser: 'markdown' }));
  });
});

describe('the record of heating up', () => {
  const runs = heatUps(lib);

  it('has its 49 rows, none hotter than boiling water or colder than it began', () => {
    expect(runs.length).toBe(49);
    expect(runs.filter(({ start_C, end_C }) => !(start_C < end_C && end_C < 100))).toEqual([]);
  });

  it.each([1, 2])('calls charges of run %d hot, on the mean, within 2 K of where the model boils them', (run) => {
    const over = runs.filter((one) => one.run === run).map(({ end_C, boils_C }) => end_C - boils_C);
    expect(Math.abs(over.reduce((sum, value) => sum + value, 0) / over.length)).toBeLessThan(2);
  });

  it('has times that the heat of the charge explains better than one time for all', () => {
    const rms = (values: readonly number[]): number => Math.sqrt(values.reduce((a, v) => a + v * v, 0) / values.length);
    const flat = runs.reduce((a, run) => a + run.time_min, 0) / runs.length;
    expect(rms(oneHeat(runs).off)).toBeLessThan(rms(runs.map((run) => flat / run.time_min - 1)));
  });
});

describe('the record of products', () => {
  it('has its 28 rows, whose volumes and strengths come to the pure alcohol as printed, to the rounding of the strengths', () => {
    expect(rowsOf('spirit-still-products-2015.csv').length).toBe(28);
    const off = spirits.flatMap((row) => [
      (row.charge_L * row.charge_strength) / row.charge_pure_L - 1,
      (row.product_L * row.product_strength) / row.product_pure_L - 1,
    ]);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.014);
  });

  it('tops out below the azeotrope of the model, and keeps no more alcohol than was charged', () => {
    const top = azeotrope(101325, activityModel('redlich-kister'));
    if (!top.found) throw new Error('the default model has an azeotrope at 1 atm');
    const ceiling = strengthFromMoleFraction(top.moleFraction);
    expect(spirits.filter((row) => row.product_strength >= ceiling)).toEqual([]);
    expect(spirits.filter((row) => !(row.kept > 0 && row.kept < 1))).toEqual([]);
  });
});
