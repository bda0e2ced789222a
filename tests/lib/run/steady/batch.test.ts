// Batch rectification, quasi-steady: at constant composition with rising reflux, and at constant reflux.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import reference from '../../../../reference/derived/batch-scipy.json' with { type: 'json' };
import {
  constantComposition,
  type ConstantComposition,
  type ConstantCompositionQuestion,
  constantReflux,
  createEthanolWater,
  InputError,
  kettleHeld,
  rayleighLeft,
  staircase,
} from '#lib/index.js';
import { publishedTable } from '../../../support/published-table.js';
import { constantAlphaSlice, sliceThrough } from '../../../support/synthetic-slices.js';

const slice = createEthanolWater().curve('redlich-kister').at(101325);
const careyLewis = sliceThrough(
  publishedTable('measurements/carey-lewis-1932-101kPa.csv').rows.map((row) => [Number(row.x1), Number(row.y1)]),
);

/** Coulson & Richardson vol. 2, 5th ed. 2002, Example 11.12. */
const printed = publishedTable('worked-examples/coulson-richardson-11-12.csv').rows.map((row) => ({
  quantity: row.quantity,
  reflux: Number(row.reflux),
  value: Number(row.value),
}));
const example: ConstantCompositionQuestion = {
  slice: careyLewis,
  amount_mol: 100,
  chargeMoleFraction: 0.55,
  distillateMoleFraction: 0.75,
  plates: 4,
  efficiency: 1,
  mostReflux: 4,
};

function held(question: ConstantCompositionQuestion): ConstantComposition {
  const run = constantComposition(question);
  if (!run.found) throw new Error(run.message);
  return run;
}

describe('constantComposition on Coulson & Richardson, Example 11.12', () => {
  // Printed still compositions are read from a graph; two of them lie off it (the table's remarks say so), where
  // stepping the same stages by other code gives the values here.
  const stepped = new Map([
    [1.5, 0.327],
    [2, 0.183],
  ]);
  const stills = printed.filter(({ quantity }) => quantity === 'still');
  /** What the printed graph can be read to; in the steep middle the way the points are joined counts as much again. */
  const reading = 0.005;
  const steep = 0.01;
  /**
   * What our equilibrium makes of it, still composition less the printed or stepped one. Between x = 0.2 and 0.6 it lies
   * 0.001 to 0.004 in y above the measurements of 1932, so the still ends weaker, most where the graph is steep.
   */
  const ours = new Map([
    [0.85, -0.0142],
    [1, -0.0113],
    [1.5, -0.022],
    [2, -0.0231],
    [3, -0.0079],
    [4, -0.0085],
  ]);

  it.each(stills)('holds the product over the printed still at reflux $reflux', ({ reflux, value }) => {
    const middle = stepped.get(reflux);
    const off = Math.abs(kettleHeld(example, reflux) - (middle ?? value));
    expect(off).toBeLessThan(middle === undefined ? reading : steep);
  });

  it.each(stills)('does nearly so with our own equilibrium at reflux $reflux', ({ reflux, value }) => {
    const off = kettleHeld({ ...example, slice }, reflux) - (stepped.get(reflux) ?? value);
    expect(Math.abs(off - ours.get(reflux)!)).toBeLessThan(5e-5);
  });

  it('shows that the two printed compositions in the middle are not those of its stages', () => {
    for (const { reflux, value } of stills.filter((row) => stepped.has(row.reflux))) {
      expect(value - kettleHeld(example, reflux)).toBeGreaterThan(0.01);
    }
  });

  it('gives the printed product and the printed liquid returned', () => {
    const end = held(example).rows.at(-1)!;
    const product = printed.find(({ quantity, reflux }) => quantity === 'product' && reflux === 4)!.value;
    const returned = printed.find(({ quantity }) => quantity === 'returned')!.value;
    // What a still composition read `reading` too high makes in D = 100 (0.55 − x)/(0.75 − x) and in ∫R dD = R D − ∫D dR.
    const slopes = stills.map(({ reflux, value }) => [reflux, (reading * 100 * (0.75 - 0.55)) / (0.75 - value) ** 2]);
    const last = slopes.at(-1)![1]!;
    const area = slopes
      .slice(1)
      .reduce((sum, [r, d], k) => sum + 0.5 * (r! - slopes[k]![0]!) * (d! + slopes[k]![1]!), 0);
    const productReading = last + 0.05; // and half its last digit
    const returnedReading = 4 * last + area + 0.5;
    expect(Math.abs(end.distillate_mol - product)).toBeLessThan(productReading); // 0.25 kmol
    expect(Math.abs(end.returned_mol - returned)).toBeLessThan(returnedReading); // 2.8 kmol
    // Our own equilibrium gives 0.5 % more product and returns 3.7 % less.
    const own = held({ ...example, slice }).rows.at(-1)!;
    expect(Math.abs(own.distillate_mol - 71.769)).toBeLessThan(5e-4);
    expect(Math.abs(own.returned_mol / returned - 1)).toBeLessThan(0.04);
  });
});

