import fc from 'fast-check';
import { unit as quantityOf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fromSI, InputError, toSI, unitsOf, type UnitSymbol } from '#lib/index.js';

// Each row: our unit, mathjs's name for it, mathjs's name for the SI unit.
const rows: readonly (readonly [unit: UnitSymbol, theirs: string, si: string])[] = [
  ['m³', 'm^3', 'm^3'],
  ['L', 'L', 'm^3'],
  ['US gal', 'gal', 'm^3'],
  ['K', 'K', 'K'],
  ['°C', 'degC', 'K'],
  ['°F', 'degF', 'K'],
  ['Pa', 'Pa', 'Pa'],
  ['kPa', 'kPa', 'Pa'],
  ['bar', 'bar', 'Pa'],
  ['atm', 'atm', 'Pa'],
  ['mmHg', 'mmHg', 'Pa'],
  ['psi', 'psi', 'Pa'],
  ['W', 'W', 'W'],
  ['kW', 'kW', 'W'],
  ['BTU/h', 'BTU / h', 'W'],
  ['s', 's', 's'],
  ['min', 'minute', 's'],
  ['h', 'h', 's'],
  ['kg', 'kg', 'kg'],
  ['lb', 'lb', 'kg'],
  ['m', 'm', 'm'],
  ['ft', 'ft', 'm'],
  ['mm', 'mm', 'm'],
  ['in', 'in', 'm'],
];
/** What mathjs leaves out: its mmHg is 133.322 Pa, exactly 133.322387415; its psi is 6e-11 low (the next test pins ours). */
const roundedByMathjs: Partial<Record<UnitSymbol, number>> = { mmHg: 3e-6, psi: 6e-11 };
const quantities = ['volume', 'temperature', 'pressure', 'power', 'time', 'mass', 'length', 'share'] as const;
const all = quantities.flatMap((quantity) => [...unitsOf(quantity)]);

describe('the table of units', () => {
  it('has a row here for each of its units, but for the two that mathjs does not know', () => {
    expect([...rows.map(([unit]) => unit), 'imp gal', '%'].sort()).toEqual([...all].sort());
  });

  it.each(rows)('converts %s as mathjs does', (unit, theirs, si) => {
    const relative = roundedByMathjs[unit] ?? 4e-15; // rounding of a few products
    for (const value of [1, 12.5, 212]) {
      const expected = quantityOf(value, theirs).toNumber(si);
      expect(Math.abs(toSI(value, unit) / expected - 1), `${String(value)} ${unit}`).toBeLessThan(relative);
    }
  });

  it.each([
    // UK Units of Measurement Regulations 1995, schedule.
    [1, 'imp gal', 0.00454609],
    [1, '%', 0.01],
    [100, '°C', 373.15],
    [-40, '°F', 233.15],
    // NIST SP 811, appendix B.8, rounded there to seven digits.
    [1, 'psi', 6894.757],
    [1, 'mmHg', 133.3224],
    [1, 'BTU/h', 0.2930711],
    [1, 'US gal', 0.003785412],
  ] as const)('%d %s is %d in SI', (value, unit, si) => {
    const printedDigit = 2e-7; // half of the seventh digit, relative, at worst
    expect(Math.abs(toSI(value, unit) / si - 1)).toBeLessThan(printedDigit);
  });

  it.each(all)('comes back from %s', (unit) => {
    // Rounding of the shift for temperatures near absolute zero.
    const rounding = (value: number): number => 4e-16 * (Math.abs(value) + 1000);
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(fromSI(toSI(value, unit), unit) - value)).toBeLessThanOrEqual(rounding(value));
        expect(Math.abs(toSI(fromSI(value, unit), unit) - value)).toBeLessThanOrEqual(rounding(value));
      }),
    );
  });

  it('puts the SI unit first', () => {
    expect(quantities.map((quantity) => unitsOf(quantity)[0])).toEqual(['m³', 'K', 'Pa', 'W', 's', 'kg', 'm', '%']);
    expect(unitsOf('volume')).toEqual(['m³', 'L', 'US gal', 'imp gal']);
  });

  it('refuses what is not a number or not a unit', () => {
    expect(() => toSI(NaN, 'L')).toThrow(InputError);
    expect(() => fromSI(Infinity, 'L')).toThrow('value is Infinity; expected a finite number');
    // @ts-expect-error the compiler knows the units as well
    expect(() => toSI(1, 'furlong')).toThrow("unit is 'furlong'; expected one of m³, L,");
    // @ts-expect-error a name every object has is no unit
    expect(() => toSI(1, 'toString')).toThrow(InputError);
  });
});
