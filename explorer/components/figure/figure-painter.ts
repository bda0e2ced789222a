// The one updater: puts any Drawing into one svg, keeping what has not changed.

import type { Drawing, FigureSize } from '../../figures/figure.js';
import { CursorLayer } from './cursor-layer.js';
import { geometryOf } from './geometry.js';
import type { Geometry } from './geometry.js';
import { PanelPainter } from './panel-painter.js';
import { setAttributes, setText, svgElement } from './svg.js';

export class FigurePainter {
  readonly svg = svgElement('svg', { class: 'kp-figure-svg', 'aria-hidden': 'true', focusable: 'false' });
  readonly #id: string;
  readonly #panels = svgElement('g');
  readonly #axisTitle = svgElement('text', { class: 'kp-axis-title' });
  readonly #cursor = new CursorLayer();
  #painters: PanelPainter[] = [];
  #keys = '';

  constructor(id: string) {
    this.#id = id;
    this.svg.append(hatching(`${id}-hatch`), this.#cursor.line, this.#panels, this.#axisTitle, this.#cursor.root);
  }

  /** `cursorX`, SI, is where the cursor stands now: names keep clear of it. */
  paint(drawing: Drawing, size: FigureSize, cursorX: number | null = null): Geometry {
    const geometry = geometryOf(drawing, size);
    const width = geometry.left + geometry.width + drawing.rightRoom;
    setAttributes(this.svg, { width, height: geometry.height });
    this.#keepPanels(drawing);
    const { cursor } = drawing;
    const cursorShown = cursor === null || cursorX === null ? null : cursor.quantity.toShown(cursorX);
    drawing.panels.forEach((panel, index) => {
      const { top, titleY } = geometry.panels[index]!;
      this.#painters[index]!.paint(drawing.x, panel, {
        left: geometry.left,
        top,
        width: geometry.width,
        titleX: 0,
        titleY,
        isLast: index === drawing.panels.length - 1,
        layout: size.layout,
        cursorShown,
      });
    });
    setAttributes(this.#axisTitle, { x: geometry.left, y: geometry.axisTitleY });
    setText(this.#axisTitle, axisWords(drawing));
    const visibility = drawing.cursor === null ? 'hidden' : 'visible';
    setAttributes(this.#cursor.line, { visibility });
    setAttributes(this.#cursor.root, { visibility });
    return geometry;
  }

  moveCursor(drawing: Drawing, geometry: Geometry, x: number): void {
    this.#cursor.move(drawing, geometry, x);
  }

  #keepPanels(drawing: Drawing): void {
    const keys = drawing.panels.map((panel) => panel.key).join();
    if (keys === this.#keys) return;
    this.#keys = keys;
    this.#painters = drawing.panels.map((panel) => new PanelPainter(`${this.#id}-${panel.key}`, `${this.#id}-hatch`));
    this.#panels.replaceChildren(...this.#painters.map((painter) => painter.root));
  }
}

// 'litres collected' names its unit itself; 'alcohol in the liquid' is followed by it.
function axisWords({ x, cursor }: Drawing): string {
  return cursor === null ? `${x.title}, ${x.unit}` : x.title;
}

function hatching(id: string): SVGDefsElement {
  const defs = svgElement('defs');
  const pattern = svgElement('pattern', {
    id,
    width: 5,
    height: 5,
    patternUnits: 'userSpaceOnUse',
    patternTransform: 'rotate(45)',
  });
  pattern.append(svgElement('line', { class: 'kp-hatching', x1: 0, x2: 0, y1: 0, y2: 5 }));
  defs.append(pattern);
  return defs;
}
