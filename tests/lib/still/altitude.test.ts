import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { altitudeAtPressure, InputError, pressureAtAltitude } from '#lib/index.js';

/** The published tables are by geopotential altitude H; ours is the geometric one, Z = r0 H / (r0 − H). */
const geometric = (H: number): number => (6356766 * H) / (6356766 - H);

describe('pressureAtAltitude', () => {
  it.each([
    // U.S. Standard Atmosphere 1976 = ISO 2533: constants of the standard, pressures rounded to 0.01 kPa.
    [-100, 102.53],
    [0, 101.33],
    [250, 98.36],
    [500, 95.46],
    [1000, 89.87],
    [1500, 84.56],
    [2000, 79.5],
    [2500, 74.68],
    [3000, 70.11],
    [4000, 61.64],
  ])('at %d m geopotential is the standard %d kPa', (H, kPa) => {
    const printedDigit = 5.01e-3; // half of the last printed digit, 0.01 kPa
    expect(Math.abs(pressureAtAltitude(geometric(H)) / 1000 - kPa)).toBeLessThan(printedDigit);
  });

  it('is one standard atmosphere at sea level, exactly', () => {
    expect(pressureAtAltitude(0)).toBe(101325);
  });

  it('meets the tropopause pressure of the standard, 22 632.06 Pa at 11 km geopotential', () => {
    // 11 km geopotential is 11 019 m, just outside the range; extrapolate by the pressure's own slope over the last 20 m.
    const slope = (pressureAtAltitude(11000) - pressureAtAltitude(10980)) / 20;
    expect(Math.abs(pressureAtAltitude(11000) + slope * (geometric(11000) - 11000) - 22632.06)).toBeLessThan(0.5);
  });

  it('comes back from its inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: -600, max: 11000, noNaN: true }), (altitude_m) => {
        const back = altitudeAtPressure(pressureAtAltitude(altitude_m));
        expect(Math.abs(back - altitude_m)).toBeLessThan(1e-8); // m; rounding of 44 km
      }),
    );
  });

  it.each([-601, 11001, NaN])('refuses %d m', (altitude_m) => {
    expect(() => pressureAtAltitude(altitude_m)).toThrow(InputError);
  });

  it.each([0, 22000, 110000, NaN])('has no altitude for %d Pa', (pressure_Pa) => {
    expect(() => altitudeAtPressure(pressure_Pa)).toThrow('pressure_Pa');
  });
});
