// Single points: what is refused, and how far the solver reaches.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ethanol,
  water,
  ACTIVITY_NAMES,
  activityModel,
  azeotrope,
  bubblePoint,
  bubblePressure,
  dewPoint,
  InputError,
  relativeVolatility,
  type ActivityState,
} from '#lib/index.js';

describe('bubblePoint', () => {
  it('meets the bubble equation anywhere from 2 kPa to 2 MPa', () => {
    const state: ActivityState = {
      lnGammaEthanol: 0,
      lnGammaWater: 0,
      slopeEthanol: 0,
      slopeWater: 0,
      thermalEthanol: 0,
      thermalWater: 0,
    };
    fc.assert(
      fc.property(
        fc.constantFrom(...ACTIVITY_NAMES),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: Math.log(2.2e3), max: Math.log(2e6), noNaN: true }),
        (name, x, logPressure) => {
          const model = activityModel(name);
          const pressure_Pa = Math.min(2e6, Math.exp(logPressure));
          const { temperature_K, vapourMoleFraction } = bubblePoint(x, pressure_Pa, model);
          if (temperature_K < 273.16) return; // below the range of water's public saturation function
          model.activity(x, temperature_K, state);
          const [ethanol_Pa, water_Pa] = [
            ethanol.saturationPressure(temperature_K),
            water.saturationPressure(temperature_K),
          ];
          // The vapour written out again: ln φ of the saturated pure vapour less ln φ in the mixture, by second virial
          // coefficients with B12 weaker by 23 % than the mean of the pure ones, in the model that has such a vapour.
          const virial = name === 'redlich-kister' ? 1 / (8.314462618 * temperature_K) : 0;
          const [b1, b2] = [ethanol.secondVirial(temperature_K), water.secondVirial(temperature_K)];
          const b12 = 0.77 * 0.5 * (b1 + b2);
          const y = vapourMoleFraction;
          const mixed = y * y * b1 + 2 * y * (1 - y) * b12 + (1 - y) * (1 - y) * b2;
          const departs1 = virial * (b1 * ethanol_Pa - (2 * (y * b1 + (1 - y) * b12) - mixed) * pressure_Pa);
          const departs2 = virial * (b2 * water_Pa - (2 * (y * b12 + (1 - y) * b2) - mixed) * pressure_Pa);
          const sum =
            x * Math.exp(state.lnGammaEthanol + departs1) * ethanol_Pa +
            (1 - x) * Math.exp(state.lnGammaWater + departs2) * water_Pa;
          expect(Math.abs(sum / pressure_Pa - 1)).toBeLessThan(1e-11);
        },
      ),
    );
  });

  it('boils an ideal mixture where Raoult says', () => {
    const { temperature_K, vapourMoleFraction } = bubblePoint(0.5, 101325, activityModel('raoult'));
    const half = 0.5 * ethanol.saturationPressure(temperature_K);
    expect(half + 0.5 * water.saturationPressure(temperature_K)).toBeCloseTo(101325, 5);
    expect(vapourMoleFraction).toBeCloseTo(half / 101325, 12);
  });

  it('refuses compositions and pressures outside its range', () => {
    const model = activityModel('nrtl');
    expect(() => bubblePoint(1.01, 101325, model)).toThrow(/moleFraction is 1.01/);
    expect(() => bubblePoint(0.5, 1000, model)).toThrow(/pressure_Pa is 1000/);
    expect(() => bubblePoint(NaN, 101325, model)).toThrow(InputError);
    expect(() => dewPoint(-0.1, 101325, model)).toThrow(/vapourMoleFraction is -0.1/);
    expect(() => relativeVolatility(0.5, Infinity, model)).toThrow(InputError);
    expect(() => azeotrope(0, model)).toThrow(InputError);
  });
});

describe('outside the temperatures a model was fitted to', () => {
  it('every answer says that it is extrapolated', () => {
    const model = activityModel('redlich-kister'); // fitted from 298 to 424 K
    expect(bubblePoint(0.5, 101325, model).extrapolated).toBe(false);
    expect(bubblePoint(0.5, 2e6, model).extrapolated).toBe(true);
    expect(bubblePoint(0.5, 4e3, model).extrapolated).toBe(true);
    expect(azeotrope(101325, model)).toMatchObject({ found: true, extrapolated: false });
    expect(azeotrope(1.5e6, model)).toMatchObject({ found: true, extrapolated: true });
  });
});

describe('azeotrope', () => {
  it('answers that an ideal mixture has none, and says so in words', () => {
    const answer = azeotrope(101325, activityModel('raoult'));
    expect(answer).toMatchObject({ found: false, reason: 'none' });
    expect(!answer.found && answer.message).toMatch(/no azeotrope at 101\.3 kPa/);
  });
});

describe('bubblePressure', () => {
  it('is the bubble point the other way round, for every model', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ACTIVITY_NAMES),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 280, max: 440, noNaN: true }),
        (name, x, temperature_K) => {
          const model = activityModel(name);
          const { pressure_Pa, vapourMoleFraction } = bubblePressure(x, temperature_K, model);
          if (pressure_Pa < 2e3) return; // below the range of the bubble point
          const boiling = bubblePoint(x, pressure_Pa, model);
          expect(Math.abs(boiling.temperature_K - temperature_K)).toBeLessThan(1e-9);
          expect(Math.abs(boiling.vapourMoleFraction - vapourMoleFraction)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('refuses what is no liquid', () => {
    expect(() => bubblePressure(0.5, 200, activityModel('nrtl'))).toThrow(/temperature_K is 200/);
    expect(() => bubblePressure(-1, 350, activityModel('nrtl'))).toThrow(InputError);
  });
});
