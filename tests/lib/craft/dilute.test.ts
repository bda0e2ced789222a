import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blend,
  dilute,
  InputError,
  massFractionFromProof,
  reduceInSteps,
  strengthFromProof,
  type Spirit,
} from '#lib/index.js';

const jar = (litres: number, strength: number): Spirit => ({ volume_m3: litres / 1000, strength });
const share = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

describe('bringing down to a strength', () => {
  it('27 CFR 30.66: 100 gallons of 112 proof take 12.42 gallons of water to come down to 100 proof', () => {
    // Gallons at 60 °F there, litres at 20 °C here: 100 gallons are 100 (ρ60/ρ20) of mass each; 0.04 % between the two.
    const { water_m3, spirit } = dilute({ spirit: jar(100, strengthFromProof(112)), strength: strengthFromProof(100) });
    expect(Math.abs(1000 * water_m3 - 12.42)).toBeLessThan(0.06);
    // The regulation's own example: 112.42 gallons go in, 112.00 come out.
    expect(Math.abs(1000 * spirit.volume_m3 - 112.0)).toBeLessThan(0.06);
  });

  it('27 CFR 30.66: 100 gallons of 191 proof take 1.89 gallons of water to come down to 188 proof', () => {
    // 95.5/94.0 × 7.36 − 5.59 = 1.887; the print cuts 1.016 to 1.01 and has 1.84.
    const { water_m3 } = dilute({ spirit: jar(100, strengthFromProof(191)), strength: strengthFromProof(188) });
    expect(Math.abs(1000 * water_m3 - 1.887)).toBeLessThan(0.02);
  });

  it('27 CFR 30.64: 1000 lb of 200 proof take 82.03 lb of water to come down to 190 proof', () => {
    const { water_kg } = dilute({ spirit: jar(1000, 1), strength: strengthFromProof(190) });
    const mass_kg = 789.24; // 1000 L of ethanol at 20 °C, OIML R 22
    // A small difference of large numbers: the older density of ethanol makes 1e-4 of 1082 lb.
    expect(Math.abs((1000 * water_kg) / mass_kg - 82.03)).toBeLessThan(0.15);
    expect(massFractionFromProof(190)).toBeCloseTo(1000 / 1082.03, 3);
  });

  it('keeps the pure alcohol, and reaches the strength or the volume that is wanted', () => {
    fc.assert(
      fc.property(share(0.01, 1), share(0.01, 1), share(1, 1000), (one, other, litres) => {
        const spirit = jar(litres, Math.max(one, other));
        const strength = Math.min(one, other);
        const by_strength = dilute({ spirit, strength }).spirit;
        expect(Math.abs(by_strength.strength - strength)).toBeLessThan(1e-9);
        const volume_m3 = (spirit.volume_m3 * spirit.strength) / strength;
        expect(Math.abs(by_strength.volume_m3 / volume_m3 - 1)).toBeLessThan(1e-9);
        const by_volume = dilute({ spirit, volume_m3: Math.max(volume_m3, spirit.volume_m3) }).spirit;
        expect(Math.abs(by_volume.strength - strength)).toBeLessThan(1e-8);
      }),
    );
  });

  it('takes more water than the difference of the volumes', () => {
    fc.assert(
      fc.property(share(0.55, 1), share(0.3, 0.5), (strong, weak) => {
        const { water_m3, spirit, lost_m3 } = dilute({ spirit: jar(10, strong), strength: weak });
        expect(water_m3).toBeGreaterThan(spirit.volume_m3 - 0.01);
        expect(lost_m3).toBeGreaterThan(0);
      }),
    );
  });

  it('says how warm it becomes: strong spirit with water of the same warmth warms by some degrees', () => {
    const cold = dilute({ spirit: { ...jar(10, 0.96), temperature_K: 288.15 }, strength: 0.5, water_K: 288.15 });
    // 3.5 mol water joins: heat of mixing some 600 J/mol more at x = 0.24 than at 0.88 (nagamachi2006) over some 90 J/(mol K).
    expect(cold.warmed_K).toBeGreaterThan(4);
    expect(cold.warmed_K).toBeLessThan(9);
    expect(cold.spirit.temperature_K! - 288.15).toBeCloseTo(cold.warmed_K!, 9);
    expect(dilute({ spirit: jar(10, 0.96), strength: 0.5 }).warmed_K).toBeUndefined();
  });

  const spirit = jar(10, 0.6);
  it.each([
    ['a strength above the spirit’s', { spirit, strength: 0.7 }, 'dilution.strength is 0.7'],
    ['no strength at all', { spirit, strength: 0 }, 'dilution.strength is 0'],
    ['a volume below the spirit’s', { spirit, volume_m3: 0.005 }, 'dilution.volume_m3 is 0.005'],
    ['both', { spirit, strength: 0.4, volume_m3: 0.02 }, 'either the strength or the volume'],
    ['neither', { spirit }, 'either the strength or the volume'],
    ['NaN', { spirit, strength: NaN }, 'dilution.strength is NaN'],
    ['boiling water', { spirit, strength: 0.4, water_K: 373 }, 'dilution.water_K is 373'],
  ])('is refused with a reason: %s', (_name, dilution, says) => {
    expect(() => dilute(dilution)).toThrow(InputError);
    expect(() => dilute(dilution)).toThrow(says);
  });
});

