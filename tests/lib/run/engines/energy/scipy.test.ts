// The train against scipy's Radau on separately written equations (reference/derived/train-scipy.py): holders exactly on
// the boiling line where they boil, a switch where they do not, properties written again. The train's own lag is made short for it.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve, type EnergyProblem, type EnergySolution } from '#lib/index.js';
import { platedStill, pot, trainProblem, power } from '../../../../support/train-problems.js';

interface Case {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly number[])[];
  readonly chosen: Readonly<Record<string, number>>;
}
const file = new URL('../../../../../reference/derived/train-scipy.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { cases: Readonly<Record<string, Case>> };
const system = createEthanolWater();

/** Largest difference between a column of the run and one of the reference, from a moment on. */
function worst(
  run: EnergySolution,
  reference: Case,
  name: string,
  value: (run: EnergySolution, row: number) => number,
  from_s: number,
  without_s: readonly number[] = [],
): number {
  const column = reference.columns.indexOf(name);
  let most = 0;
  for (const row of reference.rows) {
    const time_s = row[0]!;
    if (time_s < from_s || without_s.includes(time_s)) continue;
    const at = run.time_s.findIndex((time) => Math.abs(time - time_s) < 1e-6);
    expect(at).toBeGreaterThanOrEqual(0);
    most = Math.max(most, Math.abs(value(run, at) - row[column]!));
  }
  return most;
}

describe('eight plates with their energy', () => {
  const still = platedStill(8);
  const problem: EnergyProblem = trainProblem({ still, lags: { boil_s: 0.02, weir_s: 1 }, tolerance: 1e-6 });
  const run = solve(problem, system);
  const reference = cases['platedWithEnergyBalance']!;
  const width = run.holders.length;
  // The reference starts without the energy that raises vapour here: 20 ms of heat a holder, gone after minutes.
  const settled_s = 600;

  it.each([
    ['kettleMoleFraction', 2e-6, (one: EnergySolution, row: number) => one.kettleMoleFraction[row]!],
    ['kettle_K', 2e-3, (one: EnergySolution, row: number) => one.kettleTemperature_K[row]!],
    ['spoutMoleFraction', 1e-4, (one: EnergySolution, row: number) => one.spoutMoleFraction[row]!],
    ['head_K', 5e-3, (one: EnergySolution, row: number) => one.headTemperature_K[row]!],
    ['kettleVapour_mol_s', 2e-5, (one: EnergySolution, row: number) => one.holderVapourRate_mol_s[row * width]!],
    ['topVapour_mol_s', 2e-5, (one: EnergySolution, row: number) => one.holderVapourRate_mol_s[row * width + 8]!],
    ['collectedEthanol_mol', 0.02, (one: EnergySolution, row: number) => one.collectedEthanol_mol[row]!],
    ['collectedWater_mol', 0.02, (one: EnergySolution, row: number) => one.collectedWater_mol[row]!],
  ] as const)('agree in %s within %d', (name, tolerance, value) => {
    expect(worst(run, reference, name, value, settled_s, [1200])).toBeLessThan(tolerance);
  });

  it('collect the same spirit', () => {
    expect(run.jars.at(-1)!.volume_m3).toBeCloseTo(reference.chosen['collected_m3']!, 6);
    expect(run.jars.at(-1)!.strength).toBeCloseTo(reference.chosen['collectedStrength']!, 4);
  });
});

describe('a pot with a doubler that starts cold', () => {
  // The doubler's liquid lifts 1 kPa in the reference.
  const liftedBy = 1000 / 9.80665;
  const base = pot([
    { volume_m3: 0.02, diameter_m: 0.25, dipDepth_m: 0, heatLoss_W_K: 1.5, metal_J_K: 1500, overflow: 'back' },
  ]);
  const density = 965.5; // 30 % vol at 20 °C, OIML R 22
  const still = {
    ...base,
    kettle: { ...base.kettle, metal_J_K: 5000, heatLoss_W_K: 4 },
    doublers: [{ ...base.doublers[0]!, dipDepth_m: liftedBy / density }],
  };
  const run = solve(
    trainProblem({
      still,
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.08 },
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } }],
      heat: power(6000),
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 10_800 }] }],
      lags: { boil_s: 0.02, weir_s: 1 },
      tolerance: 1e-6,
    }),
    system,
  );
  const reference = cases['potAndDoubler']!;

  it('begins to boil it within half a second, about a step of the solver', () => {
    expect(Math.abs(run.firstVapour_s! - reference.chosen['boilingFrom_s']!)).toBeLessThan(0.5);
  });

  it.each([
    ['kettleMoleFraction', 2e-6, 0, (one: EnergySolution, row: number) => one.kettleMoleFraction[row]!],
    ['doublerMoleFraction', 5e-5, 0, (one: EnergySolution, row: number) => one.holderLiquid[2 * row + 1]!],
    ['doubler_mol', 0.05, 0, (one: EnergySolution, row: number) => one.holderAmount_mol[2 * row + 1]!],
    ['doubler_K', 0.05, 0, (one: EnergySolution, row: number) => one.holderTemperature_K[2 * row + 1]!],
    ['spoutMoleFraction', 1e-4, 600, (one: EnergySolution, row: number) => one.spoutMoleFraction[row]!],
    ['collectedEthanol_mol', 0.02, 0, (one: EnergySolution, row: number) => one.collectedEthanol_mol[row]!],
    ['collectedWater_mol', 0.02, 0, (one: EnergySolution, row: number) => one.collectedWater_mol[row]!],
  ] as const)('agrees in %s within %d from %d s on', (name, tolerance, from_s, value) => {
    expect(worst(run, reference, name, value, from_s)).toBeLessThan(tolerance);
  });
});
