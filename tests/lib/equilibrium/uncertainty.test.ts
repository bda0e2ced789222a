import { describe, expect, it } from 'vitest';
import {
  azeotrope,
  azeotropeUncertainty,
  bubblePoint,
  equilibriumUncertainty,
  InputError,
  relativeVolatility,
} from '#lib/index.js';
import { LABORATORIES_ETHANOL_WATER } from '#lib/data/laboratories-ethanol-water.js';
import { REDLICH_KISTER_COVARIANCE } from '#lib/data/redlich-kister-covariance.js';
import { EXPANSION, redlichKister, redlichKisterModel } from '#lib/mixture/activity/redlich-kister.js';

const about = { name: 'moved', range_K: [298, 424] as const, source: 'test' };
const lengths = EXPANSION.series.map((terms) => terms.length);
const parameters = lengths.reduce((a, b) => a + b, 0);
const factor = (i: number, j: number): number => REDLICH_KISTER_COVARIANCE.coefficients[`L${i + 1}_${j + 1}` as 'L1_1'];

/** The model with its parameters moved by `share` of one column of the covariance's factor. */
function moved(column: number, share: number) {
  let at = 0;
  const series = EXPANSION.series.map((terms) =>
    terms.map((term) => {
      const i = at++;
      return term + (i >= column ? share * factor(i, column) : 0);
    }),
  );
  return redlichKisterModel({ ...EXPANSION, series }, about);
}

/** Standard error by moving every independent direction in turn, a second route without derivatives. */
function byMoving(value: (model: typeof redlichKister) => number): number {
  let sum = 0;
  const share = 1e-3;
  for (let column = 0; column < parameters; column++) {
    sum += ((value(moved(column, share)) - value(moved(column, -share))) / (2 * share)) ** 2;
  }
  return Math.sqrt(sum);
}

const alike = 1e-3; // relative; the second route is a difference quotient

const { crossVolatility, cross_K, ...laboratory } = LABORATORIES_ETHANOL_WATER.coefficients;

describe('the standard error of the curve', () => {
  it.each([
    [0.01, 101325],
    [0.2, 101325],
    [0.7, 30e3],
    [0.95, 300e3],
  ])('of y and T at x = %d and %d Pa is what moving the parameters gives', (x, pressure_Pa) => {
    const { curve } = equilibriumUncertainty(x, pressure_Pa);
    const { vapourMoleFraction: y } = bubblePoint(x, pressure_Pa, redlichKister);
    const byParameters = byMoving((model) => bubblePoint(x, pressure_Pa, model).vapourMoleFraction);
    const T = byMoving((model) => bubblePoint(x, pressure_Pa, model).temperature_K);
    // What the cross coefficient leaves open comes on top.
    const together = Math.hypot(byParameters, y * (1 - y) * crossVolatility * (1 - x));
    expect(Math.abs(curve.vapourMoleFraction / together - 1)).toBeLessThan(alike);
    expect(Math.abs(curve.temperature_K / Math.hypot(T, cross_K) - 1)).toBeLessThan(alike);
  });

  it('of the azeotrope is what moving the parameters gives', () => {
    const error = azeotropeUncertainty(101325);
    const x = byMoving((model) => {
      const found = azeotrope(101325, model);
      return found.found ? found.moleFraction : NaN;
    });
    const found = azeotrope(101325, redlichKister);
    if (!error.found || !found.found) throw new Error('no azeotrope');
    const at = (liquid: number): number => Math.log(relativeVolatility(liquid, 101325, redlichKister));
    const slope = (at(found.moleFraction + 1e-4) - at(found.moleFraction - 1e-4)) / 2e-4;
    const together = Math.hypot(x, (crossVolatility * (1 - found.moleFraction)) / slope);
    expect(Math.abs(error.curve.moleFraction / together - 1)).toBeLessThan(alike);
  });
});

describe('the standard error', () => {
  it('is what a further laboratory would measure: the curve’s and what laboratories differ by', () => {
    const [x, pressure_Pa] = [0.05, 101325];
    const { vapourMoleFraction, temperature_K, curve } = equilibriumUncertainty(x, pressure_Pa);
    const boiling = bubblePoint(x, pressure_Pa, redlichKister);
    const y = boiling.vapourMoleFraction;
    const liquid = laboratory.composition * x * (1 - x) ** 2;
    const vapour = y * (1 - y) * (laboratory.vapour + laboratory.vapourWeak * (1 - x));
    expect(vapourMoleFraction).toBeCloseTo(
      Math.hypot(curve.vapourMoleFraction, boiling.vapourSlope * liquid, vapour),
      12,
    );
    const gauges = Math.hypot(laboratory.temperature_K, laboratory.atOneMPa_K * 0.101325);
    expect(temperature_K).toBeCloseTo(Math.hypot(curve.temperature_K, boiling.temperatureSlope_K * liquid, gauges), 12);
  });

  it('of the azeotrope at 1 atm covers the spread of the printed values, 0.892 to 0.8947', () => {
    // CRC Handbook 44th ed. 0.892; Evans 1916 0.8947; Carey & Lewis 1932 0.8943.
    const error = azeotropeUncertainty(101325);
    const found = azeotrope(101325, redlichKister);
    if (!error.found || !found.found) throw new Error('no azeotrope');
    expect(error.moleFraction).toBeGreaterThan(0.0005);
    expect(error.moleFraction).toBeLessThan(0.003);
    for (const printed of [0.892, 0.8943, 0.8947]) {
      expect(Math.abs(found.moleFraction - printed) / error.moleFraction).toBeLessThan(2);
    }
  });

  it('vanishes for pure substances and grows where data are few', () => {
    for (const x of [0, 1]) {
      expect(equilibriumUncertainty(x, 101325)).toMatchObject({
        vapourMoleFraction: 0,
        curve: { vapourMoleFraction: 0, temperature_K: 0 },
      });
    }
    const relative = (pressure_Pa: number): number => {
      const error = azeotropeUncertainty(pressure_Pa);
      return error.found ? error.moleFraction : NaN;
    };
    expect(relative(17e3)).toBeGreaterThan(relative(101325));
    expect(relative(1e6)).toBeGreaterThan(relative(101325));
  });

  it('says when a state is extrapolated', () => {
    expect(equilibriumUncertainty(0.5, 101325).insideFittedRange).toBe(true);
    expect(equilibriumUncertainty(0.5, 2e6).insideFittedRange).toBe(false);
  });

  it('answers that there is none where there is no azeotrope, and refuses bad input', () => {
    expect(azeotropeUncertainty(5e3)).toMatchObject({ found: false, reason: 'none' });
    expect(() => equilibriumUncertainty(2, 101325)).toThrow(InputError);
  });
});
