// The cursor of a figure: one line through all panels, a dot on each curve, its value on the row of the
// x axis title. A layer of its own, so that moving it touches nothing else.

import type { Drawing } from '../../figures/figure.js';
import type { Geometry } from './geometry.js';
import { measureText } from './measure-text.js';
import { toPixels } from './pixels.js';
import { KeyedChildren, setAttributes, setText, svgElement } from './svg.js';

interface Dot {
  readonly hand: string;
  readonly x: number;
  readonly y: number;
}

export class CursorLayer {
  /** Under everything else, so that curves and words stay whole. */
  readonly line = svgElement('line', { class: 'kp-cursor-line' });
  /** Above everything else. */
  readonly root = svgElement('g', { class: 'kp-cursor' });
  readonly #value = svgElement('text', { class: 'kp-axis-title' });
  readonly #dots: KeyedChildren<Dot, SVGCircleElement>;

  constructor() {
    const dots = svgElement('g');
    this.root.append(dots, this.#value);
    this.#dots = new KeyedChildren(dots, () => svgElement('circle', { r: 4.5 }), updateDot);
  }

  /** Stands at x, in SI of the cursor's quantity. */
  move(drawing: Drawing, geometry: Geometry, x: number): void {
    const { cursor } = drawing;
    if (cursor === null) return;
    const shown = cursor.quantity.toShown(x);
    const px = geometry.left + toPixels(drawing.x, geometry.width, 'right')(shown);
    const top = geometry.panels[0]?.top ?? 0;
    const bottom = geometry.panels.at(-1)?.bottom ?? 0;
    setAttributes(this.line, { x1: px, x2: px, y1: top, y2: bottom });
    this.#dots.set(dotsAt(drawing, geometry, shown, px));
    const text = cursor.quantity.withUnit(x);
    const half = measureText(text, true) / 2;
    const first = geometry.left + measureText(drawing.x.title, true) + 14 + half;
    const last = geometry.left + geometry.width - half;
    setAttributes(this.#value, { x: Math.min(Math.max(px, first), last), y: geometry.axisTitleY });
    setText(this.#value, text);
  }
}

function dotsAt(drawing: Drawing, geometry: Geometry, shown: number, px: number): [string, Dot][] {
  return drawing.panels.flatMap((panel, p) => {
    const place = geometry.panels[p]!;
    const toY = toPixels(panel.y, panel.height, 'up');
    return panel.cursorSeries.flatMap((series, s): [string, Dot][] => {
      const value = series.at(shown);
      if (value === null) return [];
      const y = toY(value);
      // None outside the plot.
      if (y > panel.height || y < 0) return [];
      return [[`${p} ${s}`, { hand: series.hand, x: px, y: place.top + y }]];
    });
  });
}

function updateDot(node: SVGCircleElement, dot: Dot): void {
  setAttributes(node, { class: dot.hand, cx: dot.x, cy: dot.y });
}
