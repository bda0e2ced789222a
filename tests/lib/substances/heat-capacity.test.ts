import { describe, expect, it } from 'vitest';
import { ethanol, water, InputError } from '#lib/index.js';

describe('heat capacities', () => {
  it.each([
    // CRC Handbook of Chemistry and Physics, standard values at 298.15 K, J/(mol K). The tolerance is the spread of the
    // published correlations there.
    ['liquid ethanol', ethanol.liquidHeatCapacity, 112.3, 0.001],
    ['liquid water', water.liquidHeatCapacity, 75.3, 0.002],
    ['ethanol gas', ethanol.gasHeatCapacity, 65.6, 0.004],
    ['water gas', water.gasHeatCapacity, 33.6, 0.003],
  ] as const)('of %s agrees with the CRC value at 25 °C', (_name, heatCapacity, value, spread) => {
    expect(Math.abs(heatCapacity(298.15) / value - 1)).toBeLessThan(spread);
  });

  it.each([
    // IAPWS-95, computed with CoolProp 8.0.0.
    [273.15, 76.02],
    [283.15, 75.58],
    [298.15, 75.33],
    [313.15, 75.3],
    [333.15, 75.4],
    [351.44, 75.59],
    [373.15, 75.95],
    [423.15, 77.59],
  ])('of liquid water at %d K agrees with IAPWS-95 within 0.25 %%', (temperature_K, value) => {
    expect(Math.abs(water.liquidHeatCapacity(temperature_K) / value - 1)).toBeLessThan(0.0025);
  });

  it.each([
    // Zábranský, Růžička, Majer & Domalski, J. Phys. Chem. Ref. Data Monograph 6 (1996), recommended values.
    [298.15, 112.119],
    [351.44, 138.519],
  ])('of liquid ethanol at %d K agrees with the recommended measurements within 0.25 %%', (temperature_K, value) => {
    expect(Math.abs(ethanol.liquidHeatCapacity(temperature_K) / value - 1)).toBeLessThan(0.0025);
  });

  it.each([
    // Ideal-gas part of the equation of state, Schroeder, Penoncello & Schroeder (2014).
    [298.15, 65.204],
    [373.15, 77.018],
  ])('of ethanol gas at %d K agrees with the equation of state within 0.5 %%', (temperature_K, value) => {
    expect(Math.abs(ethanol.gasHeatCapacity(temperature_K) / value - 1)).toBeLessThan(0.005);
  });

  it.each([
    [ethanol.liquidHeatCapacity, 391],
    [water.liquidHeatCapacity, 273],
    [ethanol.gasHeatCapacity, 1001],
    [water.gasHeatCapacity, NaN],
  ])('%o refuses %d K', (heatCapacity, temperature_K) => {
    expect(() => heatCapacity(temperature_K)).toThrow(InputError);
    expect(() => heatCapacity(temperature_K)).toThrow('temperature_K');
  });
});
