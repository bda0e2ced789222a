// The compiled enthalpies against the properties they were compiled from, between knots and between pressures.

import { describe, expect, it } from 'vitest';
import {
  activityModel,
  bubblePoint,
  createEthanolWater,
  densityOfLiquid,
  dewPoint,
  liquidEnthalpy,
  massFractionFromMoleFraction,
  vapourEnthalpy,
} from '#lib/index.js';
import { MOLAR_MASS_ETHANOL, MOLAR_MASS_WATER } from '#lib/constants.js';
import type { EnthalpySlice } from '#lib/equilibrium/enthalpy-curve.js';

const model = activityModel('redlich-kister');
const system = createEthanolWater();
const pressures = [25e3, 61e3, 101325, 118e3, 160e3];
const compositions = [0.0007, 0.0131, 0.052, 0.113, 0.304, 0.557, 0.772, 0.891, 0.973, 0.9995];

function read(table: Float64Array, stride: number, offset: number, slice: EnthalpySlice, x: number): number {
  const k = Math.min(slice.intervals - 1, Math.floor(x * slice.intervals));
  const s = x * slice.intervals - k;
  const i = stride * k + offset;
  return table[i]! + s * (table[i + 1]! + s * (table[i + 2]! + s * table[i + 3]!));
}

describe.each(pressures)('enthalpies compiled at %d Pa', (pressure_Pa) => {
  const slice = system.enthalpy().at(pressure_Pa);

  it.each(compositions)('give the boiling liquid of mole fraction %d to 0.5 J/mol and its volume to 1e-6', (x) => {
    const { temperature_K } = bubblePoint(x, pressure_Pa, model);
    const enthalpy = read(slice.boiling, 16, 8, slice, x);
    expect(Math.abs(enthalpy - liquidEnthalpy(x, temperature_K, model))).toBeLessThan(0.5);
    const mass = x * MOLAR_MASS_ETHANOL + (1 - x) * MOLAR_MASS_WATER;
    const volume = mass / densityOfLiquid(massFractionFromMoleFraction(x), temperature_K);
    expect(Math.abs(read(slice.boiling, 16, 12, slice, x) / volume - 1)).toBeLessThan(1e-6);
    expect(Math.abs(read(slice.boiling, 16, 4, slice, x) - temperature_K)).toBeLessThan(1e-4);
  });

  it.each(compositions)('give the saturated vapour of mole fraction %d to 0.5 J/mol', (y) => {
    const { temperature_K } = dewPoint(y, pressure_Pa, model);
    expect(Math.abs(read(slice.vapour, 4, 0, slice, y) - vapourEnthalpy(y, temperature_K))).toBeLessThan(0.5);
  });

  it.each(compositions)(
    'tell the heat to boil from 20 °C to 1 J/mol, and from elsewhere to 0.5 %%, of mole fraction %d',
    (x) => {
      const { temperature_K } = bubblePoint(x, pressure_Pa, model);
      const heat = (from_K: number): number =>
        liquidEnthalpy(x, temperature_K, model) - liquidEnthalpy(x, from_K, model);
      const compiled = (from_K: number): number => {
        const below = temperature_K - from_K;
        return below * (read(slice.cold, 8, 0, slice, x) + read(slice.cold, 8, 4, slice, x) * below);
      };
      expect(Math.abs(compiled(293.15) - heat(293.15))).toBeLessThan(1);
      for (const from_K of [278.15, 303.15, (temperature_K + 293.15) / 2]) {
        expect(Math.abs(compiled(from_K) / heat(from_K) - 1)).toBeLessThan(5e-3);
      }
    },
  );
});

describe('enthalpies', () => {
  it('refuse a pressure at which water boils above 390 K, naming it', () => {
    expect(() => system.enthalpy().at(200e3)).toThrow('pressure_Pa is 200000');
  });
});
