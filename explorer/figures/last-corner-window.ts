// The window of the last corner: a square of the x-y diagram about the azeotrope.

import type { AzeotropeRow } from '../rows/equilibrium.js';

/** Side of the window in mole fraction; the whole diagram is 1, so the corner is 1 / side times larger. */
export const cornerSide = 0.12;

/** From and to, the same on both axes, on round fiftieths; the top corner where there is no azeotrope. */
export function cornerWindow(azeotrope: AzeotropeRow | null): readonly [number, number] {
  const middle = azeotrope?.moleFraction ?? 1;
  const from = Math.min(Math.floor((middle - 0.08) * 50) / 50, 1 - cornerSide);
  return [from, from + cornerSide];
}
