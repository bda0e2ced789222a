// How keys and pointer move a cursor: always to whole steps of its quantity, so that what is read is
// where it stands.

import type { Axis, CursorSpec } from '../../figures/figure.js';
import { numberAt } from './pixels.js';

/** Steps of a Page key. */
const page = 10;

/** Where a key takes a cursor that stands at `x` (SI); null for a key that means nothing here. */
export function cursorKey(key: string, x: number, spec: CursorSpec): number | null {
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return stepped(x, -1, spec);
    case 'ArrowRight':
    case 'ArrowUp':
      return stepped(x, 1, spec);
    case 'PageDown':
      return stepped(x, -page, spec);
    case 'PageUp':
      return stepped(x, page, spec);
    case 'Home':
      return spec.range[0];
    case 'End':
      return spec.range[1];
    default:
      return null;
  }
}

/** Where a pointer at this share of the plot's width puts the cursor, SI. */
export function cursorAtPointer(share: number, axis: Axis, spec: CursorSpec): number {
  return stepped(spec.quantity.fromShown(numberAt(axis, share)), 0, spec);
}

function stepped(x: number, steps: number, { quantity, range }: CursorSpec): number {
  const whole = Math.round(quantity.toShown(x) / quantity.step) + steps;
  return Math.min(Math.max(quantity.fromShown(whole * quantity.step), range[0]), range[1]);
}
