// The scales of a plot rectangle.

import type { Axis } from '../../figures/figure.js';

/** From shown units to px in a plot rectangle, y downwards. */
export function toPixels(axis: Axis, length: number, direction: 'right' | 'up'): (shown: number) => number {
  const [low, high] = axis.domain;
  const perUnit = length / (high - low);
  return direction === 'right' ? (shown) => (shown - low) * perUnit : (shown) => length - (shown - low) * perUnit;
}
