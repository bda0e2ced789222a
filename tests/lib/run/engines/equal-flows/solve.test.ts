// Steps of the run sheet, exact ends, rows, and answers to bad input.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moleFractionFromStrength, type RunSolution, solve, type RunStep, type StopRule } from '#lib/index.js';
import { columnProblem, system } from '../../../../support/column-problems.js';

const eventError = 1e-6; // a rule is met to the solver's tolerance

function endOf(rule: StopRule, reflux: number | 'total' = 3): RunSolution {
  const hold: RunStep = { reflux: 'total', until: [{ kind: 'duration', seconds: 600 }] };
  return solve(columnProblem({ sheet: [hold, { reflux, until: [rule] }] }), system);
}

describe('a step of the run sheet', () => {
  it('ends exactly at a time', () => {
    const solution = endOf({ kind: 'duration', seconds: 1000 });
    expect(solution.time_s.at(-1)).toBeCloseTo(1600, 6);
  });

  it('ends exactly at a strength of the spout', () => {
    const solution = endOf({ kind: 'spoutStrengthBelow', strength: 0.6 });
    expect(Math.abs(solution.spoutMoleFraction.at(-1)! - moleFractionFromStrength(0.6))).toBeLessThan(eventError);
    expect(solution.ending).toMatchObject({
      kind: 'stopped',
      step: 2,
      message: 'step 2 ended: the spout fell to 60 % vol',
    });
  });

  it('ends exactly at a volume collected', () => {
    const solution = endOf({ kind: 'collectedVolume', volume_m3: 0.0025 });
    expect(Math.abs(solution.collectedVolume_m3.at(-1)! / 0.0025 - 1)).toBeLessThan(eventError);
  });

  it('ends exactly at a temperature of the kettle and of the head', () => {
    const kettle = endOf({ kind: 'kettleTemperatureAbove', temperature_K: 371.15 });
    expect(Math.abs(kettle.kettleTemperature_K.at(-1)! - 371.15)).toBeLessThan(1e-4);
    const head = endOf({ kind: 'headTemperatureAbove', temperature_K: 358.15 });
    expect(Math.abs(head.headTemperature_K.at(-1)! - 358.15)).toBeLessThan(1e-4);
  });

  it('ends exactly where a share of the alcohol is left', () => {
    const solution = endOf({ kind: 'alcoholLeftBelow', share: 0.5 });
    const left = solution.pureAlcoholLeft_m3;
    expect(Math.abs(left.at(-1)! / left[0]! - 0.5)).toBeLessThan(eventError);
  });

  it('takes whichever of its rules is met first', () => {
    const sheet: RunStep[] = [
      {
        reflux: 'total',
        until: [
          { kind: 'duration', seconds: 9999 },
          { kind: 'duration', seconds: 60 },
        ],
      },
    ];
    const solution = solve(columnProblem({ sheet }), system);
    expect(solution.time_s.at(-1)).toBeCloseTo(60, 9);
  });

  it('waits in the first step until the spout has once been above its rule', () => {
    const sheet: RunStep[] = [{ reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.7 }] }];
    const solution = solve(columnProblem({ sheet }), system);
    expect(solution.spoutStrength[0]).toBeLessThan(0.7);
    expect(Math.max(...solution.spoutStrength)).toBeGreaterThan(0.7);
    expect(solution.spoutStrength.at(-1)).toBeCloseTo(0.7, 5);
  });

  it('is passed over at once when a later step finds its rule already met', () => {
    const rule: StopRule = { kind: 'collectedVolume', volume_m3: 0.001 };
    const sheet: RunStep[] = [
      { reflux: 2, until: [rule] },
      { reflux: 5, until: [rule] },
    ];
    const solution = solve(columnProblem({ sheet }), system);
    expect(solution.ending).toMatchObject({ kind: 'stopped', step: 2 });
    expect(solution.stepStarts).toHaveLength(2);
  });

  it('does not turn power into strength: half the heat takes twice the time to the same place', () => {
    const sheet: RunStep[] = [{ reflux: 3, until: [{ kind: 'collectedVolume', volume_m3: 0.002 }] }];
    const slow = solve(columnProblem({ sheet, heat: { kind: 'power', power_W: 1500 } }), system);
    const fast = solve(columnProblem({ sheet, heat: { kind: 'power', power_W: 3000 } }), system);
    expect(slow.time_s.at(-1)! / fast.time_s.at(-1)!).toBeCloseTo(2, 9);
    expect(slow.spoutStrength.at(-1)).toBeCloseTo(fast.spoutStrength.at(-1)!, 9);
  });
});