describe('bringing down in steps', () => {
  it('ends where one step ends, with the same water in all', () => {
    fc.assert(
      fc.property(share(0.3, 1), share(0.05, 0.3), fc.integer({ min: 1, max: 12 }), (from, strength, steps) => {
        const spirit = jar(50, from);
        const portions = reduceInSteps({ spirit, strength, steps });
        const at_once = dilute({ spirit, strength });
        const water_kg = portions.reduce((sum, { water_kg: portion }) => sum + portion, 0);
        expect(portions).toHaveLength(steps);
        expect(Math.abs(water_kg - at_once.water_kg)).toBeLessThan(1e-8 * water_kg + 1e-9);
        expect(Math.abs(portions.at(-1)!.spirit.strength - strength)).toBeLessThan(1e-9);
      }),
    );
  });

  it('goes down by the same strength each time, each warmed from where it rested', () => {
    const portions = reduceInSteps({
      spirit: { ...jar(50, 0.64), temperature_K: 291.15 },
      strength: 0.4,
      steps: 4,
      water_K: 291.15,
    });
    expect(portions.map(({ spirit }) => Math.round(1000 * spirit.strength))).toEqual([580, 520, 460, 400]);
    for (const { warmed_K, spirit } of portions) expect(spirit.temperature_K).toBeCloseTo(291.15 + warmed_K!, 9);
  });

  it.each([0, 1.5, 101, NaN])('refuses %d steps', (steps) => {
    expect(() => reduceInSteps({ spirit: jar(1, 0.6), strength: 0.4, steps })).toThrow(InputError);
  });
});

describe('making a volume of a strength from two liquids', () => {
  it('comes to what was wanted', () => {
    fc.assert(
      fc.property(share(0.5, 1), share(0, 0.45), share(0, 1), share(0.1, 100), (strong, weak, part, litres) => {
        const strength = weak + part * (strong - weak);
        const wanted = {
          stronger: { strength: strong },
          weaker: { strength: weak },
          strength,
          volume_m3: litres / 1000,
        };
        const { mixed, stronger_m3, weaker_m3 } = blend(wanted);
        expect(Math.abs(mixed.spirit.strength - strength)).toBeLessThan(1e-8);
        expect(Math.abs((1000 * mixed.spirit.volume_m3) / litres - 1)).toBeLessThan(1e-8);
        expect(Math.min(stronger_m3, weaker_m3)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('agrees with bringing down where the weaker is water', () => {
    const { stronger_m3, weaker_m3 } = blend({
      stronger: { strength: 0.8 },
      weaker: { strength: 0 },
      strength: 0.43,
      volume_m3: 0.02,
    });
    const { water_m3 } = dilute({ spirit: { volume_m3: stronger_m3, strength: 0.8 }, strength: 0.43 });
    expect(stronger_m3).toBeCloseTo((0.02 * 0.43) / 0.8, 12);
    expect(weaker_m3).toBeCloseTo(water_m3, 12);
  });

  it.each([
    ['two alike', 0.4, 0.4, 0.4, 'wanted.stronger.strength'],
    ['the wrong way round', 0.2, 0.4, 0.3, 'wanted.stronger.strength'],
    ['a strength above both', 0.6, 0.2, 0.7, 'wanted.strength is 0.7'],
  ])('is refused with a reason: %s', (_name, strong, weak, strength, says) => {
    const wanted = { stronger: { strength: strong }, weaker: { strength: weak }, strength, volume_m3: 1 };
    expect(() => blend(wanted)).toThrow(says);
  });
});
