// Words at curves: they avoid what is drawn, stay apart, and give way downwards.

import { describe, expect, it } from 'vitest';
import { nameApart, placeNames, spreadMargin } from '../../../explorer/components/figure/place-names.js';
import type { Surroundings } from '../../../explorer/components/figure/place-names.js';
import type { CurveName, MarginName, NamePlace } from '../../../explorer/figures/figure.js';

const around: Surroundings = {
  width: 400,
  height: 300,
  lines: [],
  taken: [],
  toPx: (place) => ({ x: place.x, y: place.y }),
  measure: (text) => 8 * text.length,
};

describe('names at curves', () => {
  it('take their first place when it is free', () => {
    expect(placeNames([name('a', [at(100, 50), at(200, 50)])], around)[0]).toMatchObject({ x: 100, y: 50 });
  });

  it('take the next place when a curve runs through the first', () => {
    const line = [
      { x: 0, y: 0 },
      { x: 400, y: 200 },
    ];
    const placed = placeNames([name('a', [at(100, 50), at(100, 200)])], { ...around, lines: [line] });
    expect(placed[0]).toMatchObject({ x: 100, y: 200 });
  });

  it('are not misled by the long segment of a staircase that passes beside them', () => {
    const riser = [
      { x: 90, y: 0 },
      { x: 90, y: 300 },
    ];
    expect(placeNames([name('a', [at(100, 50), at(300, 50)])], { ...around, lines: [riser] })[0]!.x).toBe(100);
  });

  it('stay inside the plot', () => {
    expect(placeNames([name('wide words', [at(380, 50), at(20, 50)])], around)[0]!.x).toBe(20);
  });

  it('give way downwards when two have nowhere else to go', () => {
    const placed = placeNames([name('a', [at(100, 50)]), name('b', [at(102, 55)])], around);
    expect(placed[1]!.y - placed[0]!.y).toBeGreaterThanOrEqual(nameApart);
  });

  it('are left out when they may be and no place is free', () => {
    const optional = { ...name('b', [at(100, 50)]), optional: true };
    expect(placeNames([name('a', [at(100, 50)]), optional], around)).toHaveLength(1);
  });
});

describe('names in the margin', () => {
  it('keep their height when they are apart and move down when they are not', () => {
    const names = [margin('kettle', 40), margin('head', 45), margin('far', 200)];
    const heights = spreadMargin(names, (y) => y);
    expect([...heights.values()]).toEqual([40, 40 + nameApart, 200]);
  });
});

function at(x: number, y: number): NamePlace {
  return { x, y, dx: 0, dy: 0, anchor: 'start' };
}

function name(text: string, places: readonly NamePlace[]): CurveName {
  return { key: text, text, hand: 'ink', bold: false, optional: false, places };
}

function margin(key: string, y: number): MarginName {
  return { key, text: key, note: '', y, hand: 'ink', bold: false, at: 'end' };
}
