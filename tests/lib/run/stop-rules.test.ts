import { describe, expect, it } from 'vitest';
import {
  amountsFromVolume,
  chargeAmounts,
  createEthanolWater,
  InputError,
  moleFractionFromStrength,
  solve,
  volumeAt20C,
} from '#lib/index.js';
import type { StopRule } from '#lib/run/problem.js';
import { armsFirst, describeRule, type RunState, stopMargin, stopRuleFaults } from '#lib/run/stop-rules.js';
import { trainProblem } from '../../support/train-problems.js';

const charge = amountsFromVolume(0.12, 0.095);

const state: RunState = {
  time_s: 5000,
  stepTime_s: 600,
  kettleMoleFraction: moleFractionFromStrength(0.06),
  kettleTemperature_K: 368,
  spoutMoleFraction: moleFractionFromStrength(0.9),
  headTemperature_K: 352,
  collectedEthanol_mol: 50,
  collectedWater_mol: 10,
  ethanolLeft_mol: 0.25 * charge.ethanol_mol,
  chargeEthanol_mol: charge.ethanol_mol,
  vapourShare: 0.01,
  refluxRatio: 4,
};
const collected = volumeAt20C(50, 10);

const families: readonly { at: StopRule; before: StopRule; never: StopRule; arms: boolean }[] = [
  {
    at: { kind: 'duration', seconds: 600 },
    before: { kind: 'duration', seconds: 601 },
    never: { kind: 'duration', seconds: 0 },
    arms: false,
  },
  {
    at: { kind: 'collectedVolume', volume_m3: collected },
    before: { kind: 'collectedVolume', volume_m3: 1.01 * collected },
    never: { kind: 'collectedVolume', volume_m3: 0.121 },
    arms: false,
  },
  {
    at: { kind: 'spoutStrengthBelow', strength: 0.9 },
    before: { kind: 'spoutStrengthBelow', strength: 0.85 },
    never: { kind: 'spoutStrengthBelow', strength: -0.01 },
    arms: true,
  },
  {
    at: { kind: 'kettleStrengthBelow', strength: 0.06 },
    before: { kind: 'kettleStrengthBelow', strength: 0.05 },
    never: { kind: 'kettleStrengthBelow', strength: 1.01 },
    arms: false,
  },
  {
    at: { kind: 'kettleTemperatureAbove', temperature_K: 368 },
    before: { kind: 'kettleTemperatureAbove', temperature_K: 369 },
    never: { kind: 'kettleTemperatureAbove', temperature_K: 373.2 },
    arms: false,
  },
  {
    at: { kind: 'headTemperatureAbove', temperature_K: 352 },
    before: { kind: 'headTemperatureAbove', temperature_K: 353 },
    never: { kind: 'headTemperatureAbove', temperature_K: NaN },
    arms: true,
  },
  {
    at: { kind: 'alcoholLeftBelow', share: 0.25 },
    before: { kind: 'alcoholLeftBelow', share: 0.2 },
    never: { kind: 'alcoholLeftBelow', share: 1.2 },
    arms: false,
  },
  {
    at: { kind: 'refluxAbove', ratio: 4 },
    before: { kind: 'refluxAbove', ratio: 5 },
    never: { kind: 'refluxAbove', ratio: -1 },
    arms: false,
  },
];

describe.each(families)('$at.kind', ({ at, before, never, arms }) => {
  it('has a margin above zero before it is met and zero where it is met', () => {
    expect(stopMargin(before)(state)).toBeGreaterThan(0);
    expect(Math.abs(stopMargin(at)(state))).toBeLessThan(1e-12);
  });

  it('is accepted when it can be met, and refused with its place and reason when it never can', () => {
    expect(stopRuleFaults('until[0]', at, charge, 101325)).toEqual([]);
    const faults = stopRuleFaults('sheet[1].until[0]', never, charge, 101325);
    expect(faults).toHaveLength(1);
    expect(faults[0]!.argument).toMatch(/^sheet\[1\]\.until\[0\]\.\w+$/);
    expect(faults[0]!.expected).not.toBe('');
  });

  it('says in words what happened, and whether it waits for its first chance', () => {
    expect(describeRule(at)).toMatch(/^(the|\d)/);
    expect(armsFirst(at)).toBe(arms);
  });
});

describe('stop rules', () => {
  it('let heating up end when the first hundredth of the vapour is there', () => {
    const margin = stopMargin({ kind: 'firstVapour' });
    expect(margin({ ...state, vapourShare: 0 })).toBeGreaterThan(0);
    expect(margin(state)).toBe(0);
    expect(describeRule({ kind: 'firstVapour' })).toBe('the first vapour reached the condenser');
  });

  it('on the reflux ratio wait for vapour: before it nothing runs back, whatever the ratio is set to', () => {
    const margin = stopMargin({ kind: 'refluxAbove', ratio: 4 });
    expect(margin({ ...state, vapourShare: 0, refluxRatio: 10 })).toBeGreaterThan(0);
    expect(margin({ ...state, vapourShare: 1, refluxRatio: 10 })).toBeLessThan(0);
    const run = solve(
      trainProblem({
        start: 'cold',
        sheet: [{ reflux: 20, until: [{ kind: 'refluxAbove', ratio: 10 }] }],
      }),
      createEthanolWater(),
    );
    expect(run.ending.message).toBe('step 1 ended: the reflux ratio rose to 10');
    expect(run.time_s.at(-1)!).toBeGreaterThan(3600);
  });

  it('of an unknown kind are refused by name', () => {
    const unknown = { kind: 'whenReady' } as unknown as StopRule;
    expect(stopRuleFaults('until[0]', unknown, charge)[0]!.argument).toBe('until[0].kind');
  });
});

describe('chargeAmounts', () => {
  it('reads a volume with its strength and an amount with its mole fraction', () => {
    expect(chargeAmounts({ kind: 'volume', volume_m3: 0.12, strength: 0.095 })).toEqual(charge);
    expect(chargeAmounts({ kind: 'amount', amount_mol: 100, moleFraction: 0.18 })).toEqual({
      ethanol_mol: 18,
      water_mol: 82,
    });
    expect(chargeAmounts({ kind: 'volume', volume_m3: 1, strength: 0 }).ethanol_mol).toBe(0);
  });

  it.each([
    [{ kind: 'volume', volume_m3: 0, strength: 0.1 }, /charge.volume_m3 is 0; expected a volume above 0/],
    [{ kind: 'volume', volume_m3: NaN, strength: 0.1 }, /charge.volume_m3 is NaN/],
    [{ kind: 'volume', volume_m3: 1, strength: -0.1 }, /charge.strength is -0.1; expected a strength from 0 to 1/],
    [{ kind: 'volume', volume_m3: 1, strength: 1.01 }, /charge.strength is 1.01/],
    [{ kind: 'amount', amount_mol: -5, moleFraction: 0.1 }, /charge.amount_mol is -5/],
    [{ kind: 'amount', amount_mol: 5, moleFraction: 1.1 }, /charge.moleFraction is 1.1/],
  ] as const)('refuses %o', (bad, words) => {
    expect(() => chargeAmounts(bad)).toThrow(words);
    expect(() => chargeAmounts(bad)).toThrow(InputError);
  });
});
