// Laws of boiling and condensing, for every model at every state of the matrix.

import { describe, expect, it } from 'vitest';
import { ethanol, water, azeotrope, bubblePoint, dewPoint, relativeVolatility } from '#lib/index.js';
import { exceptions, isException, models, moleFractions, pressures_Pa } from './states.js';

const kelvinRounding = 1e-9;
const rounding = 1e-11;

describe.each(models)('$name', ({ name, model }) => {
  const states = moleFractions.flatMap((x) => pressures_Pa.map((pressure_Pa) => ({ x, pressure_Pa })));

  it('boils as the pure substances do at both ends', () => {
    for (const pressure_Pa of pressures_Pa) {
      const waterEnd_K = bubblePoint(0, pressure_Pa, model).temperature_K;
      const ethanolEnd_K = bubblePoint(1, pressure_Pa, model).temperature_K;
      expect(Math.abs(waterEnd_K - water.boilingTemperature(pressure_Pa))).toBeLessThan(kelvinRounding);
      expect(Math.abs(ethanolEnd_K - ethanol.boilingTemperature(pressure_Pa))).toBeLessThan(kelvinRounding);
    }
  });

  it('comes back from the dew point of its own vapour', () => {
    for (const { x, pressure_Pa } of states) {
      const boiling = bubblePoint(x, pressure_Pa, model);
      const dew = dewPoint(boiling.vapourMoleFraction, pressure_Pa, model);
      // Where y* is flat, rounding in y is magnified by 1/(dy*/dx) in x.
      const magnified = (1e-13 + rounding) * Math.max(1, 1 / boiling.vapourSlope);
      expect(Math.abs(dew.liquidMoleFraction - x), `x ${x}, ${pressure_Pa} Pa`).toBeLessThan(magnified);
      expect(Math.abs(dew.temperature_K - boiling.temperature_K)).toBeLessThan(1e-7);
    }
  });

  it('has slopes of T and y that are derivatives at constant pressure', () => {
    const step = 1e-6;
    for (const { x, pressure_Pa } of states) {
      if (x < 1e-3 || x > 0.9995) continue;
      const { temperatureSlope_K, vapourSlope } = bubblePoint(x, pressure_Pa, model);
      const [left, right] = [bubblePoint(x - step, pressure_Pa, model), bubblePoint(x + step, pressure_Pa, model)];
      const byDifference = (right.temperature_K - left.temperature_K) / (2 * step);
      expect(Math.abs(temperatureSlope_K - byDifference), `x ${x}`).toBeLessThan(
        1e-5 * (1 + Math.abs(temperatureSlope_K)),
      );
      const yByDifference = (right.vapourMoleFraction - left.vapourMoleFraction) / (2 * step);
      expect(Math.abs(vapourSlope - yByDifference), `x ${x}`).toBeLessThan(1e-7 * (1 + vapourSlope));
    }
  });

  it('gives vapour that grows richer with the liquid', () => {
    for (const pressure_Pa of pressures_Pa) {
      let before = -1;
      for (let i = 0; i <= 400; i++) {
        const { vapourMoleFraction } = bubblePoint(i / 400, pressure_Pa, model);
        expect(vapourMoleFraction).toBeGreaterThan(before);
        before = vapourMoleFraction;
      }
    }
  });

  it('boils hotter under more pressure', () => {
    for (const x of moleFractions) {
      const boiling = pressures_Pa.map((pressure_Pa) => bubblePoint(x, pressure_Pa, model).temperature_K);
      expect(boiling).toEqual([...boiling].sort((a, b) => a - b));
    }
  });

  it(expectedTo(name, 'has an azeotrope'), () => {
    for (const pressure_Pa of pressures_Pa) {
      const found = azeotrope(pressure_Pa, model);
      expect(found.found).toBe(!isException('has an azeotrope', name));
      if (!found.found) {
        expect(found.reason).toBe('none');
        continue;
      }
      const { moleFraction, temperature_K } = found;
      const there = bubblePoint(moleFraction, pressure_Pa, model);
      // Konovalov: there x = y, α = 1, and the boiling temperature has its minimum.
      expect(Math.abs(there.vapourMoleFraction - moleFraction)).toBeLessThan(rounding);
      expect(Math.abs(relativeVolatility(moleFraction, pressure_Pa, model) - 1)).toBeLessThan(rounding);
      expect(Math.abs(there.temperatureSlope_K)).toBeLessThan(1e-8);
      expect(temperature_K).toBeLessThan(ethanol.boilingTemperature(pressure_Pa));
    }
  });

  it('has at most one azeotrope at any pressure from 5 kPa to 1 MPa', () => {
    for (let pressure_Pa = 5e3; pressure_Pa <= 1e6; pressure_Pa *= 1.5) {
      let crossings = 0;
      let before = relativeVolatility(0, pressure_Pa, model) - 1;
      for (let i = 1; i <= 400; i++) {
        const now = relativeVolatility(i / 400, pressure_Pa, model) - 1;
        if (now * before < 0) crossings += 1;
        before = now;
      }
      expect(crossings, `${pressure_Pa} Pa`).toBeLessThanOrEqual(1);
    }
  });

  it(expectedTo(name, 'moves its azeotrope to less ethanol with rising pressure'), () => {
    const found = pressures_Pa.map((pressure_Pa) => azeotrope(pressure_Pa, model));
    const moves = found.every((each, i) => {
      const next = found[i + 1];
      return next === undefined || (each.found && next.found && next.moleFraction < each.moleFraction);
    });
    expect(moves).toBe(!isException('moves its azeotrope to less ethanol with rising pressure', name));
  });
});

describe('exceptions', () => {
  it('name models that exist and give a reason', () => {
    for (const { model, reason } of exceptions) {
      expect(models.map(({ name }) => name)).toContain(model);
      expect(reason.length).toBeGreaterThan(10);
    }
  });
});

/** Title of a test that some models are known to break. */
function expectedTo(model: string, law: string): string {
  const exception = exceptions.find((each) => each.law === law && each.model === model);
  return exception === undefined ? law : `breaks a law, as known: ${law} (${exception.reason})`;
}
