import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  azeotrope,
  bubblePoint,
  carryUncertainty,
  dewPoint,
  gaugeOffset,
  kettleFromTemperature,
  moleFractionFromStrength,
  strengthFromMoleFraction,
  thermometerOffset,
  vapourFromTemperature,
} from '#lib/index.js';
import { publishedTable } from '../../../support/published-table.js';

const sea_Pa = 101325;
const found = <Answer extends { found: boolean }>(answer: Answer): Extract<Answer, { found: true }> => {
  if (!answer.found) throw new Error('nothing was found');
  return answer as Extract<Answer, { found: true }>;
};

describe('the kettle from its thermometer', () => {
  it('is the liquid that boils there, at any altitude, drop and offset', () => {
    const any = fc.record({
      x: fc.double({ min: 1e-4, max: 0.8, noNaN: true }),
      air_Pa: fc.double({ min: 40e3, max: 110e3, noNaN: true }),
      over_Pa: fc.double({ min: 0, max: 10e3, noNaN: true }),
      offset_K: fc.double({ min: -3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ x, air_Pa, over_Pa, offset_K }) => {
        const point = bubblePoint(x, air_Pa + over_Pa);
        const read = { reading_K: point.temperature_K + offset_K, air_Pa, over_Pa, offset_K };
        const kettle = found(kettleFromTemperature(read));
        // Near the azeotrope the boiling point hardly moves: 1e-10 K of rounding is 1e-7 in x there.
        expect(Math.abs(kettle.moleFraction - x)).toBeLessThan(1e-6);
        expect(Math.abs(kettle.vapourStrength - strengthFromMoleFraction(point.vapourMoleFraction))).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });

  // Measured sets of 1 atm, weak end to 60 % mole: what the thermometer of the laboratory says of its liquid. A tenth of a
  // kelvin is 0.2 % vol in a weak kettle and some 2 % vol above 60 % vol.
  const sets = ['carey-lewis-1932-101kPa', 'kamihama-2012-101kPa', 'rieder-thompson-1949-101kPa'];
  it.each(sets)('comes near the liquid of a measured set: %s', (set) => {
    const { rows, columns } = publishedTable(`measurements/${set}.csv`);
    const kelvin = columns.includes('T_K')
      ? (row: Record<string, string>) => Number(row.T_K)
      : (row: Record<string, string>) => Number(row.t_degC) + 273.15;
    let off = 0;
    let points = 0;
    for (const row of rows) {
      const x = Number(row.x1);
      if (!(x > 0.005 && x < 0.5)) continue;
      const kettle = kettleFromTemperature({ reading_K: kelvin(row), air_Pa: 1000 * Number(row.P_kPa) });
      const strength = strengthFromMoleFraction(x);
      const read = kettle.found ? kettle.strength : 0;
      off += Math.abs(read - strength) / Math.max(0.03, strength);
      points += 1;
    }
    expect(points).toBeGreaterThan(5);
    // On average within a tenth of the strength (found: 3 to 8 %).
    expect(off / points).toBeLessThan(0.1);
  });

  it('climbs by some 5 to 6 °C while a charge of 10 % vol is taken down to 2 to 3 % vol', () => {
    // Common practice, no published source.
    const boils = (strength: number): number => bubblePoint(moleFractionFromStrength(strength), sea_Pa).temperature_K;
    expect(boils(0.025) - boils(0.1)).toBeGreaterThan(5);
    expect(boils(0.02) - boils(0.1)).toBeLessThan(6.5);
  });

  it('moves with the barometer: 1 kPa is some 0.27 K, a third of a per cent vol in a nearly spent kettle', () => {
    // Water's boiling point moves by 0.27 to 0.28 K a kPa at sea level (IAPWS).
    const at = (air_Pa: number): number => found(kettleFromTemperature({ reading_K: 371.65, air_Pa })).strength;
    expect(gaugeOffset(sea_Pa, 1000)).toBeCloseTo(0.276, 2);
    const moved = at(sea_Pa + 1000) - at(sea_Pa);
    expect(moved).toBeGreaterThan(0.0025);
    expect(moved).toBeLessThan(0.0045);
  });

  it('says of its own uncertainty what the reading errors and the model leave open', () => {
    const reading = { reading_K: 368.15, air_Pa: sea_Pa, offset_K: 0, model_K: 0 };
    const { modelError_K } = found(kettleFromTemperature(reading));
    const { strength } = carryUncertainty(kettleFromTemperature, reading, {
      reading_K: 0.2,
      air_Pa: 300,
      model_K: modelError_K,
    });
    expect(Object.keys(strength!.from)).toEqual(['reading_K', 'air_Pa', 'model_K']);
    const { kelvinPerPercent } = found(kettleFromTemperature(reading));
    // 0.2 K through the slope that is told with it.
    expect(Math.abs(strength!.from.reading_K! / ((0.01 * 0.2) / kelvinPerPercent) - 1)).toBeLessThan(0.02);
    expect(strength!.uncertainty).toBeGreaterThan(Math.abs(strength!.from.reading_K!));
  });

  it('is told to be none where nothing boils so', () => {
    expect(kettleFromTemperature({ reading_K: 373.5, air_Pa: sea_Pa })).toMatchObject({ reason: 'hotter-than-water' });
    expect(kettleFromTemperature({ reading_K: 350, air_Pa: sea_Pa })).toMatchObject({
      reason: 'colder-than-azeotrope',
    });
    // The same 373.5 K under four plates of 0.4 kPa is a kettle.
    expect(kettleFromTemperature({ reading_K: 373.5, air_Pa: sea_Pa, over_Pa: 1600 }).found).toBe(true);
  });

  it.each([
    [{ reading_K: 95, air_Pa: sea_Pa }, 'reading.reading_K is 95'],
    [{ reading_K: 368, air_Pa: 101.3 }, 'reading.air_Pa is 101.3'],
    [{ reading_K: 368, air_Pa: sea_Pa, over_Pa: -1 }, 'reading.over_Pa is -1'],
    [{ reading_K: 368, air_Pa: sea_Pa, offset_K: 60 }, 'reading.offset_K is 60'],
  ])('refuses %j', (reading, says) => {
    expect(() => kettleFromTemperature(reading)).toThrow(says);
  });
});

describe('the vapour from its thermometer', () => {
  it('is the vapour whose dew point that is', () => {
    const any = fc.record({
      y: fc.double({ min: 0.01, max: 0.86, noNaN: true }),
      air_Pa: fc.double({ min: 40e3, max: 110e3, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ y, air_Pa }) => {
        const { temperature_K } = dewPoint(y, air_Pa);
        const vapour = found(vapourFromTemperature({ reading_K: temperature_K, air_Pa }));
        expect(Math.abs(vapour.moleFraction - y)).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  });

  it('tells almost nothing near the azeotrope: from 94 to 96 % vol the head falls by less than a fifth of a kelvin', () => {
    const head = (strength: number): number => dewPoint(moleFractionFromStrength(strength), sea_Pa).temperature_K;
    expect(head(0.94) - head(0.96)).toBeGreaterThan(0);
    expect(head(0.94) - head(0.96)).toBeLessThan(0.2);
    const at = found(vapourFromTemperature({ reading_K: head(0.95), air_Pa: sea_Pa }));
    expect(Math.abs(at.kelvinPerPercent)).toBeLessThan(0.1);
    const weak = found(vapourFromTemperature({ reading_K: head(0.6), air_Pa: sea_Pa }));
    expect(Math.abs(weak.kelvinPerPercent)).toBeGreaterThan(0.2);
  });

  it('ends at the azeotrope', () => {
    const lowest = azeotrope(sea_Pa);
    if (!lowest.found) throw new Error('no azeotrope');
    const coldest = found(vapourFromTemperature({ reading_K: lowest.temperature_K + 1e-6, air_Pa: sea_Pa }));
    expect(Math.abs(coldest.moleFraction - lowest.moleFraction)).toBeLessThan(0.01);
  });
});

describe('a thermometer checked in boiling water', () => {
  it('is off by its reading less the boiling point of the day', () => {
    expect(thermometerOffset(373.15, sea_Pa)).toBeCloseTo(0.026, 3); // ITS-90: water boils at 99.974 °C at 1 atm
    expect(thermometerOffset(367, 80e3)).toBeCloseTo(367 - 366.63, 1); // 93.5 °C at 80 kPa, steam tables
  });
});
