import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rulerTicks } from '../../../explorer/components/number/ruler-scale.js';

describe('the ticks of a ruler', () => {
  it('fall on the study’s marks: 0 to 60 by one, named by ten', () => {
    const ticks = rulerTicks(0, 60, 1, 490);
    expect(ticks).toHaveLength(61);
    expect(ticks.filter(({ length }) => length === 'named').map(({ value }) => value)).toEqual([
      0, 10, 20, 30, 40, 50, 60,
    ]);
  });

  it('stand at least 6 px apart, names at least 48, all within the limits', () => {
    const rulers = fc.record({
      low: fc.integer({ min: 0, max: 50 }),
      length: fc.integer({ min: 1, max: 5000 }),
      step: fc.constantFrom(0.1, 0.25, 0.5, 1, 5, 500),
      width: fc.integer({ min: 180, max: 600 }),
    });
    fc.assert(
      fc.property(rulers, ({ low, length, step, width }) => {
        const ticks = rulerTicks(low, low + length, step, width);
        const px = (value: number): number => ((value - low) / length) * width;
        ticks.slice(1).forEach((tick, index) => {
          expect(px(tick.value) - px(ticks[index]!.value)).toBeGreaterThanOrEqual(6 - 1e-6);
        });
        const named = ticks.filter((tick) => tick.length === 'named');
        named.slice(1).forEach((tick, index) => {
          expect(px(tick.value) - px(named[index]!.value)).toBeGreaterThanOrEqual(48 - 1e-6);
        });
        for (const { value } of ticks) expect(px(value)).toBeGreaterThanOrEqual(-1e-6);
        for (const { value } of ticks) expect(px(value)).toBeLessThanOrEqual(width + 1e-6);
      }),
    );
  });
});
