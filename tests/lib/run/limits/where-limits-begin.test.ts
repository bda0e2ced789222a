// Where limits begin: plates flood from 85 % of what plateLoad calls flooding (common practice: 80 to 85 %), and weep
// only while they work.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, limitsOf, plateLoad, solve, type Limit } from '#lib/index.js';
import { platedStill, power, trainProblem, type WholeProblem } from '../../../support/train-problems.js';

const system = createEthanolWater();

const limitOf = (kind: Limit['kind'], problem: WholeProblem): Limit | undefined =>
  limitsOf(solve(problem, system), system).find((limit) => limit.kind === kind);

/** The largest share of flooding on any plate at any time of a run. */
function largestFloodShare(problem: WholeProblem): number {
  const run = solve(problem, system);
  const { column } = problem.still;
  if (column.kind !== 'plates') throw new Error('plates');
  let most = 0;
  for (let at = 0; at < run.rows * run.holders.length; at += 1) {
    const holder = run.holders[at % run.holders.length]!;
    if (holder.kind !== 'plate') continue;
    const load = plateLoad(column, {
      vapour_mol_s: Math.max(0, run.holderVapourRate_mol_s[at]!),
      liquid_mol_s: Math.max(0, run.holderLiquidRate_mol_s[at]!),
      vapourMoleFraction: run.holderVapour[at]!,
      liquidMoleFraction: run.holderLiquid[at]!,
      temperature_K: run.holderTemperature_K[at]!,
      pressure_Pa: holder.pressure_Pa,
    });
    most = Math.max(most, load.floodShare);
  }
  return most;
}

describe('flooding', () => {
  const driven = (power_W: number): WholeProblem => {
    const still = platedStill(8);
    return trainProblem({ heat: power(power_W), still: { ...still, kettle: { ...still.kettle, power_W: 10_000 } } });
  };

  it('is told of from 85 % of it on, and not below', () => {
    const [below, above] = [driven(8300), driven(8600)];
    expect(largestFloodShare(below)).toBeGreaterThan(0.83);
    expect(largestFloodShare(below)).toBeLessThan(0.85);
    expect(limitOf('flooding', below)).toBeUndefined();
    expect(largestFloodShare(above)).toBeGreaterThan(0.85);
    expect(largestFloodShare(above)).toBeLessThan(0.88);
    expect(limitOf('flooding', above)!.worst).toBeCloseTo(largestFloodShare(above) / 0.85, 9);
  });
});

describe('weeping', () => {
  const cold = (openAreaShare: number): WholeProblem => {
    const still = platedStill(8);
    if (still.column.kind !== 'plates') throw new Error('plates');
    return trainProblem({
      still: { ...still, column: { ...still.column, openAreaShare } },
      start: 'cold',
      sheet: [
        { reflux: 'total', until: [{ kind: 'firstVapour' }] },
        { reflux: 'total', until: [{ kind: 'duration', seconds: 600 }] },
      ],
      outputs: { kind: 'every', interval_s: 10 },
    });
  };

  it('is not told of while the first vapour warms plates that hold their liquid once they work', () => {
    const problem = cold(0.02);
    const run = solve(problem, system);
    const rates = run.holderVapourRate_mol_s;
    // There is such vapour: less than a quarter of what the heat raises later.
    expect(rates.some((rate) => rate > 0 && rate < 0.25 * Math.max(...rates))).toBe(true);
    expect(limitOf('weeping', problem)).toBeUndefined();
  });

  it('is told of once plates work that do not', () => {
    expect(limitOf('weeping', cold(0.1))!.worst).toBeLessThan(0.7);
  });
});

describe('a condenser', () => {
  const cooled = (transfer_W_K: number): WholeProblem => {
    const still = platedStill(8);
    return trainProblem({ still: { ...still, productCondenser: { ...still.productCondenser, transfer_W_K } } });
  };

  it('is told to be too small from the vapour on that it cannot take, and not below', () => {
    const short = limitOf('condenserShort', cooled(88))!;
    expect(short.worst).toBeGreaterThan(1);
    expect(short.worst).toBeLessThan(1.2);
    expect(limitOf('condenserShort', cooled(110))).toBeUndefined();
  });
});

describe('the moments of a limit', () => {
  const problem = (interval_s: number): WholeProblem => {
    const still = platedStill(8);
    return trainProblem({
      still: { ...still, kettle: { ...still.kettle, heatingSurfaceHeight_m: 0.58 } },
      sheet: [
        { reflux: 3, until: [{ kind: 'duration', seconds: 4000 }] },
        { reflux: 3, heat: power(14_000), until: [{ kind: 'duration', seconds: 1000 }] },
        { reflux: 3, until: [{ kind: 'duration', seconds: 4000 }] },
      ],
      outputs: { kind: 'every', interval_s },
    });
  };
  const [coarse, fine] = [problem(700), problem(5)].map((one) => limitsOf(solve(one, system), system));

  it('do not hang on where rows happen to lie', () => {
    expect(coarse!.map(({ kind }) => kind)).toEqual(fine!.map(({ kind }) => kind));
    const [found, exact] = [coarse!, fine!].map((limits) => limits.find(({ kind }) => kind === 'kettleLow')!);
    expect(exact!.from_s % 700).toBeGreaterThan(100);
    expect(Math.abs(found!.from_s - exact!.from_s)).toBeLessThan(30);
  });

  it('are those of a step of the sheet that begins and ends them', () => {
    const short = coarse!.find(({ kind }) => kind === 'heaterShort')!;
    expect([short.from_s, short.to_s]).toEqual([4000, 5000]);
  });
});
