// What a run comes to in numbers: the best strength is the best that runs from the spout.

import { describe, expect, it } from 'vitest';
import { type DrawnRun, runResults } from '../../../explorer/state/run-results.js';

describe('the results of a run', () => {
  it('count what stood at the spout before anything was drawn neither as its best nor as collected', () => {
    const columns = {
      spoutStrength: [0.96, 0.95, 0.9, 0.8],
      collectedVolume_m3: [0, 0, 0, 0.01],
      pureAlcoholCollected_m3: [0, 0, 0, 0.0085],
      pureAlcoholLeft_m3: [0.02, 0.02, 0.02, 0.0115],
      time_s: [0, 600, 1200, 3000],
    };
    const run = {
      rows: 4,
      stepStarts: [0, 2],
      ...Object.fromEntries(Object.entries(columns).map(([name, values]) => [name, Float64Array.from(values)])),
    } as unknown as DrawnRun;
    const results = runResults(run, 0.85);
    expect(results.best).toBe(0.9);
    expect(results.volumeAbove_m3).toBeCloseTo(0.005, 12);
    expect(results.shareCollected).toBeCloseTo(0.0085 / 0.02, 12);
    expect(runResults(run, 0.95).volumeAbove_m3).toBeNull();
  });
});