describe('a rule that was just met', () => {
  const hold: RunStep = { reflux: 'total', until: [{ kind: 'duration', seconds: 900 }] };
  const rules = fc.oneof(
    fc
      .double({ min: 0.3, max: 0.89, noNaN: true })
      .map((strength): StopRule => ({ kind: 'spoutStrengthBelow', strength })),
    fc
      .double({ min: 353, max: 372, noNaN: true })
      .map((temperature_K): StopRule => ({ kind: 'headTemperatureAbove', temperature_K })),
    fc
      .double({ min: 0.0002, max: 0.006, noNaN: true })
      .map((volume_m3): StopRule => ({ kind: 'collectedVolume', volume_m3 })),
    fc
      .double({ min: 367, max: 372, noNaN: true })
      .map((temperature_K): StopRule => ({ kind: 'kettleTemperatureAbove', temperature_K })),
  );

  it('is met for the next step too, whatever the rule, its level and the tolerance', () => {
    fc.assert(
      fc.property(rules, fc.constantFrom(1e-4, 1e-6), (rule, tolerance) => {
        const sheet: RunStep[] = [hold, { reflux: 3, until: [rule] }, { reflux: 10, until: [rule] }];
        const solution = solve(columnProblem({ sheet, tolerance }), system);
        expect(solution.ending).toMatchObject({ kind: 'stopped', step: 3 });
        expect(solution.ending.message).toContain('ended at once');
        expect(solution.stepStarts[2]).toBe(solution.rows - 1);
      }),
      { numRuns: 60 },
    );
  });
});

describe('rows', () => {
  it('stand on the grid asked for and once at each end of a step', () => {
    const sheet: RunStep[] = [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
      { reflux: 3, until: [{ kind: 'duration', seconds: 1830 }] },
    ];
    for (const tolerance of [1e-4, 1e-6, 1e-9]) {
      const { time_s, rows } = solve(
        columnProblem({ sheet, tolerance, outputs: { kind: 'every', interval_s: 60 } }),
        system,
      );
      expect(rows).toBe(62);
      time_s.forEach((time, row) => expect(time).toBeCloseTo(row < 61 ? 60 * row : 3630, 5));
    }
  });

  it('show at the beginning of a step the rate of that step', () => {
    const { distillateRate_mol_s, stepStarts } = solve(columnProblem(), system);
    expect(distillateRate_mol_s[0]).toBe(0);
    expect(distillateRate_mol_s[stepStarts[1]!]).toBeGreaterThan(0.01);
  });

  it('begin with what the first vapour condenses to, or with the charge when asked', () => {
    const one = { plates: 1, efficiency: 1 };
    const vapour = solve(columnProblem({}, one), system);
    const charge = solve(columnProblem({ start: 'charge' }, one), system);
    // 8.3 % vol wash: its vapour condenses to some 50 % vol.
    expect(vapour.spoutStrength[0]).toBeGreaterThan(0.5);
    expect(charge.spoutMoleFraction[0]).toBe(0.04);
    expect(vapour.pureAlcoholLeft_m3[0]).toBeCloseTo(charge.pureAlcoholLeft_m3[0]!, 12);
  });
});

