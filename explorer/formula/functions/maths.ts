// The ordinary functions of mathematics, on numbers and, where that means something, on quantities.

import type { MathNode } from 'mathjs';
import { alike, named, plain, pow, sameUnits, sizeOf, withSize } from '../arithmetic.js';
import { FormulaError } from '../faults.js';
import { inKelvin, number, type Value } from '../values.js';
import type { Example } from './own-function.js';

export interface MathsFunction {
  readonly name: string;
  /** As the list shows it: 'round(x, decimals)'. */
  readonly signature: string;
  readonly says: string;
  readonly example: Example;
  readonly least: number;
  readonly most: number;
  readonly call: (values: readonly Value[], node: MathNode) => Value;
}

const many = 12;

/** A function of one bare number. */
function bare(name: string, says: string, formula: string, gives: string, of: (x: number) => number): MathsFunction {
  const call = ([x]: readonly Value[], node: MathNode): Value => number(of(bareNumber(x!, name, node)));
  return { name, signature: `${name}(x)`, says, example: { formula, gives }, least: 1, most: 1, call };
}

/** A function of several values of the same kind, which gives one of that kind. */
function among(name: string, says: string, example: Example, of: (sizes: readonly number[]) => number): MathsFunction {
  const call = (values: readonly Value[], node: MathNode): Value => {
    const all = values.map((value) => plain(inKelvin(value), node));
    const odd = all.find((value) => !alike(all[0]!, value));
    if (odd !== undefined) {
      throw new FormulaError('units', node, `${name}(…) is given ${named(all[0]!)} and ${named(odd)}`, sameUnits);
    }
    const size = of(all.map(sizeOf));
    const first = values[0]!;
    return first.is === 'temperature' && name !== 'sum' ? { ...first, kelvin: size } : withSize(all[0]!, size);
  };
  return { name, signature: `${name}(a, b, …)`, says, example, least: 1, most: many, call };
}

const total = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0);

export const mathsFunctions: readonly MathsFunction[] = [
  among('sum', 'all of them together', { formula: 'sum(1.2 L, 0.8 L)', gives: '2 L' }, total),
  among('mean', 'their mean', { formula: 'mean(78 °C, 80 °C)', gives: '79 °C' }, (all) => total(all) / all.length),
  among('min', 'the smallest of them', { formula: 'min(3, 1, 2)', gives: '1' }, (all) => Math.min(...all)),
  among('max', 'the largest of them', { formula: 'max(3, 1, 2)', gives: '3' }, (all) => Math.max(...all)),
  {
    name: 'sqrt',
    signature: 'sqrt(x)',
    says: 'square root, of units as well',
    example: { formula: 'sqrt(2)', gives: '1.4142' },
    least: 1,
    most: 1,
    call: ([x], node) => (x?.is === 'number' ? number(Math.sqrt(x.number)) : pow(x!, number(1 / 2), node)),
  },
  bare('cbrt', 'cube root', 'cbrt(27)', '3', Math.cbrt),
  {
    name: 'abs',
    signature: 'abs(x)',
    says: 'size without sign',
    example: { formula: 'abs(-3 L)', gives: '3 L' },
    least: 1,
    most: 1,
    call: ([x], node) => {
      const value = plain(inKelvin(x!), node);
      return withSize(value, Math.abs(sizeOf(value)));
    },
  },
  bare('sign', '1, 0 or −1', 'sign(-3)', '−1', Math.sign),
  {
    name: 'round',
    signature: 'round(x, decimals)',
    says: 'rounded, to so many decimals if they are given',
    example: { formula: 'round(2.345, 1)', gives: '2.3' },
    least: 1,
    most: 2,
    call: ([x, decimals], node) => {
      const to = decimals === undefined ? 0 : bareNumber(decimals, 'round', node);
      if (!Number.isInteger(to) || to < 0 || to > 15) {
        throw new FormulaError('outside', node, 'round(…) takes 0 to 15 decimals');
      }
      const value = bareNumber(x!, 'round', node);
      // By way of decimal digits: 1.005 × 100 is not 100.5.
      const [digits, exponent = '0'] = String(value).split('e');
      const scaled = Math.round(Number(`${digits!}e${String(Number(exponent) + to)}`));
      return number(Number(`${String(scaled)}e-${String(to)}`));
    },
  },
  bare('floor', 'the whole number below', 'floor(2.7)', '2', Math.floor),
  bare('ceil', 'the whole number above', 'ceil(2.1)', '3', Math.ceil),
  bare('exp', 'e to the power of x', 'exp(1)', '2.7183', Math.exp),
  {
    name: 'log',
    signature: 'log(x, base)',
    says: 'natural logarithm, or to a base if it is given',
    example: { formula: 'log(8, 2)', gives: '3' },
    least: 1,
    most: 2,
    call: ([x, base], node) => {
      const value = Math.log(bareNumber(x!, 'log', node));
      return number(base === undefined ? value : value / Math.log(bareNumber(base, 'log', node)));
    },
  },
  bare('log10', 'logarithm to base 10', 'log10(1000)', '3', Math.log10),
  bare('sin', 'sine, of radians', 'sin(pi / 2)', '1', Math.sin),
  bare('cos', 'cosine, of radians', 'cos(pi)', '−1', Math.cos),
];

function bareNumber(value: Value, name: string, node: MathNode): number {
  const one = plain(inKelvin(value), node);
  if (one.is === 'number') return one.number;
  throw new FormulaError('units', node, `${name}(…) takes a bare number, not ${named(one)}`, 'divide it by its unit');
}
