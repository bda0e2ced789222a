// The work on a lesson in the browser's storage: there and back, damaged, newer, forbidden, full.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepWork, keptWork, noWork, readWork, type LessonWork } from '../../../explorer/state/course-work.js';

class Drawer {
  readonly kept = new Map<string, string>();
  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    this.kept.set(key, value);
  }
}

const anyWork = fc.record({
  guess: fc.record({
    points: fc.array(
      fc.record({
        x: fc.double({ noNaN: true, noDefaultInfinity: true }),
        y: fc.double({ noNaN: true, noDefaultInfinity: true }),
      }),
    ),
    answered: fc.boolean(),
  }),
  written: fc.dictionary(fc.stringMatching(/^[a-z-]{1,12}$/u), fc.string()),
  ownWords: fc.string(),
});

describe('the work on a lesson', () => {
  it('comes back as it was kept, whatever it is', () => {
    fc.assert(
      fc.property(anyWork, (work) => {
        const drawer = new Drawer();
        keepWork('reflux', work, drawer);
        // JSON knows no -0.
        expect(keptWork('reflux', drawer)).toEqual(JSON.parse(JSON.stringify(work)) as LessonWork);
      }),
    );
  });

  it('is none where nothing was kept, and each lesson has its own', () => {
    const drawer = new Drawer();
    keepWork('reflux', { ...noWork, ownWords: 'it costs' }, drawer);
    expect(keptWork('what-boils', drawer)).toEqual(noWork);
    expect(keptWork('reflux', drawer).ownWords).toBe('it costs');
  });

  it.each([
    ['damaged', '{"version":1,"guess'],
    ['of a newer version', JSON.stringify({ version: 2, ...noWork })],
    ['without a guess', JSON.stringify({ version: 1, written: {}, ownWords: '' })],
    [
      'with a point that is none',
      JSON.stringify({ version: 1, ...noWork, guess: { points: [{ x: 1 }], answered: false } }),
    ],
    ['not a record at all', '[1, 2]'],
  ])('that is %s is not used, and laid aside before anything is written over it', (_what, text) => {
    const drawer = new Drawer();
    drawer.setItem('kettle-and-plate.course.reflux', text);
    expect(keptWork('reflux', drawer)).toEqual(noWork);
    expect([...drawer.kept.values()].filter((kept) => kept === text)).toHaveLength(2);
    keepWork('reflux', { ...noWork, ownWords: 'new' }, drawer);
    expect([...drawer.kept.values()]).toContain(text);
    expect(readWork(text)).toBeUndefined();
  });

  it('does without a storage that refuses', () => {
    const refusing = {
      getItem: (): string => {
        throw new Error('forbidden');
      },
      setItem: (): void => {
        throw new Error('full');
      },
    };
    expect(keptWork('reflux', refusing)).toEqual(noWork);
    expect(() => keepWork('reflux', noWork, refusing)).not.toThrow();
  });
});
