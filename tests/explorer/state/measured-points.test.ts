// The points that the explorer lays over its curves are those of reference/measurements.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
// @ts-expect-error the generator is plain JavaScript
import { pointsModule } from '../../../reference/measurements/build-points.mjs';
import { measuredAzeotropes, measuredSets } from '../../../explorer/state/measured-points.js';

describe('the measured points', () => {
  it('are what the generator writes today', async () => {
    const written = readFileSync(new URL('../../../explorer/state/measured-points.ts', import.meta.url), 'utf8');
    expect(written).toBe(await pointsModule());
  });

  it('are published near 1 atm, in SI, under a name and a year', () => {
    expect(measuredSets.map(({ source }) => source)).toContain('Carey and Lewis, 1932');
    for (const set of measuredSets) {
      expect(set.source).toMatch(/^[A-Z].*, (19|20)\d\d$/);
      expect(Math.abs(set.pressure_Pa - 101_325)).toBeLessThan(1500);
      expect(set.vapourMoleFraction).toHaveLength(set.liquidMoleFraction.length);
      expect(set.temperature_K).toHaveLength(set.liquidMoleFraction.length);
      for (const x of [...set.liquidMoleFraction, ...set.vapourMoleFraction]) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(1);
      }
      for (const t of set.temperature_K) expect(Math.abs(t - 362)).toBeLessThan(12);
    }
  });

  it('hold the azeotrope as Carey and Lewis print it (Ind. Eng. Chem. 24, 1932, 882)', () => {
    const printed = measuredAzeotropes.find(({ source }) => source === 'Carey and Lewis, 1932');
    expect(printed).toMatchObject({ pressure_Pa: 101_325, moleFraction: 0.8943, kind: 'printed' });
  });
});
