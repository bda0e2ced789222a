import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  InputError,
  massesOf,
  mix,
  moleFractionFromStrength,
  strengthFromMoleFraction,
  type Spirit,
} from '#lib/index.js';
import { publishedTable } from '../../support/published-table.js';

const anySpirit: fc.Arbitrary<Spirit> = fc.record({
  volume_m3: fc.double({ min: 1e-4, max: 2, noNaN: true }),
  strength: fc.double({ min: 0, max: 1, noNaN: true }),
  temperature_K: fc.double({ min: 273.15, max: 313.15, noNaN: true }),
});

/** Molar masses, kg/mol, as in every handbook. */
const ethanol = 0.046068;
const water = 0.018015;

describe('spirits poured together', () => {
  it('keep their masses, their pure alcohol and what is dissolved in them', () => {
    fc.assert(
      fc.property(fc.array(anySpirit, { minLength: 1, maxLength: 5 }), (parts) => {
        const { spirit, mass_kg } = mix(parts.map((part, i) => ({ ...part, companions_kg: { esters: i } })));
        const masses = parts.map(massesOf);
        const had_kg = masses.reduce((sum, { ethanol_kg, water_kg }) => sum + ethanol_kg + water_kg, 0);
        const alcohol_m3 = parts.reduce((sum, { volume_m3, strength }) => sum + volume_m3 * strength, 0);
        expect(Math.abs(mass_kg / had_kg - 1)).toBeLessThan(1e-12);
        expect(Math.abs(spirit.volume_m3 * spirit.strength - alcohol_m3)).toBeLessThan(1e-9 * (alcohol_m3 + 1e-6));
        expect(spirit.companions_kg).toEqual({ esters: parts.reduce((sum, _, i) => sum + i, 0) });
      }),
    );
  });

  it('come to the same to the last bit in any order, and nearly so by way of another jar', () => {
    fc.assert(
      fc.property(anySpirit, anySpirit, anySpirit, (a, b, c) => {
        const at_once = mix([a, b, c]).spirit;
        expect(mix([c, a, b]).spirit).toEqual(at_once);
        const by_way = mix([mix([a, b]).spirit, c]).spirit;
        expect(Math.abs(by_way.volume_m3 / at_once.volume_m3 - 1)).toBeLessThan(1e-10);
        expect(Math.abs(by_way.temperature_K! - at_once.temperature_K!)).toBeLessThan(1e-4);
      }),
    );
  });

  it('stay as they are where they are alike', () => {
    const spirit: Spirit = { volume_m3: 0.01, strength: 0.4, temperature_K: 291 };
    const { spirit: both, lost_m3, warmed_K } = mix([spirit, spirit]);
    expect(both.volume_m3).toBeCloseTo(0.02, 12);
    expect(both.strength).toBeCloseTo(0.4, 12);
    expect(both.temperature_K).toBeCloseTo(291, 6);
    expect(Math.abs(lost_m3)).toBeLessThan(1e-12);
    expect(Math.abs(warmed_K!)).toBeLessThan(1e-6);
  });

  it('lose the volume that the printed densities say: 50 L of ethanol and 50 L of water make 96.5 L', () => {
    // Perry's table at 20 °C: 0.78934 and 0.99823 g/mL; 44.15 % mass lies between 0.93518 (40) and 0.91384 (50).
    const mass_g = 50 * 0.78934 + 50 * 0.99823;
    const percent = (100 * 50 * 0.78934) / mass_g;
    const straight = 0.93518 + ((percent - 40) / 10) * (0.91384 - 0.93518);
    const { spirit, lost_m3 } = mix([
      { volume_m3: 0.05, strength: 1 },
      { volume_m3: 0.05, strength: 0 },
    ]);
    // The straight line between two rows is 0.04 % below the curve there.
    expect(Math.abs((1000 * spirit.volume_m3 * straight) / mass_g - 1)).toBeLessThan(6e-4);
    expect(1000 * lost_m3).toBeCloseTo(3.54, 2); // R 22's own
  });

  const { rows } = publishedTable('measurements/nagamachi-2006-298K.csv');
  it.each(rows)('warm by the heat of mixing measured at 25 °C: x = $x1', ({ x1, hE_J_mol }) => {
    // nagamachi2006, against the library's regressed heat of mixing: the warming of one mole mixed at 25 °C times its heat capacity.
    const x = Number(x1);
    const litres = (mass_kg: number, strength: number): Spirit => {
      const one = massesOf({ volume_m3: 1, strength });
      return { volume_m3: mass_kg / (one.ethanol_kg + one.water_kg), strength, temperature_K: 298.15 };
    };
    const { spirit, warmed_K } = mix([litres(x * ethanol, 1), litres((1 - x) * water, 0)]);
    expect(spirit.strength).toBeCloseTo(strengthFromMoleFraction(x), 4);
    expect(moleFractionFromStrength(spirit.strength)).toBeCloseTo(x, 3);
    // Heat capacity of the mixture at 25 °C, J/(mol K): pure 112.3 and 75.4, and up to 13 more for mixing (general handbook
    // values, from memory: some 5 % sure). Warmed a little more, the heat of mixing is smaller: some 1 % a kelvin.
    const capacity = 112.3 * x + 75.4 * (1 - x) + 4 * 11 * x * (1 - x) * (1.6 - x);
    const expected_K = -Number(hE_J_mol) / capacity;
    expect(Math.abs(warmed_K! - expected_K)).toBeLessThan(0.12 * expected_K + 0.3);
  });

  it('have no temperature where one of them has none, unless that one is empty', () => {
    const warm: Spirit = { volume_m3: 1, strength: 0.5, temperature_K: 290 };
    expect(mix([warm, { volume_m3: 1, strength: 0 }]).spirit.temperature_K).toBeUndefined();
    expect(mix([warm, { volume_m3: 0, strength: 0 }]).spirit.temperature_K).toBeCloseTo(290, 6);
  });

  it.each([
    ['nothing', [], 'spirits is []; expected a list of one spirit or more'],
    ['empty jars', [{ volume_m3: 0, strength: 0.4 }], 'at least one that is not empty'],
    ['a negative volume', [{ volume_m3: -1, strength: 0.4 }], 'spirits[0].volume_m3 is -1'],
    ['a strength in per cent', [{ volume_m3: 1, strength: 40 }], 'spirits[0].strength is 40'],
    ['a hot jar', [{ volume_m3: 1, strength: 0.4, temperature_K: 350 }], 'spirits[0].temperature_K is 350'],
    ['a jar that is none', [null as never], 'spirits[0] is null; expected a spirit'],
  ])('are refused with a reason: %s', (_name, spirits, says) => {
    expect(() => mix(spirits)).toThrow(InputError);
    expect(() => mix(spirits)).toThrow(says);
  });
});