describe('quasi-steady batch runs against scipy', () => {
  // Other code, equilibrium by Newton at every stage (reference/derived/batch-scipy.py); ours reads a compiled curve.
  const curve = 1e-6;

  it('agree at constant composition', () => {
    const { own } = reference.example;
    reference.example.refluxes.forEach((reflux, i) => {
      expect(Math.abs(kettleHeld({ ...example, slice }, reflux) - own.still[i]!)).toBeLessThan(curve);
    });
    const { rows } = held({ ...example, slice });
    expect(Math.abs(rows[0]!.reflux - own.leastReflux)).toBeLessThan(curve);
    expect(Math.abs(rows.at(-1)!.distillate_mol - own.distillate_mol)).toBeLessThan(100 * curve);
    expect(Math.abs(rows.at(-1)!.returned_mol - own.returned_mol)).toBeLessThan(100 * curve);
  });

  it('agree at constant reflux over plates of 65 %', () => {
    const { problem, own } = reference.constantReflux;
    const run = constantReflux({ slice, ...problem });
    if (!run.found) throw new Error(run.message);
    expect(Math.abs(run.kettle_mol - own.kettle_mol)).toBeLessThan(100 * curve);
    expect(Math.abs(run.distillateMoleFraction - own.distillateMoleFraction)).toBeLessThan(curve);
    expect(Math.abs(run.firstMoleFraction - own.firstMoleFraction)).toBeLessThan(curve);
    expect(Math.abs(run.lastMoleFraction - own.lastMoleFraction)).toBeLessThan(curve);
  });
});

describe('constantComposition', () => {
  it('is the staircase seen from above: the kettle it finds holds the distillate', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 0.85, noNaN: true }),
        fc.integer({ min: 0, max: 12 }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (distillateMoleFraction, plates, efficiency, reflux) => {
          const kettleMoleFraction = kettleHeld({ slice, distillateMoleFraction, plates, efficiency }, reflux);
          const { headMoleFraction } = staircase({ slice, kettleMoleFraction, plates, efficiency, reflux });
          // A pinch makes the head follow the kettle steeply: y* is 13 times as rich as a weak kettle, plate by plate.
          expect(Math.abs(headMoleFraction - distillateMoleFraction)).toBeLessThan(1e-8);
        },
      ),
    );
  });

  it('ends at Fenske’s kettle when reflux is all but total and the relative volatility constant', () => {
    const column = { slice: constantAlphaSlice(2.4), distillateMoleFraction: 0.9, plates: 4, efficiency: 1 };
    const ratio = 9 / 2.4 ** 5;
    // To first order the reflux that is missing from total costs 1/R.
    expect(Math.abs(kettleHeld(column, 1e8) - ratio / (1 + ratio))).toBeLessThan(1e-7);
  });

  it('balances ethanol at every row, and adds up the liquid returned as the reflux rises', () => {
    const { rows } = held({ ...example, slice, rows: 400 });
    let returned = 0;
    rows.forEach((row, k) => {
      const ethanol = row.kettle_mol * row.kettleMoleFraction + row.distillate_mol * 0.75;
      expect(Math.abs(ethanol - 55)).toBeLessThan(1e-9);
      if (k === 0) return;
      const before = rows[k - 1]!;
      returned += 0.5 * (row.reflux + before.reflux) * (row.distillate_mol - before.distillate_mol);
      expect(row.reflux).toBeGreaterThan(before.reflux);
      expect(row.kettleMoleFraction).toBeLessThan(before.kettleMoleFraction);
      // The trapezoid's own error at 400 rows.
      expect(Math.abs(row.returned_mol - returned)).toBeLessThan(2e-3);
    });
  });

  it('says when no such reflux holds the distillate, and when none is needed', () => {
    expect(constantComposition({ ...example, slice, distillateMoleFraction: 0.88 })).toMatchObject({
      found: false,
      reason: 'refluxTooSmall',
    });
    expect(constantComposition({ ...example, slice, distillateMoleFraction: 0.95, mostReflux: 1e6 }).found).toBe(false);
    expect(constantComposition({ ...example, slice, distillateMoleFraction: 0.6 })).toMatchObject({
      found: false,
      reason: 'weakerThanVapour',
    });
  });

  it('names what is wrong with a question', () => {
    const bad = { ...example, amount_mol: 0, plates: 1.5, mostReflux: -1, rows: 0 };
    expect(() => constantComposition(bad)).toThrow(
      /plates is 1.5[\s\S]*amount_mol is 0[\s\S]*mostReflux is -1[\s\S]*rows is 0/,
    );
    expect(() => kettleHeld(example, NaN)).toThrow(/reflux is NaN/);
  });
});

