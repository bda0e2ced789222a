// A packing under any load, down to hardly any vapour.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packingLoad } from '#lib/index.js';

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
});
