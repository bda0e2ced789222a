// Answers to a column problem that cannot be run: what, where, the value, what would be right.

import { describe, expect, it } from 'vitest';
import { InputError, solve } from '#lib/index.js';
import { type ColumnProblem, columnProblem, system } from '../../../../support/column-problems.js';

describe('a problem that cannot be run', () => {
  it.each([
    ['still.column.count is 2.5; expected a whole number', columnProblem({}, { plates: 2.5 })],
    ['still.column.count is NaN', columnProblem({}, { plates: NaN })],
    ['still.column.efficiency is 0;', columnProblem({}, { efficiency: 0 })],
    ['still.column.efficiency is 6.5;', columnProblem({}, { efficiency: 6.5 })],
    ['heat.power_W is 0;', columnProblem({ heat: { kind: 'power', power_W: 0 } })],
    ['charge.volume_m3 is -0.1;', columnProblem({ charge: { kind: 'volume', volume_m3: -0.1, strength: 0.1 } })],
    ['charge.strength is 1.01;', columnProblem({ charge: { kind: 'volume', volume_m3: 0.1, strength: 1.01 } })],
    ['charge.strength is 0;', columnProblem({ charge: { kind: 'volume', volume_m3: 0.1, strength: 0 } })],
    ['sheet is []; expected a list of at least 1: steps', columnProblem({ sheet: [] })],
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
    [
      'can be met at total reflux',
      columnProblem({ sheet: [{ reflux: 'total', until: [{ kind: 'alcoholLeftBelow', share: 0.5 }] }] }),
    ],
    [
      'still.column.holdUp is 300; expected plates and condenser that hold',
      columnProblem({}, { plateHoldUp_mol: 300 }),
    ],
    // 20 mol on plates and in the condenser.
    [
      'plates and condenser that hold less than half the charge (16.5 mol together, not 20.0)',
      columnProblem({ charge: { kind: 'amount', amount_mol: 33, moleFraction: 0.1 } }),
    ],
    ['still.refluxCondenser.holdUp is 5000;', columnProblem({}, { condenserHoldUp_mol: 5000 })],
    ['still.air.pressure_Pa is 19000; expected a pressure from 20000', columnProblem({}, { headPressure_Pa: 19e3 })],
    ['still.column.drop_Pa is 50000; expected a drop that leaves', columnProblem({}, { plateDrop_Pa: 50e3 })],
    [
      'below boiling water',
      columnProblem({ sheet: [{ reflux: 1, until: [{ kind: 'headTemperatureAbove', temperature_K: 373.5 }] }] }),
    ],
    ['tolerance is 1;', columnProblem({ tolerance: 1 })],
    ['at most 50000 rows', columnProblem({ outputs: { kind: 'every', interval_s: 0.001 } })],
  ])('is refused with "%s"', (message, problem) => {
    expect(() => solve(problem, system)).toThrow(InputError);
    expect(() => solve(problem, system)).toThrow(message);
  });

  it('is refused with all its faults at once', () => {
    const problem = columnProblem({}, { plates: -1, efficiency: 2, headPressure_Pa: -5 });
    try {
      solve(problem, system);
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).faults.map((fault) => fault.argument)).toEqual([
        'still.column.count',
        'still.column.efficiency',
        'still.air.pressure_Pa',
      ]);
    }
  });

  const without = (part: keyof ColumnProblem): ColumnProblem => ({ ...columnProblem(), [part]: undefined });
  const data = (change: unknown): ColumnProblem => ({ ...columnProblem(), ...(change as Partial<ColumnProblem>) });

  it.each([
    ['charge is undefined; expected a record', without('charge')],
    ['still is undefined; expected a record', without('still')],
    ['sheet is undefined; expected a list of at least 1: steps', without('sheet')],
    ["activity is 'margules'; expected one of raoult", data({ activity: 'margules' })],
    ["model is 'simple'; expected one of energy, equalHeats, equalFlows, rayleigh", data({ model: 'simple' })],
    ['tolerence is 0.1; expected no such field; known are still, charge', data({ tolerence: 0.1 })],
    [
      'sheet[0].power_W is 5; expected no such field',
      data({ sheet: [{ reflux: 1, power_W: 5, until: [{ kind: 'firstVapour' }] }] }),
    ],
    ["heat.kind is 'coal'; expected one of power, boilUp", data({ heat: { kind: 'coal' } })],
    ["outputs.kind is 'often';", data({ outputs: { kind: 'often' } })],
    ["start is 'cold';", data({ start: 'cold' })],
    ['sheet[0] is null; expected a record', data({ sheet: [null] })],
    ['sheet[0].until is undefined; expected a list', data({ sheet: [{ reflux: 1 }] })],
    ["sheet[0].until[0].kind is 'moon';", data({ sheet: [{ reflux: 1, until: [{ kind: 'moon' }] }] })],
    ["charge.volume_m3 is '0.1';", data({ charge: { kind: 'volume', volume_m3: '0.1', strength: 0.1 } })],
    ['outputs.points is 2.7;', data({ outputs: { kind: 'perStep', points: 2.7 } })],
    ['problem is null; expected a record', null as unknown as ColumnProblem],
  ])('is refused as data of the wrong shape with "%s"', (message, problem) => {
    expect(() => solve(problem, system)).toThrow(InputError);
    expect(() => solve(problem, system)).toThrow(message);
  });
});
