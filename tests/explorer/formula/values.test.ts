// What formulas come to: names, units, temperatures, strengths, order.

import { describe, expect, it } from 'vitest';
import { last, resultsOf, told } from '../../support/formulas.js';

describe('a formula', () => {
  it.each([
    ['pure = volume * strength', '11.4 L'],
    ['volume / 3 h', '40 L/h'],
    ['volume / (90 min)', '1.3333 L/min'],
    ['heat * 2 h', '11 kWh'],
    ['heat / volume', '0.045833 kW/L'],
    ['heat to BTU/h', '18\u2009767 BTU/h'],
    ['1 US_gal to L', '3.7854 L'],
    ['1 imp_gal to L', '4.5461 L'],
    ['2 m * 3 m * 1 m', '6000 L'],
    ['2 US_gal + 1 L', '2.2642 US gal'],
    ['40%', '0.4'],
    ['volume + 5%', '126 L'],
    ['volume × 2 − 1 L', '239 L'],
    ['volume / (1 L)', '120'],
    ['5 L / L', '5'],
    ['strength > 10% ? 1 L : 2 L', '2 L'],
    ['volume == 120 L', 'true'],
    ['5 L < volume <= 120 L and not (plates > 12)', 'true'],
    ['plates / 5 # number of fifths', '2.4'],
    ['2e-7', '2 × 10⁻⁷'],
    ['12 min', '12 min'],
    ['min(3 min, 1 h)', '3 min'],
    ['-2^2', '−4'],
    ['-5 % 3', '1'],
    ['3 kg / (4 L) to kg/m^3', '750 kg/m³'],
  ])('%s is %s', (text, gives) => {
    expect(last(text)).toBe(gives);
  });

  it('is computed after those it uses, in whatever order they are typed', () => {
    const results = resultsOf(['c = b + 1 L', 'b = 2 a', 'a = volume / 10']);
    expect(results.map(told)).toEqual(['25 L', '24 L', '12 L']);
    expect(results.map(({ uses }) => uses)).toEqual([['b'], ['a'], ['volume']]);
  });

  it('may be a function of the reader’s own, which sees the page’s numbers', () => {
    expect(last('f(share) = volume * share', 'f(10%)')).toBe('12 L');
    expect(last('more(x) = f(x) + 1 L', 'f(x) = volume * x', 'more(50%)')).toBe('61 L');
    expect(last('f(x) = 2 x')).toBe('a function of x');
  });

  it('may call an argument like a unit, which it hides there and nowhere else', () => {
    expect(last('f(h) = 2 h', 'f(3 L) + 0 L * (1 h) / (1 h)')).toBe('6 L');
    expect(last('f(s) = strength * s', 'f(2) * 3 s')).toBe('0.57 s');
  });

  it('knows the arguments of a function from another line of that name', () => {
    expect(last('x = 5', 'f(x) = x + 1', 'f(1) + x')).toBe('7');
  });
});

describe('a temperature', () => {
  it.each([
    ['78.3 °C', '78.3 °C'],
    ['-5 degC', '−5 °C'],
    ['78.3 °C to °F', '172.94 °F'],
    ['300 K to °C', '26.85 °C'],
    ['78.3 °C to K', '351.45 K'],
    ['78.3 °C - 20 °C', '58.3 K'],
    ['20 °C + 5 K', '25 °C'],
    ['5 K + 20 °C', '25 °C'],
    ['20 °C - 5 K', '15 °C'],
    ['212 °F - 100 °C', '0 K'],
    ['mean(70 °C, 90 °C)', '80 °C'],
    ['80 °C > 350 K', 'true'],
    ['2 * 20 °C', '586.3 K'],
  ])('%s is %s', (text, gives) => {
    expect(last(text)).toBe(gives);
  });
});

describe('a strength', () => {
  it.each([
    ['strength', '9.5 % vol'],
    ['proof(strength)', '18.927 proof'],
    ['strengthFromProof(100)', '50.061 % vol'],
    ['max(strength, strengthFromProof(100))', '50.061 % vol'],
    ['strength * 2', '0.19'],
  ])('%s is %s', (text, gives) => {
    expect(last(text)).toBe(gives);
  });

  it('is shown as proof where the page shows proof', () => {
    expect(resultsOf(['strength', 'volume', 'heat'], { units: 'us' }).map(told)).toEqual([
      '18.927 proof',
      '31.701 US gal',
      '18\u2009767 BTU/h',
    ]);
  });

  it('by volume is never taken for one by mass', () => {
    expect(last('density(massFraction(40%), 20 °C)')).toBe(
      'units: Strength in density(…) is to be a strength, not a mass fraction; strengthFromMass(…) converts',
    );
    expect(last('strengthFromMass(strength)')).toMatch(/a mass fraction, not a strength; massFraction\(…\) converts$/u);
  });
});
