// Everything the library exports is documented, and its examples are true.

import { describe, expect, it } from 'vitest';
import * as still from '#lib/index.js';
import * as numerics from '#lib/numerics/index.js';
import { agrees, examplesOf, faultsOf, publicNames, type PublicName } from '../support/doc-comments.js';

const lib = { ...still, ...numerics };
const names = [...publicNames(), ...publicNames('lib/numerics/index.ts')];
const examples = names.flatMap(({ name, comment }) => examplesOf(comment).map((example) => ({ name, ...example })));

describe('the public door', () => {
  it('shows the reader of comments what running code sees', () => {
    const values = names.filter(({ kind }) => kind !== 'type').map(({ name }) => name);
    expect(values.sort()).toEqual(Object.keys(lib).sort());
  });

  it.each(names)('$name is documented', (named) => {
    expect(faultsOf(named)).toEqual([]);
  });

  it.each(examples)('$name: $call is $printed', async ({ call, printed }) => {
    const value = await evaluate(call);
    expect(agrees(value, printed), `it is ${String(value)}`).toBe(true);
  });

  it('says of every fraction what it is a fraction of', () => {
    const vague = /^(fraction|x|abv)$/i;
    const all = names.flatMap(({ name, kind, members }) => (kind === 'type' ? [name, ...members] : [name]));
    expect(all.filter((name) => vague.test(name))).toEqual([]);
  });
});

describe('the reader of doc comments', () => {
  const complete = [
    'Pressure of something.',
    '',
    'Equation: p = n R T / V.',
    '@param amount_mol Amount, n, [mol]; 0 or more.',
    '@returns Pressure, [Pa].',
    '@example pressure(2) // → 12.5',
    'Source: definition.',
  ];
  const named = (lines: readonly string[]): PublicName => ({
    name: 'pressure',
    kind: 'function',
    comment: lines.join('\n'),
    parameters: [{ name: 'amount_mol', numeric: true, optional: false }],
    result: 'number',
    members: [],
  });

  it('finds nothing wrong with a complete one', () => {
    expect(faultsOf(named(complete))).toEqual([]);
  });

  it.each(complete.map((line, i) => ({ line, i })).filter(({ line }) => line !== ''))('misses "$line"', ({ i }) => {
    expect(faultsOf(named(complete.filter((_, k) => k !== i)))).toHaveLength(1);
  });

  it('asks for a unit wherever there is a number', () => {
    expect(faultsOf(named(complete.map((line) => line.replace(/ \[\w+\]/, ''))))).toHaveLength(2);
  });

  it.each([
    [12.54, '12.5', true],
    [12.56, '12.5', false],
    [1.2e-5, '1.2e-5', true],
    [1.3e-5, '1.2e-5', false],
    [-3, '-3', true],
    [351.32, '351.3 K', true],
    ['12.5', '12.5', false],
    [Number.NaN, '12.5', false],
    ['none', "'none'", true],
    [true, 'true', true],
    [false, 'true', false],
  ])('compares %s with %s: %s', (value, printed, expected) => {
    expect(agrees(value, printed)).toBe(expected);
  });
});

/** Value of an expression with every export of the library in scope. */
function evaluate(expression: string): unknown {
  // The expression stands in our own source: it is the example under test.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  const run = new Function(...Object.keys(lib), `return (${expression});`) as (...values: unknown[]) => unknown;
  return run(...(Object.values(lib) as unknown[]));
}
