// 'Begins to boil' and 'begins to run over' rounded off, so smoothly that the solver steps through without noticing: between −width
// and width the slope climbs from 0 to 1 with derivatives that are continuous up to the third. With z = value/width:
//
//   above'' = (15/16) (1 − z²)²/width,   above' = ½ + (15/16) z − (5/8) z³ + (3/16) z⁵,
//   above = width (5/32 + ½ z + (15/32) z² − (5/32) z⁴ + (1/32) z⁶)

import { bracketedRoot } from '../../../numerics/root.js';

/** Width of the rounding, as a share of the usual excess: a sixteenth of the full flow at nothing. Source: this project's choice. */
export const ROUNDING = 0.4;

/** How far below the boiling line's energy a holder stands that lacks this heat: the inverse of what `Streams` reads as lacking. */
export function excessBelow(heat: number, width: number): number {
  if (heat >= width) return heat + 2 * width;
  return 2 * width + bracketedRoot((excess) => above(excess, width) - heat, -width, width);
}

/** max(0, value), rounded off between −width and width. */
export function above(value: number, width: number): number {
  if (value <= -width) return 0;
  if (value >= width) return value;
  const z = value / width;
  const q = z * z;
  // Near −width the terms cancel, and round-off could leave a hair below nothing.
  return Math.max(0, width * (0.15625 + 0.5 * z + q * (0.46875 + q * (-0.15625 + 0.03125 * q))));
}

/** Derivative of `above`. */
export function aboveSlope(value: number, width: number): number {
  if (value <= -width) return 0;
  if (value >= width) return 1;
  const z = value / width;
  const q = z * z;
  return 0.5 + z * (0.9375 + q * (-0.625 + 0.1875 * q));
}

/** Derivative of `above` by its width. */
export function aboveWidth(value: number, width: number): number {
  if (value <= -width || value >= width) return 0;
  return (above(value, width) - value * aboveSlope(value, width)) / width;
}
