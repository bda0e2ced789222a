// The spout along time.

import { expect, it } from 'vitest';
import { spoutAlongTime } from '../../../explorer/state/spout.js';

it('the spout’s curve begins a minute after the first vapour, between the rows that lie about it', () => {
  const run = {
    time_s: Float64Array.of(0, 100, 200, 300),
    spoutStrength: Float64Array.of(0.1, 0.5, 0.9, 0.8),
    firstVapour_s: 90,
  };
  const { along, values } = spoutAlongTime(run);
  expect([...along]).toEqual([150, 200, 300]);
  [0.7, 0.9, 0.8].forEach((strength, place) => expect(values[place]).toBeCloseTo(strength, 12));
  expect(spoutAlongTime({ ...run, firstVapour_s: null }).along).toHaveLength(0);
  expect(spoutAlongTime({ ...run, firstVapour_s: 290 }).along).toHaveLength(0);
});
