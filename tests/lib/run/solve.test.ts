// One door to every run, and its check without a run.

import { describe, expect, it } from 'vitest';
import { problemFaults, solve, solveColumn, solveSimple, type RunProblem, type SimpleProblem } from '#lib/index.js';
import { columnProblem, system } from '../../support/column-problems.js';

const pot: SimpleProblem = {
  kind: 'simple',
  charge: { kind: 'volume', volume_m3: 0.1, strength: 0.1 },
  pressure_Pa: 101325,
  activity: 'nrtl',
  heat: { kind: 'power', power_W: 4000 },
  until: [{ kind: 'alcoholLeftBelow', share: 0.1 }],
};

describe('solve', () => {
  it('is the solver that the kind of problem asks for', () => {
    expect(solve(pot, system).time_s).toEqual(solveSimple(pot, system).time_s);
    expect(solve(columnProblem(), system).time_s).toEqual(solveColumn(columnProblem(), system).time_s);
  });
});

describe('problemFaults', () => {
  it('is empty for what can be run', () => {
    expect(problemFaults(pot, system)).toEqual([]);
    expect(problemFaults(columnProblem(), system)).toEqual([]);
  });

  it('lists every fault, as solve would throw them', () => {
    const bad = columnProblem({ heat: { kind: 'power', power_W: -1 } }, { plates: 99 });
    expect(problemFaults(bad, system).map((fault) => fault.argument)).toEqual(['column.plates', 'heat.power_W']);
  });

  it.each([null, undefined, 5, 'wash', {}, { kind: 'moon' }])('says of %o that it is no problem at all', (data) => {
    expect(problemFaults(data as unknown as RunProblem, system)[0]?.argument).toBe('kind');
  });

  it('survives a bare pot without its parts', () => {
    const faults = problemFaults({ kind: 'simple' } as unknown as RunProblem, system);
    expect(faults.map((fault) => fault.argument)).toEqual(['charge', 'activity', 'heat', 'until']);
  });
});
