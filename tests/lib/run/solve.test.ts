// One door to every run, and its check without a run.

import { describe, expect, it } from 'vitest';
import { MODELS, problemFaults, type RunProblem, type SimplifiedProblem, solve } from '#lib/index.js';
import { columnProblem, system } from '../../support/column-problems.js';

const pot: SimplifiedProblem = {
  model: 'rayleigh',
  still: { kettle: { volume_m3: 0.15 } },
  charge: { kind: 'volume', volume_m3: 0.1, strength: 0.1 },
  activity: 'nrtl',
  heat: { kind: 'power', power_W: 4000 },
  sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }],
};

describe('solve', () => {
  it('runs a pot of which nothing but the volume of its kettle is known, by every model', () => {
    for (const model of MODELS) {
      const reflux = model === 'equalFlows' ? 'total' : 'none';
      const still: RunProblem['still'] = {
        kettle: { volume_m3: 0.15 },
        refluxCondenser: { kind: model === 'equalFlows' ? 'total' : 'none' },
      };
      const run = solve(
        { ...pot, model, still, sheet: [{ reflux, until: [{ kind: 'duration', seconds: 600 }] }] },
        system,
      );
      expect(run.ending.message).toBe('step 1 ended: 10 min had passed');
      expect(run.problem.still.kettle.power_W).toBe(6750);
    }
  });

  it('takes a model of one’s own wherever a name can stand', () => {
    const own = { ...system.model('nrtl'), name: 'my own' };
    expect(solve({ ...pot, activity: own }, system).time_s).toEqual(solve(pot, system).time_s);
  });

  it('tells the same whatever is asked of it first, and the same twice', () => {
    const one = solve(columnProblem(), system);
    const other = solve(columnProblem(), system);
    expect(one.plateVapour.at(-1)).toBe(other.plain().plateVapour.at(-1));
    expect(one.plain()).toEqual(other.plain());
  });

  it('shows every accepted step to whoever watches', () => {
    let steps = 0;
    const run = solve(columnProblem(), system, { observers: [{ step: () => steps++ }] });
    expect(steps).toBe(run.statistics.acceptedSteps);
  });

  it('reads rows off the course it took: asking for more of them changes no step', () => {
    const sparse = solve(columnProblem({ outputs: { kind: 'every', interval_s: 3600 } }), system);
    const fine = solve(columnProblem({ outputs: { kind: 'every', interval_s: 7 } }), system);
    expect(fine.statistics).toEqual(sparse.statistics);
    expect(fine.spoutMoleFraction.at(-1)).toBe(sparse.spoutMoleFraction.at(-1));
  });
});

describe('problemFaults', () => {
  it('is empty for what can be run', () => {
    expect(problemFaults(pot, system)).toEqual([]);
    expect(problemFaults(columnProblem(), system)).toEqual([]);
  });

  it('lists every fault of a kind, as solve would throw them', () => {
    const bad = columnProblem({}, { plates: 99, efficiency: 2 });
    expect(problemFaults(bad, system).map((fault) => fault.argument)).toEqual([
      'still.column.count',
      'still.column.efficiency',
    ]);
  });

  it.each([null, undefined, 5, 'wash'])('says of %o that it is no problem at all', (data) => {
    expect(problemFaults(data as unknown as RunProblem, system)[0]?.argument).toBe('problem');
  });

  it('names the parts that are missing', () => {
    const faults = problemFaults({ model: 'rayleigh' } as unknown as RunProblem, system);
    expect(faults.map((fault) => fault.argument)).toEqual(['still', 'charge', 'sheet']);
  });

  it.each([
    [{ doublers: [{}] }, 'still.doublers', 'doublers'],
    [{ refluxCondenser: { kind: 'partial' } }, 'still.refluxCondenser.kind', 'partial condenser'],
  ] as const)('refuses by name what a simplification does not know: %o', (part, argument, what) => {
    for (const model of ['equalFlows', 'rayleigh'] as const) {
      const faults = problemFaults({ ...pot, model, still: { ...pot.still, ...part } }, system);
      const fault = faults.find((one) => one.argument === argument);
      expect(fault?.expected).toContain(`the model '${model}' knows no ${what}`);
    }
  });
});