describe('endings that are not success', () => {
  it('say that the kettle ran dry', () => {
    const endless: StopRule = { kind: 'duration', seconds: 1e9 };
    const solution = solve(columnProblem({ sheet: [{ reflux: 0, until: [endless] }] }), system);
    expect(solution.ending.kind).toBe('kettleDry');
  });

  it('say that a hold at total reflux settled without meeting its rule', () => {
    const sheet: RunStep[] = [{ reflux: 'total', until: [{ kind: 'kettleTemperatureAbove', temperature_K: 373 }] }];
    expect(solve(columnProblem({ sheet }), system).ending.kind).toBe('neverMet');
  });
});

describe('a rule that is met from the start or never', () => {
  it('ends a pot without plates at once', () => {
    const sheet: RunStep[] = [{ reflux: 0, until: [{ kind: 'spoutStrengthBelow', strength: 0.9 }] }];
    const solution = solve(columnProblem({ sheet }, { plates: 0 }), system);
    expect(solution.rows).toBe(1);
    expect(solution.ending.message).toBe('step 1 ended at once: the spout was already at or below 90 % vol');
  });

  it('is waited for across steps while the plates fill', () => {
    const rule: StopRule = { kind: 'spoutStrengthBelow', strength: 0.8 };
    const sheet: RunStep[] = [
      { reflux: 'total', until: [{ kind: 'duration', seconds: 5 }] },
      { reflux: 3, until: [rule] },
    ];
    const solution = solve(columnProblem({ sheet }), system);
    expect(solution.ending.message).toBe('step 2 ended: the spout fell to 80 % vol');
    expect(Math.max(...solution.spoutStrength)).toBeGreaterThan(0.8);
  });

  it('is named when the run never came that far', () => {
    const sheet: RunStep[] = [{ reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.96 }] }];
    const { ending } = solve(columnProblem({ sheet }), system);
    expect(ending.kind).toBe('kettleDry');
    expect(ending.message).toContain('the spout never stood above 96 % vol');
  });

  it('is a clock that runs out however long the hold', () => {
    const sheet: RunStep[] = [{ reflux: 'total', until: [{ kind: 'duration', seconds: 3e6 }] }];
    const outputs = { kind: 'every', interval_s: 3e5 } as const;
    expect(solve(columnProblem({ sheet, outputs }), system).time_s.at(-1)).toBeCloseTo(3e6, 3);
  });
});

describe('no plates and no reflux', () => {
  it('is the simple still, but for the little that the condenser holds', () => {
    const charge = { kind: 'volume', volume_m3: 0.1, strength: 0.1 } as const;
    const until: StopRule[] = [{ kind: 'collectedVolume', volume_m3: 0.02 }];
    const heat = { kind: 'power', power_W: 4000 } as const;
    const column = solve(
      columnProblem(
        { charge, heat, sheet: [{ reflux: 0, until }], tolerance: 1e-9 },
        { plates: 0, condenserHoldUp_mol: 1e-4 },
      ),
      system,
    );
    const bare = { kettle: { volume_m3: 1 } };
    const simple = solve(
      { model: 'rayleigh', still: bare, charge, heat, activity: 'nrtl', sheet: [{ reflux: 'none', until }] },
      system,
    );
    const heldShare = 1e-5; // 1e-4 mol in the condenser against some 10 mol in a litre
    const relative = (a: number, b: number): number => Math.abs(a / b - 1);
    expect(relative(column.time_s.at(-1)!, simple.time_s.at(-1)!)).toBeLessThan(heldShare);
    expect(relative(column.spoutStrength.at(-1)!, simple.spoutStrength.at(-1)!)).toBeLessThan(heldShare);
    expect(relative(column.pureAlcoholCollected_m3.at(-1)!, simple.pureAlcoholCollected_m3.at(-1)!)).toBeLessThan(
      heldShare,
    );
  });
});
