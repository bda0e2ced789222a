// A correction says what is wrong, what would be right and which value the figures still use.

import { describe, expect, it } from 'vitest';
import { numberSpecs } from '../../../explorer/state/number-specs.js';
import { correctionOf } from '../../../explorer/text/messages.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('the correction of a number', () => {
  const specs = numberSpecs(unitSystems.metric);
  const [efficiency, chargeVolume] = [specs('still.column.efficiency'), specs('charge.volume_m3')];
  const [plates, heat] = [specs('still.column.count'), specs('still.kettle.power_W')];

  it('names the limit that was passed, the range, the value in use and the word that puts it back', () => {
    const correction = correctionOf(efficiency, { draft: '650', reason: 'tooHigh' }, 0.65);
    expect(plain(correction.draft)).toBe('650 %');
    expect(plain(correction.says)).toBe('is more than a plate can do: 1 to 100. The figures still use 65 %.');
    expect(correction.putBack).toBe('Put 65 back');
  });

  it('keeps a text that is no number as it was typed', () => {
    const correction = correctionOf(plates, { draft: 'a dozen', reason: 'noNumber' }, 12);
    expect(correction.draft).toBe('a dozen');
    expect(plain(correction.says)).toContain('0 to 60 plates');
    expect(plain(correction.says)).toContain('The figures still use 12 plates.');
  });

  it('speaks in the units shown', () => {
    const gallons = numberSpecs(unitSystems.us)('charge.volume_m3');
    const correction = correctionOf(gallons, { draft: '900', reason: 'tooHigh' }, 0.12);
    expect(plain(correction.draft)).toBe('900 US gal');
    expect(plain(correction.says)).toContain('The figures still use 31.7 US gal.');
  });

  it.each(['empty', 'noNumber', 'ambiguousComma', 'unknownUnit', 'tooLow'] as const)(
    'says for %s which value the figures still use',
    (reason) => {
      for (const spec of [chargeVolume, heat]) {
        const inUse = spec.fromShown(5);
        expect(plain(correctionOf(spec, { draft: 'x', reason }, inUse).says)).toContain('The figures still use 5');
      }
    },
  );
});
