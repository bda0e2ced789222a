// What is published of whole runs, from memory of practice books rather than measurements: the train must come out near.

import { describe, expect, it } from 'vitest';
import { createEthanolWater, gaugeOffset, solve } from '#lib/index.js';
import { pot, trainProblem } from '../../../../support/train-problems.js';

const system = createEthanolWater();

describe('a stripping run', () => {
  // Malt whisky practice: wash of 8 % to low wines of 21 to 23 % in 35 to 40 % of its volume, stopped at 1 % at the spout
  // (Russell, ed., Whisky, 2003; distillery publications).
  const strip = (headLoss_W_K: number): { strength: number; share: number } => {
    const run = solve(
      trainProblem({
        still: pot([], { heatLoss_W_K: headLoss_W_K, metal_J_K: 100 }),
        charge: { kind: 'volume', volume_m3: 0.12, strength: 0.08 },
        sheet: [{ reflux: 'none', until: [{ kind: 'spoutStrengthBelow', strength: 0.01 }] }],
      }),
      system,
    );
    const { volume_m3, strength } = run.jars[0]!;
    return { strength, share: volume_m3 / 0.12 };
  };

  it('of 8 % wash gives low wines of 21 to 23 % in 35 to 40 % of its volume when the head condenses a little', () => {
    const { strength, share } = strip(6);
    expect(strength).toBeGreaterThan(0.21);
    expect(strength).toBeLessThan(0.23);
    expect(share).toBeGreaterThan(0.35);
    expect(share).toBeLessThan(0.4);
  });

  it('without any reflux gives 20.9 % in 38 %, as the quadrature does', () => {
    const { strength, share } = strip(0);
    expect(strength).toBeCloseTo(0.209, 2);
    expect(share).toBeCloseTo(0.381, 2);
  });
});

describe('rum by two distillations', () => {
  it('530 gallons of low wines of 20.8 % give 220 gallons of about proof, 50 % vol (Bryan Edwards, 1793)', () => {
    const charge_m3 = 0.12;
    const run = solve(
      trainProblem({
        still: pot([], { heatLoss_W_K: 4, metal_J_K: 4000 }),
        charge: { kind: 'volume', volume_m3: charge_m3, strength: 0.208 },
        sheet: [{ reflux: 'none', until: [{ kind: 'collectedVolume', volume_m3: (220 / 530) * charge_m3 }] }],
      }),
      system,
    );
    // Proof then was 50 to 57 % vol; nearly all alcohol has to come over for it.
    expect(run.jars[0]!.strength).toBeGreaterThan(0.475);
    expect(run.jars[0]!.strength).toBeLessThan(0.505);
  });
});

describe('a gauge in the kettle', () => {
  it('under twenty plates of 0.4 kPa reads about 2.2 K too high', () => {
    // Slope of water's boiling point near 101 kPa: 0.277 K/kPa (IAPWS), less at the higher end.
    expect(Math.abs(gaugeOffset(101325, 20 * 400) - 2.17)).toBeLessThan(0.05);
  });
});
