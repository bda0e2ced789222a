// A figure taken along: the picture stands on its own, and PNG and CSV hold what the page shows.

import { describe, expect, it } from 'vitest';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/figure.css';
import '../../../../explorer/components/figure/kp-figure.js';
import '../../../../explorer/components/figure/take/kp-take-along.js';
import type { KpFigure } from '../../../../explorer/components/figure/kp-figure.js';
import { pictureOf } from '../../../../explorer/components/figure/take/picture.js';
import { labelTypeface, pngOf } from '../../../../explorer/components/figure/take/png.js';
import { ofRuns } from '../../../../explorer/figures/run/of-runs.js';
import { runFigure } from '../../../../explorer/figures/run/run-figure.js';
import { history } from '../../figures/cases.js';

describe('the picture of a figure', () => {
  it('needs no style sheet: every colour and typeface stands in it', async () => {
    const { svg } = picture(await shown());
    expect(svg.match(/.{9}(?:var\(|currentcolor| class=| style=|https?:(?!\/\/www\.w3\.org)).{9}/giu)).toBeNull();
    expect(svg).toContain('Source Sans 3');
    expect(svg).toContain('system-ui');
  });

  it('draws the same alone as on the page, in each curve and word', async () => {
    const figure = await shown();
    const drawn = (root: Element): string[] =>
      [...root.querySelectorAll(':is(path, text, line, circle, rect):not(.kp-cursor *, .kp-cursor-line, title)')]
        .filter((mark) => mark.closest('clipPath, pattern') === null)
        .map((mark) => {
          const { fill, stroke, strokeWidth, strokeDasharray, fontWeight } = getComputedStyle(mark);
          return [mark.tagName, mark.textContent, fill, stroke, strokeWidth, strokeDasharray, fontWeight].join(' ');
        });
    const onPage = drawn(figure.querySelector('.kp-figure-svg')!);
    document.body.innerHTML = picture(figure).svg;
    const [ground, ...marks] = drawn(document.body.querySelector('svg')!);
    expect(ground).toContain('rect');
    expect(marks.length).toBeGreaterThan(30);
    expect(marks).toEqual(onPage);
  });

  it('says its numbers to those who cannot see it', async () => {
    const { svg } = picture(await shown());
    const title = new DOMParser().parseFromString(svg, 'image/svg+xml').querySelector('title')!;
    expect(title.textContent).toBe('what it shows');
  });

  it('is by daylight whatever the theme, and leaves the theme as it was', async () => {
    const figure = await shown();
    const byDay = picture(figure).svg;
    document.documentElement.dataset.theme = 'dark';
    expect(picture(figure).svg).toBe(byDay);
    expect(document.documentElement.dataset.theme).toBe('dark');
  });

  it('has all its words inside, with room for a wider typeface', async () => {
    const { svg, width, height } = picture(await shown());
    document.body.innerHTML = svg;
    const frame = document.body.querySelector('svg')!.getBoundingClientRect();
    expect([frame.width, frame.height]).toEqual([width, height]);
    for (const words of document.body.querySelectorAll('text')) {
      const { left, right, top, bottom } = words.getBoundingClientRect();
      expect(left).toBeGreaterThanOrEqual(frame.left);
      expect(right).toBeLessThanOrEqual(frame.right);
      expect(top).toBeGreaterThanOrEqual(frame.top);
      expect(bottom).toBeLessThanOrEqual(frame.bottom);
    }
  });

  it('becomes a PNG of twice its size that is not one colour', async () => {
    const figure = await shown();
    const typeface = await labelTypeface();
    expect(typeface).toContain('font/woff2');
    const made = pictureOf(figure.querySelector<SVGSVGElement>('.kp-figure-svg')!, 'what it shows', typeface);
    const bitmap = await createImageBitmap(await pngOf(made));
    expect([bitmap.width, bitmap.height]).toEqual([2 * made.width, 2 * made.height]);
    const canvas = Object.assign(document.createElement('canvas'), { width: bitmap.width, height: bitmap.height });
    const pen = canvas.getContext('2d')!;
    pen.drawImage(bitmap, 0, 0);
    const colours = new Set(new Uint32Array(pen.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer));
    expect(colours.size).toBeGreaterThan(50);
  });
});

describe('the words under a figure that take it along', () => {
  it('open and close in place, and the figure keeps its size while it is drawn for a book', async () => {
    const figure = await shown();
    word(figure, 'Take it along').click();
    await expect.poll(() => figure.querySelector('kp-take-along button')).not.toBeNull();
    const before = figure.querySelector('.kp-figure-svg')!.getAttribute('width');
    expect(before).not.toBe('608');
    word(figure, 'Save as SVG').click();
    await expect.poll(() => figure.querySelector('.said')!.textContent).toMatch(/^Saved as the-run\.svg/u);
    expect(figure.querySelector('.kp-figure-svg')!.getAttribute('width')).toBe(before);
    word(figure, 'Leave it here').click();
    await expect.poll(() => figure.querySelector('kp-take-along') === null).toBe(true);
  });
});

async function shown(): Promise<KpFigure> {
  const main = document.createElement('main');
  main.style.cssText = 'width: 360px; display: block; margin-left: 60px';
  const figure = document.createElement('kp-figure');
  figure.figure = runFigure;
  figure.rows = ofRuns(history);
  main.append(figure);
  document.body.append(main);
  await document.fonts.ready;
  await figure.updateComplete;
  return figure;
}

function picture(figure: KpFigure): ReturnType<typeof pictureOf> {
  return pictureOf(figure.querySelector<SVGSVGElement>('.kp-figure-svg')!, 'what it shows');
}

function word(figure: KpFigure, text: string): HTMLButtonElement {
  const found = [...figure.querySelectorAll('button')].find((button) => button.textContent.trim() === text);
  if (found === undefined) throw new Error(`no button '${text}'`);
  return found;
}
