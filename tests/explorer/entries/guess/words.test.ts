// What the gap of a guess is said to mean: each common idea of boiling, plates, reflux and the ceiling gets
// its own words, with the answer's numbers from the model itself.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEthanolWater, DEFAULT_ACTIVITY, toSI } from '#lib/index.js';
import type { Point } from '../../../../explorer/components/guess/guess.js';
import { ceilingWords } from '../../../../explorer/entries/guess/ceiling-words.js';
import { gapInNumbers, readGuess, type Asked, type Reading } from '../../../../explorer/entries/guess/reading.js';
import { refluxWords } from '../../../../explorer/entries/guess/reflux-words.js';
import { stepsWords } from '../../../../explorer/entries/guess/steps-words.js';
import { vapourWords } from '../../../../explorer/entries/guess/vapour-words.js';
import { boilOf, ladderOf } from '../../../../explorer/pages/course/rows.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';

const units = unitSystems.metric;
const { strength, time } = units;
const slice = createEthanolWater().curve(DEFAULT_ACTIVITY).at(toSI(1, 'atm'));
const count = {
  ...time,
  unit: 'plates',
  toShown: (si: number) => si,
  fromShown: (shown: number) => shown,
  withUnit: (si: number) => `${String(si)} plates`,
};
const azeotrope = 0.9722;

const percents = Array.from({ length: 101 }, (_, k) => k / 100);
const vapourAsked: Asked = {
  start: { x: 0, y: 0 },
  answer: { x: percents, y: percents.map((liquid) => boilOf(slice, liquid).vapour) },
  x: strength,
  y: strength,
  says: 'the vapour holds',
};
const ladder = ladderOf(slice, 0.095, 8);
const stepsAsked: Asked = {
  start: { x: 0, y: ladder[0]! },
  answer: { x: [0, 1, 2, 3, 4, 5, 6, 7, 8], y: ladder },
  x: count,
  y: strength,
  says: 'it is',
};
/** Invented, like a column at 3 : 1. */
const ceilingAsked: Asked = {
  start: { x: 12, y: 0.936 },
  answer: { x: [12, 20, 30, 40, 60], y: [0.936, 0.951, 0.9555, 0.9556, 0.9557] },
  x: count,
  y: strength,
  says: 'it is',
};
/** Invented: ten minutes for each part boiled. */
const refluxAsked: Asked = {
  start: { x: 1, y: 1200 },
  answer: { x: [1, 12], y: [1200, 7800] },
  x: count,
  y: time,
  says: 'it takes',
};

const drawn = (asked: Asked, height: (x: number) => number): Reading => {
  const [from, to] = [asked.start.x, asked.answer.x[asked.answer.x.length - 1]!];
  const points = Array.from({ length: 40 }, (_, k): Point => {
    const x = from + ((k + 1) / 40) * (to - from);
    return { x, y: height(x) };
  });
  return readGuess(points, asked);
};

describe('the gap in numbers', () => {
  it('names where it is largest, both heights there, and the mean', () => {
    const reading = drawn(refluxAsked, () => 1200);
    expect(plain(gapInNumbers(reading, refluxAsked))).toMatch(
      /^Your line misses most at 12 plates: you drew 0\.33 h, it takes 2\.17 h\. On average it is 0\.92 h off\.$/u,
    );
  });

  it('says where a line stops that stops short', () => {
    const reading = readGuess([{ x: 5, y: 3000 }], refluxAsked);
    expect(plain(gapInNumbers(reading, refluxAsked))).toContain('it stops at 5 plates');
  });

  it('asks for a guess where nothing was drawn', () => {
    const reading = readGuess([], vapourAsked);
    expect(gapInNumbers(reading, vapourAsked)).toContain('You drew nothing');
    for (const words of [
      vapourWords(reading, strength),
      refluxWords(reading, time),
      stepsWords(reading, azeotrope, strength),
      ceilingWords(reading, azeotrope, '3 : 1', strength),
    ]) {
      expect(words).toBe('');
    }
  });

  it('is told in the units in use', () => {
    const proof = { ...vapourAsked, x: unitSystems.us.strength, y: unitSystems.us.strength };
    expect(
      plain(
        gapInNumbers(
          drawn(vapourAsked, (x) => x),
          proof,
        ),
      ),
    ).toMatch(/at \d+\.\d proof: you drew \d+\.\d proof/u);
  });
});

