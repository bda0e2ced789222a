// <kp-figure> under hands: keyboard and pointer move the cursor, one event a gesture, the words under it
// act, and pictures of a few cases stay as they were.

import axe from 'axe-core';
import { beforeAll, describe, expect, it } from 'vitest';
import '../../../explorer/styles/tokens.css';
import '../../../explorer/styles/page.css';
import '../../../explorer/styles/figure.css';
import '../../../explorer/styles/figure-words.css';
import '../../../explorer/components/figure/kp-figure.js';
import { FigurePainter } from '../../../explorer/components/figure/figure-painter.js';
import { forgetWidths } from '../../../explorer/components/figure/measure-text.js';
import type { KpFigure } from '../../../explorer/components/figure/kp-figure.js';
import { ofRuns } from '../../../explorer/figures/run/of-runs.js';
import { runFigure } from '../../../explorer/figures/run/run-figure.js';
import { cases, history } from './cases.js';
import { inkRun, inventedRun } from './invented-rows.js';
import { pictureText } from './picture-text.js';

describe('the cursor of a figure', () => {
  it('steps with the arrow keys and jumps with the page keys, one event each', async () => {
    const { figure, moves } = await shown();
    const start = cursorOf(figure);
    press(figure, 'ArrowRight');
    expect(moves).toHaveLength(1);
    expect(cursorOf(figure)).toBe(start);
    await figure.updateComplete;
    expect(cursorOf(figure)).toBeCloseTo(start + 0.1, 9);
    press(figure, 'PageUp');
    press(figure, 'ArrowLeft');
    await figure.updateComplete;
    expect(moves).toHaveLength(3);
    expect(cursorOf(figure)).toBeCloseTo(start + 1, 9);
    expect(moves.at(-1)).toBeCloseTo((start + 1) / 1000, 12);
  });

  it('goes to the ends and no further, and says nothing when it cannot move', async () => {
    const { figure, moves } = await shown();
    press(figure, 'End');
    press(figure, 'End');
    press(figure, 'ArrowRight');
    await figure.updateComplete;
    expect(moves).toEqual([0.012]);
  });

  it('follows the pointer to the nearest step', async () => {
    const { figure, moves } = await shown();
    const box = handle(figure).getBoundingClientRect();
    const pointer = { clientX: box.left + box.width * 0.75, clientY: box.top + 40, bubbles: true, pointerId: 1 };
    handle(figure).dispatchEvent(new PointerEvent('pointermove', pointer));
    await figure.updateComplete;
    expect(moves).toHaveLength(1);
    expect(moves[0]).toBeCloseTo(0.009, 9);
    expect(line(figure).getBoundingClientRect().left).toBeCloseTo(pointer.clientX, 0);
  });

  it('moves without an event when the page sets it', async () => {
    const { figure, moves } = await shown();
    figure.cursorX = 0.003;
    await figure.updateComplete;
    expect(cursorOf(figure)).toBeCloseTo(3, 9);
    expect(moves).toEqual([]);
  });

  it('runs through all panels, with a dot on each curve and the values in the table and in words', async () => {
    const { figure } = await shown();
    const sheets = [...figure.querySelectorAll<SVGGElement>('.kp-sheet')].map(plotOf);
    const cursor = line(figure).getBoundingClientRect();
    expect(cursor.top).toBeCloseTo(Math.min(...sheets.map((box) => box.top)), 0);
    expect(cursor.bottom).toBeCloseTo(Math.max(...sheets.map((box) => box.bottom)), 0);
    expect(figure.querySelectorAll('.kp-cursor circle')).toHaveLength(4);
    const spout = figure.querySelector('.read-out tbody td')!.textContent.trim();
    expect(Number(spout)).toBeGreaterThan(85);
    expect(handle(figure).getAttribute('aria-valuetext')).toContain(`spout, % vol ${spout}`);
  });
});

