// What a bare head does: its heat loss sends liquid back. First runnings of a spirit still are published as 75 to 80 % vol from
// a charge of some 25 % (Russell, ed., Whisky: Technology, Production and Marketing, 2003, ch. 5 and 9: foreshots 75-80 %),
// where a pot without any reflux gives 73 %. The numbers here stand in docs/theory/train.md.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve, type EnergySolution } from '#lib/index.js';
import { pot, trainProblem, power } from '../../../../support/train-problems.js';

const system = createEthanolWater();

/** 100 L at 25 % vol in a pot that loses heat by its head only. */
function spiritRun(power_W: number, head: { heatLoss_W_K: number; metal_J_K: number }, cold: boolean): EnergySolution {
  const still = pot([], { film_m3: 1e-4, ...head });
  return solve(
    trainProblem({
      still: {
        ...still,
        kettle: { ...still.kettle, heatLoss_W_K: 0, metal_J_K: 0 },
        productCondenser: { ...still.productCondenser, holdUp: { kind: 'volume', volume_m3: 2e-5 } },
      },
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.25 },
      heat: power(power_W),
      start: cold ? 'cold' : 'firstVapour',
      sheet: [
        ...(cold ? [{ reflux: 'none' as const, until: [{ kind: 'firstVapour' as const }] }] : []),
        { reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 0.002 }] },
      ],
      jars: { kind: 'size', volume_m3: 1e-4 },
    }),
    system,
  );
}

/** Share of the kettle's vapour that the head condenses, at the end. */
function condensed(run: EnergySolution): number {
  const last = (run.rows - 1) * 2;
  return run.holderLiquidRate_mol_s[last + 1]! / run.holderVapourRate_mol_s[last]!;
}

describe('a head that is warm', () => {
  const tenthOfAPercent = 0.0015; // strengths in the document are printed to 0.1 % vol

  it.each([
    { power_W: 3000, heatLoss_W_K: 2.64, strength: 0.75, share: 0.058 },
    { power_W: 3000, heatLoss_W_K: 7.98, strength: 0.78, share: 0.171 },
    { power_W: 3000, heatLoss_W_K: 12.43, strength: 0.8, share: 0.263 },
    { power_W: 10_000, heatLoss_W_K: 8.78, strength: 0.75, share: 0.058 },
    { power_W: 10_000, heatLoss_W_K: 41.44, strength: 0.8, share: 0.263 },
  ])('gives $strength with $heatLoss_W_K W/K at $power_W W', ({ power_W, heatLoss_W_K, strength, share }) => {
    const run = spiritRun(power_W, { heatLoss_W_K, metal_J_K: 0 }, false);
    expect(Math.abs(run.jars[6]!.strength - strength)).toBeLessThan(tenthOfAPercent);
    expect(Math.abs(condensed(run) - share)).toBeLessThan(0.01);
  });

  it('without any loss gives the bare 73 % vol', () => {
    const run = spiritRun(3000, { heatLoss_W_K: 0, metal_J_K: 0 }, false);
    expect(Math.abs(run.jars[6]!.strength - 0.733)).toBeLessThan(tenthOfAPercent);
  });
});

describe('a head of cold metal', () => {
  it('lifts the first half litre far above what its loss alone does, and then no more', () => {
    const [light, heavy] = [1, 8000].map((metal_J_K) => spiritRun(3000, { heatLoss_W_K: 2.64, metal_J_K }, true));
    expect(heavy!.jars[0]!.strength).toBeGreaterThan(0.84);
    expect(light!.jars[0]!.strength).toBeLessThan(0.76);
    expect(Math.abs(heavy!.jars[12]!.strength - light!.jars[12]!.strength)).toBeLessThan(0.002);
  });
});
