// Where the rules of formulas begin and end: what is equal, and which unit may stand behind ‘to’.

import { describe, expect, it } from 'vitest';
import { last } from '../../support/formulas.js';

describe('two numbers', () => {
  it.each([
    ['0.1 + 0.2 == 0.3', 'true'],
    ['1 == 1 + 1e-13', 'true'],
    ['1 == 1 + 1e-11', 'false'],
    ['1e9 == 1e9 + 1e-4', 'true'],
    ['1e9 == 1e9 + 1', 'false'],
    ['1e-16 == 0', 'true'],
    ['1e-14 == 0', 'false'],
    ['1 L == 1.000001 L', 'false'],
    ['1 < 1 + 1e-11', 'true'],
    ['1 < 1 + 1e-13', 'false'],
  ])('are equal where rounding alone parts them: %s is %s', (text, truth) => {
    expect(last(text)).toContain(truth);
  });
});

describe('behind ‘to’', () => {
  it('a unit may be raised to the twelfth power and no further', () => {
    expect(last('(1 m)^12 to m^12')).toBe('1 m¹²');
    expect(last('1 m to m^13')).toMatch(/^units: After ‘to’ stands a unit/u);
    expect(last('1 m to m^1000')).toMatch(/^units: After ‘to’ stands a unit/u);
  });
});
