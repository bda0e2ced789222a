import { describe, expect, it } from 'vitest';
import { densityOfMixture, InputError } from '#lib/index.js';
import { densityByPolynomial, densityPolynomial, densitySlopeByPolynomial } from '#lib/mixture/density.js';
import { publishedTable } from '../../support/published-table.js';

const celsius = (t: number): number => t + 273.15;
const printedDigit = 5.001e-3; // half of the last printed digit, 0.01 kg/m³

describe('densityOfMixture', () => {
  it.each([
    // OIML R 22, 1975: printed anchors of the tables.
    [0, 20, 998.2],
    [1, 20, 789.24],
    [1, 40, 771.93],
  ])('gives the printed anchor of R 22 at mass fraction %d and %d °C', (massFraction, t, printed) => {
    expect(Math.abs(densityOfMixture(massFraction, celsius(t)) - printed)).toBeLessThan(printedDigit);
  });

  it('has its maximum for water near 4 °C', () => {
    // Tanaka, Girard, Davis, Peuto & Bignell, Metrologia 38 (2001) 301: 999.97495 kg/m³ at 3.983 °C. R 22's older
    // water lies 0.006 kg/m³ lower throughout.
    const temperatures = Array.from({ length: 201 }, (_, i) => 3 + i / 100);
    const densities = temperatures.map((t) => densityOfMixture(0, celsius(t)));
    const largest = Math.max(...densities);
    expect(Math.abs(largest - 999.97495)).toBeLessThan(0.01);
    expect(Math.abs(temperatures[densities.indexOf(largest)]! - 3.983)).toBeLessThan(0.03);
  });

  it('reproduces the table by mass from −20 to 40 °C', () => {
    const { columns, rows } = publishedTable('worked-examples/oiml-r22-by-mass.csv');
    for (const row of rows) {
      for (const column of columns.slice(1)) {
        const density = densityOfMixture(Number(row.percent_mass) / 100, celsius(Number(column)));
        expect(Math.abs(density - Number(row[column])), `${row.percent_mass} % at ${column} °C`).toBeLessThan(
          printedDigit,
        );
      }
    }
    expect(rows).toHaveLength(21);
  });

  it('agrees with the older Bureau of Standards densities in Perry’s Handbook', () => {
    // The two series are different measurements; R 22 is lower by up to 0.05 kg/m³ where the rows were read,
    // and by up to 0.10 kg/m³ (pure ethanol) in the rows given from memory.
    for (const row of publishedTable('worked-examples/perry-density-20c.csv').rows) {
      const difference = densityOfMixture(Number(row.percent_mass) / 100, 293.15) - 1000 * Number(row.density_g_mL);
      expect(difference, `${row.percent_mass} %`).toBeLessThan(0);
      expect(difference, `${row.percent_mass} %`).toBeGreaterThan(row.how === 'read' ? -0.052 : -0.102);
    }
  });

  it.each([
    // IAPWS-95 at 101.325 kPa (Wagner & Pruß, J. Phys. Chem. Ref. Data 31 (2002) 387), computed with CoolProp 8.0.0.
    [5, 999.967],
    [10, 999.702],
    [20, 998.207],
    [25, 997.048],
    [30, 995.649],
    [40, 992.216],
  ])('meets the reference equation for water at %d °C within 0.01 kg/m³', (t, reference) => {
    expect(Math.abs(densityOfMixture(0, celsius(t)) - reference)).toBeLessThan(0.01);
  });

  it('takes the ends of its range typed in degrees Celsius', () => {
    expect(densityOfMixture(0.4, 273.15 - 20)).toBeCloseTo(962.52, 2);
    expect(densityOfMixture(0.4, 273.15 + 40)).toBeCloseTo(919.89, 2);
  });

  it.each([
    [0.5, 253.14, 'temperature_K'],
    [0.5, 313.16, 'temperature_K'],
    [0.5, NaN, 'temperature_K'],
    [-0.01, 293.15, 'massFraction'],
    [1.01, 293.15, 'massFraction'],
    [NaN, 293.15, 'massFraction'],
  ])('refuses mass fraction %d at %d K and names %s', (massFraction, temperature_K, argument) => {
    expect(() => densityOfMixture(massFraction, temperature_K)).toThrow(InputError);
    expect(() => densityOfMixture(massFraction, temperature_K)).toThrow(argument);
  });

  it('falls with the ethanol content at every temperature, and its slope is the derivative', () => {
    const step = 1e-6;
    const truncation = 2e-3; // kg/m³; third derivative (up to 1e5 kg/m³ at −20 °C) and rounding over the step
    for (let t = -20; t <= 40; t += 2.5) {
      const polynomial = densityPolynomial(celsius(t));
      for (let p = 0.005; p < 1; p += 0.005) {
        const slope = densitySlopeByPolynomial(polynomial, p);
        const difference =
          (densityByPolynomial(polynomial, p + step) - densityByPolynomial(polynomial, p - step)) / (2 * step);
        expect(slope, `p ${p}, ${t} °C`).toBeLessThan(0);
        expect(Math.abs(slope - difference), `p ${p}, ${t} °C`).toBeLessThan(truncation);
      }
    }
  });
});
