import { describe, expect, it } from 'vitest';
import { behindParrot, carryUncertainty, compareReadings, kettleFromTemperature, leftInKettle } from '#lib/index.js';

describe('a kettle read in two ways', () => {
  const balance = ({ strength, drawn_m3 }: { strength: number; drawn_m3: number }) =>
    leftInKettle({ volume_m3: 0.1, strength }, [{ volume_m3: drawn_m3, strength: 0.7 }]);
  const by_balance = carryUncertainty(
    balance,
    { strength: 0.1, drawn_m3: 0.008 },
    { strength: 0.002, drawn_m3: 0.0001 },
  );
  const by_thermometer = (reading_K: number) =>
    carryUncertainty(kettleFromTemperature, { reading_K, air_Pa: 101325 }, { reading_K: 0.2, air_Pa: 300 });

  it('agrees where both are right', () => {
    // 4.7 % vol is left by the balance, which boils near 95.8 °C.
    const { agree, gap } = compareReadings(by_thermometer(368.95).strength!, by_balance.strength!);
    expect(Math.abs(gap)).toBeLessThan(0.005);
    expect(agree).toBe(true);
  });

  it('does not where the thermometer says 93 °C, and names what is likeliest off first', () => {
    const { agree, gap, suspects } = compareReadings(by_thermometer(366.15).strength!, by_balance.strength!);
    expect(agree).toBe(false);
    expect(gap).toBeGreaterThan(0.03);
    const sizes = suspects.map(({ uncertainties }) => Math.abs(uncertainties));
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    // Moving the thermometer by as much as is said closes the gap (the curve bends a little).
    const thermometer = suspects.find(({ path }) => path === 'reading_K')!;
    const closed =
      by_thermometer(366.15 + 0.2 * thermometer.uncertainties).strength!.value - by_balance.strength!.value;
    expect(Math.abs(closed)).toBeLessThan(0.35 * gap);
  });

  it('counts an input that both share once', () => {
    const same = { value: 1, uncertainty: 0.1, from: { shared: 0.1 } };
    expect(compareReadings(same, same).uncertainty).toBe(0);
  });
});

describe('what is left in the kettle', () => {
  it('is the charge less what came over', () => {
    const left = leftInKettle({ volume_m3: 0.1, strength: 0.1 }, [{ volume_m3: 0.01, strength: 0.6 }]);
    if (!left.found) throw new Error(left.message);
    expect(left.volume_m3 * left.strength).toBeCloseTo(0.004, 10);
  });

  it('is refused where more came over than was charged', () => {
    const more = leftInKettle({ volume_m3: 0.1, strength: 0.05 }, [{ volume_m3: 0.01, strength: 0.6 }]);
    expect(more).toMatchObject({ found: false, reason: 'more-than-charged' });
  });
});

describe('behind a parrot', () => {
  it('stands the spout 0.9 % vol lower where the reading falls by 3 % vol a litre and the parrot holds 300 mL', () => {
    expect(behindParrot(0.6, 0.0003, -30)).toBeCloseTo(0.591, 12);
  });

  it('is what the hydrometer would show of a spout that falls steadily', () => {
    // Well mixed, q_p = q_s(V) + r V_p (1 − exp(−V/V_p)) for q_s = q_0 − r V; after many volumes it lags by r V_p.
    const [q0, r, parrot_m3] = [0.8, 30, 0.0003];
    const V = 0.004;
    const reading = q0 - r * V + r * parrot_m3 * (1 - Math.exp(-V / parrot_m3));
    const slope = -r + r * Math.exp(-V / parrot_m3);
    expect(behindParrot(reading, parrot_m3, slope)).toBeCloseTo(q0 - r * V, 12);
  });
});
