// What a formula cannot do: reach anything but the listed names, run long, or grow large. Each of these is a fault or
// a number, at once; what the engine cannot count is stopped by the page (formula-client.test.ts).

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../../../explorer/formula/answer.js';
import { limits } from '../../../explorer/formula/limits.js';
import { formulaUnits } from '../../../explorer/formula/units.js';
import { builtNames } from '../../../explorer/formula/functions/registry.js';
import { faultOf, last, resultsOf, sheetOf } from '../../support/formulas.js';

/** Work of the processor, whatever else it is at, ms: some hundred times what each of these takes. None would end
 * without limits. */
const atOnce_ms = 3000;

function timed<Result>(work: () => Result): Result {
  const began = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(began);
  expect((user + system) / 1000).toBeLessThan(atOnce_ms);
  return result;
}

describe('what mathjs offers beyond the list', () => {
  it.each([
    'import("x")',
    'import({a: 1})',
    'createUnit("foo")',
    'createUnit(foo)',
    'evaluate("1 + 1")',
    'parse("x")',
    'compile("x")',
    'simplify("x + x")',
    'derivative("x^2", "x")',
    'parser()',
    'typed(1)',
    'config({})',
    'help(sin)',
    'chain(3)',
    'print("x", 1)',
    'format(3)',
    'string(3)',
    'random()',
    'bignumber(1)',
    'unit("5 L")',
    'map(1, f)',
    'zeros(1e8)',
    'ones(1e4, 1e4)',
    'range(1, 1e9)',
    'factorial(1e9)',
    'combinations(1e9, 5e8)',
    'isPrime(1e15)',
    'fibonacci(1e9)',
    'matrix(1)',
    'constructor',
    'constructor("x")',
    '__proto__',
    'prototype',
    'toString()',
    'valueOf()',
    'hasOwnProperty(1)',
    'globalThis',
    'window',
    'self',
    'process',
    'require(1)',
    'this',
    'fetch(1)',
    'localStorage',
    'postMessage(1)',
    'Infinity',
    'NaN',
    'null',
    'undefined',
    'i',
    'tau',
    'version',
    'speedOfLight',
  ])('%s is refused', (text) => {
    expect(['unknown', 'notOffered', 'tooMuch']).toContain(timed(() => faultOf(text)).kind);
  });

  it.each([
    ['"text"'],
    ["'text'"],
    ['[1, 2, 3]'],
    ['1:1e9'],
    ['{a: 1}'],
    ['volume.constructor'],
    ['volume["constructor"]'],
    ['volume[1]'],
    ['volume?.x'],
    ['volume.x = 3'],
    ['a[1] = 3'],
    ['5!'],
    ["volume'"],
    ['1; 2'],
    ['1\n2'],
    ['x = y = 3'],
    ['1 + (x = 3)'],
    ['f(x) = (y = x)'],
    ['5 & 3'],
    ['5 | 3'],
    ['1 << 40'],
    ['volume .* 2'],
    ['null ?? 3'],
    ['f(x)(y) = 3'],
    ['(f(x) = x)(3)'],
    ['9007199254740993n'],
  ])('%j is refused', (text) => {
    expect(['notOffered', 'grammar', 'unknown']).toContain(timed(() => faultOf(text)).kind);
  });
});

