import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { account, carryUncertainty, InputError, type Books } from '#lib/index.js';

/** An invented run. */
const books: Books = {
  charged: [
    { volume_m3: 0.12, strength: 0.095 },
    { volume_m3: 0.004, strength: 0.25 },
  ],
  found: [
    { part: 'heads', spirit: { volume_m3: 0.0006, strength: 0.93 } },
    { part: 'hearts', spirit: { volume_m3: 0.008, strength: 0.92 } },
    { part: 'tails', spirit: { volume_m3: 0.003, strength: 0.6 } },
    { part: 'feints', spirit: { volume_m3: 0.002, strength: 0.35 } },
    { part: 'spent', spirit: { volume_m3: 0.1, strength: 0.008 } },
  ],
};

describe('the books', () => {
  it('count every litre of pure alcohol: charged 12.40, found 11.218, a gap of 1.18', () => {
    // By hand: 11.4 + 1.0; 0.558 + 7.36 + 1.8 + 0.7 + 0.8.
    const { charged_m3, found_m3, gap_m3, gapShare, parts_m3 } = account(books);
    expect(1000 * charged_m3).toBeCloseTo(12.4, 9);
    expect(1000 * found_m3).toBeCloseTo(11.218, 9);
    expect(1000 * gap_m3).toBeCloseTo(1.182, 9);
    expect(gapShare).toBeCloseTo(1.182 / 12.4, 9);
    expect(1000 * parts_m3.hearts).toBeCloseTo(7.36, 9);
  });

  it('say it in US proof gallons: a litre of pure alcohol at 20 °C is 0.5258 of them', () => {
    // 27 CFR 19.1: 1 proof gallon is 1.8927 L of ethanol at 60 °F, 1.9018 L at 20 °C by R 22.
    const { proofGallons, gap_m3 } = account(books);
    expect(proofGallons.charged).toBeCloseTo(12.4 / 1.9018, 3);
    expect(proofGallons.gap / (1000 * gap_m3)).toBeCloseTo(1 / 1.9018, 4);
  });

  it('say how far the gap is sure: each measured volume and strength adds its own', () => {
    const { gap_m3 } = carryUncertainty(account, books, {
      'charged[0].volume_m3': 0.001,
      'charged[0].strength': 0.002,
      'found[4].spirit.strength': 0.002,
    });
    // By hand: 0.095 L; 0.24 L; 0.2 L.
    expect(1000 * gap_m3!.uncertainty).toBeCloseTo(Math.hypot(0.095, 0.24, 0.2), 6);
    expect(1000 * gap_m3!.from['found[4].spirit.strength']!).toBeCloseTo(-0.2, 6);
  });

  it('close where nothing is lost, in any order', () => {
    const anyFound = fc.array(
      fc.tuple(fc.double({ min: 1e-3, max: 1, noNaN: true }), fc.double({ min: 1e-3, max: 1, noNaN: true })),
      {
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(anyFound, (volumes) => {
        const found = volumes.map(([volume_m3, strength]) => ({
          part: 'hearts' as const,
          spirit: { volume_m3, strength },
        }));
        const charged = found.map(({ spirit }) => spirit);
        expect(Math.abs(account({ charged, found }).gapShare)).toBeLessThan(1e-12);
        expect(account({ charged, found: [...found].reverse() }).gapShare).toBeCloseTo(0, 12);
      }),
    );
  });

  it('show a gap below nothing where more was found than charged', () => {
    const { gap_m3, proofGallons } = account({
      charged: [{ volume_m3: 0.1, strength: 0.1 }],
      found: [{ part: 'hearts', spirit: { volume_m3: 0.02, strength: 0.6 } }],
    });
    expect(gap_m3).toBeCloseTo(-0.002, 12);
    expect(proofGallons.gap).toBeLessThan(0);
  });

  it.each([
    ['nothing charged', { charged: [], found: [] }, 'books.charged'],
    ['only water charged', { charged: [{ volume_m3: 1, strength: 0 }], found: [] }, 'something with alcohol in it'],
    [
      'an unknown part',
      { ...books, found: [{ part: 'angels' as 'hearts', spirit: { volume_m3: 1, strength: 0.4 } }] },
      'books.found[0].part',
    ],
    [
      'a negative volume',
      { charged: [{ volume_m3: -1, strength: 0.1 }], found: [] },
      'books.charged[0].volume_m3 is -1',
    ],
  ])('are refused with a reason: %s', (_name, wrong, says) => {
    expect(() => account(wrong)).toThrow(InputError);
    expect(() => account(wrong)).toThrow(says);
  });
});
