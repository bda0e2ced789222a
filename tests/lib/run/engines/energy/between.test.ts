// Rows between the ends of the solver's steps: no plate is colder than the air it began in, or holds less than nothing, where vapour reaches it.

import { describe, expect, it } from 'vitest';
import { completeStill, createEthanolWater, solve, type EnergySolution } from '#lib/index.js';

const system = createEthanolWater();
const air = { pressure_Pa: 101_325, temperature_K: 274 };
const bare = { heatLoss_W_K: 0, metal_J_K: 0 };

/** Plates without metal, which vapour heats within moments. Invented. */
function heatedUp(volume_L: number, tolerance: number): EnergySolution {
  const still = completeStill({
    kettle: { volume_m3: 0.044, power_W: 2000 },
    column: { kind: 'plates', count: 8, plateKind: 'valve', efficiency: 0.8, ...bare },
    head: bare,
    air,
  });
  return solve(
    {
      still,
      charge: { kind: 'volume', volume_m3: volume_L / 1000, strength: 0.96 },
      doublerCharges: [],
      activity: 'raoult',
      heat: { kind: 'power', power_W: 2000 },
      sheet: [{ reflux: 'none', until: [{ kind: 'firstVapour' }] }],
      outputs: { kind: 'perStep', points: 4 },
      start: 'cold',
      tolerance,
    },
    system,
  );
}

describe('rows between the ends of steps', () => {
  it.each([1e-5, 1e-4])(
    'know no plate colder than the air, nor an amount below nothing, at a tolerance of %s',
    (tolerance) => {
      for (const volume_L of [7, 8, 9, 10, 11]) {
        const run = heatedUp(volume_L, tolerance);
        expect(Math.min(...run.holderTemperature_K)).toBeGreaterThan(air.temperature_K - 0.5);
        expect(Math.min(...run.holderAmount_mol)).toBeGreaterThan(0);
      }
    },
  );

  it('keep what the still holds in every row', () => {
    const run = heatedUp(9, 1e-5);
    const width = run.holders.length;
    const held = (row: number): number => {
      const inHolders = run.holderAmount_mol.subarray(row * width, (row + 1) * width);
      const collected = run.collectedEthanol_mol[row]! + run.collectedWater_mol[row]!;
      return inHolders.reduce((sum, amount) => sum + amount, run.drumAmount_mol[row]! + collected);
    };
    for (let row = 1; row < run.rows; row++) expect(held(row) / held(0)).toBeCloseTo(1, 9);
  });
});
