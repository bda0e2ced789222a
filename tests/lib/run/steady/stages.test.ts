import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createEthanolWater,
  InputError,
  minimumReflux,
  moleFractionFromStrength,
  staircase,
  stagesAtTotalReflux,
  vapourOnSlice,
} from '#lib/index.js';
import { bracketedRoot } from '#lib/numerics/root.js';
import { publishedTable } from '../../../support/published-table.js';
import { constantAlphaSlice, sliceThrough } from '../../../support/synthetic-slices.js';

const slice = createEthanolWater().curve('redlich-kister').at(101325);
const weakKettle = moleFractionFromStrength(0.095);
const rounding = 1e-12;

const careyLewis = sliceThrough(
  publishedTable('measurements/carey-lewis-1932-101kPa.csv').rows.map((row) => [Number(row.x1), Number(row.y1)]),
);

describe('stagesAtTotalReflux', () => {
  it('gives the stages of Coulson & Richardson, Example 11.9, by Fenske', () => {
    // Vol. 2, 5th ed. 2002: x_D 0.9, x_W 0.1, α 2.4: n + 1 = ln 81/ln 2.4 = 5.02, so 4 plates and the still.
    const count = stagesAtTotalReflux(constantAlphaSlice(2.4), 0.1, 0.9);
    expect(count.found && count.stages).toBeCloseTo(5.02, 2);
  });

  it('is Fenske’s formula for any constant relative volatility', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 20, noNaN: true }),
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: 0.5, max: 0.999, noNaN: true }),
        (alpha, from, to) => {
          const count = stagesAtTotalReflux(constantAlphaSlice(alpha), from, to);
          const fenske = Math.log((to / (1 - to)) * ((1 - from) / from)) / Math.log(alpha);
          expect(count.found && Math.abs(count.stages - fenske)).toBeLessThan(1e-9 * Math.max(1, fenske));
        },
      ),
    );
  });

  it.each([
    // Computed apart from this project: some 7-8 stages to 95 % vol, the kettle counted, and 10-12 to 96 %.
    [0.95, 7, 8],
    [0.96, 10, 12],
  ])('takes a weak kettle of 9.5 %% vol to strength %d in %d to %d stages', (strength, least, most) => {
    const count = stagesAtTotalReflux(slice, weakKettle, moleFractionFromStrength(strength));
    expect(count.found && count.stages).toBeGreaterThan(least);
    expect(count.found && count.stages).toBeLessThan(most);
  });

  it('finds no number of stages beyond the azeotrope, and says so', () => {
    const beyond = stagesAtTotalReflux(slice, weakKettle, 0.9);
    expect(beyond).toMatchObject({ found: false, reason: 'beyondAzeotrope' });
    expect(stagesAtTotalReflux(slice, 0.93, 0.95)).toMatchObject({ found: false });
  });

  it('needs none where nothing is gained, and refuses a head weaker than the kettle', () => {
    expect(stagesAtTotalReflux(slice, 0.3, 0.3)).toEqual({ found: true, stages: 0 });
    expect(() => stagesAtTotalReflux(slice, 0.3, 0.2)).toThrow(/toMoleFraction is 0.2/);
    expect(() => stagesAtTotalReflux(slice, 0, 0.2)).toThrow(InputError);
  });
});

