import { describe, expect, it } from 'vitest';
import { firstToTell, InputError, solve, type EnergyProblem } from '#lib/index.js';

/** Invented stills: a pot of 150 L under plates, charged with 110 L of 12 % vol. */
function run(count: number, overrides: Partial<EnergyProblem> = {}) {
  return solve({
    still: { kettle: { volume_m3: 0.15, power_W: 5000 }, column: { kind: 'plates', count, efficiency: 0.65 } },
    charge: { kind: 'volume', volume_m3: 0.11, strength: 0.12 },
    sheet: [
      { reflux: 'total', until: [{ kind: 'firstVapour' }] },
      { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
      { reflux: 3, until: [{ kind: 'spoutStrengthBelow', strength: 0.5 }] },
    ],
    outputs: { kind: 'every', interval_s: 60 },
    ...overrides,
  });
}

const told = (...args: Parameters<typeof firstToTell>) => {
  const answer = firstToTell(...args);
  if (!answer.found) throw new Error(answer.message);
  return answer;
};

describe('which thermometer tells first', () => {
  it('is a lower plate’s: each moves before the one above it, and over twenty plates one tells a litre ahead', () => {
    const { plates, strongest_s, fell_s } = told(run(20));
    expect(plates).toHaveLength(20);
    expect(fell_s).toBeGreaterThan(strongest_s);
    const moved = plates.map(({ moved_s }) => moved_s ?? Infinity);
    for (let plate = 1; plate < moved.length; plate++) expect(moved[plate]).toBeGreaterThanOrEqual(moved[plate - 1]!);
    expect(plates[7]!.early_s).toBeGreaterThan(600);
    expect(plates[7]!.early_m3).toBeGreaterThan(0.001);
    expect(plates[7]!.stoodAt_K).toBeLessThan(plates[0]!.stoodAt_K);
  });

  it('is none that helps over four plates: no plate tells five minutes before the spout', () => {
    const { plates } = told(run(4));
    for (const { early_s } of plates) expect(early_s ?? -Infinity).toBeLessThan(300);
  });

  it('agrees with the run itself at the times it tells', () => {
    const solution = run(8);
    const { plates, strongest, fell_s } = told(solution);
    const row = solution.time_s.findIndex((time) => time >= fell_s);
    expect(solution.spoutStrength[row - 1]).toBeGreaterThanOrEqual(strongest - 0.01 - 1e-12);
    expect(solution.spoutStrength[row]).toBeLessThanOrEqual(strongest - 0.01 + 1e-12);
    const { plate, moved_s, stoodAt_K } = plates[3]!;
    const width = solution.holders.length;
    const holder = solution.holders.findIndex(({ kind, number }) => kind === 'plate' && number === plate);
    const after = solution.time_s.findIndex((time) => time >= moved_s!);
    expect(solution.holderTemperature_K[after * width + holder]! - stoodAt_K).toBeGreaterThanOrEqual(0.5 - 1e-9);
  });

  it('says so where nothing runs, or the spout does not fall', () => {
    const never = run(8, { sheet: [{ reflux: 'total', until: [{ kind: 'firstVapour' }] }] });
    expect(firstToTell(never)).toMatchObject({ found: false, reason: 'never-runs' });
    const short = run(12, {
      sheet: [
        { reflux: 'total', until: [{ kind: 'firstVapour' }] },
        { reflux: 'total', until: [{ kind: 'duration', seconds: 1800 }] },
        { reflux: 5, until: [{ kind: 'duration', seconds: 300 }] },
      ],
    });
    expect(firstToTell(short)).toMatchObject({ found: false, reason: 'never-falls' });
  });

  it.each([0, NaN, 100])('refuses a thermometer that moves by %d K', (moves_K) => {
    expect(() => firstToTell(run(2), moves_K)).toThrow(InputError);
  });
});
