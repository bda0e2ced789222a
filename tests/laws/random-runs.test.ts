// The laws of every engine on random runs: extreme but allowed. Some hundred here; `npm run random` makes 20 000, with another seed each time. A failure shrinks to
// a plain problem, which then stands below by name.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, InputError, problemFaults, solve, type RunProblem } from '#lib/index.js';
import { anyColumnRun, anySimpleRun, anyTrainRun } from '../support/any-run.js';
import { platedStill, pot, power, doubler, trainProblem, type WholeProblem } from '../support/train-problems.js';
import {
  costsNoMoreThanARunMay,
  endsTyped,
  isFinite,
  keepsEveryMole,
  paysForWhatItSeparates,
  staysBelowTheAzeotrope,
  staysInRange,
} from './run-laws.js';

const system = createEthanolWater();
/** Runs of each engine; the full model gets half of all. */
const runs = Number(process.env['RANDOM_RUNS'] ?? 300);
/** The same runs on every commit, so that what fails there is the commit's; others each time where a number is asked for. */
const sown = process.env['RANDOM_RUNS'] === undefined ? { seed: 20261128 } : {};

const laws = [
  endsTyped,
  costsNoMoreThanARunMay,
  isFinite,
  staysInRange,
  keepsEveryMole,
  staysBelowTheAzeotrope,
  paysForWhatItSeparates,
];

/** A problem is refused with short reasons, or its run obeys every law and is the same twice. */
function obeys(problem: RunProblem): void {
  if (problemFaults(problem, system).length > 0) {
    expect(() => solve(problem, system)).toThrow(InputError);
    return;
  }
  const run = solve(problem, system);
  for (const law of laws) law(run, system);
  const again = solve(problem, system).plain();
  expect(again.ending).toEqual(run.ending);
  for (const [name, column] of Object.entries(run.plain())) {
    if (!(column instanceof Float64Array)) continue;
    const other = (again as unknown as Record<string, Float64Array>)[name]!;
    expect(column.length === other.length && column.every((value, i) => Object.is(value, other[i])), name).toBe(true);
  }
}

const engines: readonly [string, fc.Arbitrary<RunProblem>, number][] = [
  ['a bare pot by quadrature', anySimpleRun, 0.2],
  ['a column of equal flows', anyColumnRun, 0.3],
  ['a still with its energy', anyTrainRun, 0.5],
];

describe.each(engines)('any run of %s', (_name, anyRun, share) => {
  it('ends for a reason in bounded work, keeps every mole, stays in range, pays for what it separates, and is the same twice', () => {
    fc.assert(fc.property(anyRun, obeys), { numRuns: Math.ceil(share * runs), ...sown });
  });
});

describe('a tighter tolerance', () => {
  it('is nearer to a run at a much tighter one', () => {
    const plain = fc.record({
      plates: fc.integer({ min: 0, max: 20 }),
      efficiency: fc.double({ min: 0.3, max: 1, noNaN: true }),
      strength: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
      reflux: fc.double({ min: 0.5, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(plain, ({ plates, efficiency, strength, reflux }) => {
        const at = (tolerance: number): Float64Array =>
          solve(
            trainProblem({
              still: platedStill(plates, efficiency),
              charge: { kind: 'volume', volume_m3: 0.12, strength },
              sheet: [{ reflux, until: [{ kind: 'duration', seconds: 3600 }] }],
              tolerance,
            }),
            system,
          ).spoutMoleFraction;
        const reference = at(1e-9);
        const error = (tolerance: number): number =>
          at(tolerance).reduce((most, x, i) => Math.max(most, Math.abs(x - reference[i]!)), 0);
        expect(error(1e-6)).toBeLessThan(Math.max(error(1e-4), 1e-6));
      }),
      { numRuns: Math.ceil(0.02 * runs), ...sown },
    );
  });
});

const dripping: WholeProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] }];

describe('what random runs once failed at', () => {
  const found: readonly [string, WholeProblem][] = [
    [
      'plates that nothing runs down to boil dry over a stronger vapour',
      trainProblem({ still: platedStill(12, 0.3, true), sheet: dripping, heat: power(20_000), start: 'cold' }),
    ],
    [
      'plates of a twentieth of an efficiency whose vapour stops',
      trainProblem({
        still: platedStill(8, 0.05),
        sheet: [
          { reflux: 'none', until: [{ kind: 'duration', seconds: 600 }] },
          { reflux: 'none', heat: power(0), until: [{ kind: 'duration', seconds: 600 }] },
        ],
      }),
    ],
    [
      'a kettle that boils so gently that it never leaves its corner',
      trainProblem({
        still: pot([doubler]),
        doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.004, strength: 0 } }],
        heat: power(20_000),
        sheet: [{ reflux: 'none', heat: power(150), until: [{ kind: 'duration', seconds: 500_000 }] }],
        outputs: { kind: 'every', interval_s: 3600 },
        start: 'cold',
        tolerance: 1e-3,
      }),
    ],
    [
      'a first vapour that comes after years',
      trainProblem({
        still: { ...platedStill(4, 0.65, true), kettle: { ...platedStill(4).kettle, volume_m3: 10, heatLoss_W_K: 0 } },
        charge: { kind: 'volume', volume_m3: 9, strength: 0.1 },
        heat: power(20),
        sheet: [{ reflux: 'total', until: [{ kind: 'firstVapour' }] }],
        outputs: { kind: 'perStep', points: 1 },
        start: 'cold',
      }),
    ],
  ];
  it.each(found)('%s', (_name, problem) => {
    expect(problemFaults(problem, system)).toEqual([]);
    obeys(problem);
  });

  it('air hotter than spirit boils: refused with that reason', () => {
    const still = { ...platedStill(8), air: { pressure_Pa: 101325, temperature_K: 352.15 } };
    expect(() => solve(trainProblem({ still, heat: power(136_000) }), system)).toThrow(
      'still.air.temperature_K is 352.15; expected a temperature below 351.2',
    );
  });

  it('plates that their vapour renews in no time: refused with that reason', () => {
    const { column, ...rest } = platedStill(60);
    if (column.kind !== 'plates') return expect.unreachable();
    const still = { ...rest, column: { ...column, holdUp: { kind: 'volume', volume_m3: 1e-9 } as const } };
    expect(() => solve(trainProblem({ still, heat: power(136_000) }), system)).toThrow(
      'still.column.holdUp is 0.0000265; expected to hold 0.0034 mol or more, which vapour at 1.36e+5 W renews in a millisecond',
    );
  });
});
