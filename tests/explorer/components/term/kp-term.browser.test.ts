// <kp-term> under hands: opens its line by mouse and keys, covers nothing, moves no figure where the margin is
// free, and is not there on paper.

import axe from 'axe-core';
import { html, render } from 'lit';
import { describe, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/frame.css';
import '../../../../explorer/styles/margin.css';
import { prose } from '../../../../explorer/components/term/prose.js';
import { settled } from '../../../support/settled.js';

const wide = 1300;
const narrow = 390;

describe('a word of the glossary', () => {
  it('opens and closes its line, by mouse, Enter and Escape', async () => {
    const { button, means } = await shown(narrow);
    expect(means().textContent.trim()).toBe('');
    expect(button.getAttribute('aria-expanded')).toBe('false');
    button.click();
    await settled();
    expect(means().textContent).toContain('Parts sent back for each part kept');
    expect(button.getAttribute('aria-expanded')).toBe('true');
    expect(button.getAttribute('aria-controls')).toBe(means().id);
    button.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    await settled();
    expect(means().textContent.trim()).toBe('');
  });

  it('keeps its full stop, and stands as plain text where the glossary has no line', async () => {
    await shown(narrow);
    expect(document.querySelector('p')!.textContent.replace(/\s+/gu, ' ')).toContain('reflux ratio.');
    expect(document.querySelector('#unknown')!.textContent).toContain('a gizmo, it is');
    expect(document.querySelector('#unknown button')).toBeNull();
  });

  it('opens in the margin where there is room, and moves nothing', async () => {
    const { button, means, figure } = await shown(wide);
    const before = figure.getBoundingClientRect().top;
    button.click();
    await settled();
    const box = means().getBoundingClientRect();
    expect(box.left).toBeGreaterThan(document.querySelector('p')!.getBoundingClientRect().right);
    expect(figure.getBoundingClientRect().top).toBe(before);
  });

  it('opens in the text where something stands in the margin, and covers it not', async () => {
    const { button, means } = await shown(wide, true);
    button.click();
    await settled();
    const box = means().getBoundingClientRect();
    const note = document.querySelector('.notes p')!.getBoundingClientRect();
    expect(box.right).toBeLessThanOrEqual(note.left);
    expect(box.height).toBeGreaterThan(10);
  });

  it('opens under its line on a phone, between its words and the next', async () => {
    const { button, means } = await shown(narrow);
    button.click();
    await settled();
    expect(means().getBoundingClientRect().top).toBeGreaterThanOrEqual(button.getBoundingClientRect().bottom - 2);
    expect(means().getBoundingClientRect().right).toBeLessThanOrEqual(narrow);
  });

  it('leaves axe nothing to complain of, closed and open', async () => {
    const { button } = await shown(narrow);
    expect((await axe.run(document.querySelector('main')!)).violations.map(({ id }) => id)).toEqual([]);
    button.click();
    await settled();
    expect((await axe.run(document.querySelector('main')!)).violations.map(({ id }) => id)).toEqual([]);
  });
});

async function shown(
  width: number,
  note = false,
): Promise<{ button: HTMLButtonElement; means: () => HTMLElement; figure: HTMLElement }> {
  await page.viewport(width, 800);
  const text = 'What the head sends back for what it lets out is the [[reflux ratio]]. It is set at the head.';
  const notes = html`<aside class="notes">
    <p>Something stands here already, beside the first lines of the text.</p>
  </aside>`;
  const entry = html`<section class="entry">
      <p>${prose(text)}</p>
      ${note ? notes : ''}
    </section>
    <p id="unknown">${prose('This is a [[gizmo]], it is unknown.')}</p>
    <div class="figure-stand-in" style="height: 40px"></div>`;
  const main = document.createElement('main');
  const inner = document.createElement('div');
  main.append(inner);
  document.body.append(main);
  render(entry, inner);
  await settled();
  return {
    button: document.querySelector('button')!,
    means: () => document.querySelector<HTMLElement>('.term-means')!,
    figure: document.querySelector<HTMLElement>('.figure-stand-in')!,
  };
}