describe('a guess of what rises', () => {
  const words = (height: (x: number) => number): string => plain(vapourWords(drawn(vapourAsked, height), strength));

  it.each([
    ['on the diagonal', (x: number) => x, 'as if vapour were as strong as the liquid'],
    ['weaker than the liquid', (x: number) => x * x, 'boiling would make the kettle stronger'],
    ['pure from the start', () => 0.99, 'as if the alcohol boiled off alone'],
    ['low at the weak end', (x: number) => x + 0.3 * x * (1 - x) + 0.09, 'That is where one boil does most'],
    [
      'high at the strong end',
      (x: number) => Math.max(boilOf(slice, x).vapour, 0.6 + 0.4 * x),
      'more of the strong end',
    ],
    ['the answer itself', (x: number) => boilOf(slice, x).vapour, 'You have its shape'],
  ])('%s gets its own words', (_idea, height, expected) => {
    expect(words(height)).toContain(expected);
  });

  it('names the vapour over a weak liquid as the model has it', () => {
    expect(words(() => 0.99)).toContain(
      `over a liquid of 10.0 % vol the vapour is ${(100 * boilOf(slice, 0.1).vapour).toFixed(1)} % vol`,
    );
  });
});

describe('a guess of plates', () => {
  const words = (height: (x: number) => number): string =>
    plain(stepsWords(drawn(stepsAsked, height), azeotrope, strength));
  const first = ladder[0]!;

  it.each([
    ['equal steps', (x: number) => first + 0.045 * x, 'nearly equal steps'],
    ['straight over the azeotrope', (x: number) => first + 0.08 * x, 'No column does that'],
    ['little from the first plate', (x: number) => first + 0.38 * (1 - Math.exp(-x / 2.2)), 'less of the first plate'],
    ['too much from all', (x: number) => 0.968 - (0.968 - first) * Math.exp(-4 * x), 'more than they can'],
    ['too little from all', (x: number) => 0.9 - (0.9 - first) * Math.exp(-1.5 * x), 'less than they do'],
  ])('%s gets its own words', (_idea, height, expected) => {
    expect(words(height)).toContain(expected);
  });

  it('that is the answer is met', () => {
    const points = ladder.slice(1).map((y, k) => ({ x: k + 1, y }));
    expect(stepsWords(readGuess(points, stepsAsked), azeotrope, strength)).toContain('You have it');
  });
});

describe('a guess of reflux', () => {
  const words = (height: (x: number) => number): string => plain(refluxWords(drawn(refluxAsked, height), time));

  it.each([
    ['flat', () => 1300, 'as if reflux cost nothing'],
    ['falling', (x: number) => 1200 - 50 * x, 'Your line falls'],
    ['ever steeper', (x: number) => 1200 + 6600 * ((x - 1) / 11) ** 2, 'steeper and steeper'],
    ['levelling off', (x: number) => 1200 + 6600 * Math.sqrt((x - 1) / 11), 'levels off'],
    ['straight, too steep', (x: number) => 1200 + 900 * (x - 1), 'steeper than the answer'],
    ['straight, too gentle', (x: number) => 1200 + 400 * (x - 1), 'gentler than the answer'],
    ['the answer itself', (x: number) => 1200 + 600 * (x - 1), 'You have it'],
  ])('%s gets its own words', (_idea, height, expected) => {
    expect(words(height)).toContain(expected);
  });
});

describe('a guess of the ceiling', () => {
  const words = (height: (x: number) => number): string =>
    plain(ceilingWords(drawn(ceilingAsked, height), azeotrope, '3 : 1', strength));

  it.each([
    ['on to pure alcohol', (x: number) => 0.936 + ((x - 12) / 48) * 0.064, 'No column does that'],
    ['on to the azeotrope', (x: number) => 0.936 + ((x - 12) / 48) * 0.035, 'only more reflux lifts the spout'],
    ['flat from the start', () => 0.936, 'give up earlier'],
    ['falling', (x: number) => 0.936 - ((x - 12) / 48) * 0.05, 'Your line falls'],
    ['the answer itself', (x: number) => 0.956 - 0.02 * Math.exp(-(x - 12) / 6), 'You have it'],
  ])('%s gets its own words', (_idea, height, expected) => {
    expect(words(height)).toContain(expected);
  });

  it('that passes the azeotrope anywhere is told that no column does that', () => {
    const over = fc.array(fc.double({ min: 0.8, max: 1, noNaN: true }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(over, fc.double({ min: azeotrope + 1e-6, max: 1, noNaN: true }), fc.nat(), (heights, top, where) => {
        heights[where % heights.length] = top;
        const points = heights.map((y, k) => ({ x: 13 + k, y }));
        const text = ceilingWords(readGuess(points, ceilingAsked), azeotrope, '3 : 1', strength);
        expect(text).toContain('No column does that');
      }),
    );
  });
});

function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}
