// One stroke of a pointer over a plot, from press to release, in shown units of its axes.

import type { PlotPlace } from '../figure/kp-figure.js';
import type { Point } from './guess.js';

/** Px beside the plot where a stroke may still begin. */
const reach = 24;

/**
 * Follows a pointer from its press on; `draw` is called at each place it passes, with the point the last call
 * returned. Resolves when it is lifted; null for a press that is not on the plot.
 */
export function strokeByPointer(
  press: PointerEvent,
  plot: PlotPlace,
  draw: (at: Point, from: Point | null) => Point,
): Promise<void> | null {
  const surface = press.currentTarget as HTMLElement;
  const place = placeOf(press, surface, plot);
  if (place === null) return null;
  press.preventDefault();
  surface.focus({ preventScroll: true });
  surface.setPointerCapture(press.pointerId);
  let from = draw(place, null);
  return new Promise((resolve) => {
    const move = (event: PointerEvent): void => {
      if (event.pointerId !== press.pointerId) return;
      const passed = event.getCoalescedEvents();
      for (const one of passed.length > 0 ? passed : [event]) from = draw(shownAt(one, surface, plot), from);
    };
    const end = (event: PointerEvent): void => {
      if (event.pointerId !== press.pointerId) return;
      surface.removeEventListener('pointermove', move);
      surface.removeEventListener('pointerup', end);
      surface.removeEventListener('pointercancel', end);
      resolve();
    };
    surface.addEventListener('pointermove', move);
    surface.addEventListener('pointerup', end);
    surface.addEventListener('pointercancel', end);
  });
}

function placeOf(event: PointerEvent, surface: HTMLElement, plot: PlotPlace): Point | null {
  const { left, top } = surface.getBoundingClientRect();
  const beside = (at: number, from: number, length: number): boolean => at < from - reach || at > from + length + reach;
  if (beside(event.clientX - left, plot.left, plot.width)) return null;
  return beside(event.clientY - top, plot.top, plot.height) ? null : shownAt(event, surface, plot);
}

function shownAt(event: PointerEvent, surface: HTMLElement, { left, top, width, height, x, y }: PlotPlace): Point {
  const box = surface.getBoundingClientRect();
  const across = (event.clientX - box.left - left) / width;
  const up = 1 - (event.clientY - box.top - top) / height;
  return {
    x: x.domain[0] + across * (x.domain[1] - x.domain[0]),
    y: y.domain[0] + up * (y.domain[1] - y.domain[0]),
  };
}
