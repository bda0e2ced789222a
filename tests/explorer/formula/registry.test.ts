// The names a formula may use: every function's example is computed, no name means two things, and the guide lists
// them as they are.

import { describe, expect, it } from 'vitest';
import { constants, listedFunctions, ownFunctions } from '../../../explorer/formula/functions/registry.js';
import { mathsFunctions } from '../../../explorer/formula/functions/maths.js';
import { kinds } from '../../../explorer/formula/kinds.js';
import { spelled } from '../../../explorer/formula/unit-words.js';
import { formulaUnits } from '../../../explorer/formula/units.js';
import { unitOf } from '../../../explorer/formula/mathjs-instance.js';
import { fromSI, toSI, type UnitSymbol } from '#lib/index.js';
import { last } from '../../support/formulas.js';
import { read } from '../../support/tree.js';

describe('the example of a function', () => {
  it.each(listedFunctions.map(({ name, example }) => ({ name, ...example })))('$formula gives $gives', (example) => {
    const [number = '', ...unit] = example.gives.split(' ');
    const [got = '', ...gotUnit] = last(example.formula)
      .replace(/\u2009/gu, '')
      .split(' ');
    expect(gotUnit).toEqual(unit);
    // As many digits as are printed.
    const decimals = number.split('.')[1]?.length ?? 0;
    const plain = (text: string): number => Number(text.replace('−', '-'));
    expect(plain(got).toFixed(decimals)).toBe(plain(number).toFixed(decimals));
  });
});

describe('a name', () => {
  it('is a function, a constant or a unit, and only one of them', () => {
    const names = [
      ...ownFunctions.map(({ name }) => name),
      ...mathsFunctions.map(({ name }) => name),
      ...constants.map(({ name }) => name),
      ...formulaUnits.map(({ name }) => name),
    ];
    const twice = names.filter((name, index) => names.indexOf(name) !== index);
    // 'min' is a minute after a number and the smallest before a bracket.
    expect(twice).toEqual(['min']);
  });
});

describe('a unit', () => {
  it.each(formulaUnits.filter(({ mathjs }) => mathjs !== null))(
    '$name is known to mathjs as $mathjs',
    ({ name, mathjs }) => {
      expect(unitOf(1, mathjs!).value).toBeGreaterThan(0);
      expect(last(`3 ${name} / (1 ${name})`)).toBe('3');
    },
  );

  const shared: readonly (readonly [string, UnitSymbol])[] = [
    ['L', 'L'],
    ['US_gal', 'US gal'],
    ['imp_gal', 'imp gal'],
    ['kPa', 'kPa'],
    ['bar', 'bar'],
    ['atm', 'atm'],
    ['mmHg', 'mmHg'],
    ['psi', 'psi'],
    ['kW', 'kW'],
    ['min', 'min'],
    ['h', 'h'],
    ['kg', 'kg'],
    ['lb', 'lb'],
    ['ft', 'ft'],
  ];
  it.each(shared)('%s is as large as the library’s', (name, symbol) => {
    const { mathjs } = formulaUnits.find((unit) => unit.name === name)!;
    expect(unitOf(7, mathjs!).value / toSI(7, symbol) - 1).toBeCloseTo(0, 9); // mathjs' psi is 6e-11 low
    expect(fromSI(unitOf(7, mathjs!).value, symbol)).toBeCloseTo(7, 8);
  });

  it.each(Object.entries(kinds).filter(([, { si }]) => si !== ''))(
    'of %s is of one dimension in every system',
    (name, kind) => {
      if (name === 'temperature') {
        expect(Object.values(kind.shown)).toEqual(['°C', '°F', '°C']);
        return;
      }
      const base = unitOf(1, spelled(kind.si));
      for (const usual of Object.values(kind.shown)) expect(unitOf(1, spelled(usual)).equalBase(base)).toBe(true);
    },
  );
});

describe('the guide', () => {
  const guide = read('docs/guide/formulas.md');

  it.each(listedFunctions)('lists $signature with its example', ({ signature, says, example }) => {
    expect(guide).toContain(`| \`${signature}\` | ${says} | \`${example.formula}\` | ${example.gives} |`);
  });

  it.each(formulaUnits)('lists the unit $name', ({ name }) => {
    expect(guide).toContain(`\`${name}\``);
  });

  it.each(constants)('lists the constant $name', ({ name }) => {
    expect(guide).toContain(`\`${name}\``);
  });
});
