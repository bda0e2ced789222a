// What is refused before a run, and that nothing crashes on what is not a problem.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, problemFaults, solve, type EnergyProblem } from '#lib/index.js';
import { doubler, pot, trainProblem, type WholeProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

/** Every path into a record, its lists included. */
function paths(value: unknown, at: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, inner]) => paths(inner, [...at, key]))];
}

function replaced(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value))
    return value.map((inner: unknown, i) => (String(i) === key ? replaced(inner, rest, by) : inner));
  const record = value as Readonly<Record<string, unknown>>;
  return { ...record, [key]: replaced(record[key], rest, by) };
}

const whole: EnergyProblem = trainProblem({
  still: pot([doubler]),
  doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 }, temperature_K: 293 }],
  chargeTemperature_K: 290,
  jars: { kind: 'size', volume_m3: 1e-3 },
  lags: { boil_s: 0.5, weir_s: 2 },
  tolerance: 1e-5,
  model: 'energy',
  sheet: [
    { reflux: 'none', heat: { kind: 'power', power_W: 3000 }, until: [{ kind: 'firstVapour' }] },
    {
      reflux: 'none',
      until: [
        { kind: 'duration', seconds: 600 },
        { kind: 'spoutStrengthBelow', strength: 0.3 },
      ],
    },
  ],
});
const withPlates: EnergyProblem = trainProblem({
  sheet: [{ reflux: { kind: 'hold', strength: 0.9, leastShare: 0, mostShare: 0.9 }, until: [{ kind: 'firstVapour' }] }],
});

/** Parts of which nothing need be known: an empty record is one. */
const mayBeEmpty = ['still.doublers.0', 'still.head', 'still.productCondenser', 'still.air'];

describe('what is not a problem of a still', () => {
  it('is answered with faults, whatever stands wherever in it', () => {
    const places = [whole, withPlates].flatMap((problem) => paths(problem).map((path) => [problem, path] as const));
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.anything(), ([problem, path], anything) => {
        const faults = problemFaults(replaced(problem, path, anything) as EnergyProblem, system);
        for (const { argument, expected } of faults) {
          expect(argument).not.toBe('');
          expect(expected).not.toBe('');
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('is answered with faults also where a record refuses to become text or a number', () => {
    for (const problem of [whole, withPlates]) {
      for (const path of paths(problem)) {
        for (const bad of [{ toString: '' }, { valueOf: 1, toString: null }, Object.create(null)]) {
          const faults = problemFaults(replaced(problem, path, bad) as EnergyProblem, system);
          const nothing = Reflect.ownKeys(bad as object).length === 0;
          if (nothing && mayBeEmpty.includes(path.join('.'))) expect(faults).toEqual([]);
          else expect(faults.length, path.join('.')).toBeGreaterThan(0);
        }
      }
    }
  });

  it('is not a number anywhere: each number replaced by one that is none is named', () => {
    for (const problem of [whole, withPlates]) {
      expect(problemFaults(problem, system)).toEqual([]);
      for (const path of paths(problem)) {
        const value = path.reduce<unknown>((inner, key) => (inner as Readonly<Record<string, unknown>>)[key], problem);
        if (typeof value !== 'number') continue;
        for (const bad of [NaN, Infinity, '1', null, { toString: '' }]) {
          const faults = problemFaults(replaced(problem, path, bad) as EnergyProblem, system);
          expect(faults.length, `${path.join('.')} = ${JSON.stringify(bad)}`).toBeGreaterThan(0);
        }
      }
    }
  });
});

describe('what cannot be filled in or collected', () => {
  const fault = (changes: Partial<WholeProblem>): string | undefined =>
    problemFaults(trainProblem(changes), system)[0]?.argument;

  it('is a charge larger than the kettle, given as a volume or as an amount', () => {
    expect(fault({ charge: { kind: 'volume', volume_m3: 0.16, strength: 0.1 } })).toBe('charge.volume_m3');
    expect(fault({ charge: { kind: 'amount', amount_mol: 9000, moleFraction: 0.03 } })).toBe('charge.amount_mol');
    expect(fault({ charge: { kind: 'amount', amount_mol: 7000, moleFraction: 0.03 } })).toBeUndefined();
  });

  it('is a charge in more jars than anyone could count', () => {
    expect(fault({ jars: { kind: 'size', volume_m3: 1e-6 } })).toBe('jars.volume_m3');
    expect(fault({ jars: { kind: 'size', volume_m3: 1e-4 } })).toBeUndefined();
  });
});

describe('a doubler', () => {
  it('may be charged with plain water', () => {
    const water: EnergyProblem = {
      ...whole,
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0 } }],
    };
    expect(problemFaults(water, system)).toEqual([]);
    const sheet: EnergyProblem['sheet'] = [{ reflux: 'none', until: [{ kind: 'duration', seconds: 9000 }] }];
    const collected = (strength: number): number => {
      const doublerCharges: EnergyProblem['doublerCharges'] = [
        { charge: { kind: 'volume', volume_m3: 0.008, strength } },
      ];
      return solve({ ...water, doublerCharges, sheet }, system).pureAlcoholCollected_m3.at(-1)!;
    };
    expect(collected(0)).toBeGreaterThan(0.005);
    expect(collected(1e-3)).toBeGreaterThan(collected(0));
    expect(collected(1e-3)).toBeLessThan(1.01 * collected(0));
    expect(
      problemFaults({ ...whole, charge: { kind: 'volume', volume_m3: 0.1, strength: 0 } }, system)[0]?.argument,
    ).toBe('charge.strength');
  });
});
