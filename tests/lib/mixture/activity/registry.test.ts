import { describe, expect, it } from 'vitest';
import { ACTIVITY_NAMES, activityModel, type ActivityState, DEFAULT_ACTIVITY } from '#lib/index.js';

const state = (): ActivityState => ({
  lnGammaEthanol: 0,
  lnGammaWater: 0,
  slopeEthanol: 0,
  slopeWater: 0,
  thermalEthanol: 0,
  thermalWater: 0,
});

describe('the registry', () => {
  it('gives each model under its own name, with a source and a range', () => {
    for (const name of ACTIVITY_NAMES) {
      const model = activityModel(name);
      expect(model.name).toBe(name);
      expect(model.source).not.toBe('');
      expect(model.range_K[0]).toBeLessThan(model.range_K[1]);
    }
    expect(ACTIVITY_NAMES).toContain(DEFAULT_ACTIVITY);
  });

  it('refuses a name it does not know and says which there are', () => {
    expect(() => activityModel('margules' as 'nrtl')).toThrow(/activity is 'margules'; expected one of raoult, wilson/);
    expect(() => activityModel('toString' as 'nrtl')).toThrow(/expected one of/);
  });
});

describe('limiting activity coefficients', () => {
  // T. Brouwer et al., Sep. Purif. Technol. 272 (2021) 118727, pool of published values: ethanol in water 3.5 to 3.9 in
  // the middle half at 25 °C, 5.8 to 6.3 near 100 °C. Water in ethanol 2.3 to 2.6 (from the pressures of Pemberton &
  // Mash 1978 and Kolbe & Gmehling 1985).
  it.each([
    [298.15, 'lnGammaEthanol', 3.5, 4.0],
    [373.15, 'lnGammaEthanol', 5.6, 6.2],
    [303.15, 'lnGammaWater', 2.3, 2.6],
    [351.4, 'lnGammaWater', 2.3, 2.6],
    [373.15, 'lnGammaWater', 2.3, 2.6],
  ] as const)('of the reference model at %d K (%s) lie between %d and %d', (temperature_K, which, low, high) => {
    const x = which === 'lnGammaEthanol' ? 0 : 1;
    const gamma = Math.exp(activityModel('redlich-kister').activity(x, temperature_K, state())[which]);
    expect(gamma).toBeGreaterThan(low);
    expect(gamma).toBeLessThan(high);
  });

  it('of nrtl and wilson at the weak end are too high where it is cold (3.5 to 4.0 measured), a known weakness of their forms', () => {
    for (const [name, value] of [
      ['nrtl', 4.521],
      ['wilson', 4.555],
    ] as const) {
      const gamma = Math.exp(activityModel(name).activity(0, 298.15, state()).lnGammaEthanol);
      expect(Math.abs(gamma - value), name).toBeLessThan(5e-3);
    }
  });
});
