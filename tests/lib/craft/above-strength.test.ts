// What of a run stands above a strength.

import { describe, expect, it } from 'vitest';
import { aboveStrength, InputError, type RunSolution, solve } from '#lib/index.js';
import { columnProblem, system } from '../../support/column-problems.js';

const interpolation = 2e-3; // rows two minutes apart, linear between them

describe('aboveStrength', () => {
  it('is all that was collected at strength 0', () => {
    const run = solve(columnProblem(), system);
    const above = aboveStrength(run, 0);
    expect(above.volume_m3).toBeCloseTo(run.collectedVolume_m3.at(-1)!, 12);
    expect(above.pureAlcohol_m3).toBeCloseTo(run.pureAlcoholCollected_m3.at(-1)!, 12);
    expect(above.duration_s).toBeCloseTo(run.time_s.at(-1)! - 600, 6);
  });

  it('is what a run that stops at the strength collects', () => {
    const at = (strength: number): RunSolution =>
      solve(
        columnProblem({
          sheet: [columnProblem().sheet[0]!, { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength }] }],
        }),
        system,
      );
    const stopped = at(0.8);
    const above = aboveStrength(at(0.5), 0.8);
    expect(Math.abs(above.volume_m3 / stopped.collectedVolume_m3.at(-1)! - 1)).toBeLessThan(interpolation);
    expect(Math.abs(above.pureAlcohol_m3 / stopped.pureAlcoholCollected_m3.at(-1)! - 1)).toBeLessThan(interpolation);
  });

  it('counts of a stretch the part above, while the spout rises as while it falls', () => {
    // From 0.5 to 0.9 and back to 0.5: of both stretches the quarter above 0.8.
    const columns = {
      spoutStrength: [0.5, 0.9, 0.5],
      collectedVolume_m3: [0, 0.004, 0.012],
      pureAlcoholCollected_m3: [0, 0.003, 0.008],
      pureAlcoholLeft_m3: [0.02, 0.017, 0.012],
      time_s: [0, 100, 300],
    };
    const run = {
      rows: 3,
      ...Object.fromEntries(Object.entries(columns).map(([name, values]) => [name, Float64Array.from(values)])),
    } as unknown as RunSolution;
    const above = aboveStrength(run, 0.8);
    expect(above.volume_m3).toBeCloseTo(0.25 * 0.012, 12);
    expect(above.pureAlcohol_m3).toBeCloseTo(0.25 * 0.008, 12);
    expect(above.duration_s).toBeCloseTo(0.25 * 300, 9);
    expect(above.shareOfCharge).toBeCloseTo((0.25 * 0.008) / 0.02, 12);
  });

  it('is nothing above what a bare pot reaches', () => {
    const pot = solve(
      {
        model: 'rayleigh',
        still: { kettle: { volume_m3: 0.15 } },
        charge: { kind: 'volume', volume_m3: 0.1, strength: 0.1 },
        activity: 'raoult',
        heat: { kind: 'power', power_W: 4000 },
        sheet: [{ reflux: 'none', until: [{ kind: 'alcoholLeftBelow', share: 0.1 }] }],
      },
      system,
    );
    expect(aboveStrength(pot, 0.9)).toEqual({ volume_m3: 0, pureAlcohol_m3: 0, shareOfCharge: 0, duration_s: 0 });
  });

  it('refuses a strength that is none', () => {
    expect(() => aboveStrength(solve(columnProblem(), system), 1.2)).toThrow(InputError);
  });
});