describe('what is too much', () => {
  it.each([
    ['10^10^10', 'tooMuch'],
    ['1e400', 'tooMuch'],
    ['9^9^9^9^9^9^9^9^9', 'tooMuch'],
    ['(1 L)^1000', 'tooMuch'],
    ['exp(1e6)', 'tooMuch'],
    ['f(n) = f(n - 1)', 'circle'],
    [`${'('.repeat(190)}1${')'.repeat(190)}`, 'tooMuch'],
    [`${'('.repeat(5000)}1${')'.repeat(5000)}`, 'tooMuch'],
    ['1 +'.repeat(133) + ' 1', 'tooMuch'],
    ['-'.repeat(399) + '1', 'tooMuch'],
    ['x'.repeat(1e6), 'tooMuch'],
    [`${'a'.repeat(60)} = 1`, 'tooMuch'],
    [`sum(${Array.from({ length: 20 }, () => '1').join(', ')})`, 'tooMuch'],
    [`f(${Array.from({ length: 20 }, (_, k) => `x${String(k)}`).join(', ')}) = 1`, 'tooMuch'],
  ])('%.40s is refused', (text, kind) => {
    expect(timed(() => faultOf(text)).kind).toBe(kind);
  });

  it('is a function that doubles its work again and again', () => {
    const doubling = [
      'f0(x) = x + 1',
      ...Array.from({ length: 60 }, (_, k) => `f${String(k + 1)}(x) = f${String(k)}(x) + f${String(k)}(x)`),
    ];
    expect(timed(() => last(...doubling, 'f60(1)'))).toMatch(/^tooMuch: This takes more than 100 thousand steps/u);
    expect(last(...doubling, 'f5(1)')).toBe('64');
  });

  it('is a chain of functions as long as a page', () => {
    const chain = [
      'f0(x) = x',
      ...Array.from({ length: 190 }, (_, k) => `f${String(k + 1)}(x) = (((f${String(k)}(x) + 1)))`),
    ];
    expect(timed(() => last(...chain, 'f190(1)'))).toMatch(/^tooMuch: Functions use functions too deeply/u);
    expect(last(...chain, 'f50(1)')).toBe('51');
  });

  it('is a page of thousands of lines: those beyond the limit are told', () => {
    const results = timed(() => resultsOf(Array.from({ length: 3000 }, (_, k) => `x${String(k)} = ${String(k)}`)));
    expect(results).toHaveLength(3000);
    expect(results[limits.lines - 1]!.outcome).toHaveProperty('value');
    expect(results[limits.lines]!.outcome).toMatchObject({ fault: { kind: 'tooMuch' } });
  });

  it('is not a page full of ordinary formulas', () => {
    const page = Array.from({ length: 100 }, (_, k) => `t${String(k)} = boilingPoint(${String(k)}%, pressure)`);
    expect(timed(() => resultsOf(page)).every(({ outcome }) => 'value' in outcome)).toBe(true);
  });
});

describe('any text', () => {
  const pieces = fc.oneof(
    fc.constantFrom(...builtNames, ...formulaUnits.map(({ name }) => name), 'volume', 'strength', 'x', 'f'),
    fc.constantFrom(
      '+',
      '-',
      '*',
      '/',
      '^',
      '(',
      ')',
      ',',
      '=',
      '==',
      '?',
      ':',
      '%',
      ' to ',
      ' in ',
      ' mod ',
      '!',
      '[',
      ']',
    ),
    fc.constantFrom(
      '.',
      ';',
      '{',
      '}',
      '"',
      "'",
      '#',
      '\n',
      '&',
      '|',
      '~',
      '<',
      '>',
      ' and ',
      ' not ',
      '°',
      '\\',
      '`',
      '$',
    ),
    fc.double({ noNaN: true }).map(String),
    fc.string({ unit: 'binary', maxLength: 3 }),
  );

  it('is a fault or a value, never an error, and points inside itself', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
          { maxLength: 4 },
        ),
        (texts) => {
          resultsOf(texts).forEach(({ outcome }, index) => {
            const at = 'fault' in outcome ? outcome.fault.at : null;
            if (at === null) return;
            expect(at.from).toBeGreaterThanOrEqual(0);
            expect(at.to).toBeGreaterThanOrEqual(at.from);
            expect(at.to).toBeLessThanOrEqual(texts[index]!.length);
          });
        },
      ),
      { numRuns: 3000 },
    );
    expect(true).toBe(true);
  });

  it('leaves the engine as it was', () => {
    const before = last('volume * strength');
    for (const text of ['m = 5', 'sin = 3', 'volume = 1', 'f(x) = x', 'createUnit("L", 3)', 'import({sqrt: 1})'])
      last(text);
    expect(last('volume * strength')).toBe(before);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it('answers with plain data that can cross to the page', () => {
    const reply = answer({
      sheet: sheetOf(['pure = volume * strength', 'f(x) = 2 x', '3 > 2', 'oops']),
      curves: [{ id: 'line 0', against: 'strength', from: '0', to: '1' }],
    });
    expect(structuredClone(reply)).toEqual(reply);
  });
});
