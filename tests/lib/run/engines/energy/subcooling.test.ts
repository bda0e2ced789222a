// Reflux that comes back colder than it boils: no colder than the water that cooled it.

import { completeProblem } from '#lib/run/complete.js';
import { describe, expect, it } from 'vitest';
import { createEthanolWater } from '#lib/index.js';
import { ZERO_CELSIUS } from '#lib/constants.js';
import { DrumStreams } from '#lib/run/engines/energy/drum-streams.js';
import { LAMBDA0, trainOf } from '#lib/run/engines/energy/holders.js';
import { trainTables } from '#lib/run/engines/energy/tables.js';
import type { EnergySolution } from '#lib/run/solution.js';
import { solve } from '#lib/run/solve.js';
import { platedStill, trainProblem, type WholeProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();
const inlet_K = 288.15;
/** Heat capacity of liquid water, J/(mol K): CRC Handbook, value from memory. */
const WATER_J_K = 75.3;
const hundredth = 0.01;

/** Four plates under vacuum, where rich reflux boils at 42 °C, with some subcooling. */
const problem = (subcooling_K: number, air_Pa = 20e3): WholeProblem => {
  const still = platedStill(4);
  return trainProblem({
    still: {
      ...still,
      refluxCondenser: { kind: 'total', holdUp: { kind: 'volume', volume_m3: 4e-5 }, subcooling_K },
      productCondenser: { ...still.productCondenser, inlet_K },
      air: { ...still.air, pressure_Pa: air_Pa },
    },
  });
};
const run = (subcooling_K: number, air_Pa?: number): EnergySolution => solve(problem(subcooling_K, air_Pa), system);

/** What runs out of a drum of this mole fraction, per mole, and its slope. */
function drum(subcooling_K: number, x: number): { enthalpy: number; enthalpy_x: number } {
  const train = trainOf(completeProblem(problem(subcooling_K)));
  const pressures = [...train.holders.map((holder) => holder.pressure_Pa), train.drum.pressure_Pa];
  const streams = new DrumStreams(train, trainTables(system.enthalpy('redlich-kister'), pressures, false));
  streams.evaluate(x, 1 - x);
  return { enthalpy: LAMBDA0 * streams.enthalpy, enthalpy_x: LAMBDA0 * streams.enthalpy_x };
}

describe('subcooled reflux', () => {
  it('comes back as cold as it is told, as long as the water is colder', () => {
    const boiling_K = system.curve('redlich-kister').at(20e3).temperature[0]!;
    expect(boiling_K - inlet_K).toBeGreaterThan(40);
    expect(Math.abs((drum(20, 0).enthalpy - drum(30, 0).enthalpy) / 10 / WATER_J_K - 1)).toBeLessThan(hundredth);
  });

  it('is never colder than the cooling water comes', () => {
    for (const x of [0, 0.3, 0.8]) expect(drum(60, x).enthalpy).toBe(drum(70, x).enthalpy);
    // Counted from the liquid at 0 °C.
    expect(Math.abs(drum(60, 0).enthalpy / (inlet_K - ZERO_CELSIUS) / WATER_J_K - 1)).toBeLessThan(hundredth);
    const [cold, colder] = [run(50), run(70)];
    expect(colder.spoutStrength).toEqual(cold.spoutStrength);
    expect(Math.min(...colder.holderTemperature_K)).toBeGreaterThan(inlet_K);
  });

  it('has the slope of its own enthalpy, as cold as the water or not', () => {
    const h = 1e-5;
    for (const subcooling_K of [10, 60]) {
      for (const x of [0.1, 0.5, 0.8]) {
        const difference = (drum(subcooling_K, x + h).enthalpy - drum(subcooling_K, x - h).enthalpy) / (2 * h);
        expect(Math.abs(drum(subcooling_K, x).enthalpy_x / difference - 1)).toBeLessThan(1e-4);
      }
    }
  });
});
