// What is said when a formula cannot be computed: what is wrong, what would be right, and where.

import { describe, expect, it } from 'vitest';
import { faultOf, last, resultsOf, told } from '../../support/formulas.js';

describe('lines that need each other', () => {
  it('are told the circle, each from its own place in it', () => {
    const results = resultsOf(['a = b + 1', 'b = c', 'c = 2 a', 'after = c + 1', 'free = 3']);
    expect(results.map(told)).toEqual([
      'circle: This goes in a circle: a needs b, b needs c and c needs a; give one of them a value of its own',
      'circle: This goes in a circle: b needs c, c needs a and a needs b; give one of them a value of its own',
      'circle: This goes in a circle: c needs a, a needs b and b needs c; give one of them a value of its own',
      'waits: It waits for ‘c’, which has no value',
      '3',
    ]);
  });

  it('include a line that needs itself, and a function that calls itself', () => {
    expect(faultOf('x = x + 1')).toMatchObject({
      kind: 'circle',
      wrong: '‘x’ needs itself',
      pointsAt: 'x',
      at: { from: 4 },
    });
    expect(faultOf('f(n) = n < 1 ? 1 : n * f(n - 1)').wrong).toBe('‘f’ needs itself');
    expect(last('other(n) = f(n)', 'f(n) = other(n)')).toMatch(
      /^circle: This goes in a circle: f needs other and other needs f/u,
    );
  });
});

describe('an unknown name', () => {
  it.each([
    ['volum * 2', 'volum', 'volume'],
    ['Volume * 2', 'Volume', 'volume'],
    ['boilingpoint(strength, pressure)', 'boilingpoint', 'boilingPoint'],
    ['boiling(strength, pressure)', 'boiling', 'boilingPoint'],
    ['2 * (3 + stregnth)', 'stregnth', 'strength'],
    ['20 C', 'C', '°C'],
    ['5 litres', 'litres', 'L'],
    ['2 hours', 'hours', 'h'],
  ])('in %s is pointed at, and what was meant is offered', (text, pointsAt, instead) => {
    expect(faultOf(text)).toMatchObject({ kind: 'unknown', pointsAt, instead });
  });

  it('may be near a name of another line', () => {
    expect(faultOf('hearts = 5 L', 'heart * 2')).toMatchObject({ pointsAt: 'heart', instead: 'hearts' });
  });

  it('that is near nothing gets no guess', () => {
    expect(faultOf('zzzyx + 1')).toMatchObject({ pointsAt: 'zzzyx', instead: null });
  });

  it.each([
    ['40 % vol', /a strength is written 40% or 0\.4/u],
    ['2 gal', /US_gal or imp_gal/u],
  ])('in %s gets the right spelling', (text, right) => {
    expect(faultOf(text).right).toMatch(right);
  });
});

describe('a name', () => {
  it.each([
    ['volume = 3 L', '‘volume’ is a number of the page'],
    ['h = 3', '‘h’ is a unit (hour)'],
    ['density = 3', '‘density’ is a function'],
    ['pi = 3', '‘pi’ is a constant'],
    ['f(°C) = 2', '‘°C’ is a unit (degree Celsius; also written degC)'],
    ['f(pi) = 2', '‘pi’ is a constant'],
    ['f(a, a) = a', 'Two arguments have the same name'],
  ])('is not given twice: %s', (text, wrong) => {
    expect(faultOf(text)).toMatchObject({ kind: 'taken', wrong });
  });

  it('belongs to the first line that defines it', () => {
    expect(resultsOf(['x = 1', 'x = 2', 'x + 1']).map(told)).toEqual([
      '1',
      'taken: ‘x’ is defined above as well; choose another name for one of them',
      '2',
    ]);
  });
});