describe('constantReflux', () => {
  const charge = { amount_mol: 100, chargeMoleFraction: 0.18, endMoleFraction: 0.02 };
  const quadrature = 1e-9;

  it.each([
    ['plates', { plates: 0, efficiency: 1, reflux: 3 }],
    ['reflux', { plates: 8, efficiency: 0.65, reflux: 0 }],
  ])('is Rayleigh’s bare pot without %s', (_without, column) => {
    const run = constantReflux({ slice, ...charge, ...column });
    const left = rayleighLeft(slice, 0.18, 0.02);
    if (!run.found || !left.found) throw new Error('both are reachable');
    expect(Math.abs(run.kettle_mol / 100 - left.shareLeft)).toBeLessThan(quadrature);
  });

  it('is Rayleigh’s closed form with α to the power of the stages at total reflux and constant α', () => {
    const run = constantReflux({
      slice: constantAlphaSlice(1.3),
      amount_mol: 100,
      chargeMoleFraction: 0.5,
      endMoleFraction: 0.2,
      plates: 3,
      efficiency: 1,
      reflux: 'total',
    });
    // ln(F/S) = (ln(x_F/x_S) + α ln((1 − x_S)/(1 − x_F)))/(α − 1)
    const alpha = 1.3 ** 4;
    const share = Math.exp(-(Math.log(0.5 / 0.2) + alpha * Math.log(0.8 / 0.5)) / (alpha - 1));
    expect(run.found && Math.abs(run.kettle_mol / 100 - share)).toBeLessThan(quadrature);
  });

  it('comes to the total-reflux limit as the reflux grows, from below', () => {
    const mean = (reflux: number | 'total'): number => {
      const run = constantReflux({ slice, ...charge, plates: 5, efficiency: 0.7, reflux });
      if (!run.found) throw new Error(run.message);
      return run.distillateMoleFraction;
    };
    expect(mean(3)).toBeLessThan(mean(10));
    expect(mean(10)).toBeLessThan(mean('total'));
    expect(Math.abs(mean(1e6) - mean('total'))).toBeLessThan(1e-5);
  });

  it('takes the same first drop as a run at constant composition', () => {
    // Both start with one column over one charge: the first 0.1 % of the ethanol costs the same reflux.
    const run = constantReflux({ slice, ...charge, endMoleFraction: 0.1799, plates: 4, efficiency: 1, reflux: 2 });
    if (!run.found) throw new Error(run.message);
    const kettle = kettleHeld({ slice, distillateMoleFraction: run.firstMoleFraction, plates: 4, efficiency: 1 }, 2);
    expect(Math.abs(kettle - 0.18)).toBeLessThan(1e-9);
    const byBalance = (100 * (0.18 - 0.1799)) / (run.firstMoleFraction - 0.1799);
    expect(Math.abs(run.distillate_mol / byBalance - 1)).toBeLessThan(1e-3);
  });

  it('balances, and says where drawing never leads', () => {
    const column = { slice, plates: 4, efficiency: 0.65, reflux: 2 };
    const run = constantReflux({ ...column, ...charge });
    if (!run.found) throw new Error(run.message);
    const { kettle_mol, distillate_mol, distillateMoleFraction, firstMoleFraction, lastMoleFraction } = run;
    expect(Math.abs(kettle_mol + distillate_mol - 100)).toBeLessThan(1e-9);
    expect(Math.abs(kettle_mol * 0.02 + distillate_mol * distillateMoleFraction - 18)).toBeLessThan(1e-9);
    expect(distillateMoleFraction).toBeLessThan(firstMoleFraction);
    expect(distillateMoleFraction).toBeGreaterThan(lastMoleFraction);
    expect(constantReflux({ ...column, ...charge, endMoleFraction: 0.3 })).toMatchObject({ reason: 'unreachable' });
    const same = constantReflux({ ...column, ...charge, endMoleFraction: 0.18 });
    expect(same).toMatchObject({ found: true, distillate_mol: 0, distillateMoleFraction: firstMoleFraction });
  });

  it('names what is wrong with a question', () => {
    const bad = { slice, ...charge, chargeMoleFraction: 0, plates: 4, efficiency: 1, reflux: 2 };
    expect(() => constantReflux(bad)).toThrow(InputError);
    expect(() => constantReflux({ ...bad, chargeMoleFraction: 0.2, efficiency: 2 })).toThrow(/efficiency is 2/);
  });
});
