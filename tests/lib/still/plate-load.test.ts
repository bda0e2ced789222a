// Plates under load, against values worked out by hand from the published fits.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diameterForHeat, heatAtFlooding, plateLoad, type PlateFlows, type PlatedSection } from '#lib/index.js';
import { floodCapacity } from '#lib/still/plate-load.js';
import { vapourDensity } from '#lib/still/fluids.js';
import { platedStill } from '../../support/train-problems.js';

const sieve = platedStill(1).column as PlatedSection;
/** The azeotrope's vapour at total reflux: what a worked example of the fit takes. */
const rich: PlateFlows = {
  vapour_mol_s: 0.13,
  liquid_mol_s: 0.13,
  vapourMoleFraction: 0.894,
  liquidMoleFraction: 0.894,
  temperature_K: 351.3,
  pressure_Pa: 101325,
};

describe('the capacity of plates', () => {
  // Lygeros & Magoulas 1986, as printed in Seider et al. 2017; evaluated by hand at F_LV = 0.05 and 0.02.
  it.each([
    [0.15, 0.05, 0.0423],
    [0.225, 0.05, 0.0536],
    [0.3, 0.05, 0.0641],
    [0.45, 0.05, 0.0833],
    [0.6, 0.05, 0.101],
    [0.15, 0.02, 0.0443],
    [0.6, 0.02, 0.1069],
  ])('at a spacing of %d m and a flow parameter of %d is %d m/s', (spacing_m, flowParameter, capacity) => {
    expect(floodCapacity(spacing_m, flowParameter)).toBeCloseTo(capacity, 4);
  });

  it('lets the azeotrope’s vapour rise at 0.92 m/s over the net area before plates 150 mm apart flood', () => {
    // By hand: C 0.0426, (17.5/20)^0.2 = 0.974, √(740/1.5) = 22.2. Density and tension here differ by a per cent or two.
    const { vapourSpeed_m_s, floodShare } = plateLoad(sieve, rich);
    expect(Math.abs(vapourSpeed_m_s / floodShare / 0.92 - 1)).toBeLessThan(0.03);
  });
});

describe('vapour densities', () => {
  // Ideal gas: water at 100 °C 0.588, the azeotrope at 78.1 °C 1.50 kg/m³.
  it.each([
    [0, 373.15, 0.588],
    [0.894, 351.3, 1.5],
  ])('of mole fraction %d at %d K is %d kg/m³', (y, temperature_K, density) => {
    expect(Math.abs(vapourDensity(y, temperature_K, 101325) / density - 1)).toBeLessThan(5e-3);
  });
});

describe('a plate', () => {
  it('of 25 mm weir at 8 m/s in the holes costs about 0.43 kPa', () => {
    // By hand: dry 12.4, weir 25, crest about 5, residual 16.9 mm of liquid: 59 mm, 0.43 kPa.
    const area_m2 = (Math.PI * sieve.diameter_m ** 2) / 4;
    const vapour_mol_s = (8 * 0.1 * area_m2 * 1.5) / 0.0431;
    const { drop_Pa } = plateLoad(
      { ...sieve, weirHeight_m: 0.025 },
      { ...rich, vapour_mol_s, liquid_mol_s: vapour_mol_s },
    );
    expect(Math.abs(drop_Pa / 430 - 1)).toBeLessThan(0.05);
  });

  const load = fc.record({
    diameter_m: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
    spacing_m: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    speed: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
    more: fc.double({ min: 1.05, max: 2, noNaN: true }),
  });

  it('driven harder is nearer to flooding, costs more pressure and carries more', () => {
    fc.assert(
      fc.property(load, ({ diameter_m, spacing_m, speed, more }) => {
        const plates = { ...sieve, diameter_m, spacing_m };
        const vapour_mol_s = (speed * Math.PI * diameter_m ** 2 * 34) / 4;
        const at = (by: number): ReturnType<typeof plateLoad> =>
          plateLoad(plates, { ...rich, vapour_mol_s: by * vapour_mol_s, liquid_mol_s: by * vapour_mol_s });
        const [one, other] = [at(1), at(more)];
        expect(other.floodShare).toBeGreaterThan(one.floodShare);
        expect(other.drop_Pa).toBeGreaterThan(one.drop_Pa);
        expect(other.weepShare!).toBeGreaterThan(one.weepShare!);
        expect(other.efficiencyFactor).toBeLessThanOrEqual(one.efficiencyFactor);
      }),
    );
  });

  it('floods later the farther the plates are apart, and is called extrapolated when it is small', () => {
    const shares = [0.1, 0.15, 0.3, 0.6].map((spacing_m) => plateLoad({ ...sieve, spacing_m }, rich).floodShare);
    expect([...shares].sort((a, b) => b - a)).toEqual(shares);
    expect(plateLoad(sieve, rich).extrapolated).toBe(true);
    expect(plateLoad({ ...sieve, diameter_m: 0.6, spacing_m: 0.3 }, rich).extrapolated).toBe(false);
  });

  it('sized for a heat stands that heat, and no more', () => {
    const { vapourMoleFraction, liquidMoleFraction, temperature_K, pressure_Pa } = rich;
    const passing = { vapourMoleFraction, liquidMoleFraction, temperature_K, pressure_Pa, returned: 0.75 };
    const diameter_m = diameterForHeat(sieve, passing, 5500, 0.7);
    expect(heatAtFlooding({ ...sieve, diameter_m }, passing, 0.7)).toBeCloseTo(5500, 3);
  });
});