describe('what the grammar cannot read', () => {
  it.each([
    ['volume * 9,5', ',', 'A comma stands between the things a function is given'],
    ['(3 + 4', '', 'A bracket is opened and not closed'],
    ['3 + 4)', ')', 'A bracket is closed that was not opened'],
    ['3 +', '', 'The formula ends before it is complete'],
    ['3 + * 4', '*', 'A number or a name was expected before ‘*’'],
    ['9 m²', '²', '‘²’ is not read'],
    ['3 = x', '=', 'Only a name can stand before the equals sign'],
    ['1 ? 2', '', 'A choice needs both answers'],
    ['a @ b', '@', '‘@’ cannot be read there'],
    ['   ', null, 'Nothing is written here'],
  ])('%j: points at %j and says so', (text, pointsAt, wrong) => {
    expect(faultOf(text)).toMatchObject({ pointsAt, wrong });
  });
});

describe('units that do not fit', () => {
  it.each([
    ['volume + strength', 'A quantity in L and a bare number cannot be added'],
    ['volume - heat', 'A quantity in kW cannot be taken from a quantity in L'],
    ['20 °C + 30 °C', 'Two temperatures cannot be added'],
    ['20 °C + 5 L', 'A quantity in L cannot be added to or taken from a temperature'],
    ['5 L to kg', 'L cannot be turned into kg'],
    ['strength to L', 'What has no unit cannot be shown in one'],
    ['volume > 5', 'a quantity in L cannot be compared with a bare number'],
    ['2 ^ volume', 'An exponent has no unit'],
    ['sin(volume)', 'sin(…) takes a bare number, not a quantity in L'],
    ['boilingPoint(strength, 1)', 'Pressure in boilingPoint(…) is to be a pressure'],
    ['boilingPoint(strength, volume)', 'Pressure in boilingPoint(…) is to be a pressure, not in L'],
    ['boilingPoint(volume, pressure)', 'Strength in boilingPoint(…) is to be a strength, without a unit'],
    ['volume(3)', '‘volume’ is not a function'],
    ['density + 1', '‘density’ is a function'],
    ['density(40%)', 'density(…) is given one thing'],
    ['°C * 2', '°C is a scale, not a quantity'],
    ['volume ? 1 : 2', 'Something true or false was expected here'],
    ['true + 1', 'True or false cannot be computed with'],
  ])('%s: %s', (text, wrong) => {
    expect(faultOf(text)).toMatchObject({ kind: 'units', wrong });
  });

  it('are told in a function of the reader’s own where it is called', () => {
    expect(faultOf('f(x) = x + 1 L', '2 * f(3)')).toMatchObject({
      wrong: 'In f: A bare number and a quantity in L cannot be added',
      pointsAt: 'f',
    });
  });
});

describe('a value outside what a function takes', () => {
  it.each([
    ['density(40, 20 °C)', 'Strength in density(…) is 40', 'write 40%'],
    ['density(40%, 500 °C)', 'Temperature in density(…) is 500 °C', 'it may be −20 °C to 130 °C'],
    ['boilingPoint(40%, 1 Pa)', 'Pressure in boilingPoint(…) is 0.001 kPa', 'it may be 2 kPa to 2 MPa'],
    ['proofGallons(-1 L)', 'PureAlcohol in proofGallons(…) is −1 L', 'it may be 0 L or more'],
  ])('%s: %s; %s', (text, wrong, right) => {
    expect(faultOf(text)).toMatchObject({ kind: 'outside', wrong, right });
  });

  it.each([
    ['azeotropeStrength(5 kPa)', 'azeotropeStrength(…): There is no azeotrope at that pressure'],
    ['stagesBetween(9.5%, 98%, 1 atm)', 'stagesBetween(…): No number of stages reaches that strength'],
    ['1 / 0', 'That divides by zero'],
    ['sqrt(-1)', 'That has no value'],
    ['log(-1)', 'That has no value'],
  ])('%s has no value: %s', (text, wrong) => {
    expect(faultOf(text)).toMatchObject({ kind: 'noValue', wrong });
  });
});
