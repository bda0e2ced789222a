// What a step sets is drawn as a jump.

import { describe, expect, it } from 'vitest';
import { withJumps } from '../../../explorer/state/step-jumps.js';
import { valueAt } from '../../../explorer/figures/columns.js';

describe('a column of what the steps set', () => {
  const run = { time_s: [0, 100, 200, 300], stepStarts: [0, 2] };

  it('stays as it was until the step begins', () => {
    const { along, values } = withJumps(run, [0, 0, 5, 6]);
    expect(valueAt(along, values, 199.9)).toBe(0);
    expect(valueAt(along, values, 200)).toBe(5);
    expect(valueAt(along, values, 250)).toBe(5.5);
  });

  it('has times that rise, also where a step begins the moment the one before does', () => {
    const { along } = withJumps({ time_s: [0, 100, 100, 200], stepStarts: [0, 1, 2] }, [1, 2, 3, 4]);
    for (let i = 1; i < along.length; i++) expect(along[i]).toBeGreaterThan(along[i - 1]!);
  });

  it('has nothing of a step of no length: the value before it goes over into the one after', () => {
    const { values } = withJumps({ time_s: [0, 100, 100, 200], stepStarts: [0, 1, 2] }, [1, 99, 3, 3]);
    expect(Array.from(values)).toEqual([1, 1, 3, 3]);
  });
});
