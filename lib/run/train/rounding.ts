// 'Begins to boil' and 'begins to run over' rounded off by a parabola, so that the solver sees no kink.

/** Width of the rounding, as a share of the usual excess. Source: this project's choice. */
export const ROUNDING = 0.25;

/** How far below the boiling line's energy a holder stands that lacks this heat: the inverse of what `evaluate` reads as lacking. */
export function excessBelow(heat: number, width: number): number {
  return heat >= width ? heat + 2 * width : width + 2 * Math.sqrt(width * heat);
}

/** max(0, value), rounded off by a parabola between −width and width. */
export function above(value: number, width: number): number {
  if (value <= -width) return 0;
  return value >= width ? value : ((value + width) * (value + width)) / (4 * width);
}

/** Derivative of `above`. */
export function aboveSlope(value: number, width: number): number {
  if (value <= -width) return 0;
  return value >= width ? 1 : (value + width) / (2 * width);
}
