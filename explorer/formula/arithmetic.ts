// The operators: mathjs' grammar, mathjs' units, and rules of our own for temperatures on a scale with an offset.
//
//   temperature − temperature = a difference in K      temperature ± difference = temperature
//   temperature + temperature is a fault               × ÷ ^ take a temperature in kelvin
//
// Comparisons call nearly equal numbers equal, as mathjs does (relative 1e-12, absolute 1e-15).

import type { MathNode, Unit } from 'mathjs';
import { raised } from './convert.js';
import { FormulaError } from './faults.js';
import { unitOf } from './mathjs-instance.js';
import { printedUnits } from './unit-words.js';
import { inKelvin, measure, number, truth, type Value } from './values.js';

type Plain = Extract<Value, { is: 'number' | 'measure' }>;

export function add(a: Value, b: Value, node: MathNode | null): Value {
  if (a.is === 'temperature' && b.is === 'temperature') {
    const right = 'write the second as a difference, in K';
    throw new FormulaError('units', node, 'Two temperatures cannot be added', right);
  }
  if (a.is === 'temperature') return { ...a, kelvin: a.kelvin + kelvins(b, node) };
  if (b.is === 'temperature') return { ...b, kelvin: b.kelvin + kelvins(a, node) };
  return sum(plain(a, node), plain(b, node), 1, node);
}

export function subtract(a: Value, b: Value, node: MathNode | null): Value {
  if (a.is === 'temperature' && b.is !== 'temperature') return { ...a, kelvin: a.kelvin - kelvins(b, node) };
  if (a.is === 'temperature' && b.is === 'temperature') {
    // 212 °F and 100 °C differ by rounding alone.
    const difference = a.kelvin - b.kelvin;
    return measure(unitOf(Math.abs(difference) < 1e-12 * a.kelvin ? 0 : difference, 'K'));
  }
  return sum(plain(inKelvin(a), node), plain(inKelvin(b), node), -1, node);
}

export function multiply(a: Value, b: Value, node: MathNode | null): Value {
  const [x, y] = [plain(inKelvin(a), node), plain(inKelvin(b), node)];
  if (x.is === 'number' && y.is === 'number') return number(x.number * y.number);
  if (x.is === 'number') return measure(scaled((y as Plain & { is: 'measure' }).unit, x.number));
  if (y.is === 'number') return measure(scaled(x.unit, y.number));
  return measure(x.unit.multiply(y.unit));
}

export function divide(a: Value, b: Value, node: MathNode | null): Value {
  const [x, y] = [plain(inKelvin(a), node), plain(inKelvin(b), node)];
  if (sizeOf(y) === 0) throw new FormulaError('noValue', node, 'That divides by zero');
  if (y.is === 'number') return x.is === 'number' ? number(x.number / y.number) : measure(scaled(x.unit, 1 / y.number));
  if (x.is === 'number') return measure(scaled(raised(y.unit, -1), x.number));
  return measure(x.unit.divide(y.unit));
}

export function pow(a: Value, b: Value, node: MathNode | null): Value {
  const [x, y] = [plain(inKelvin(a), node), plain(inKelvin(b), node)];
  if (y.is !== 'number') throw new FormulaError('units', node, 'An exponent has no unit', 'make it a bare number');
  if (x.is === 'number') return number(x.number ** y.number);
  if (Math.abs(y.number) > 12) throw new FormulaError('tooMuch', node, 'The exponent of a unit is beyond 12');
  return measure(raised(x.unit, y.number));
}

export function mod(a: Value, b: Value, node: MathNode | null): Value {
  const [x, y] = [plain(inKelvin(a), node), plain(inKelvin(b), node)];
  if (x.is !== 'number' || y.is !== 'number') {
    const right = 'per cent stands alone, as in 40%; what it is a share of is known from where it is used';
    throw new FormulaError('units', node, '‘%’ between two things is the remainder of bare numbers', right);
  }
  // mathjs: the remainder has the sign of the divisor; dividing by zero leaves the number.
  return number(y.number === 0 ? x.number : x.number - y.number * Math.floor(x.number / y.number));
}

export function negate(a: Value, node: MathNode | null): Value {
  const x = plain(inKelvin(a), node);
  return x.is === 'number' ? number(-x.number) : measure(scaled(x.unit, -1));
}

/** Less than 0, 0, or more than 0, as a is below, equal to or above b. */
export function compare(a: Value, b: Value, node: MathNode | null): number {
  const [x, y] = [plain(inKelvin(a), node), plain(inKelvin(b), node)];
  if (!alike(x, y)) throw new FormulaError('units', node, `${named(x)} cannot be compared with ${named(y)}`, sameUnits);
  const [left, right] = [sizeOf(x), sizeOf(y)];
  const near = Math.abs(left - right) <= Math.max(1e-12 * Math.max(Math.abs(left), Math.abs(right)), 1e-15);
  return near ? 0 : left - right;
}

export function equal(a: Value, b: Value, node: MathNode | null): Value {
  if (a.is === 'truth' && b.is === 'truth') return truth(a.truth === b.truth);
  return truth(compare(a, b, node) === 0);
}

/** A number or a quantity; a truth is neither. */
export function plain(value: Value, node: MathNode | null): Plain {
  if (value.is === 'number' || value.is === 'measure') return value;
  const wrong = value.is === 'truth' ? 'True or false cannot be computed with' : 'That temperature has no place here';
  throw new FormulaError('units', node, wrong, value.is === 'truth' ? 'use it before ‘?’' : '');
}

/** SI. */
export function sizeOf(value: Plain): number {
  return value.is === 'number' ? value.number : value.unit.value;
}

export function alike(a: Plain, b: Plain): boolean {
  if (a.is === 'number' || b.is === 'number') return a.is === b.is;
  return a.unit.equalBase(b.unit);
}

/** The unit of `like` with another SI value. */
export function withSize(like: Plain, size: number): Value {
  if (like.is === 'number') return { ...like, number: size, asked: false };
  return measure(withValue(like.unit, size));
}

/** A value in a message. */
export function named(value: Plain): string {
  return value.is === 'number' ? 'a bare number' : `a quantity in ${printedUnits(value.unit)}`;
}

export const sameUnits = 'both sides need units of the same kind';

function sum(a: Plain, b: Plain, sign: 1 | -1, node: MathNode | null): Value {
  if (!alike(a, b)) {
    const wrong =
      sign === 1 ? `${named(a)} and ${named(b)} cannot be added` : `${named(b)} cannot be taken from ${named(a)}`;
    throw new FormulaError('units', node, wrong.charAt(0).toUpperCase() + wrong.slice(1), sameUnits);
  }
  const size = sizeOf(a) + sign * sizeOf(b);
  return a.is === 'number' ? number(size) : measure(withValue(a.unit, size));
}

function kelvins(value: Value, node: MathNode | null): number {
  const difference = plain(value, node);
  if (difference.is === 'measure' && difference.unit.equalBase(unitOf(1, 'K'))) return difference.unit.value;
  const wrong = `${named(difference).replace(/^a/u, 'A')} cannot be added to or taken from a temperature`;
  throw new FormulaError('units', node, wrong, 'a difference of temperatures is written in K');
}

function scaled(unit: Unit, factor: number): Unit {
  return withValue(unit, unit.value * factor);
}

function withValue(unit: Unit, value: number): Unit {
  const copy = unit.clone();
  copy.value = value;
  copy.fixPrefix = false;
  return copy;
}
