// A partial condenser: what its water takes out by how warm it is, and how far a set duty cools it.

import { describe, expect, it } from 'vitest';
import { bubblePoint, activityModel, condenserCapacity, createEthanolWater, solve, type Still } from '#lib/index.js';
import { platedStill, power, trainProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

const under = (coolant: Extract<Still['refluxCondenser'], { kind: 'partial' }>['coolant']): Still => ({
  ...platedStill(8),
  refluxCondenser: { kind: 'partial', holdUp: { kind: 'volume', volume_m3: 5e-5 }, coolant },
});

describe('a partial condenser cooled by water', () => {
  const water = { kind: 'water', flow_kg_s: 0.02, inlet_K: 288.15, transfer_W_K: 60 } as const;
  const run = solve(
    trainProblem({ still: under(water), sheet: [{ reflux: 'asSet', until: [{ kind: 'duration', seconds: 5400 }] }] }),
    system,
  );
  const top = run.holders.length - 1;

  it('takes out what the difference to its water’s inlet drives, and lets the rest over', () => {
    expect(run.holders[top]!.kind).toBe('partialCondenser');
    for (let row = 10; row < run.rows; row += 10) {
      const condenses_K = run.holderTemperature_K[row * run.holders.length + top]!;
      const duty_W = condenserCapacity(water.flow_kg_s, water.transfer_W_K, water.inlet_K, condenses_K);
      expect(run.refluxDuty_W[row]! / duty_W).toBeCloseTo(1, 9);
      // Heat in is heat out while little changes: within a share for what still warms up.
      const out_W = run.refluxDuty_W[row]! + run.condenserDuty_W[row]! + run.lost_W[row]!;
      expect(Math.abs(out_W / run.power_W[row]! - 1)).toBeLessThan(0.1);
    }
    expect(run.collectedVolume_m3.at(-1)!).toBeGreaterThan(8e-3);
  });
});

describe('a partial condenser of set duty', () => {
  it('is cooled no further than 25 K below its boiling point when the heat is cut', () => {
    const slack_K = 0.5; // what little still runs on cools it a hair more
    const run = solve(
      trainProblem({
        still: under({ kind: 'duty', power_W: 3600 }),
        sheet: [
          { reflux: 'asSet', until: [{ kind: 'duration', seconds: 1800 }] },
          { reflux: 'asSet', heat: power(0), until: [{ kind: 'duration', seconds: 7200 }] },
        ],
      }),
      system,
    );
    const at = run.rows * run.holders.length - 1;
    const model = activityModel('redlich-kister');
    const boils_K = bubblePoint(run.holderLiquid[at]!, run.holders.at(-1)!.pressure_Pa, model).temperature_K;
    const below_K = boils_K - run.holderTemperature_K[at]!;
    expect(below_K).toBeGreaterThan(5);
    expect(below_K).toBeLessThan(25 + slack_K);
  });
});
