// 'Begins to boil' and 'begins to run over', rounded off.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { above, aboveSlope } from '#lib/run/engines/energy/rounding.js';

describe('what is above nothing, rounded off', () => {
  it('is never a hair below nothing, not even by round-off, and never falls', () => {
    const share = fc.oneof(
      fc.double({ min: -1.1, max: 1.1, noNaN: true }),
      fc.double({ min: 0, max: 0.01, noNaN: true }).map((more) => -1 + more),
    );
    fc.assert(
      fc.property(share, fc.double({ min: 1e-9, max: 1e3, noNaN: true }), (z, width) => {
        expect(above(z * width, width)).toBeGreaterThanOrEqual(0);
        expect(aboveSlope(z * width, width)).toBeGreaterThanOrEqual(-1e-15);
      }),
      { numRuns: 3000 },
    );
    // Found in a run: round-off left -1e-18 here.
    for (let k = 1; k < 4000; k++) expect(above(-1 + k * 1e-6, 1)).toBeGreaterThanOrEqual(0);
  });

  it('is nothing well below, and all of it well above', () => {
    expect(above(-2, 1)).toBe(0);
    expect(above(2, 1)).toBe(2);
  });
});
