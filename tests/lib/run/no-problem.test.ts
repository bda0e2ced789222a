// Data that is no problem: whatever stands where, solve and problemFaults answer with an InputError of a few lines, or with a run.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, InputError, problemFaults, solve, type RunProblem } from '#lib/index.js';
import { anyColumnRun, anySimpleRun, anyTrainRun } from '../../support/any-run.js';

const system = createEthanolWater();
const short = 4500; // letters: ten faults of a few hundred

const circular: Record<string, unknown> = { kind: 'duration' };
circular['self'] = circular;
const holes: unknown[] = [];
holes.length = 3;
const odd: readonly unknown[] = [
  undefined,
  null,
  NaN,
  -1,
  5e-324,
  1e308,
  10n ** 50n,
  '',
  'x'.repeat(100_000),
  true,
  Symbol('odd'),
  () => 1,
  {},
  [],
  holes,
  new Array(100_000).fill({ kind: 'duration', seconds: 1 }),
  circular,
  [circular],
  { kind: 'unknown' },
  new Map(),
  new Date(0),
  Object.create(null),
];

/** Every path of plain data. */
function paths(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => paths(inner, [...path, key]))];
}

function replaced(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  const copy: unknown = Array.isArray(value) ? value.slice() : { ...(value as object) };
  (copy as Record<string, unknown>)[key] = replaced((value as Record<string, unknown>)[key], rest, by);
  return copy;
}

/** Runs nothing that could be run: only what is refused is of interest. */
function refusal(problem: unknown): InputError | undefined {
  const faults = problemFaults(problem as RunProblem, system);
  if (faults.length === 0) return undefined;
  try {
    solve(problem as RunProblem, system);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('refused by problemFaults alone');
}

describe('any part of a problem replaced by something odd', () => {
  it('is refused in a few lines, or can be run', () => {
    const any = fc.oneof<fc.Arbitrary<RunProblem>[]>(anySimpleRun, anyColumnRun, anyTrainRun);
    fc.assert(
      fc.property(any, fc.nat(), fc.nat({ max: odd.length - 1 }), (problem, at, which) => {
        const all = paths(problem);
        const error = refusal(replaced(problem, all[at % all.length]!, odd[which]));
        expect(error?.message.length ?? 0).toBeLessThan(short);
      }),
      { numRuns: Number(process.env['RANDOM_RUNS'] ?? 500) },
    );
  });

  it.each(odd.map((value, i) => [i, value] as const))('is refused as a whole, odd value %i', (_i, value) => {
    expect(() => solve(value as RunProblem, system)).toThrow(InputError);
    expect(problemFaults(value as RunProblem, system)).not.toEqual([]);
  });
});

describe('an InputError', () => {
  it('tells ten faults and how many more there are, each in short', () => {
    const fault = { argument: 'a'.repeat(1000), value: circular, expected: 'b'.repeat(1000) };
    const { message, faults } = new InputError(...Array.from({ length: 50 }, () => fault));
    expect(message.split('\n')).toHaveLength(11);
    expect(message.split('\n')[10]).toBe('and 40 more');
    expect(message.length).toBeLessThan(7000);
    expect(faults).toHaveLength(50);
  });

  it('prints what is plain as it is written, and the rest by what it is', () => {
    const said = (value: unknown): string => new InputError({ argument: 'x', value, expected: 'more' }).message;
    expect(said({ kind: 'duration', seconds: [1, null] })).toBe(
      'x is {"kind":"duration","seconds":[1,null]}; expected more',
    );
    expect(said('wash')).toBe("x is 'wash'; expected more");
    expect(said(12n)).toBe('x is 12n; expected more');
    expect(said([])).toBe('x is []; expected more');
    expect(said(() => 1)).toBe('x is a function; expected more');
    expect(said(circular)).toContain('…');
  });
});
