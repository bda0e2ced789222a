import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  densityOfMixture,
  InputError,
  massFractionFromMoleFraction,
  massFractionFromProof,
  massFractionFromStrength,
  moleFractionFromMassFraction,
  moleFractionFromStrength,
  proofFromMassFraction,
  proofFromStrength,
  strengthFromMassFraction,
  strengthFromMoleFraction,
  strengthFromProof,
} from '#lib/index.js';
import { publishedTable } from '../../support/published-table.js';

const share = fc.double({ min: 0, max: 1, noNaN: true });
/** Rounding: ρ is a sum of terms up to 7e5 kg/m³, so it carries some 2e-13 of itself. */
const rounding = 1e-12;
/** Numbers below 1e-308 have fewer digits than the others. */
const least = 1e-300;

type Conversion = (value: number) => number;
const conversions: readonly (readonly [name: string, forward: Conversion, back: Conversion, top: number])[] = [
  ['massFractionFromMoleFraction', massFractionFromMoleFraction, moleFractionFromMassFraction, 1],
  ['strengthFromMassFraction', strengthFromMassFraction, massFractionFromStrength, 1],
  ['strengthFromMoleFraction', strengthFromMoleFraction, moleFractionFromStrength, 1],
  ['proofFromMassFraction', proofFromMassFraction, massFractionFromProof, 200],
];

describe('strength', () => {
  it('agrees with the table by volume: mass per cent from volume per cent', () => {
    const printedDigit = 5.001e-4; // half of the last printed digit, 0.001 % mass
    const { rows } = publishedTable('worked-examples/oiml-r22-by-volume.csv');
    for (const { percent_vol, percent_mass } of rows) {
      const computed = 100 * massFractionFromStrength(Number(percent_vol) / 100);
      expect(Math.abs(computed - Number(percent_mass)), `${percent_vol} % vol`).toBeLessThan(printedDigit);
    }
    expect(rows.length).toBeGreaterThan(30);
  });

  it('agrees with the table by volume: density from volume per cent, 0 to 40 °C', () => {
    const printedDigit = 5.001e-3; // half of the last printed digit, 0.01 kg/m³
    const { columns, rows } = publishedTable('worked-examples/oiml-r22-by-volume.csv');
    const temperatures = columns.slice(2);
    expect(temperatures).toHaveLength(7);
    for (const row of rows) {
      for (const t of temperatures) {
        const density = densityOfMixture(massFractionFromStrength(Number(row.percent_vol) / 100), Number(t) + 273.15);
        expect(Math.abs(density - Number(row[t])), `${row.percent_vol} % vol, ${t} °C`).toBeLessThan(printedDigit);
      }
    }
  });

  it('puts the azeotrope at 1 atm at 95.6 % mass and 97.2 % vol', () => {
    // Gmehling & Onken, Vapor-Liquid Equilibrium Data Collection, DECHEMA 1977: 0.8943 mole fraction; CRC Handbook: 95.6 % mass.
    expect(Math.abs(100 * massFractionFromMoleFraction(0.8943) - 95.6)).toBeLessThan(0.05);
    expect(Math.abs(100 * strengthFromMoleFraction(0.8943) - 97.2)).toBeLessThan(0.05);
  });
});

describe.each(conversions)('%s', (_name, forward, back, top) => {
  it('keeps nothing and everything exact, both ways', () => {
    expect([forward(0), forward(1), back(0), back(top)]).toEqual([0, top, 0, 1]);
  });

  it('comes back from its inverse', () => {
    fc.assert(
      fc.property(share, (u) => {
        expect(Math.abs(back(forward(u)) - u)).toBeLessThanOrEqual(rounding * u + least);
        expect(Math.abs(forward(back(top * u)) - top * u)).toBeLessThanOrEqual(rounding * top * u + least);
      }),
    );
  });

  it('rises with its argument, and so does the inverse', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-11);
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(forward(low)).toBeLessThan(forward(high));
        expect(back(top * low)).toBeLessThan(back(top * high));
      }),
    );
  });

  it('stays inside its range for every argument, the smallest and the last before the top included', () => {
    for (const u of [Number.MIN_VALUE, 1e-300, 1e-20, 1 - Number.EPSILON]) {
      for (const value of [forward(u) / top, back(top * u)]) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
      }
    }
  });

  it('takes rounding beyond the ends as the end and refuses everything else, by name', () => {
    expect(forward(-1e-12)).toBe(0);
    expect(forward(1 + 1e-12)).toBe(top);
    const argument = /^(moleFraction|massFraction|strength|proof) is (-0.1|NaN|Infinity|\d+\.?\d*); expected a /;
    for (const bad of [-0.1, 1.01 * top, NaN, Infinity]) {
      expect(() => back(bad)).toThrow(InputError);
      expect(() => back(bad)).toThrow(argument);
      expect(() => forward(bad === 1.01 * top ? 1.01 : bad)).toThrow(argument);
    }
  });
});

describe('proof and strength at 20 °C', () => {
  it('are not a factor of two apart, because mixture and ethanol expand differently', () => {
    // UK proof spirit is 57.09 % vol at 60 °F and 57.15 % at 20 °C (12/13 of the weight of water at 51 °F, 58 Geo. III c. 28).
    expect(Math.abs(100 * strengthFromProof(2 * 57.09) - 57.15)).toBeLessThan(0.01);
  });

  it('undo each other', () => {
    fc.assert(
      fc.property(share, (q) => {
        expect(Math.abs(strengthFromProof(proofFromStrength(q)) - q)).toBeLessThanOrEqual(2 * rounding * q + least);
      }),
    );
  });
});
