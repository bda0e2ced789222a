// Published points against the model: each at the pressure of its set, as docs/theory/residuals.md has them.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { activityModel, bubblePoint, DEFAULT_ACTIVITY } from '#lib/index.js';
import { meanDistance } from '../../../explorer/figures/plots/measured-points.js';
import { measuredSets } from '../../../explorer/state/measured-points.js';
import { measuredPointsRows, measuredQuestions } from '../../../explorer/state/measured-against-model.js';
import { answersTo } from '../../support/answers.js';

const { sets } = measuredPointsRows(await answersTo(measuredQuestions));

describe('what measured points differ by', () => {
  it('is the measured vapour less that of a bubble point at the pressure of the set', () => {
    // The compiled curve against the model itself.
    const curveError = 1e-6;
    const model = activityModel(DEFAULT_ACTIVITY);
    measuredSets.forEach(({ pressure_Pa, liquidMoleFraction, vapourMoleFraction }, at) => {
      liquidMoleFraction.forEach((x, i) => {
        const { vapourMoleFraction: y } = bubblePoint(x, pressure_Pa, model);
        expect(Math.abs(sets[at]!.difference[i]! - (vapourMoleFraction[i]! - y))).toBeLessThan(curveError);
      });
    });
  });

  it('is what the page on residuals prints of each set, worked out there another way', () => {
    const page = readFileSync(new URL('../../../docs/theory/residuals.md', import.meta.url), 'utf8');
    const half = 0.000_05;
    for (const set of sets) {
      const [, , , , fitted, leftOut] = new RegExp(`^\\| ${set.set} +\\| y .*$`, 'mu')
        .exec(page)![0]
        .split('|')
        .map((cell) => cell.trim());
      const printed = Number(fitted === 'held back' ? leftOut : fitted);
      expect([set.set, Math.abs(meanDistance(set) - printed) <= half]).toEqual([set.set, true]);
    }
  });
});
