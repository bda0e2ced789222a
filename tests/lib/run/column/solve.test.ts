// Steps of the run sheet, exact ends, rows, and answers to bad input.

import { describe, expect, it } from 'vitest';
import {
  InputError,
  moleFractionFromStrength,
  solveColumn,
  solveSimple,
  type RunStep,
  type StopRule,
  volumeAt20C,
} from '#lib/index.js';
import { columnProblem, system } from '../../../support/column-problems.js';

const eventError = 1e-6; // a rule is met to the solver's tolerance

function endOf(rule: StopRule, reflux: number | 'total' = 3): ReturnType<typeof solveColumn> {
  const hold: RunStep = { reflux: 'total', until: [{ kind: 'duration', seconds: 600 }] };
  return solveColumn(columnProblem({ sheet: [hold, { reflux, until: [rule] }] }), system);
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
      step: 1,
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
    const solution = solveColumn(columnProblem({ sheet }), system);
    expect(solution.time_s.at(-1)).toBeCloseTo(60, 9);
  });

  it('waits in the first step until the spout has once been above its rule', () => {
    const sheet: RunStep[] = [{ reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.7 }] }];
    const solution = solveColumn(columnProblem({ sheet }), system);
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
    const solution = solveColumn(columnProblem({ sheet }), system);
    expect(solution.ending).toMatchObject({ kind: 'stopped', step: 1 });
    expect(solution.stepStarts).toHaveLength(2);
  });

  it('does not turn power into strength: half the heat takes twice the time to the same place', () => {
    const sheet: RunStep[] = [{ reflux: 3, until: [{ kind: 'collectedVolume', volume_m3: 0.002 }] }];
    const slow = solveColumn(columnProblem({ sheet, heat: { kind: 'power', power_W: 1500 } }), system);
    const fast = solveColumn(columnProblem({ sheet, heat: { kind: 'power', power_W: 3000 } }), system);
    expect(slow.time_s.at(-1)! / fast.time_s.at(-1)!).toBeCloseTo(2, 9);
    expect(slow.spoutStrength.at(-1)).toBeCloseTo(fast.spoutStrength.at(-1)!, 9);
  });
});

describe('endings that are not success', () => {
  it('say that the kettle ran dry', () => {
    const almostAll: StopRule = { kind: 'collectedVolume', volume_m3: 0.999 * volumeAt20C(80, 1920) };
    const solution = solveColumn(columnProblem({ sheet: [{ reflux: 0, until: [almostAll] }] }), system);
    expect(solution.ending.kind).toBe('kettleDry');
  });

  it('say that a hold at total reflux settled without meeting its rule', () => {
    const sheet: RunStep[] = [{ reflux: 'total', until: [{ kind: 'kettleTemperatureAbove', temperature_K: 373 }] }];
    expect(solveColumn(columnProblem({ sheet }), system).ending.kind).toBe('neverMet');
  });
});

describe('no plates and no reflux', () => {
  it('is the simple still, but for the little that the condenser holds', () => {
    const charge = { kind: 'volume', volume_m3: 0.1, strength: 0.1 } as const;
    const until: StopRule[] = [{ kind: 'collectedVolume', volume_m3: 0.02 }];
    const heat = { kind: 'power', power_W: 4000 } as const;
    const column = solveColumn(
      columnProblem(
        { charge, heat, sheet: [{ reflux: 0, until }], tolerance: 1e-9 },
        { plates: 0, condenserHoldUp_mol: 1e-4 },
      ),
      system,
    );
    const simple = solveSimple({ kind: 'simple', charge, heat, pressure_Pa: 101325, activity: 'nrtl', until }, system);
    const heldShare = 1e-5; // 1e-4 mol in the condenser against some 10 mol in a litre
    const relative = (a: number, b: number): number => Math.abs(a / b - 1);
    expect(relative(column.time_s.at(-1)!, simple.time_s.at(-1)!)).toBeLessThan(heldShare);
    expect(relative(column.spoutStrength.at(-1)!, simple.spoutStrength.at(-1)!)).toBeLessThan(heldShare);
    expect(relative(column.pureAlcoholCollected_m3.at(-1)!, simple.pureAlcoholCollected_m3.at(-1)!)).toBeLessThan(
      heldShare,
    );
  });
});

describe('a problem that cannot be run', () => {
  it.each([
    ['column.plates is 2.5; expected a whole number from 0 to 60', columnProblem({}, { plates: 2.5 })],
    ['column.plates is NaN', columnProblem({}, { plates: NaN })],
    ['column.efficiency is 0;', columnProblem({}, { efficiency: 0 })],
    ['column.efficiency is 6.5;', columnProblem({}, { efficiency: 6.5 })],
    ['heat.power_W is 0;', columnProblem({ heat: { kind: 'power', power_W: 0 } })],
    ['charge.volume_m3 is -0.1;', columnProblem({ charge: { kind: 'volume', volume_m3: -0.1, strength: 0.1 } })],
    ['charge.strength is 1.01;', columnProblem({ charge: { kind: 'volume', volume_m3: 0.1, strength: 1.01 } })],
    ['charge.strength is 0;', columnProblem({ charge: { kind: 'volume', volume_m3: 0.1, strength: 0 } })],
    ['sheet is []; expected at least one step', columnProblem({ sheet: [] })],
    ['sheet[0].reflux is -1;', columnProblem({ sheet: [{ reflux: -1, until: [{ kind: 'duration', seconds: 1 }] }] })],
    ['sheet[0].until is []', columnProblem({ sheet: [{ reflux: 1, until: [] }] })],
    [
      'a volume above 0 and below the charge',
      columnProblem({ sheet: [{ reflux: 1, until: [{ kind: 'collectedVolume', volume_m3: 1 }] }] }),
    ],
    [
      'can be met at total reflux',
      columnProblem({ sheet: [{ reflux: 'total', until: [{ kind: 'collectedVolume', volume_m3: 0.001 }] }] }),
    ],
    ['plates and condenser that hold less than half', columnProblem({}, { plateHoldUp_mol: 300 })],
    ['tolerance is 1;', columnProblem({ tolerance: 1 })],
    ['at most 50000 rows', columnProblem({ outputs: { kind: 'every', interval_s: 0.001 } })],
  ])('is refused with "%s"', (message, problem) => {
    expect(() => solveColumn(problem, system)).toThrow(InputError);
    expect(() => solveColumn(problem, system)).toThrow(message);
  });

  it('is refused with all its faults at once', () => {
    const problem = columnProblem({ heat: { kind: 'power', power_W: -5 } }, { plates: -1, efficiency: 2 });
    try {
      solveColumn(problem, system);
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).faults.map((fault) => fault.argument)).toEqual([
        'column.plates',
        'column.efficiency',
        'heat.power_W',
      ]);
    }
  });
});
