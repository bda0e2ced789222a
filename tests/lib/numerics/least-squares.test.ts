import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '#lib/numerics/least-squares.js';
import { InputError } from '#lib/errors.js';
import { NIST_SETS, type NistSet } from '../../support/nist-regression.js';

const certifiedDigits = 1e-9; // parameters are certified to eleven digits; the sum of Lanczos3 is rounding of the data

function fit(set: NistSet, start: readonly number[]) {
  return leastSquares({
    residualCount: set.x.length,
    start,
    residuals(b, out) {
      set.x.forEach((x, i) => (out[i] = set.model(b, x) - set.y[i]!));
    },
  });
}

/** A curved valley a thousand times longer than wide: many published programs do not come through either (NIST). */
const outOfReach = (name: string, start: number): boolean => name === 'MGH10' && start === 1;

describe.each(NIST_SETS)('NIST StRD $name ($level)', (set) => {
  it.each(
    set.starts.map((start, i) => ({ number: i + 1, start })).filter(({ number }) => !outOfReach(set.name, number)),
  )('ends at the certified minimum from start $number', ({ start }) => {
    const found = fit(set, start);
    expect(found.ending).toBe('converged');
    expect(Math.abs(found.sumOfSquares / set.sum - 1)).toBeLessThan(certifiedDigits);
    set.certified.forEach((b, j) => expect(Math.abs(found.parameters[j]! / b - 1), `b${j + 1}`).toBeLessThan(1e-6));
  });
});

const rounding = 1e-6; // S is flat at its minimum: its last digit is worth the square root of that in p
const miss = (found: number, exact: number): number => Math.abs(found - exact) / (1 + Math.abs(exact));

describe('leastSquares', () => {
  it('gives the certified standard deviations of Misra1a', () => {
    // NIST StRD, Misra1a: 2.7070075241 and 7.2668688436e-6.
    const set = NIST_SETS[0]!;
    const { inverseNormal, sumOfSquares, degreesOfFreedom } = fit(set, set.starts[1]!);
    const variance = sumOfSquares / degreesOfFreedom;
    expect(Math.sqrt(variance * inverseNormal[0]!)).toBeCloseTo(2.7070075241, 5);
    expect(Math.sqrt(variance * inverseNormal[3]!) * 1e6).toBeCloseTo(7.2668688436, 5);
  });

  it('keeps its covariance when the parameters come to nothing', () => {
    const points = [0, -3.3e-76, 0];
    const { inverseNormal } = leastSquares({
      residualCount: 3,
      start: [5, 5],
      residuals: (p, out) => points.forEach((y, i) => (out[i] = p[0]! + p[1]! * i - y)),
    });
    expect(inverseNormal[0]).toBeCloseTo(5 / 6, 8);
    expect(inverseNormal[1]).toBeCloseTo(-1 / 2, 8);
  });

  it('finds a slope of nothing as exactly as any other', () => {
    const points = [0, 0, 0.7877488983744487, 0, 0];
    const sigma = [9, 2, 1, 2, 9];
    const { parameters } = leastSquares({
      residualCount: 5,
      start: [5, 5],
      residuals: (p, out) => points.forEach((y, i) => (out[i] = (p[0]! + p[1]! * i - y) / sigma[i]!)),
    });
    expect(parameters[1]).toBeCloseTo(0, 7);
  });

  it('solves a weighted straight line as the closed form does', () => {
    const weighted = fc.array(
      fc.record({ y: fc.double({ min: -9, max: 9, noNaN: true }), sigma: fc.integer({ min: 1, max: 9 }) }),
      {
        minLength: 3,
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(weighted, (points) => {
        const found = leastSquares({
          residualCount: points.length,
          start: [5, 5],
          residuals: (p, out) => points.forEach(({ y, sigma }, i) => (out[i] = (p[0]! + p[1]! * i - y) / sigma)),
        });
        let [s, sx, sxx, sy, sxy] = [0, 0, 0, 0, 0];
        points.forEach(({ y, sigma }, i) => {
          const w = 1 / sigma ** 2;
          s += w;
          sx += w * i;
          sxx += w * i * i;
          sy += w * y;
          sxy += w * i * y;
        });
        const determinant = s * sxx - sx * sx;
        expect(miss(found.parameters[0]!, (sxx * sy - sx * sxy) / determinant)).toBeLessThan(rounding);
        expect(miss(found.parameters[1]!, (s * sxy - sx * sy) / determinant)).toBeLessThan(rounding);
        expect(miss(found.inverseNormal[0]!, sxx / determinant)).toBeLessThan(rounding);
        expect(miss(found.inverseNormal[1]!, -sx / determinant)).toBeLessThan(rounding);
      }),
    );
  });

  it('says so when it runs out of steps, as on MGH10 from its far start', () => {
    const set = NIST_SETS.find(({ name }) => name === 'MGH10')!;
    expect(fit(set, set.starts[0]!).ending).toBe('out of steps');
  });

  it('refuses fewer residuals than parameters and a start without a value', () => {
    const residuals = (p: Float64Array, out: Float64Array): void => void out.fill(Math.log(p[0]!));
    expect(() => leastSquares({ residualCount: 1, start: [1, 2], residuals })).toThrow(/residualCount is 1/);
    expect(() => leastSquares({ residualCount: 2, start: [-1], residuals })).toThrow(InputError);
  });
});
