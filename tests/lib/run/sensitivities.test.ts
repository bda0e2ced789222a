import { describe, expect, it } from 'vitest';
import { type RunProblem, sensitivities, solve } from '#lib/index.js';
import { system } from '../../support/column-problems.js';
import { trainProblem } from '../../support/train-problems.js';

const pot: RunProblem = {
  still: { kettle: { volume_m3: 0.03 } },
  charge: { kind: 'volume', volume_m3: 0.02, strength: 0.1 },
  sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.2 }] }],
};

describe('sensitivities of a run', () => {
  it('leave the run as it is, to the last bit', () => {
    for (const problem of [pot, trainProblem({ start: 'cold' }), { ...pot, model: 'rayleigh' } as RunProblem]) {
      const { run } = sensitivities(problem, ['charge.strength'], system);
      const alone = solve(problem, system);
      expect(run.statistics).toEqual(alone.statistics);
      expect(run.spoutStrength).toEqual(alone.spoutStrength);
    }
  });

  it('know what follows from a definition: a step longer by a second ends a second later, heat times time is heat', () => {
    const problem = trainProblem({ sheet: [{ reflux: 'total', until: [{ kind: 'duration', seconds: 900 }] }] });
    const found = sensitivities(problem, ['sheet[0].until[0].seconds', 'heat.power_W'], system);
    const { by } = found.of((run) => ({
      end_s: run.time_s.at(-1)!,
      supplied_J: (run as unknown as { supplied_J: Float64Array }).supplied_J.at(-1)!,
    }));
    expect(by['sheet[0].until[0].seconds']!.end_s).toBeCloseTo(1, 7);
    expect(by['sheet[0].until[0].seconds']!.supplied_J / 5500).toBeCloseTo(1, 7);
    expect(by['heat.power_W']!.end_s).toBeCloseTo(0, 9);
    expect(by['heat.power_W']!.supplied_J).toBeCloseTo(900, 4);
  });

  it('add up: all alcohol filled in is somewhere', () => {
    const found = sensitivities(pot, ['charge.strength', 'heat.power_W', 'still.kettle.heatLoss_W_K'], system);
    const { value, by } = found.of((run) => run.pureAlcoholCollected_m3.at(-1)! + run.pureAlcoholLeft_m3.at(-1)!);
    expect(by['charge.strength']! / (value / 0.1)).toBeCloseTo(1, 3);
    expect(by['heat.power_W']! * 1350).toBeCloseTo(0, 9);
    expect(by['still.kettle.heatLoss_W_K']!).toBeCloseTo(0, 9);
  });

  it('read lists, columns and records', () => {
    const found = sensitivities(pot, ['charge.strength'], system);
    const { by } = found.of((run) => ({ ending: run.ending.kind, list: [run.time_s.at(-1)!], column: run.time_s }));
    const slopes = by['charge.strength']!;
    expect(slopes.ending).toBe(null);
    expect(slopes.list[0]).toBe(slopes.column.at(-1));
  });

  it('take a number the problem leaves out at the value the library gives it', () => {
    const { by } = sensitivities(pot, ['still.air.pressure_Pa'], system).of((run) => run.kettleTemperature_K.at(-1)!);
    expect(by['still.air.pressure_Pa']! * 101325).toBeGreaterThan(20);
  });

  it.each([
    ['charge.strenght', "to is 'charge.strenght'; expected the path of a number of the problem"],
    ['still.column.count', 'that may be any number'],
    ['tolerance', 'that may be any number'],
    ['sheet[0].reflux', "to is 'sheet[0].reflux'; expected the path of a number"],
    ['activity.parameters[99]', "'activity.parameters[k]' with k from 0 to"],
    ['sheet[7].reflux', 'expected the path of a number'],
  ])('refuse %s with the reason', (path, reason) => {
    expect(() => sensitivities(pot, [path], system)).toThrow(reason);
  });

  it('refuse a number at which a part of the still appears', () => {
    const still = { ...pot.still, head: { heatLoss_W_K: 0, metal_J_K: 0 } };
    expect(() => sensitivities({ ...pot, still }, ['still.head.heatLoss_W_K'], system)).toThrow(
      'expected a number beside which the still is built alike',
    );
  });
});