describe('staircase', () => {
  it.each([
    // Coulson & Richardson vol. 2, 5th ed. 2002, Example 11.12: ethanol-water, four ideal plates and the still, x_D 0.75.
    // Printed still compositions, read from a graph to 0.005; the equilibrium here is Carey & Lewis 1932.
    [0.85, 0.55, 0.005],
    [1, 0.5, 0.005],
    [3, 0.075, 0.005],
    [4, 0.05, 0.005],
    // The two printed in the middle, 0.37 and 0.20, lie off: stepping the same stages gives 0.327 and 0.183 with a
    // smooth curve through the data. The graph is steep there.
    [1.5, 0.327, 0.01],
    [2, 0.183, 0.01],
  ])('at reflux %d holds a distillate of 0.75 over a still at %d', (reflux, still, reading) => {
    const head = (kettleMoleFraction: number): number =>
      staircase({ slice: careyLewis, kettleMoleFraction, plates: 4, efficiency: 1, reflux }).headMoleFraction;
    const found = bracketedRoot((x) => head(x) - 0.75, 0.001, 0.74);
    expect(Math.abs(found - still)).toBeLessThan(reading);
  });

  it('ends where Fenske does at total reflux and constant relative volatility', () => {
    const { headMoleFraction } = staircase({
      slice: constantAlphaSlice(2.4),
      kettleMoleFraction: 0.1,
      plates: 4,
      efficiency: 1,
      reflux: 'total',
    });
    const ratio = 2.4 ** 5 * (0.1 / 0.9);
    expect(Math.abs(headMoleFraction - ratio / (1 + ratio))).toBeLessThan(rounding);
  });

  it('closes: every step on its operating line, every plate at its efficiency, the top at the spout', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.95, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        fc.oneof(fc.double({ min: 0.05, max: 50, noNaN: true }), fc.constant('total' as const)),
        (kettleMoleFraction, plates, efficiency, reflux) => {
          const stairs = staircase({ slice, kettleMoleFraction, plates, efficiency, reflux });
          expect(stairs.steps).toHaveLength(plates);
          const { slope, intercept } = stairs.operatingLine;
          let below = stairs.kettleVapourMoleFraction;
          for (const step of stairs.steps) {
            const { liquidMoleFraction, vapourInMoleFraction, vapourOutMoleFraction } = step;
            // Plates found from below and from the top meet within this.
            expect(Math.abs(vapourInMoleFraction - below)).toBeLessThan(1e-8);
            expect(Math.abs(slope * liquidMoleFraction + intercept - vapourInMoleFraction)).toBeLessThan(1e-9);
            const gain = efficiency * (vapourOnSlice(slice, liquidMoleFraction) - vapourInMoleFraction);
            expect(Math.abs(vapourInMoleFraction + gain - vapourOutMoleFraction)).toBeLessThan(1e-9);
            below = vapourOutMoleFraction;
          }
          expect(Math.abs(below - stairs.headMoleFraction)).toBeLessThan(1e-8);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('gives more with more plates and with more reflux, but never beyond the azeotrope', () => {
    const head = (plates: number, reflux: number | 'total'): number =>
      staircase({ slice, kettleMoleFraction: weakKettle, plates, efficiency: 0.65, reflux }).headMoleFraction;
    expect(head(8, 5)).toBeGreaterThan(head(4, 5));
    expect(head(8, 5)).toBeGreaterThan(head(8, 2));
    expect(head(60, 'total')).toBeLessThan(0.8948);
  });

  it('is a bare pot without plates, and without reflux', () => {
    const ask = { slice, kettleMoleFraction: weakKettle, efficiency: 1 };
    const bare = vapourOnSlice(slice, weakKettle);
    expect(staircase({ ...ask, plates: 0, reflux: 3 }).headMoleFraction).toBe(bare);
    expect(staircase({ ...ask, plates: 6, reflux: 0 })).toMatchObject({ headMoleFraction: bare, steps: [] });
  });

  it('names every argument it cannot use', () => {
    const bad = { slice, kettleMoleFraction: 2, plates: 1.5, efficiency: 0, reflux: -1 };
    expect(() => staircase(bad)).toThrow(
      /kettleMoleFraction is 2[\s\S]*plates is 1.5[\s\S]*efficiency is 0[\s\S]*reflux/,
    );
  });
});

describe('minimumReflux', () => {
  it('is the kettle’s pinch at constant relative volatility', () => {
    // Closed form for a rectifying column pinched at the kettle: R = (x_D − y*)/(y* − x_B), y* = α x/(1 + (α − 1) x).
    const least = minimumReflux(constantAlphaSlice(2.4), 0.4, 0.9);
    const vapour = (2.4 * 0.4) / (1 + 1.4 * 0.4);
    expect(least.found && Math.abs(least.reflux - (0.9 - vapour) / (vapour - 0.4))).toBeLessThan(1e-9);
    // Coulson & Richardson vol. 2, Example 11.9: 1.32 (Underwood).
    expect(least.found && least.reflux).toBeCloseTo(1.32, 2);
  });

  it('is a tangent pinch for a strong distillate of ethanol and water', () => {
    const least = minimumReflux(slice, weakKettle, moleFractionFromStrength(0.97));
    expect(least).toMatchObject({ found: true, pinch: 'tangent' });
    if (!least.found) return;
    // The line touches the curve: it meets it there and lies nowhere above it.
    const head = moleFractionFromStrength(0.97);
    const slope = least.reflux / (least.reflux + 1);
    for (let x = weakKettle; x < head; x += 0.001) {
      expect(slope * x + (1 - slope) * head).toBeLessThan(vapourOnSlice(slice, x) + rounding);
    }
    const line = slope * least.pinchMoleFraction + (1 - slope) * head;
    expect(Math.abs(line - vapourOnSlice(slice, least.pinchMoleFraction))).toBeLessThan(rounding);
  });

  it('is approached from above by columns of many plates', () => {
    const least = minimumReflux(slice, weakKettle, 0.7);
    if (!least.found) throw new Error(least.message);
    const head = (reflux: number): number =>
      staircase({ slice, kettleMoleFraction: weakKettle, plates: 300, efficiency: 1, reflux }).headMoleFraction;
    expect(Math.abs(head(least.reflux) - 0.7)).toBeLessThan(1e-6);
    expect(head(0.99 * least.reflux)).toBeLessThan(0.7);
  });

  it('is none where a bare pot is enough, and not to be had beyond the azeotrope', () => {
    expect(minimumReflux(slice, 0.3, 0.5)).toMatchObject({ found: true, reflux: 0 });
    expect(minimumReflux(slice, weakKettle, 0.9)).toMatchObject({ found: false, reason: 'beyondAzeotrope' });
    expect(() => minimumReflux(slice, -1, 0.9)).toThrow(/kettleMoleFraction is -1/);
  });
});
