// Jars: what a jar says of where it begins is read at its first drop, and it says that it is full when it is.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, solve } from '#lib/index.js';
import { pot, trainProblem } from '../../support/train-problems.js';

const system = createEthanolWater();

describe('a jar', () => {
  it('under a still lit from cold begins with its first drop: hot head, and the spirit that runs', () => {
    const drop = 0.01; // strength; the first row after it is a few seconds later
    const run = solve(
      trainProblem({
        still: pot(),
        start: 'cold',
        jars: { kind: 'size', volume_m3: 5e-4 },
        sheet: [{ reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: 1.2e-3 }] }],
        outputs: { kind: 'every', interval_s: 5 },
      }),
      system,
    );
    const [first, second] = run.jars;
    const row = run.collectedVolume_m3.findIndex((volume_m3) => volume_m3 > 1e-6);
    expect(first!.from_s).toBe(0);
    expect(first!.headFrom_K).toBeGreaterThan(run.headTemperature_K[row]! - 1);
    expect(first!.headFrom_K).toBeGreaterThan(350);
    expect(first!.kettleFrom_K).toBeGreaterThan(360);
    expect(Math.abs(first!.spoutFrom - run.spoutStrength[row]!)).toBeLessThan(drop);
    // The next begins where this one ends.
    expect([second!.spoutFrom, second!.headFrom_K, second!.from_s]).toEqual([
      first!.spoutTo,
      first!.headTo_K,
      first!.to_s,
    ]);
  });

  it.each([
    { litres: 1.2, full: [true, true, false] },
    { litres: 1, full: [true, true] },
    { litres: 0.5, full: [true] },
    // Less than a drop (0.1 mL) short of it, and more.
    { litres: 0.49995, full: [true] },
    { litres: 0.4998, full: [false] },
    { litres: 0.4, full: [false] },
  ])('is full at half a litre to the drop, also where its step ends as it is: $litres L', ({ litres, full }) => {
    const run = solve(
      trainProblem({
        jars: { kind: 'size', volume_m3: 5e-4 },
        sheet: [
          { reflux: 'total', until: [{ kind: 'duration', seconds: 1200 }] },
          { reflux: 3, until: [{ kind: 'collectedVolume', volume_m3: litres * 1e-3 }] },
        ],
      }),
      system,
    );
    expect(run.jars.map((jar) => jar.full)).toEqual(full);
  });
});
