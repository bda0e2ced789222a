// A packing under any load, down to hardly any vapour.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packingLoad } from '#lib/index.js';
import { liquidDensity, molarMass, vapourDensity } from '#lib/still/fluids.js';

const packing = {
  kind: 'packing',
  height_m: 1,
  hetp_m: 0.25,
  diameter_m: 0.1,
  voidShare: 0.92,
  surface_m2_m3: 350,
  liquidShare: 0.06,
  heatLoss_W_K: 0,
  metal_J_K: 0,
  drop_Pa_m: 300,
} as const;
/** The azeotrope's vapour, with three quarters of it running down. */
const rich = { vapourMoleFraction: 0.894, liquidMoleFraction: 0.894, temperature_K: 351.3, pressure_Pa: 101325 };
const at = (vapour_mol_s: number): ReturnType<typeof packingLoad> =>
  packingLoad(packing, { ...rich, vapour_mol_s, liquid_mol_s: 0.75 * vapour_mol_s });
const passing = { vapourMoleFraction: 0.85, liquidMoleFraction: 0.84, temperature_K: 351.5, pressure_Pa: 101325 };

describe('a packing', () => {
  it('stands at some share of flooding whatever passes, also when next to no vapour meets what still runs down', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -320, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (power, liquid_mol_s) => {
          const { floodShare, drop_Pa_m } = packingLoad(packing, {
            ...passing,
            vapour_mol_s: 10 ** power,
            liquid_mol_s,
          });
          expect(floodShare).toBeGreaterThanOrEqual(0);
          expect(floodShare).toBeLessThan(Infinity);
          expect(drop_Pa_m).not.toBeNaN();
        },
      ),
    );
  });

  it('stands nearer to flooding the more vapour passes at the same reflux', () => {
    const share = (vapour_mol_s: number): number =>
      packingLoad(packing, { ...passing, vapour_mol_s, liquid_mol_s: 0.8 * vapour_mol_s }).floodShare;
    expect(share(0.2)).toBeCloseTo(2 * share(0.1), 6);
    expect(share(0)).toBe(0);
  });

  it('costs more pressure the harder it is driven, and at flooding what Kister and Gill found', () => {
    const drops = [0.05, 0.13, 0.2, 0.3].map((vapour) => at(vapour).drop_Pa_m);
    expect([...drops].sort((a, b) => a - b)).toEqual(drops);
    const flood = 0.3 / at(0.3).floodShare;
    // 0.115 F^0.7 inches of water a foot, at most two: F = 350/0.92³ per metre, 137 per foot, is beyond 60.
    expect(at(flood).drop_Pa_m / (2 * 249.089 * 3.28084)).toBeCloseTo(1, 6);
  });

  it('costs near flooding what the liquid in it adds to the drop of a dry packing', () => {
    // Robbins 1991, by hand: P = P_dry 10^(2.7e-5 L_f), Δp = P + 0.4 (L_f/20 000)^0.1 P⁴ in inches of water a foot, with
    // L_f = L (1000 kg/m³/ρ_L) (F/20)^½ in lb/(h ft²); one kg/(s m²) is 737.34 lb/(h ft²).
    const inch = 249.089 * 3.28084;
    const vapour_mol_s = 0.3 / at(0.3).floodShare;
    const liquid_mol_s = 0.75 * vapour_mol_s;
    const dry = packingLoad(packing, { ...rich, vapour_mol_s, liquid_mol_s: 0 }).drop_Pa_m / inch;
    const factor = 350 / 0.92 ** 3 / 3.28084;
    const liquid_kg_s_m2 = (liquid_mol_s * molarMass(0.894)) / ((Math.PI * 0.1 ** 2) / 4);
    const loading = 737.34 * liquid_kg_s_m2 * (1000 / liquidDensity(0.894, 351.3)) * Math.sqrt(factor / 20);
    const wetted = dry * 10 ** (2.7e-5 * loading);
    const held = 0.4 * (loading / 20_000) ** 0.1 * wetted ** 4;
    expect(held).toBeGreaterThan(0.1 * wetted);
    expect(at(vapour_mol_s).drop_Pa_m / inch).toBeCloseTo(wetted + held, 9);
  });

  it('floods at a vapour factor near 2 Pa^½, as rings of this surface do', () => {
    // Pall rings of 16 mm, some 340 m²/m³: 1.7 to 2.3 Pa^½ at little liquid; common practice, from memory.
    const { vapourSpeed_m_s, floodShare } = at(0.3);
    const vapourFactor = (vapourSpeed_m_s / floodShare) * Math.sqrt(vapourDensity(0.894, 351.3, 101325));
    expect(vapourFactor).toBeGreaterThan(1.6);
    expect(vapourFactor).toBeLessThan(2.4);
  });
});
