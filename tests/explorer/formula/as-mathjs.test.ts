// Our arithmetic against mathjs' own evaluation: on random formulas made of what is allowed, both come to the same.
// Temperatures on a scale with an offset are left out: there we differ on purpose (values.test.ts).

import fc from 'fast-check';
import { all, create, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../explorer/formula/answer.js';
import { limits } from '../../../explorer/formula/limits.js';
import { sheetOf } from '../../support/formulas.js';

const mathjs = create(all!, { predictable: true });

/** SI number, truth, or undefined where there is no finite value. */
function theirs(text: string): number | boolean | undefined {
  try {
    // A part without a finite value is a fault here, whatever the whole would come to.
    mathjs.parse(text).traverse((node) => {
      if (node.type === 'SymbolNode' || node.type === 'FunctionAssignmentNode') return;
      const part = node.compile().evaluate() as unknown;
      if (typeof part === 'number' && !Number.isFinite(part)) throw new Error('a part has no value');
    });
    const value = mathjs.evaluate(text) as unknown;
    if (typeof value === 'boolean') return value;
    const si = typeof value === 'number' ? value : (value as Unit).value;
    return Number.isFinite(si) ? si : undefined;
  } catch {
    return undefined;
  }
}

function ours(text: string): number | boolean | undefined {
  const [result] = answer({ sheet: sheetOf([text], { quantities: [] }), curves: [] }).results;
  const { outcome } = result!;
  if ('fault' in outcome || outcome.value.is === 'function') return undefined;
  return outcome.value.is === 'truth' ? outcome.value.truth : outcome.value.si;
}

const plainNumber = fc.integer({ min: -400, max: 400 }).map((quarters) => String(quarters / 4));

/** Formulas of bare numbers. */
const { number: numbers } = fc.letrec<{ number: string; truth: string }>((tie) => ({
  number: fc.oneof(
    { depthSize: 'medium', withCrossShrink: true },
    fc.oneof(fc.integer({ min: 0, max: 30 }).map(String), fc.constantFrom('0.5', '1e-3', '2.75', '12%', 'pi', 'e')),
    fc.tuple(tie('number'), fc.constantFrom('+', '-', '*', '/'), tie('number')).map(([a, op, b]) => `${a} ${op} ${b}`),
    tie('number').map((a) => `(${a})`),
    tie('number').map((a) => `-${a}`),
    fc.tuple(tie('number'), fc.constantFrom('2', '3', '0.5', '-1')).map(([a, power]) => `(${a})^${power}`),
    // mathjs rounds what is near a whole number before it takes a whole number from it; so these get plain ones.
    fc.tuple(plainNumber, fc.integer({ min: 1, max: 9 })).map(([a, b]) => `(${a}) mod ${String(b)}`),
    fc.tuple(fc.constantFrom('floor', 'ceil'), plainNumber).map(([f, a]) => `${f}(${a})`),
    fc
      .tuple(fc.constantFrom('sqrt', 'cbrt', 'abs', 'sign', 'exp', 'log', 'log10', 'sin', 'cos'), tie('number'))
      .map(([f, a]) => `${f}(${a})`),
    fc
      .tuple(fc.constantFrom('min', 'max', 'sum', 'mean'), tie('number'), tie('number'))
      .map(([f, a, b]) => `${f}(${a}, ${b})`),
    fc.tuple(tie('truth'), tie('number'), tie('number')).map(([c, a, b]) => `(${c} ? ${a} : ${b})`),
  ),
  truth: fc.oneof(
    fc
      .tuple(tie('number'), fc.constantFrom('<', '<=', '>', '>=', '==', '!='), tie('number'))
      .map(([a, op, b]) => `(${a}) ${op} (${b})`),
    fc.constantFrom('true', 'false'),
    fc.constantFrom(
      '1 < 2 < 3',
      '3 > 2 >= 2 > 1',
      'not (1 < 2)',
      '1 < 2 and 2 < 1',
      '1 < 2 xor 2 < 1',
      '1 > 2 or 2 > 1',
    ),
  ),
}));

/** Formulas of quantities: a litre as a cubed length, flows, heats and what they come to. */
const { quantity: quantities } = fc.letrec<{ quantity: string }>((tie) => ({
  quantity: fc.oneof(
    { depthSize: 'medium', withCrossShrink: true },
    fc
      .tuple(
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom(
          'L',
          'mL',
          'hL',
          'm',
          'cm',
          'ft',
          'inch',
          'kg',
          'g',
          's',
          'h',
          'day',
          'K',
          'Pa',
          'kPa',
          'bar',
          'atm',
          'psi',
          'J',
          'kJ',
          'kWh',
          'BTU',
          'W',
          'kW',
          'mol',
          'kmol',
        ),
      )
      .map(([n, unit]) => `${String(n)} ${unit}`),
    fc.integer({ min: 1, max: 20 }).map(String),
    fc
      .tuple(tie('quantity'), fc.constantFrom('*', '/', '+', '-'), tie('quantity'))
      .map(([a, op, b]) => `(${a}) ${op} (${b})`),
    fc.tuple(tie('quantity'), fc.constantFrom('2', '-1')).map(([a, power]) => `(${a})^${power}`),
    tie('quantity').map((a) => `(${a} + ${a}) / 2`),
  ),
}));

function same(text: string): void {
  fc.pre(text.length <= limits.text);
  const expected = theirs(text);
  if (expected === undefined) return;
  const got = ours(text);
  if (typeof expected === 'boolean') {
    expect(got, text).toBe(expected);
    return;
  }
  expect(typeof got, `${text}: ours is ${String(got)}, theirs ${String(expected)}`).toBe('number');
  const scale = Math.max(1e-9, Math.abs(expected));
  expect(Math.abs((got as number) - expected) / scale, `${text}: ${String(got)}, ${String(expected)}`).toBeLessThan(
    1e-9,
  );
}

describe('a random formula', () => {
  it('of numbers comes to what mathjs comes to', () => {
    fc.assert(fc.property(numbers, same), { numRuns: 2000 });
    expect(theirs('1 + 1')).toBe(2);
  });

  it('of quantities comes to what mathjs comes to', () => {
    fc.assert(fc.property(quantities, same), { numRuns: 2000 });
    expect(theirs('2 L + 1 m^3')).toBe(1.002);
  });

  it('has no value here only where mathjs has none, in what is offered', () => {
    // Dividing by zero gives Infinity there and a fault here; neither is a value.
    const valued = (text: string): [boolean, boolean] => [theirs(text) !== undefined, ours(text) !== undefined];
    expect([valued('1 / 0'), valued('sqrt(-1)'), valued('2 L + 3'), valued('2 L * 3')]).toEqual([
      [false, false],
      [false, false],
      [false, false],
      [true, true],
    ]);
  });
});
