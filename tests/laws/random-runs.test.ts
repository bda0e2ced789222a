// The laws of every engine on random runs: extreme but allowed. 500 here; `npm run random` makes 20 000, with another seed each time. A failure shrinks to
// a plain problem, which then stands below by name, or in found-runs.json.

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
  tooMuchWork,
} from './run-laws.js';
import foundRuns from './found-runs.json' with { type: 'json' };

const system = createEthanolWater();
/** Runs of each engine; the full model gets half of all. */
const runs = Number(process.env['RANDOM_RUNS'] ?? 500);
/** The same runs on every commit, so that what fails there is the commit's; others each time where a number is asked for. */
const sown = process.env['RANDOM_RUNS'] === undefined ? { seed: 20261128 } : {};

/** Of all runs of an engine no more than this share is left for the work it takes. */
const MOST_LEFT = 0.01;

const laws = [
  endsTyped,
  costsNoMoreThanARunMay,
  isFinite,
  staysInRange,
  keepsEveryMole,
  staysBelowTheAzeotrope,
  paysForWhatItSeparates,
];

/** Runs left for the work they take, of so many. */
const left = { runs: 0, of: 0 };

/** A problem is refused with short reasons, or its run obeys every law and is the same twice: step by step, and all of it for one in four. */
function obeys(problem: RunProblem): void {
  if (problemFaults(problem, system).length > 0) {
    expect(() => solve(problem, system)).toThrow(InputError);
    return;
  }
  const run = solve(problem, system);
  for (const law of laws) law(run, system);
  left.of += 1;
  left.runs += tooMuchWork(run) ? 1 : 0;
  const again = solve(problem, system);
  expect(again.ending).toEqual(run.ending);
  expect(again.statistics).toEqual(run.statistics);
  expect(same(again.time_s, run.time_s) && same(again.collectedEthanol_mol, run.collectedEthanol_mol)).toBe(true);
  if (left.of % 4 !== 1) return;
  const columns = again.plain() as unknown as Record<string, Float64Array>;
  for (const [name, column] of Object.entries(run.plain())) {
    if (column instanceof Float64Array) expect(same(column, columns[name]!), name).toBe(true);
  }
}

/** To the last bit. */
function same(one: Float64Array, other: Float64Array): boolean {
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (!Object.is(one[i], other[i])) return false;
  return true;
}

const engines: readonly [string, fc.Arbitrary<RunProblem>, number][] = [
  ['a bare pot by quadrature', anySimpleRun, 0.2],
  ['a column of equal flows', anyColumnRun, 0.3],
  ['a still with its energy', anyTrainRun, 0.5],
];

describe.each(engines)('any run of %s', (_name, anyRun, share) => {
  it('ends for a reason in bounded work, keeps every mole, stays in range, pays for what it separates, and is the same twice', () => {
    Object.assign(left, { runs: 0, of: 0 });
    fc.assert(fc.property(anyRun, obeys), { numRuns: Math.ceil(share * runs), ...sown });
    // Columns that dry out over a kettle that boils for weeks; the reason stands in their ending.
    expect(left.runs).toBeLessThanOrEqual(Math.max(1, MOST_LEFT * left.of));
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
      { numRuns: Math.ceil(0.012 * runs), ...sown },
    );
  });
});

const dripping: WholeProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.05 }] }];

describe('what random runs once failed at', () => {
  const found: readonly [string, RunProblem][] = [
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
  it.each([...found, ...(Object.entries(foundRuns) as [string, RunProblem][])])('%s', (_name, problem) => {
    expect(problemFaults(problem, system)).toEqual([]);
    obeys(problem);
  });

  it('air hotter than spirit boils: refused with that reason', () => {
    const still = { ...platedStill(8), air: { pressure_Pa: 101325, temperature_K: 352.15 } };
    expect(() => solve(trainProblem({ still, heat: power(136_000) }), system)).toThrow(
      'still.air.temperature_K is 352.15; expected a temperature below 351.2',
    );
  });

  it('a film of next to nothing on much metal: refused with that reason', () => {
    const own = platedStill(8);
    const still = { ...own, head: { ...own.head, film_m3: 1e-8, metal_J_K: 141_000 } };
    expect(() => solve(trainProblem({ still }), system)).toThrow(
      'still.head.film_m3 is 1e-8; expected 5.3e-7 m³ or more, a tenth of a micrometre of liquid on 1.41e+5 J/K of metal',
    );
  });

  it('a full doubler that runs over into plates that drain back into it: the run is left there, with that reason', () => {
    const own = platedStill(4);
    const still = { ...own, doublers: [{ ...doubler, overflow: 'over' as const }] };
    const { volume_m3 } = doubler;
    const full = { kind: 'volume', volume_m3: 0.95 * volume_m3, strength: 0.1 } as const;
    const run = solve(
      trainProblem({ still, doublerCharges: [{ charge: full }], start: 'cold', sheet: dripping }),
      system,
    );
    expect(run.ending.kind).toBe('neverMet');
    expect(run.ending.message).toMatch(
      /^step 1 was left after \d+\.\d min: doubler 1 is full, and what runs over from it comes back to it from the parts above: none of its rules was met/u,
    );
    for (const law of laws) law(run, system);
  });

  it('plates and a drum that are full of nearly all the charge as a hot run begins: refused, or the kettle has some of it', () => {
    const own = platedStill(8);
    const still = {
      ...own,
      column: { ...own.column, holdUp: { kind: 'volume' as const, volume_m3: 0.001 } },
      productCondenser: { ...own.productCondenser, holdUp: { kind: 'volume' as const, volume_m3: 2e-4 } },
    };
    const refused = Array.from({ length: 40 }, (_, i) => 0.007 + 1e-4 * i).map((volume_m3) => {
      const charge = { kind: 'volume', volume_m3, strength: 0.01 } as const;
      const problem = trainProblem({ still, charge, start: 'firstVapour' });
      const faults = problemFaults(problem, system);
      if (faults.length === 0) expect(solve(problem, system).kettleMoleFraction[0]).toBeGreaterThan(0);
      return faults[0]?.expected ?? '';
    });
    expect(refused.some((words) => words.includes('less than half the charge'))).toBe(true);
    expect(refused.some((words) => words.includes('less than most of the charge'))).toBe(true);
    expect(refused).toContain('');
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
