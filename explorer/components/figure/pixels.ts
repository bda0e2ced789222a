// The scales of a plot rectangle.

import type { Axis } from '../../figures/figure.js';

/** From shown units to px in a plot rectangle, y downwards. */
export function toPixels(axis: Axis, length: number, direction: 'right' | 'up'): (shown: number) => number {
  const along = axis.scale === 'log' ? Math.log : (shown: number): number => shown;
  const [low, high] = [along(axis.domain[0]), along(axis.domain[1])];
  const perUnit = length / (high - low);
  return direction === 'right'
    ? (shown) => (along(shown) - low) * perUnit
    : (shown) => length - (along(shown) - low) * perUnit;
}

/** The number at a share of the axis, from its start. */
export function numberAt({ domain: [low, high], scale }: Axis, share: number): number {
  return scale === 'log' ? low * (high / low) ** share : low + share * (high - low);
}
