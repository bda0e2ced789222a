// One plate up or one plate down on the x-y diagram:
//
//   y_(n−1) = r x_n + (1 − r) x_D        y_n = y_(n−1) + E (y*(x_n) − y_(n−1))
//
// Going up, x_n follows from the vapour below; going down, from the vapour above. Errors grow on the way up and shrink on the way down.

import type { CurveSlice } from '../../equilibrium/equilibrium-curve.js';
import { readVapour, vapourSlope } from '../../equilibrium/slice-tables.js';
import { bracketedNewton } from '../../numerics/root.js';

/** Where the march stands, and its two ways on. */
export interface March {
  /** Goes up one plate: fills x_n, y_n and the slopes by x_D. */
  up(vapourIn: number, vapourInSlope: number, head: number): void;
  /** The vapour that enters a plate from below, from the one that leaves it. */
  down(vapourOut: number, head: number): { liquid: number; vapourIn: number };
  liquid: number;
  vapour: number;
  vapourSlope: number;
}

/** A march through plates of one efficiency on an operating line of slope r through (x_D, x_D). */
export function marcher(slice: CurveSlice, efficiency: number, slope: number): March {
  const { alpha, intervals } = slice;
  const march: March = {
    liquid: 0,
    vapour: 0,
    vapourSlope: 0,
    up(vapourIn, vapourInSlope, head) {
      const wanted = (vapourIn - (1 - slope) * head) / slope;
      const liquid = Math.min(1, Math.max(0, wanted));
      const liquidSlope = liquid === wanted ? (vapourInSlope - (1 - slope)) / slope : 0;
      march.liquid = liquid;
      march.vapour = vapourIn + efficiency * (readVapour(alpha, intervals, liquid) - vapourIn);
      march.vapourSlope = vapourInSlope + efficiency * (vapourSlope(slice, liquid) * liquidSlope - vapourInSlope);
    },
    down(vapourOut, head) {
      // (1 − E)(r x + (1 − r) x_D) + E y*(x) = y_n, rising in x.
      const liquid = bracketedNewton(
        (x, out) => {
          const vapourIn = slope * x + (1 - slope) * head;
          out.value = (1 - efficiency) * vapourIn + efficiency * readVapour(alpha, intervals, x) - vapourOut;
          out.slope = (1 - efficiency) * slope + efficiency * vapourSlope(slice, x);
        },
        0,
        1,
        vapourOut * vapourOut,
      );
      return { liquid, vapourIn: slope * liquid + (1 - slope) * head };
    },
  };
  return march;
}
