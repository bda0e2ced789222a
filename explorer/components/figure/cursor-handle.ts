// What moves the cursor of a figure and says where it stands: an unseen slider over the plot.

import { html, type TemplateResult } from 'lit';
import type { Drawing } from '../../figures/figure.js';
import type { Geometry } from './geometry.js';
import { readOutWords } from './read-out.js';

export interface CursorHands {
  readonly onKey: (event: KeyboardEvent) => void;
  readonly onPointer: (event: PointerEvent) => void;
}

export function cursorHandle(drawing: Drawing, geometry: Geometry, x: number, hands: CursorHands): TemplateResult {
  const { quantity, range } = drawing.cursor!;
  const { left, width, axisTitleY } = geometry;
  const words = drawing.readOut === null ? quantity.withUnit(x) : readOutWords(drawing.readOut, x);
  return html`<div
    class="cursor-handle"
    role="slider"
    tabindex="0"
    aria-label="Cursor along ${drawing.x.title}"
    aria-valuemin=${quantity.toShown(range[0])}
    aria-valuemax=${quantity.toShown(range[1])}
    aria-valuenow=${quantity.toShown(x)}
    aria-valuetext=${words}
    .style=${`left: ${String(left)}px; width: ${String(width)}px; height: ${String(axisTitleY + 12)}px`}
    @keydown=${hands.onKey}
    @pointerdown=${hands.onPointer}
    @pointermove=${hands.onPointer}
  ></div>`;
}
