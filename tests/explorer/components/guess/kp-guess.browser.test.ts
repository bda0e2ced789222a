// <kp-guess> under hands: mouse, finger and keys draw the same kind of guess, one event a stroke; the
// answer is on the page only once it is asked for.

import axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/figure.css';
import '../../../../explorer/styles/figure-words.css';
import '../../../../explorer/styles/words.css';
import '../../../../explorer/components/guess/kp-guess.js';
import type { GuessState, KpGuess } from '../../../../explorer/components/guess/kp-guess.js';
import { guessFigure } from '../../../../explorer/figures/guess-figure.js';
import { strengthByPlates } from '../../../../explorer/figures/strength-by-plates.js';
import type { StrengthByPlatesRows } from '../../../../explorer/rows/course.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { settled } from '../../../support/settled.js';

const units = unitSystems.metric;
const number = {
  unit: 'plates',
  words: 'plates',
  step: 1,
  toShown: (si: number) => si,
  fromShown: (shown: number) => shown,
  text: (si: number) => si.toFixed(0),
  withUnit: (si: number) => `${si.toFixed(0)} plates`,
};
/** Invented. */
const rows: StrengthByPlatesRows = {
  plates: [4, 12, 20, 40, 60],
  strength: [0.874, 0.936, 0.951, 0.956, 0.957],
  known: [4, 12],
  strengthFrom: 0.8,
  azeotrope: { moleFraction: 0.8947, strength: 0.9722, temperature_K: 351.3, pressure: '1 atm' },
  title: 'Strength at the spout after 2.0 L',
  units,
};
const figure = guessFigure({
  figure: strengthByPlates,
  panel: 'plates',
  hidden: ['strength'],
  answer: ({ plates, strength }) => ({ x: plates, y: strength }),
});

describe('drawing a guess', () => {
  it('follows mouse and finger from press to release, and tells the page once a stroke', async () => {
    for (const pointerType of ['mouse', 'touch', 'pen']) {
      const { guess, told } = await shown();
      stroke(guess, pointerType, [
        [20, 94],
        [40, 96],
        [60, 97],
      ]);
      await settled();
      expect(told).toHaveLength(1);
      const { points, answered } = told[0]!;
      expect(answered).toBe(false);
      expect(points).toHaveLength(3);
      points.forEach(({ x, y }, k) => {
        expect(x).toBeCloseTo([20, 40, 60][k]!, 0);
        expect(y).toBeCloseTo([0.94, 0.96, 0.97][k]!, 2);
      });
      expect(guess.querySelector('.kp-curve.guess')!.getAttribute('d')).toMatch(/^M.*L.*L.*L/u);
      document.body.replaceChildren();
    }
  });

  it('draws again over what is there, takes strokes back one by one, and rubs all out', async () => {
    const { guess, told } = await shown();
    stroke(guess, 'mouse', [[20, 94], [40, 96], [60, 97]]); // prettier-ignore
    await settled();
    stroke(guess, 'mouse', [[30, 90], [50, 91]]); // prettier-ignore
    await settled();
    expect(told.at(-1)!.points.map(({ x }) => Math.round(x))).toEqual([20, 30, 50, 60]);
    word(guess, 'Take back').click();
    expect(told.at(-1)!.points.map(({ x }) => Math.round(x))).toEqual([20, 40, 60]);
    await guess.updateComplete;
    word(guess, 'Rub out').click();
    expect(told.at(-1)!.points).toEqual([]);
    await guess.updateComplete;
    expect(word(guess, 'Rub out').disabled).toBe(true);
    word(guess, 'Take back').click();
    expect(told.at(-1)!.points).toHaveLength(3);
  });

  it('goes on from the known point by keys, says where the hand is, and draws to it', async () => {
    const { guess, told } = await shown();
    await press(guess, 'ArrowRight', 'ArrowRight', 'PageUp', 'ArrowDown');
    expect(told).toEqual([]);
    expect(said(guess)).toBe('14 plates, 98.0 % vol');
    expect(guess.querySelector('.kp-dot.pencil')).not.toBeNull();
    await press(guess, ' ');
    expect(said(guess)).toBe('drawn to 14 plates, 98.0 % vol');
    expect(told.at(-1)!.points).toEqual([{ x: 14, y: 0.98 }]);
    await press(guess, 'End', 'ArrowUp', 'Enter');
    expect(told.at(-1)!.points).toHaveLength(2);
    expect(told.at(-1)!.points[1]!.x).toBe(60);
    await press(guess, 'Backspace');
    expect(told.at(-1)!.points).toEqual([{ x: 14, y: 0.98 }]);
    await press(guess, 'Tab');
    expect(told).toHaveLength(3);
  });

  it('does not begin beside the plot', async () => {
    const { guess, told } = await shown();
    const box = surface(guess).getBoundingClientRect();
    const at = { clientX: box.left + 100, clientY: box.bottom - 2, pointerId: 1, bubbles: true, button: 0 };
    surface(guess).dispatchEvent(new PointerEvent('pointerdown', at));
    surface(guess).dispatchEvent(new PointerEvent('pointerup', at));
    await settled();
    expect(told).toEqual([]);
  });
});

