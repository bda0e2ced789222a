// <kp-still>: it follows the moment in place, has a name and numbers, and its pictures stay as they were.

import axe from 'axe-core';
import { describe, expect, it, vi } from 'vitest';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/still.css';
import '../../../../explorer/styles/figure-words.css';
import '../../../../explorer/components/still/kp-still.js';
import type { KpStill } from '../../../../explorer/components/still/kp-still.js';
import { StillPainter } from '../../../../explorer/components/still/still-painter.js';
import { stillPicture } from '../../../../explorer/figures/still/picture.js';
import { stillMoment } from '../../../../explorer/state/still-moment.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';
import { potAndDoubler, twelvePlates } from '../../still-cases.js';
import type { StillCase } from '../../still-cases.js';
import { pictureText } from '../picture-text.js';
import { coldPlates, packedTower, picturedCases, retorts, runLow } from './invented-moments.js';
import type { PicturedCase } from './invented-moments.js';

const { metric, us } = unitSystems;

describe('the picture of a still', () => {
  it('follows the moment in place: levels, temperatures and streams, with no element made anew', async () => {
    const one = potAndDoubler;
    const still = await shown({ still: one.still, moment: at(one, 0.5) });
    const [svg, surface] = [still.querySelector('svg'), byPlace(still, '.still-surface', 1)];
    const [levelBefore, words] = [surface.getAttribute('d'), still.querySelectorAll('text').length];
    still.moment = at(one, 0.9);
    await still.updateComplete;
    expect(still.querySelector('svg')).toBe(svg);
    expect(byPlace(still, '.still-surface', 1)).toBe(surface);
    expect(surface.getAttribute('d')).not.toBe(levelBefore);
    expect(still.textContent).toContain(metric.temperature.withUnit(at(one, 0.9).kettle.temperature_K));
    expect(still.querySelectorAll('text').length).toBeGreaterThanOrEqual(words);
  });

  it('moves nothing by itself', async () => {
    const clocks = ['setTimeout', 'setInterval', 'requestAnimationFrame', 'requestIdleCallback'] as const;
    vi.useFakeTimers({ toFake: [...clocks] });
    const still = await shown({ still: twelvePlates.still, moment: at(twelvePlates, 0.8) });
    const before = still.innerHTML;
    await vi.advanceTimersByTimeAsync(10_000);
    expect(still.innerHTML).toBe(before);
    expect(still.getAnimations({ subtree: true })).toEqual([]);
  });

  it('is named by what it shows at that moment', async () => {
    const still = await shown({ still: twelvePlates.still, moment: at(twelvePlates, 0.8) });
    const name = (): string => still.querySelector('[role=img]')!.getAttribute('aria-label')!;
    expect(name()).toMatch(
      /^The still 3\sh .* after the start: the kettle holds .*; the top plate stands at .*; the spout runs .*\.$/u,
    );
    const before = name();
    still.moment = at(twelvePlates, 0.1);
    await still.updateComplete;
    expect(name()).not.toBe(before);
    expect(name()).toContain('nothing runs from the spout');
  });

  it('shows its numbers as a table that follows too, and puts them away again', async () => {
    const still = await shown({ still: twelvePlates.still, moment: at(twelvePlates, 0.8) });
    const button = still.querySelector('button')!;
    button.click();
    await still.updateComplete;
    const cell = (): string => still.querySelector('.numbers tbody td')!.textContent;
    const before = cell();
    expect(still.querySelectorAll('.numbers tbody tr').length).toBeGreaterThan(14);
    still.moment = at(twelvePlates, 0.2);
    await still.updateComplete;
    expect(cell()).not.toBe(before);
    button.click();
    await still.updateComplete;
    expect(still.querySelector('.numbers')).toBeNull();
  });

  it('speaks the units it is given', async () => {
    const still = await shown(runLow);
    still.units = us;
    await still.updateComplete;
    expect(still.textContent).toContain('°F');
    expect(still.textContent).not.toContain('°C');
  });

  it('warns in words, in a line that is kept free when there is nothing to warn of', async () => {
    const still = await shown(runLow);
    const line = still.querySelector<HTMLElement>('.still-warnings')!;
    const height = line.offsetHeight;
    expect(line.textContent).toContain('heating surface');
    still.moment = { ...runLow.moment, kettle: { ...runLow.moment.kettle, level_m: 0.5, covered: true } };
    await still.updateComplete;
    expect(line.textContent).toBe('');
    expect(line.offsetHeight).toBe(height);
  });

  it.each([retorts, packedTower, coldPlates])('has nothing for axe to complain of: $name', async (one) => {
    const still = await shown(one);
    still.querySelector('button')!.click();
    await still.updateComplete;
    const { violations } = await axe.run(still);
    expect(violations.map((rule) => rule.id)).toEqual([]);
  });

  it.each(picturedCases)('keeps the words of $name apart and within its width', async (one) => {
    for (const width of [608, 350, 280]) {
      document.body.replaceChildren();
      const still = await shown(one, width);
      const host = still.getBoundingClientRect();
      const boxes = [...still.querySelectorAll('text')].map((text) => ({
        text: text.textContent,
        box: text.getBoundingClientRect(),
      }));
      for (const [i, { text, box }] of boxes.entries()) {
        expect(box.right, text).toBeLessThanOrEqual(host.right + 1);
        for (const other of boxes.slice(i + 1)) {
          expect(apart(box, other.box), `${text} over ${other.text}`).toBe(true);
        }
      }
    }
  });
});

describe.each(picturedCases)('the picture of $name', ({ name, still, moment }) => {
  it.each(['wide', 'narrow'] as const)('is as it was, %s', async (layout) => {
    const painter = new StillPainter();
    const width = layout === 'narrow' ? 350 : 608;
    painter.paint(stillPicture(still, moment, metric, { layout, width, steady: false }), layout);
    const file = name.replaceAll(/[ ,]+/gu, '-');
    await expect(pictureText(painter.svg)).toMatchFileSnapshot(`./pictures/${file}-${layout}.svg`);
  });
});

async function shown(one: Pick<PicturedCase, 'still' | 'moment'>, width = 608): Promise<KpStill> {
  await Promise.all(['400', '600'].map((weight) => document.fonts.load(`${weight} 15px 'Source Sans 3'`)));
  const main = document.createElement('main');
  main.style.cssText = `width: ${String(width)}px; display: block`;
  const still = document.createElement('kp-still');
  Object.assign(still, { draw: stillPicture, still: one.still, moment: one.moment, units: metric });
  main.append(still);
  document.body.append(main);
  await still.updateComplete;
  return still;
}

function at(one: StillCase, share: number): ReturnType<typeof stillMoment> {
  const run = one.run();
  return stillMoment(one.still, run, share * (run.rows - 1));
}

function byPlace(still: KpStill, selector: string, index: number): Element {
  return still.querySelectorAll(selector)[index]!;
}

// A line's box is taller than its letters: two px of it may overlap.
function apart(a: DOMRect, b: DOMRect): boolean {
  return a.right <= b.left + 1 || b.right <= a.left + 1 || a.bottom <= b.top + 3 || b.bottom <= a.top + 3;
}
