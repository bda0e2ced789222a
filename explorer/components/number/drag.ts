// A sideways drag on a number: one step for so many pixels, counted from where the hand went down.

import { onMoves } from './moves.js';

const pixelsPerStep = 6;
const stillnessPx = 3;

/** What a drag tells its owner. */
export interface DragHandlers {
  readonly started: () => void;
  /** Whole steps from the start, to the right positive; told when they change. */
  readonly moved: (steps: number) => void;
  readonly ended: () => void;
  /** The hand went up without having moved. */
  readonly pressed: () => void;
}

/** Follows the pointer of `down` until it goes up; the element keeps the pointer. */
export function followDrag(element: HTMLElement, down: PointerEvent, handlers: DragHandlers): void {
  let dragging = false;
  let steps = 0;
  const stop = new AbortController();
  const options = { signal: stop.signal };
  onMoves(element, stop.signal, (move) => {
    if (move.pointerId !== down.pointerId) return;
    const way = move.clientX - down.clientX;
    if (!dragging && Math.abs(way) > stillnessPx) {
      dragging = true;
      element.setPointerCapture(down.pointerId);
      handlers.started();
    }
    const now = Math.trunc(way / pixelsPerStep);
    if (!dragging || now === steps) return;
    steps = now;
    handlers.moved(now);
  });
  const end = (up: PointerEvent): void => {
    if (up.pointerId !== down.pointerId) return;
    stop.abort();
    if (dragging) handlers.ended();
    else if (up.type === 'pointerup') handlers.pressed();
  };
  element.addEventListener('pointerup', end, options);
  element.addEventListener('pointercancel', end, options);
}
