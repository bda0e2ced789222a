// For every parameter file one published value, recomputed through the library. The tolerance is what the two sources
// are known to differ by, said beside each.

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as lib from '#lib/index.js';

/** Parameter file, what it gives, the published value, how far sources differ (as a share), and where the value stands. */
const POINTS: readonly (readonly [string, () => number, number, number, string])[] = [
  ['oiml-r22', () => lib.densityOfMixture(1, 293.15), 789.24, 1e-5, 'OIML R 22, erratum: density of ethanol at 20 °C'],
  ['perry-liquid-heat-capacity-ethanol', () => lib.ethanol.liquidHeatCapacity(298.15), 112.3, 0.001, 'CRC Handbook'],
  ['perry-liquid-heat-capacity-water', () => lib.water.liquidHeatCapacity(298.15), 75.3, 0.002, 'CRC Handbook'],
  ['poling-gas-heat-capacity-ethanol', () => lib.ethanol.gasHeatCapacity(298.15), 65.6, 0.005, 'CRC Handbook'],
  ['poling-gas-heat-capacity-water', () => lib.water.gasHeatCapacity(298.15), 33.6, 0.005, 'CRC Handbook'],
  [
    'perry-vaporisation-ethanol',
    () => lib.ethanol.heatOfVaporisation(351.44) / 1000,
    38.56,
    0.015, // the spread of published values at the boiling point
    'CRC Handbook',
  ],
  ['vdi-vaporisation-water', () => lib.water.heatOfVaporisation(373.15) / 1000, 40.65, 0.001, 'CRC Handbook'],
  [
    'redlich-kister-ethanol-water',
    () => pressureOf('redlich-kister'),
    7.329,
    0.003, // goal for this set
    'Pemberton & Mash 1978, 303.15 K, x = 0.10991, kPa',
  ],
  ['nrtl-ethanol-water', () => pressureOf('nrtl'), 7.329, 0.04, 'the same; this model is that far off at 30 °C'],
  ['wilson-ethanol-water', () => pressureOf('wilson'), 7.329, 0.04, 'the same; this model is that far off at 30 °C'],
];

function pressureOf(name: lib.ActivityName): number {
  const found = lib.bubblePressure(0.10991, 303.15, lib.activityModel(name));
  return found.pressure_Pa / 1000;
}

describe('a published value recomputed', () => {
  it.each(POINTS)('with %s', (_file, value, published, difference) => {
    expect(Math.abs(value() / published - 1)).toBeLessThan(difference);
  });

  it('stands here for every parameter file', () => {
    const folder = new URL('../../reference/parameters/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.json') && !/covariance|laboratories/.test(name));
    expect(POINTS.map(([file]) => `${file}.json`).sort()).toEqual(files.sort());
  });
});
