// The figures of the course as numbers, and a guess on one of them: what is hidden, what is drawn over what.

import { describe, expect, it } from 'vitest';
import type { Drawing, FigureSize } from '../../../explorer/figures/figure.js';
import { refluxPrice } from '../../../explorer/figures/reflux-price.js';
import { strengthSteps } from '../../../explorer/figures/strength-steps.js';
import { vapourOverLiquid } from '../../../explorer/figures/vapour-over-liquid.js';
import { unitSystems } from '../../../explorer/text/unit-systems.js';
import { byPlates, guesses, guessOfPlates, overLiquid, price, strengthStairs } from './course-cases.js';

const wide: FigureSize = { width: 608, layout: 'wide' };

const keysOf = (drawing: Drawing): string[] => drawing.panels[0]!.marks.map(({ kind, key }) => `${kind} ${key}`);
const named = (drawing: Drawing): string => drawing.panels[0]!.names.map(({ text }) => text).join('; ');

describe('what rises over what boils', () => {
  it('draws the vapour column as it is, in the unit in use', () => {
    for (const units of [unitSystems.metric, unitSystems.us]) {
      const drawing = vapourOverLiquid({ ...overLiquid, units }, wide);
      const mark = drawing.panels[0]!.marks.find(({ key }) => key === 'vapour')!;
      if (mark.kind !== 'curve') throw new Error('the vapour is no curve');
      expect(mark.y[40]).toBeCloseTo(units.strength.toShown(overLiquid.vapourStrength[40]!), 9);
    }
  });
});

describe('the staircase in strengths', () => {
  it('goes up to what rises and over to the diagonal, step by step', () => {
    const mark = strengthSteps(strengthStairs, wide).panels[0]!.marks.find(({ key }) => key === 'steps')!;
    if (mark.kind !== 'curve') throw new Error('the steps are no curve');
    const shown = Array.from(strengthStairs.steps, (strength) => 100 * strength);
    shown.forEach((rises, k) => {
      expect(mark.y[2 * k + 1]).toBeCloseTo(rises, 9);
      expect([mark.x[2 * k + 2], mark.y[2 * k + 2]]).toEqual([mark.y[2 * k + 1], mark.y[2 * k + 1]]);
    });
  });
});

describe('the price of reflux', () => {
  it('leaves room over the answer, so that the axis does not give it away', () => {
    const [, time] = refluxPrice(price, wide).panels;
    expect(time!.y.domain[1]).toBeGreaterThan(1.5 * 65);
  });
});

describe('a guess on a figure', () => {
  const before = guessOfPlates(guesses.before, wide);
  const after = guessOfPlates(guesses.after, wide);

  it('keeps ceiling and known points, and hides the answer with its name until it is asked for', () => {
    expect(keysOf(before)).toEqual(
      expect.arrayContaining(['level azeotrope', 'hatch beyond', 'dot known 4', 'curve guess']),
    );
    expect(keysOf(before)).not.toContain('curve strength');
    expect(named(before)).not.toContain('the answer');
    expect(before.description).not.toContain('95.7');
    expect(before.table().columns).toHaveLength(2);
    expect(before.table().rows.flat().join()).not.toContain('95.7');
  });

  it('lays the answer over the dots, and says and tables both', () => {
    const keys = keysOf(after);
    expect(keys.indexOf('curve strength')).toBeGreaterThan(keys.indexOf('curve guess'));
    expect(named(after)).toContain('the answer');
    expect(after.description).toContain('95.7');
    expect(after.description).toContain('your guess runs to');
    expect(after.table().rows.at(-1)).toEqual(['60', '99.0', '95.7']);
  });

  it('begins at the known point, with a short dotted start while nothing is drawn', () => {
    const empty = guessOfPlates({ ...guesses.before, points: [] }, wide);
    expect(named(empty)).toContain('draw on from here');
    const mark = empty.panels[0]!.marks.find(({ kind, key }) => kind === 'curve' && key === 'guess')!;
    if (mark.kind !== 'curve') throw new Error('the guess is no curve');
    expect([mark.x[0], mark.y[0]]).toEqual([12, 100 * 0.936]);
  });

  it('leaves no trace where the answer is asked for and nothing was drawn', () => {
    const alone = guessOfPlates({ ...guesses.after, points: [] }, wide);
    expect(keysOf(alone)).not.toContain('curve guess');
    expect(named(alone)).not.toMatch(/guess|draw/u);
  });

  it('draws where the hand of the keys stands, until the answer is out', () => {
    const hand = { x: 30, y: 0.95 };
    const at = (answered: boolean): string[] => keysOf(guessOfPlates({ ...guesses.before, hand, answered }, wide));
    expect(at(false)).toContain('dot guess hand');
    expect(at(true)).not.toContain('dot guess hand');
  });

  it('shows as many places as a reader can take in, the last of them the end of the answer', () => {
    expect(before.table().rows.length).toBeLessThan(20);
    expect(before.table().rows.at(-1)![0]).toBe(String(byPlates.plates[4]));
  });
});