describe('the answer', () => {
  it('is nowhere on the page before it is asked for: not drawn, not told, not in the table', async () => {
    const { guess } = await shown();
    word(guess, 'Show the numbers').click();
    await guess.querySelector('kp-figure')!.updateComplete;
    expect(guess.querySelector('.kp-curve.ink.result')).toBeNull();
    expect(guess.textContent).not.toMatch(/95\.[1-7]|the answer is/u);
    expect(guess.querySelector('[role=img]')!.getAttribute('aria-label')).toContain('The answer is not shown yet');
  });

  it('lies in ink over the dots once it is, with words, and nothing can be drawn until it is put away', async () => {
    const { guess, told } = await shown();
    stroke(guess, 'mouse', [[20, 94], [60, 97]]); // prettier-ignore
    await settled();
    word(guess, 'Show the answer').click();
    expect(told.at(-1)!.answered).toBe(true);
    guess.reply = 'the answer is 95.7';
    await settled();
    const marks = [...guess.querySelectorAll('.kp-curve')].map((node) => node.getAttribute('class'));
    expect(marks.indexOf('kp-curve ink result')).toBeGreaterThan(marks.indexOf('kp-curve pencil guess'));
    expect(guess.querySelector('.guess-reply')!.textContent).toContain('95.7');
    expect(guess.querySelector('.guess-surface')).toBeNull();
    word(guess, 'Put the answer away').click();
    await settled();
    expect(guess.querySelector('.guess-surface')).not.toBeNull();
    expect(told.at(-1)!.points).toHaveLength(2);
  });

  it('comes with a table of guess and answer', async () => {
    const { guess } = await shown();
    word(guess, 'Show the answer').click();
    word(guess, 'Show the numbers').click();
    await settled();
    expect([...guess.querySelectorAll('.numbers thead th')].map((cell) => cell.textContent.trim())).toHaveLength(3);
    expect(guess.querySelector('.numbers')!.textContent).toContain('95.7');
  });
});

describe('a guess', () => {
  it('leaves axe nothing to complain of, before and after the answer', async () => {
    const { guess } = await shown();
    expect((await axe.run(guess)).violations.map(({ id }) => id)).toEqual([]);
    word(guess, 'Show the answer').click();
    await settled();
    expect((await axe.run(guess)).violations.map(({ id }) => id)).toEqual([]);
  });
});

async function shown(): Promise<{ guess: KpGuess; told: GuessState[] }> {
  const main = document.createElement('main');
  main.style.cssText = 'width: 608px; max-width: 100%; display: block';
  const guess = document.createElement('kp-guess');
  Object.assign(guess, {
    figure,
    rows,
    panel: 'plates',
    x: number,
    y: { ...units.strength, step: 0.5 },
    start: { x: 12, y: 0.936 },
    field: { x: [12, 60], y: [0.8, 1], apart: 0.4 },
    task: 'Draw the strength with 12 to 60 plates.',
  });
  const told: GuessState[] = [];
  guess.addEventListener('kp-guess', ({ detail }) => told.push(detail));
  main.append(guess);
  document.body.append(main);
  await settled();
  return { guess, told };
}

/** One stroke through places in shown units. */
function stroke(guess: KpGuess, pointerType: string, places: readonly (readonly [number, number])[]): void {
  const plot = guess.querySelector('kp-figure')!.plotOf('plates')!;
  const box = surface(guess).getBoundingClientRect();
  const share = (value: number, [low, high]: readonly [number, number]): number => (value - low) / (high - low);
  const send = (type: string, [x, y]: readonly [number, number]): boolean =>
    surface(guess).dispatchEvent(
      new PointerEvent(type, {
        pointerType,
        pointerId: 1,
        button: 0,
        bubbles: true,
        cancelable: true,
        clientX: box.left + plot.left + plot.width * share(x, plot.x.domain),
        clientY: box.top + plot.top + plot.height * (1 - share(y, plot.y.domain)),
      }),
    );
  surface(guess).setPointerCapture = () => undefined; // a made-up pointer cannot be captured
  send('pointerdown', places[0]!);
  for (const place of places.slice(1)) send('pointermove', place);
  send('pointerup', places.at(-1)!);
}

async function press(guess: KpGuess, ...keys: string[]): Promise<void> {
  for (const key of keys) {
    surface(guess).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    await settled();
  }
}

function surface(guess: KpGuess): HTMLElement {
  return guess.querySelector<HTMLElement>('.guess-surface')!;
}

function said(guess: KpGuess): string {
  return guess.querySelector('.spoken-only')!.textContent.replaceAll('\u00a0', ' ');
}

function word(guess: KpGuess, text: string): HTMLButtonElement {
  return [...guess.querySelectorAll('button')].find((button) => button.textContent.trim() === text)!;
}
