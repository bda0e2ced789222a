// What a step sets is drawn as a jump.

import { describe, expect, it } from 'vitest';
import { withJumps } from '../../../explorer/state/step-jumps.js';
import { valueAt } from '../../../explorer/figures/columns.js';

describe('a column of what the steps set', () => {
  const run = { time_s: [0, 100, 200, 300], stepStarts: [0, 2] };

  it('stays as it was until the step begins', () => {
    const { time_s, values } = withJumps(run, [0, 0, 5, 6]);
    expect(valueAt(time_s, values, 199.9)).toBe(0);
    expect(valueAt(time_s, values, 200)).toBe(5);
    expect(valueAt(time_s, values, 250)).toBe(5.5);
  });

  it('has times that rise, also where a step begins the moment the one before does', () => {
    const { time_s } = withJumps({ time_s: [0, 100, 100, 200], stepStarts: [0, 1, 2] }, [1, 2, 3, 4]);
    for (let i = 1; i < time_s.length; i++) expect(time_s[i]).toBeGreaterThanOrEqual(time_s[i - 1]!);
  });
});
