// The cautions say what a published safety sheet or common practice says, in the right order, and nothing in the explorer says otherwise.
// Limits in air 3.3 to 19 % by volume, ignition at 363 °C: NFPA 497 (2008); 3.1 to 19 % and 400 °C: IEC 60079-20-1 (2010).

import { describe, expect, it } from 'vitest';
import { stillCautions } from '../../../explorer/text/still-cautions.js';
import { filesUnder, read } from '../../support/tree.js';

const all = Object.entries(stillCautions);
const sources = [...filesUnder('explorer', /\.ts$/), ...filesUnder('docs', /\.md$/), 'README.md'].map(
  (file) => [file, read(file).replace(/\s+/g, ' ')] as const,
);

/** Where each phrase begins in a text, in the order asked. */
function inOrder(text: string, ...phrases: readonly string[]): boolean {
  const at = phrases.map((phrase) => text.indexOf(phrase));
  return at.every((place, k) => place >= 0 && (k === 0 || place > at[k - 1]!));
}

describe('the cautions', () => {
  it('shut down in the right order: heat off, water on until nothing comes, a vent that opens by itself', () => {
    expect(inOrder(stillCautions.cooling, 'heat off', 'water on until nothing', 'open by itself')).toBe(true);
    expect(stillCautions.cooling).toContain('Never open a boiling still');
  });

  it('never tell to let air in before the heat goes off, or to open what boils', () => {
    const wrong = /(let|admit) air( in)? before|open the (still|kettle) (while|as) it (boils|is hot)/i;
    expect(sources.filter(([, text]) => wrong.test(text)).map(([file]) => file)).toEqual([]);
  });

  it.each([
    ['water that fails', /cooling water fails, heat off at once/],
    ['a still left alone', /Never leave a heated still alone/],
    ['boiling over', /boils over/],
    ['carbon monoxide', /carbon monoxide/],
  ])('speak of %s', (_what, words) => {
    expect(stillCautions.heating).toMatch(words);
  });

  it('say what lights the vapour, no weaker than the stricter of two published tables', () => {
    const [share, surface] = [/From (\d+) % in air/, /some (\d+) °C/].map((found) =>
      Number(found.exec(stillCautions.spout)?.[1]),
    );
    expect(share).toBeLessThanOrEqual(3.1);
    expect(surface).toBeLessThanOrEqual(363);
  });

  it.each(all)('defer, in %s, to local codes and the maker', (_name, text) => {
    expect(text).toContain('local codes');
    expect(text).toContain('maker’s instructions');
  });
});
