// Our arithmetic against mathjs' own evaluation: on random formulas made of what is allowed, both come to the same.
// Temperatures on a scale with an offset are left out: there we differ on purpose (values.test.ts).

import fc from 'fast-check';
import { all, create, type MathNode, type Unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../explorer/formula/answer.js';
import { limits } from '../../../explorer/formula/limits.js';
import { sheetOf } from '../../support/formulas.js';

const mathjs = create(all!, { predictable: true });

/** What mathjs makes of a formula: SI number or truth, and how far rounding alone may move it. */
interface Theirs {
  readonly value: number | boolean;
  /** To first order, of one evaluation; 0 for a truth. Infinite where it divides by what rounding could make zero. */
  readonly error: number;
}

/** Undefined where mathjs, or a part of the formula, has no finite value. */
function theirs(text: string): Theirs | undefined {
  try {
    // A part without a finite value is a fault here, whatever the whole would come to.
    const { error } = partOf(mathjs.parse(text));
    const value = plainOf(mathjs.evaluate(text));
    return typeof value === 'boolean' || Number.isFinite(value) ? { value, error } : undefined;
  } catch {
    return undefined;
  }
}

interface Part {
  readonly value: unknown;
  readonly error: number;
}

/** Roundings of one operation with units, each half a unit of the last place: it takes prefixes off and puts them on. */
const roundings = 8 * (Number.EPSILON / 2);

/** A part of a formula with the rounding it carries on: the usual running error analysis, each part computed once. */
function partOf(node: MathNode): Part {
  const inside = argumentsOf(node).map(partOf);
  const value: unknown =
    node.type === 'OperatorNode' || node.type === 'FunctionNode'
      ? functionNamed(nameOf(node))(...inside.map((part) => part.value))
      : node.type === 'ParenthesisNode'
        ? inside[0]!.value
        : node.compile().evaluate();
  if (node.type === 'SymbolNode') return { value, error: 0 }; // a unit without a number, or pi
  const size = plainOf(value);
  if (typeof size === 'boolean') return { value, error: 0 };
  if (!Number.isFinite(size)) throw new Error('a part has no value');
  return { value, error: carried(nameOf(node), inside) + roundings * Math.abs(size) };
}

/** The error of an operation's arguments as it stands in its result. */
function carried(operation: string, inside: readonly Part[]): number {
  const [a, b] = inside.map((part) => ({ size: Math.abs(Number(plainOf(part.value))), error: part.error }));
  if (a === undefined) return 0;
  switch (b === undefined ? '' : operation) {
    case 'multiply':
      return a.error * b!.size + a.size * b!.error;
    case 'divide':
      return b!.error >= b!.size ? Infinity : a.error / b!.size + (a.size * b!.error) / b!.size ** 2;
    case 'pow': {
      const power = Number(inside[1]!.value);
      return power < 0 && a.error >= a.size ? Infinity : Math.abs(power) * a.size ** (power - 1) * a.error;
    }
    default:
      return a.error + (b?.error ?? 0);
  }
}

function argumentsOf(node: MathNode): readonly MathNode[] {
  const { args, content } = node as MathNode & { args?: readonly MathNode[]; content?: MathNode };
  if (node.type === 'ConditionalNode' || node.type === 'RelationalNode') {
    const parts: MathNode[] = [];
    node.forEach((part) => parts.push(part));
    return parts;
  }
  return node.type === 'ParenthesisNode' ? [content!] : (args ?? []);
}

function nameOf(node: MathNode): string {
  const { fn } = node as MathNode & { fn?: string | { readonly name: string } };
  return typeof fn === 'string' ? fn : (fn?.name ?? '');
}

function functionNamed(name: string): (...values: readonly unknown[]) => unknown {
  return (mathjs as unknown as Record<string, (...values: readonly unknown[]) => unknown>)[name]!;
}

/** SI. */
function plainOf(value: unknown): number | boolean {
  return typeof value === 'number' || typeof value === 'boolean' ? value : (value as Unit).value;
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
    // Where a result jumps, rounding would decide it. mathjs rounds what is near a whole number before it takes a whole
    // number from it, and takes the first of two that are nearly equal; so these get plain numbers. The brackets keep
    // what stands before a remainder out of it: -(1) mod 2 is (-1) mod 2, and a / (1) mod 2 is (a / 1) mod 2.
    fc.tuple(plainNumber, fc.integer({ min: 1, max: 9 })).map(([a, b]) => `((${a}) mod ${String(b)})`),
    fc.tuple(fc.constantFrom('floor', 'ceil'), plainNumber).map(([f, a]) => `${f}(${a})`),
    fc
      .tuple(fc.constantFrom('sqrt', 'cbrt', 'abs', 'sign', 'exp', 'log', 'log10', 'sin', 'cos'), tie('number'))
      .map(([f, a]) => `${f}(${a})`),
    fc.tuple(fc.constantFrom('sum', 'mean'), tie('number'), tie('number')).map(([f, a, b]) => `${f}(${a}, ${b})`),
    fc.tuple(fc.constantFrom('min', 'max'), plainNumber, plainNumber).map(([f, a, b]) => `${f}(${a}, ${b})`),
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

/** Ours where mathjs has a value: how often, and how often rounding decides nothing. */
function compared(judge: (got: unknown, expected: Theirs, text: string) => void): {
  readonly check: (text: string) => void;
  readonly counts: () => { readonly valued: number; readonly judged: number };
} {
  let [valued, judged] = [0, 0];
  return {
    check: (text) => {
      fc.pre(text.length <= limits.text);
      const expected = theirs(text);
      if (expected === undefined) return;
      valued += 1;
      if (!Number.isFinite(expected.error)) return;
      judged += 1;
      judge(ours(text), expected, text);
    },
    counts: () => ({ valued, judged }),
  };
}

describe('a random formula', () => {
  it('of numbers comes to the very number that mathjs comes to', () => {
    // The same operations in the same order: not a bit differs.
    const { check, counts } = compared((got, { value }, text) => {
      expect(got === value, `${text}: ours is ${String(got)}, theirs ${String(value)}`).toBe(true);
    });
    fc.assert(fc.property(numbers, check), { numRuns: 1000 });
    expect(counts().valued).toBeGreaterThan(300);
    expect(counts().judged).toBeGreaterThan(0.9 * counts().valued);
  });

  it('of quantities comes to what mathjs comes to, but for the rounding of units on either side', () => {
    const { check, counts } = compared((got, { value, error }, text) => {
      const off = typeof got === 'number' ? Math.abs(got - Number(value)) : Infinity;
      expect(off <= 2 * error, `${text}: ours is ${String(got)}, theirs ${String(value)} ± ${String(error)}`).toBe(
        true,
      );
    });
    fc.assert(fc.property(quantities, check), { numRuns: 1000 });
    expect(counts().valued).toBeGreaterThan(300);
    expect(counts().judged).toBeGreaterThan(0.9 * counts().valued);
  });

  it.each([
    ['exp(floor(-29.25)) / (-(((47) mod 2)))', -Math.exp(-30)],
    ['((-1) mod 2)', 1],
    ['0.1 + 0.2', 0.1 + 0.2],
  ])('such as %s comes to the very same number', (text, value) => {
    expect([ours(text), theirs(text)?.value]).toEqual([value, value]);
  });

  it('is told from one that is off by more than rounding, and not where rounding decides', () => {
    const { value, error } = theirs('(2 L) - (1.5 L)')!;
    expect(Math.abs(Number(value) - 0.0005)).toBeLessThanOrEqual(2 * error);
    expect(2 * error).toBeLessThan(1e-15 * 20);
    expect(theirs('(1 L) / ((1 ft) - (12 inch))')?.error ?? Infinity).toBe(Infinity);
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
