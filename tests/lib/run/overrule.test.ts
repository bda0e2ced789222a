// A run sheet overruled in the middle of its run.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, overruled, solve } from '#lib/index.js';
import { trainProblem, power } from '../../support/train-problems.js';

const system = createEthanolWater();

describe('a run sheet that is overruled', () => {
  const problem = trainProblem();
  const run = solve(problem, system);

  it('runs as before up to that moment, and otherwise from there on', () => {
    const alike = 1e-5; // two runs of the same stretch, each to the tolerance
    const sheet = overruled(problem.sheet, run, 3000, { reflux: 8 });
    expect(sheet).toHaveLength(3);
    const changed = solve({ ...problem, sheet }, system);
    for (let row = 0; run.time_s[row]! < 3000; row++) {
      expect(Math.abs(changed.spoutMoleFraction[row]! - run.spoutMoleFraction[row]!)).toBeLessThan(alike);
    }
    const after = run.time_s.findIndex((time) => time > 4500);
    expect(changed.spoutStrength[after]!).toBeGreaterThan(run.spoutStrength[after]! + 0.01);
    expect(changed.refluxRatio[after]).toBeCloseTo(8, 9);
  });

  it('ends when it would have ended by the clock', () => {
    const sheet = overruled(problem.sheet, run, 3000, { heat: power(4000) });
    expect(Math.abs(solve({ ...problem, sheet }, system).time_s.at(-1)! - run.time_s.at(-1)!)).toBeLessThan(1e-6);
  });

  it('changes a whole step when it is overruled as that begins', () => {
    const sheet = overruled(problem.sheet, run, 1200, { reflux: 5 });
    expect(sheet).toEqual([problem.sheet[0], { ...problem.sheet[1], reflux: 5 }]);
  });

  it('refuses a moment that is not in the run', () => {
    expect(() => overruled(problem.sheet, run, 1e6, { reflux: 5 })).toThrow('at_s is 1000000');
  });
});