describe('a figure', () => {
  it('puts the plot exactly as wide as its column, ticks inside on a narrow screen', async () => {
    const { figure } = await shown();
    const sheet = plotOf(figure.querySelector<SVGGElement>('.kp-sheet')!);
    const host = figure.getBoundingClientRect();
    const narrow = !matchMedia('(min-width: 1000px)').matches;
    expect(sheet.left).toBeCloseTo(host.left + (narrow ? 28 : 0), 0);
    expect(sheet.right).toBeCloseTo(host.right, 0);
  });

  it('changes only its curves when rows change and axes do not', async () => {
    const { figure } = await shown();
    const [sheet, svg] = [figure.querySelector('.kp-sheet'), figure.querySelector('svg')];
    const path = figure.querySelector('.kp-curve.ink.result')!;
    const before = path.getAttribute('d');
    figure.rows = ofRuns({ ...history, runs: [{ ...inkRun, run: inventedRun(0.95, 4.4) }, history.runs[1]!] });
    await figure.updateComplete;
    expect(figure.querySelector('svg')).toBe(svg);
    expect(figure.querySelector('.kp-sheet')).toBe(sheet);
    expect(figure.querySelector('.kp-curve.ink.result')).toBe(path);
    expect(path.getAttribute('d')).not.toBe(before);
  });

  it('shows its numbers as a table when asked and puts them away again', async () => {
    const { figure } = await shown();
    expect(figure.querySelector('.numbers')).toBeNull();
    word(figure, 'Show the numbers').click();
    await figure.updateComplete;
    expect(figure.querySelectorAll('.numbers tbody tr').length).toBeGreaterThan(10);
    word(figure, 'Put the numbers away').click();
    await figure.updateComplete;
    expect(figure.querySelector('.numbers')).toBeNull();
  });

  it('asks the page to keep or rub out pencil lines, and keeps none itself', async () => {
    const { figure } = await shown();
    const asked: string[] = [];
    figure.addEventListener('pencil', (event) => asked.push(event.detail.action));
    word(figure, 'Keep as a pencil line').click();
    word(figure, 'Rub out').click();
    expect(asked).toEqual(['keep', 'rubOut']);
    figure.pencils = 0;
    await figure.updateComplete;
    expect(word(figure, 'Rub out').disabled).toBe(true);
  });

  it('is named by its description, with nothing for axe to complain of', async () => {
    const { figure } = await shown();
    word(figure, 'Show the numbers').click();
    await figure.updateComplete;
    expect(figure.querySelector('[role=img]')!.getAttribute('aria-label')).toMatch(/^Strength at the spout .*\d/);
    const { violations } = await axe.run(figure);
    expect(violations.map((rule) => rule.id)).toEqual([]);
  });
});

// Names are placed by their widths: the bundled typeface must be there.
beforeAll(async () => {
  await Promise.all(['400', '600'].map((weight) => document.fonts.load(`${weight} 15px 'Source Sans 3'`)));
  forgetWidths();
});

describe.each(cases)('the picture of $name', ({ name, figure, rows, pair }) => {
  it.each(['wide', 'narrow'] as const)('is as it was, %s', async (layout) => {
    const painter = new FigurePainter('picture');
    const width = layout === 'narrow' ? 322 : pair ? 432 : 608;
    const drawing = figure(rows as never, { layout, width });
    painter.paint(drawing, { layout, width });
    expect(drawing.panels.length).toBeGreaterThan(0);
    await expect(pictureText(painter.svg)).toMatchFileSnapshot(`./pictures/${name.replaceAll(' ', '-')}-${layout}.svg`);
  });
});

async function shown(): Promise<{ figure: KpFigure; moves: number[] }> {
  const main = document.createElement('main');
  main.style.cssText = 'width: 608px; max-width: 100%; display: block';
  const figure = document.createElement('kp-figure');
  figure.figure = runFigure;
  figure.rows = ofRuns(history);
  figure.pencils = 1;
  const moves: number[] = [];
  figure.addEventListener('cursor-moved', (event) => moves.push(event.detail.x));
  main.append(figure);
  document.body.append(main);
  await figure.updateComplete;
  return { figure, moves };
}

// The plot rectangle on the screen; what hangs out of it does not count.
function plotOf(sheet: SVGGElement): { left: number; right: number; top: number; bottom: number } {
  const base = [...sheet.querySelectorAll('.kp-base')].at(-1)!;
  const { left, right, bottom } = base.getBoundingClientRect();
  return { left, right, top: sheet.getScreenCTM()!.f, bottom: bottom - 0.5 }; // the line stands half a px in
}

function handle(figure: KpFigure): HTMLElement {
  return figure.querySelector<HTMLElement>('[role=slider]')!;
}

function line(figure: KpFigure): Element {
  return figure.querySelector('.kp-cursor-line')!;
}

function cursorOf(figure: KpFigure): number {
  return Number(handle(figure).getAttribute('aria-valuenow'));
}

function press(figure: KpFigure, key: string): void {
  handle(figure).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
}

function word(figure: KpFigure, text: string): HTMLButtonElement {
  const found = [...figure.querySelectorAll('button')].find((button) => button.textContent.trim() === text);
  if (found === undefined) throw new Error(`no button '${text}'`);
  return found;
}
