// What can be read off a run: any moment of it, its steps, its account of energy, its rows as records and as text.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createEthanolWater,
  type EnergySolution,
  energyAccount,
  InputError,
  rowRecords,
  rowsAsCsv,
  runAt,
  type RunSolution,
  SERIES,
  solve,
  stepSummaries,
} from '#lib/index.js';
import { columnProblem } from '../../../support/column-problems.js';
import { doubler, pot, power, trainProblem } from '../../../support/train-problems.js';

const system = createEthanolWater();
const runs: Readonly<Record<string, RunSolution>> = {
  'a column with its energy': solve(trainProblem({ start: 'cold' }), system),
  'a pot with a doubler': solve(
    trainProblem({
      still: pot([doubler], { heatLoss_W_K: 3, metal_J_K: 2000 }),
      doublerCharges: [{ charge: { kind: 'volume', volume_m3: 0.008, strength: 0.3 } }],
      sheet: [{ reflux: 'none', until: [{ kind: 'duration', seconds: 9000 }] }],
      start: 'cold',
    }),
    system,
  ),
  'a column at constant flows': solve(columnProblem(), system),
  'a pot by quadrature': solve(
    {
      model: 'rayleigh',
      still: { kettle: { volume_m3: 0.15 } },
      charge: { kind: 'volume', volume_m3: 0.1, strength: 0.1 },
      heat: power(4000),
      sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }],
    },
    system,
  ),
};

describe.each(Object.entries(runs))('%s', (_name, run) => {
  it('at the moment of a row is that row', () => {
    const roundOff = 1e-9;
    for (let row = 0; row < run.rows; row += 7) {
      if (run.stepStarts.includes(row + 1)) continue;
      const at = runAt(run, run.time_s[row]!);
      expect(Math.abs(at.spoutStrength - run.spoutStrength[row]!)).toBeLessThan(roundOff);
      expect(Math.abs(at.kettleTemperature_K - run.kettleTemperature_K[row]!)).toBeLessThan(1e-6);
      expect(Math.abs(at.collectedVolume_m3 - run.collectedVolume_m3[row]!)).toBeLessThan(roundOff);
      at.vessels.forEach((vessel, j) => {
        const there = row * run.holders.length + j;
        expect(Math.abs(vessel.liquidMoleFraction - run.holderLiquid[there]!)).toBeLessThan(roundOff);
        expect(Math.abs(vessel.amount_mol / run.holderAmount_mol[there]! - 1)).toBeLessThan(1e-6);
      });
    }
  });

  it('between two rows collects no less than at the first and no more than at the second', () => {
    const last_s = run.time_s.at(-1)!;
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const time_s = share * last_s;
        const after = run.time_s.findIndex((time) => time >= time_s);
        const at = runAt(run, time_s);
        const [low, high] = [Math.max(0, after - 1), after].map((row) => run.collectedVolume_m3[row]!);
        expect(at.collectedVolume_m3).toBeGreaterThanOrEqual(low! - 1e-12);
        expect(at.collectedVolume_m3).toBeLessThanOrEqual(high! + 1e-12);
      }),
      { numRuns: 50 },
    );
  });

  it('has no moment before its beginning or after its end, and none in a plain copy', () => {
    expect(() => runAt(run, -1)).toThrow(InputError);
    expect(() => runAt(run, run.time_s.at(-1)! + 1)).toThrow(/a moment of the run/u);
    expect(() => runAt(run.plain() as RunSolution, 0)).toThrow(/a plain copy has rows only/u);
  });

  it('is the sum of its steps', () => {
    const steps = stepSummaries(run);
    expect(steps).toHaveLength(run.stepStarts.length);
    const volume_m3 = steps.reduce((sum, step) => sum + step.volume_m3, 0);
    expect(volume_m3).toBeCloseTo(run.collectedVolume_m3.at(-1)!, 12);
    expect(steps.at(-1)!.to_s).toBe(run.time_s.at(-1));
    expect(stepSummaries(run.plain())).toEqual(steps);
  });

  it('is told in records and in lines of text that read back to the same numbers', () => {
    const records = rowRecords(run);
    expect(records).toHaveLength(run.rows);
    const [header, ...lines] = rowsAsCsv(run, ['time_s', 'spoutStrength']).trimEnd().split('\r\n');
    expect(header).toBe('time_s,spoutStrength');
    lines.forEach((line, row) => {
      expect(line.split(',').map(Number)).toEqual([run.time_s[row], run.spoutStrength[row]]);
    });
    expect(() => rowRecords(run, ['holderLiquid' as (typeof SERIES)[number]])).toThrow(/time_s, kettleAmount_mol/u);
  });
});

describe('the account of energy', () => {
  it.each(['a column with its energy', 'a pot with a doubler'])(
    'of %s closes, with nothing found by difference',
    (name) => {
      const run = runs[name] as EnergySolution;
      const account = energyAccount(run);
      // Ten times the solver's tolerance of 1e-5 (design, section 5).
      expect(Math.abs(account.gap_J)).toBeLessThan(1e-4 * account.supplied_J);
      expect(account.lost_J).toBeGreaterThan(0.01 * account.supplied_J);
      expect(account.supplied_J).toBeCloseTo(5500 * run.time_s.at(-1)!, 3);
    },
  );

  it('is refused where there is none', () => {
    const run = runs['a column at constant flows'] as EnergySolution;
    expect(() => energyAccount(run)).toThrow(/keep no account of energy/u);
  });
});
